using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Rough;

/// <summary>The tail that is found after drywall is no longer than the one that was left.</summary>
/// <remarks>
/// <para>Why: cables do not grow: it is another cable, it was pulled out of the wall, or one of the two was misread.</para>
/// <para>To clear: see its label and read its loop; then measure both again, or put the first figure right.</para>
/// </remarks>
public sealed class TailLongerThanLeft : RunCheck
{
    private static readonly Message Longer = new("The tail found is {0}; {1} was left: it is another cable, it was pulled out, or one was misread.");
    private static readonly Message SeeLabel = new("See its label and read its loop. If it is the right cable, measure again and put right what is wrong.");

    /// <summary>How much longer two readings of one tail may be apart.</summary>
    public static readonly Length Slack = Length.FromMillimetres(25);

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("tail-longer-than-left", "Tail found is longer than the one left", Severity.Caution, Phase.CloseIn,
        new Source(Source.CommonPractice, "tail found <= tail left + 25 mm (1 in)"));

    /// <inheritdoc/>
    public override Outcome Judge(HomeRun subject)
    {
        if (subject.Item.Get(RunFacts.TailFound) is not { } found)
            return NotChecked.Of(subject, RunFacts.TailFound);
        if (subject.Item.Get(RunFacts.TailAtWindow) is not { } left)
            return NotChecked.Of(subject, RunFacts.TailAtWindow);
        return found <= left + Slack
            ? new Outcome.Fine()
            : new Outcome.Found(Longer.With(found, left), SeeLabel, FieldRef.To(subject.Item, RunFacts.TailFound));
    }
}
