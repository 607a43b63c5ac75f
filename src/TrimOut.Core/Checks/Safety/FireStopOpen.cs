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
    private static readonly Message HaveItSealed =
        new("Have the hole sealed by whoever the local code lets do it, see it, and write who and when before the wall closes.");
    private static readonly Message SeeIt = new("Look at the seal before the wall closes, and write the day.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("fire-stop-open", "Hole through a fire barrier is not sealed and seen", Severity.Stop, Phase.RoughIn,
        new Source("NFPA 70-2017, 300.21 (from memory); the code in force governs", "tested run: every leg through a fire barrier is sealed and seen"));

    /// <inheritdoc/>
    public override Outcome Judge(HomeRun subject)
    {
        if (subject.Legs.IsEmpty)
            return new Outcome.NotChecked(LegsAndBarriers);
        Outcome? unsure = null;
        for (var n = 0; n < subject.Legs.Length; n++)
        {
            switch (Judge(subject, subject.Legs[n], n + 1))
            {
                case Outcome.Found found:
                    return found;
                case Outcome.NotChecked unknown:
                    unsure ??= unknown;
                    break;
            }
        }
        return unsure ?? new Outcome.Fine();
    }

    private static Outcome Judge(HomeRun run, Leg leg, int number)
    {
        if (leg.ThroughFireBarrier is not { } through)
            return NotChecked.Of(leg, LegFacts.FireBarrier);
        if (!through)
            return new Outcome.Fine();
        var tested = run.FirstTest is not null;
        if (leg.Item.Get(LegFacts.SealedBy) is not { } by)
            return tested ? Found(leg, NotSealed.With(number), HaveItSealed, LegFacts.SealedBy) : NotChecked.Of(leg, LegFacts.SealedBy);
        return leg.Item.Get(LegFacts.SealSeenOn) is not null ? new Outcome.Fine()
            : tested ? Found(leg, NotSeen.With(number, Arg.Typed(by)), SeeIt, LegFacts.SealSeenOn)
            : NotChecked.Of(leg, LegFacts.SealSeenOn);
    }

    private static Outcome.Found Found(Leg leg, Sentence message, Sentence mend, Fact field) => new(message, mend, FieldRef.To(leg.Item, field));
}
