using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Phases;

/// <summary>What is not written yet of the fire barriers that a run goes through.</summary>
internal static class FireBarriers
{
    private static readonly Message Legs = new("legs");
    private static readonly Message OfEachLeg = new("{0} of each leg");

    /// <summary>The first thing that is missing; null when every leg says whether it goes through one, and each hole was sealed and seen.</summary>
    public static Sentence? MissingOf(HomeRun run) =>
        run.Legs.IsEmpty ? Legs
        : run.Legs.Any(l => l.ThroughFireBarrier is null) ? OfEachLeg.With(Arg.Label(LegFacts.FireBarrier))
        : Holes(run).Any(l => l.Item.Evidence(LegFacts.SealedBy) is null) ? OfEachLeg.With(Arg.Label(LegFacts.SealedBy))
        : Holes(run).Any(l => l.Item.Get(LegFacts.SealSeenOn) is null) ? OfEachLeg.With(Arg.Label(LegFacts.SealSeenOn))
        : null;

    /// <summary>The legs that go through a fire barrier.</summary>
    public static IEnumerable<Leg> Holes(HomeRun run) => run.Legs.Where(l => l.ThroughFireBarrier == true);
}
