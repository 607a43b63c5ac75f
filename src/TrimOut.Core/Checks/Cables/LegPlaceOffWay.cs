using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Cables;

/// <summary>A leg through a floor is not said to lie inside a wall of one floor.</summary>
/// <remarks>
/// <para>Why: between floors another listing is asked for, and a wrong place lets a cable pass that may not go there.</para>
/// <para>To clear: say what is really around the leg, or put right which way it goes.</para>
/// </remarks>
public sealed class LegPlaceOffWay : RunCheck
{
    private static readonly Message InWall = new("A leg goes through a floor and is said to be inside a wall: that is between floors.");
    private static readonly Message SayPlace = new("Say that it is between floors; or put right which way the leg goes.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("leg-place-off-way", "Where a leg lies does not match its direction", Severity.Stop, Phase.RoughIn,
        new Source("NFPA 70-2017, 725.154 and table 725.154; the code in force governs",
            "a leg through a floor is between floors or in an air-handling space"));

    /// <inheritdoc/>
    public override Outcome Judge(HomeRun subject)
    {
        var through = subject.Legs.Where(l => l.Direction == LegDirection.ThroughFloor).ToList();
        if (through.Where(l => l.Place == CablePlace.InWall).ToList() is [var leg, ..] legs)
            return new Outcome.Found(InWall.With().StandingFor(legs.Select(l => Arg.Name(l))), SayPlace, FieldRef.To(leg.Item, LegFacts.Place));
        return through.Count == 0 ? new Outcome.DoesNotApply()
            : through.FirstOrDefault(l => l.Place is null) is { } silent ? NotChecked.Of(silent, LegFacts.Place)
            : new Outcome.Fine();
    }
}
