using TrimOut.Core.Electrical;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Cables;

/// <summary>The cable is listed for every place that its legs go through.</summary>
/// <remarks>
/// <para>Why: an unlisted cable spreads fire, and the inspector has the wall opened.</para>
/// <para>To clear: a cable with the listing that the place asks for, or another way. What a one- or two-family house or a conduit relaxes is taken as
/// allowed and noted apart. A leg counts as air-handling space as soon as somebody says that air moves there.</para>
/// </remarks>
public sealed class CableNotListed : RunCheck
{
    private static readonly Message LegsWithPlaces = new("legs with their places");
    private static readonly Message NotListed = new("{0} has no listing on its jacket; {1} or what may stand in for it is asked for.");
    private static readonly Message InAirHandlingSpace =
        new("{0} is {1} and goes in an air-handling space; {2} or what may stand in for it is asked for.", "air-handling-space");
    private static readonly Message BetweenFloors = new("{0} is {1} and goes between floors; {2} or what may stand in for it is asked for.", "between-floors");
    private static readonly Message InsideWall = new("{0} is {1} and goes inside a wall; {2} or what may stand in for it is asked for.", "in-wall");
    private static readonly Message MeasureJacket = new("Measure across the jacket first: less than 6 mm (1/4 in) may stay in a one- or two-family house. " +
        "Else pull a cable listed {0}, or take another way. The code in force governs.");
    private static readonly Message AnotherCable = new("Pull a cable listed {0}, or take another way. The code in force governs.");

    /// <summary>A CL2X cable in a dwelling is thinner than this.</summary>
    public static readonly Length Thin = Length.FromMillimetres(6);

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("cable-not-listed", "Cable is not listed for where it runs", Severity.Stop, Phase.RoughIn,
        new Source(CableListings.Edition + "; the code in force governs",
            "air-handling space: CL2P; between floors: CL2R; in a wall: CL2; or what may stand in for these, or a conduit that relaxes it"));

    /// <summary>Whether a run has a cable that is not listed for where it goes, and nobody waived that: such a one is not to be cut.</summary>
    internal static bool IsOpen(HomeRun run)
    {
        var check = new CableNotListed();
        return check.Judge(run) is Outcome.Found found && found.Each.Any(f => !run.House.Waivers.Any(w =>
            w.About == run.Id && w.Check == check.Info.Id && WaivedFigures.Are(w, f.Message, run.House)));
    }

    /// <inheritdoc/>
    public override Outcome Judge(HomeRun subject)
    {
        if (subject.Cable?.Listing is not { } listing)
            return NotChecked.Of(subject.Cable, CableTypeFacts.Listing, subject, RunFacts.Cable);
        if (subject.Legs.IsEmpty)
            return new Outcome.NotChecked(LegsWithPlaces);
        // Each sort of place is one fault, the worst of them first: what it asks for serves them all.
        var judged = subject.Legs.OrderByDescending(l => l.Place).Select(l => (Leg: l, Outcome: Judge(subject, subject.Cable, listing, l))).ToList();
        var faults = judged.Where(j => j.Outcome is Outcome.Found).GroupBy(j => listing == CableListing.NotListed ? null : j.Leg.Place)
            .Select(g => (Outcome.Found)g.First().Outcome is var first && listing == CableListing.NotListed ? first
                : first with { Message = first.Message.StandingFor(g.Select(j => Arg.Name(j.Leg))) });
        return Outcome.All(faults) ?? judged.Select(j => j.Outcome).FirstOrDefault(o => o is Outcome.NotChecked) ?? Air(subject);
    }

    /// <summary>What is missing where a leg across is not said to lie in still air, and its cable may not go where air moves.</summary>
    private static Outcome Air(HomeRun run) =>
        StepList.Shipped.IsAsked(StepList.Find("air-asked")!, run.Unit) && !CableListings.MayGo(run.Cable!.Listing!.Value, CablePlace.AirHandlingSpace)
            && MovingAir.Silent(run) is { } silent
            ? NotChecked.Of(silent, LegFacts.AirMoves)
            : new Outcome.Fine();

    private static Outcome Judge(HomeRun run, CableType cable, CableListing listing, Leg leg)
    {
        if (listing == CableListing.NotListed)
            return Found(run, NotListed.With(Arg.Name(cable), Arg.Mark(Asked(leg.Place))), Asked(leg.Place));
        if (leg.Place is not { } place)
            return NotChecked.Of(leg, LegFacts.Place);
        if (CableListings.MayGo(listing, place) || (leg.Conduit is { } conduit && CableListings.InConduit(listing, place, conduit)))
            return new Outcome.Fine();
        var way = place switch { CablePlace.AirHandlingSpace => InAirHandlingSpace, CablePlace.BetweenFloors => BetweenFloors, _ => InsideWall };
        var fault = Found(run, way.With(Arg.Name(cable), Arg.Mark(listing), Arg.Mark(Asked(place))), Asked(place));
        if (CableListings.InDwelling(listing, place, Dwelling.OneOrTwoFamily) == Relaxation.None)
            return fault;
        if (run.House.Job.Get(HouseFacts.Dwelling) is not { } dwelling)
            return NotChecked.Of(new JobItself(run.House), HouseFacts.Dwelling);
        return CableListings.InDwelling(listing, place, dwelling) switch
        {
            Relaxation.Allowed => new Outcome.Fine(),
            Relaxation.AllowedWhenThin when cable.Diameter is not { } across => NotChecked.Of(cable, CableTypeFacts.Diameter),
            Relaxation.AllowedWhenThin when cable.Diameter < Thin => new Outcome.Fine(),
            Relaxation.AllowedWhenThin => fault with
            {
                Mend = MeasureJacket.With(Arg.Mark(Asked(place))),
                Mends = FieldRef.To(cable.Item, CableTypeFacts.Diameter),
            },
            _ => fault,
        };
    }

    private static CableListing Asked(CablePlace? place) => place switch
    {
        CablePlace.AirHandlingSpace => CableListing.Cl2p,
        CablePlace.BetweenFloors => CableListing.Cl2r,
        _ => CableListing.Cl2,
    };

    private static Outcome.Found Found(HomeRun run, Sentence fault, CableListing asked) =>
        new(fault, AnotherCable.With(Arg.Mark(asked)), FieldRef.To(run.Item, RunFacts.Cable));
}
