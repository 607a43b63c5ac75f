using TrimOut.Core.Electrical;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Panels;

/// <summary>Plus is plus and minus is minus at the window end.</summary>
/// <remarks>
/// <para>Why: a motor on swapped wires runs the wrong way or not at all, and some are damaged.</para>
/// <para>To clear: switch the panel off, change the two wires over at one end, read again.</para>
/// </remarks>
public sealed class PolaritySwapped : RunCheck
{
    private static readonly Message Negative = new("{0} read {1}: the two wires are changed over.");
    private static readonly Message ChangedOver = new("Plus and minus are changed over at the window end.");
    private static readonly Message ChangeBack =
        new("Switch the panel off, change the two wires over at one end, plus to plus and minus to minus, and read again.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("polarity-swapped", "Polarity is reversed", Severity.Stop, Phase.Power,
        new Source(Source.CommonPractice, "polarity right, and no reading negative by more than the meter may be off, 0.5 % and 0.02 V"));

    /// <inheritdoc/>
    public override Outcome Judge(HomeRun subject)
    {
        var all = new[] { RunFacts.OpenVolts, RunFacts.LoadedVolts }.Where(
            f => subject.Item.Get(f) is { } read && read.Volts < -HandMeter.OfVolts(read.Volts)).ToList();
        // One fault, whatever shows it; and what shows it anew is another figure.
        if (all is [var negative, ..])
        {
            Arg[] more = [.. all.Skip(1).Select(f => (Arg)subject.Item.Get(f)!.Value),
                .. subject.Item.Get(RunFacts.Polarity) is { } said and not Polarity.Right ? [Arg.Value(RunFacts.Polarity, said)] : (Arg[])[]];
            return Found(subject, Negative.With(Arg.Label(negative, small: false), subject.Item.Get(negative)!.Value).StandingFor(more), negative);
        }
        return subject.Item.Get(RunFacts.Polarity) switch
        {
            null => NotChecked.Of(subject, RunFacts.Polarity),
            Polarity.Right => new Outcome.Fine(Reasoning(subject)),
            _ => Found(subject, ChangedOver, RunFacts.Polarity),
        };
    }

    private static Outcome.Found Found(HomeRun run, Sentence message, Fact fact) =>
        new(message, ChangeBack, FieldRef.To(run.Item, fact), Reasoning(run));

    private static Working Reasoning(HomeRun run) => Working.Of("the red lead on plus shows more than 0 V; wires changed over show less than 0 V", () =>
        [.. new Fact[] { RunFacts.Polarity, RunFacts.OpenVolts, RunFacts.LoadedVolts }.Select(f =>
            (f.Label.ToLowerInvariant(), run.Show(f) is { Length: > 0 } shown ? shown : "not read"))]);
}
