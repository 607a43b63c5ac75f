using TrimOut.Core.Facts;
using TrimOut.Core.Houses;

namespace TrimOut.Papers.Writing;

/// <summary>A leg of a home run in one line.</summary>
internal static class LegText
{
    /// <summary>Its way, length, place and conduit, and whether it goes through a fire barrier, as far as they are known.</summary>
    public static Inline Of(Leg leg) =>
        new[]
        {
            leg.Shown(LegFacts.Direction), leg.Shown(LegFacts.Length) ?? Inline.Ours("(length not noted)"), leg.Shown(LegFacts.Place), InConduit(leg),
            Barrier(leg),
        }.JoinOrDash(" ");

    /// <summary>All legs of a run, from the panel; of one that goes on from the window end of another also that.</summary>
    /// <param name="run">The run.</param>
    /// <param name="none">What stands where there is no leg yet.</param>
    public static Inline WayOf(HomeRun run, Inline none)
    {
        var legs = run.Legs.IsEmpty ? none : run.Legs.Select(Of).JoinOrDash("; ");
        return run.BranchesOff is { } first ? Inline.Ours($"a branch off {first.Name}; {legs}") : legs;
    }

    private static Inline? InConduit(Leg leg) => leg.Conduit switch
    {
        Conduit.Metal => Inline.Ours("in metal conduit"),
        Conduit.Plastic => Inline.Ours("in plastic conduit"),
        _ => null,
    };

    private static Inline? Barrier(Leg leg) => leg.ThroughFireBarrier != true ? null
        : leg.Shown(LegFacts.SealedBy) is { } by ? Inline.Ours($"(through a fire barrier, sealed by {by}, seen {leg.EntryOrNotYet(LegFacts.SealSeenOn)})")
        : Inline.Ours("(through a fire barrier, not sealed yet)");
}
