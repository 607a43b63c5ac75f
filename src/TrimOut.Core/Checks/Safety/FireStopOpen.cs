using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Safety;

/// <summary>Each hole through a fire barrier was sealed by somebody, and seen, before the wall closes on a tested cable.</summary>
/// <remarks>
/// <para>Why: a hole around a cable lets fire from floor to floor, and nobody sees it behind plaster.</para>
/// <para>To clear: have it sealed by whoever the local code lets do it, see it, and write both.</para>
/// </remarks>
public sealed class FireStopOpen : RunCheck
{
    private static readonly Message LegsAndBarriers = new("legs");
    private static readonly Message NotSealed = new("Leg {0} goes through a fire barrier, the cable is tested, and nobody has written who sealed the hole.");
    private static readonly Message NotSeen = new("Leg {0} goes through a fire barrier, sealed by {1}, and nobody has written that it was seen.");
    private static readonly Message SealedWhereNone =
        new("Leg {0} is said to go through no fire barrier, and a seal is written for it.", "no-barrier");
    private static readonly Message WhichIsRight = new("Say that it goes through a fire barrier; if it goes through none, take the seal away.");
    private static readonly Message HaveItSealed =
        new("Have the hole sealed by whoever the local code lets do it, see it, and write who and when before the wall closes.");
    private static readonly Message SeeIt = new("Look at the seal before the wall closes, and write the day.");

    private static readonly Message OpenAndSeal = new("The wall is closed: ask the builder for whoever sealed it and for a picture of it. " +
        "If nobody did, have it opened and sealed by whoever the local code lets do it.");
    private static readonly Message AskWhoSawIt =
        new("The wall is closed: ask whoever sealed it for a picture with its day, or have it opened and seen; then write the day.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("fire-stop-open", "Hole through a fire barrier is not sealed and seen", Severity.Stop, Phase.RoughIn,
        new Source("NFPA 70-2017, 300.21 (from memory); the code in force governs",
            "tested run: every leg through a fire barrier is sealed and seen; a leg with a seal goes through one"));

    /// <inheritdoc/>
    public override Outcome Judge(HomeRun subject)
    {
        if (subject.Legs.IsEmpty)
            return new Outcome.NotChecked(LegsAndBarriers);
        var open = new List<(Leg Leg, int Number, string? SealedBy)>();
        Outcome? unsure = null;
        for (var n = 0; n < subject.Legs.Length; n++)
        {
            var leg = subject.Legs[n];
            var by = leg.Item.Evidence(LegFacts.SealedBy);
            if (leg.ThroughFireBarrier is not { } through)
                unsure ??= NotChecked.Of(leg, LegFacts.FireBarrier);
            else if (through && (by is null || leg.Item.Get(LegFacts.SealSeenOn) is null))
                open.Add((leg, n + 1, by));
        }
        var needless = Needless(subject);
        if (open.Count == 0)
            return needless ?? unsure ?? new Outcome.Fine();
        var (first, number, sealedBy) = open.OrderBy(o => o.SealedBy is not null).First();
        if (subject.FirstTest is null)
            return needless ?? unsure ?? NotChecked.Of(first, sealedBy is null ? LegFacts.SealedBy : LegFacts.SealSeenOn);
        // One leg is named, and all that are open are meant: a waiver for one is none for another.
        var legs = Arg.Of(open.Select(o => Arg.Name(o.Leg.Item)), number);
        var unsealed = open.Where(o => o.SealedBy is null).Select(o => Arg.Name(o.Leg.Item));
        var wallOpen = Moment.WallOpen(subject.Unit);
        return Outcome.All(sealedBy is null ? Found(first, NotSealed.With(legs).StandingFor(unsealed), wallOpen ? HaveItSealed : OpenAndSeal, LegFacts.SealedBy)
            : Found(first, NotSeen.With(legs, Arg.Of(open.Select(o => Arg.Typed(o.SealedBy!)), Arg.Typed(sealedBy))), wallOpen ? SeeIt : AskWhoSawIt,
                LegFacts.SealSeenOn), needless)!;
    }

    /// <summary>Legs that are said to go through no barrier, and have a seal.</summary>
    private static Outcome.Found? Needless(HomeRun run)
    {
        var sealedLegs = run.Legs.Index().Where(l => l.Item.ThroughFireBarrier == false
            && (l.Item.Item.Evidence(LegFacts.SealedBy) is not null || l.Item.Item.Get(LegFacts.SealSeenOn) is not null)).ToList();
        return sealedLegs is [var (at, leg), ..]
            ? Found(leg, SealedWhereNone.With(Arg.Of(sealedLegs.Select(l => Arg.Name(l.Item.Item)), at + 1)), WhichIsRight, LegFacts.FireBarrier)
            : null;
    }

    private static Outcome.Found Found(Leg leg, Sentence message, Sentence mend, Fact field) => new(message, mend, FieldRef.To(leg.Item, field));
}
