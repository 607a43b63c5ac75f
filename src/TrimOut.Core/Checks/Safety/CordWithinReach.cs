using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Safety;

/// <summary>No cord, chain or cable hangs free that a child can put its head into.</summary>
/// <remarks>
/// <para>Why: children were strangled by loops and cords that nobody thought of, within minutes and without a sound.</para>
/// <para>To clear: hold it tight to the wall, shorten it or take it away, move the unit from end to end and measure again.</para>
/// </remarks>
public sealed class CordWithinReach : UnitCheck
{
    private static readonly Message HangsFree = new("{0} of cord or chain hang free within reach; {1} are the most.");
    private static readonly Message HoldTight =
        new("Hold it tight with a tensioner fixed to the wall, or shorten it, then measure it in every position again.");

    /// <summary>The longest cord that may hang free, whatever a house is measured in.</summary>
    public static readonly Length Most = Length.FromInches(8);

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("cord-within-reach", "Cord or chain hangs free within a child's reach", Severity.Stop, Phase.Hang,
        new Source("ANSI/WCMA A100.1-2022, no free cord longer than 8 in, and EN 13120 with EN 16433 on tensioners (all from memory); local rules govern",
            "free cord in any position <= 8 in, and somebody confirmed it"));

    /// <inheritdoc/>
    public override Outcome Judge(Unit subject)
    {
        if (subject.Item.Get(UnitFacts.FreeCord) is not { } free)
            return NotChecked.Of(subject, UnitFacts.FreeCord);
        if (free > Most)
            return new Outcome.Found(HangsFree.With(free, Arg.AtMost(Most)), HoldTight, FieldRef.To(subject.Item, UnitFacts.FreeCord));
        return subject.Item.Evidence(UnitFacts.CordConfirmedBy) is null ? NotChecked.Of(subject, UnitFacts.CordConfirmedBy) : new Outcome.Fine();
    }
}
