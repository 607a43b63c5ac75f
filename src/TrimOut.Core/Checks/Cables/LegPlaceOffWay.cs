using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Cables;

/// <summary>A leg through a floor is not said to lie inside a wall of one floor, and a way through a floor has such a leg.</summary>
/// <remarks>
/// <para>Why: between floors another listing is asked for, and a wrong place lets a cable pass that may not go there.</para>
/// <para>To clear: say what is really around the leg, or put right which way it goes. A run that is pulled or tested and has no leg through a floor is
/// compared with the others of its floor and its panel.</para>
/// </remarks>
public sealed class LegPlaceOffWay : RunCheck
{
    private static readonly Message InWall = new("A leg goes through a floor and is said to be inside a wall: that is between floors.");
    private static readonly Message SayPlace = new("Say that it is between floors; or put right which way the leg goes.");

    private static readonly Message NoFloorLeg = new("No leg of it goes through a floor; other cables from {0} to the same panel go through one.");
    private static readonly Message AddFloorLeg =
        new("Put right which way its legs go, or add the leg through the floor: between floors another listing is asked for.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("leg-place-off-way", "Where a leg lies does not match its direction", Severity.Stop, Phase.RoughIn,
        new Source("NFPA 70-2017, 725.154 and table 725.154; the code in force governs",
            "a leg through a floor is between floors or in an air-handling space; from one floor to one panel all runs go through a floor, or none"));

    /// <inheritdoc/>
    public override Outcome Judge(HomeRun subject)
    {
        var through = subject.Legs.Where(l => l.Direction == LegDirection.ThroughFloor).ToList();
        if (through.Where(l => l.Place == CablePlace.InWall).ToList() is [var leg, ..] legs)
            return new Outcome.Found(InWall.With().StandingFor(legs.Select(l => Arg.Name(l))), SayPlace, FieldRef.To(leg.Item, LegFacts.Place));
        return through.Count == 0 ? WithoutFloor(subject) ?? (Outcome)new Outcome.DoesNotApply()
            : through.FirstOrDefault(l => l.Place is null) is { } silent ? NotChecked.Of(silent, LegFacts.Place)
            : new Outcome.Fine();
    }

    /// <summary>A run of which all legs are said, none of them through a floor, while another from the same floor to the same panel has one.</summary>
    private static Outcome.Found? WithoutFloor(HomeRun run)
    {
        if (run.Legs.IsEmpty || run.Legs.Any(l => l.Direction is null) || run.WayToPanel is not { } way || run.Unit.Window.Room?.Floor is not { } floor
            || (run.FirstTest is null && !Moment.Begun(run.Unit, Phase.RoughIn)))
            return null;
        return run.House.Look(Lookups.UnitsThroughFloor, way).Count > 0
            ? new Outcome.Found(NoFloorLeg.With(Arg.Typed(floor)), AddFloorLeg, FieldRef.To(run.Legs[0].Item, LegFacts.Direction))
            : null;
    }
}
