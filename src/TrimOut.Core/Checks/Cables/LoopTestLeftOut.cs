using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Cables;

/// <summary>A cable is tested before the wall closes, and again before anything is measured for it.</summary>
/// <remarks>
/// <para>Why: what the drywall crew did to a cable is cheap to fix while the painter is still there.</para>
/// <para>To clear: read the loop now, with the far end shorted and with it open.</para>
/// </remarks>
public sealed class LoopTestLeftOut : RunCheck
{
    private static readonly Message NoFirst = new("The wall is closed and the loop was never read.", "first");
    private static readonly Message NoSecond = new("The window is being measured, and the loop was not read again after the drywall.", "second");
    private static readonly Message ReadNow = new("Read it now, far end shorted and far end open, while the paint is fresh.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("loop-test-left-out", "A loop test was left out", Severity.Caution, Phase.CloseIn,
        new Source(Source.CommonPractice, "first test before a step of close-in; second test before a step of measure"));

    /// <inheritdoc/>
    public override Outcome Judge(HomeRun subject)
    {
        if (!Moment.Begun(subject.Unit, Phase.CloseIn))
            return new Outcome.DoesNotApply();
        var second = subject.SecondTest is null && Moment.Begun(subject.Unit, Phase.Measure);
        // Who let the first one go did not let the second go too: once that one is due it is another finding.
        if (subject.FirstTest is null && subject.SecondTest is null)
            return Found(subject, NoFirst.With().StandingFor(second ? [Arg.Label(RunFacts.SecondLoop)] : []), RunFacts.FirstLoop);
        return second ? Found(subject, NoSecond, RunFacts.SecondLoop) : new Outcome.Fine();
    }

    private static Outcome.Found Found(HomeRun run, Sentence fault, Fact fact) => new(fault, ReadNow, FieldRef.To(run.Item, fact));
}
