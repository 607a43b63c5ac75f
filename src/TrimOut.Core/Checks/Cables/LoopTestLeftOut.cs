using System.Collections.Immutable;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Cables;

/// <summary>A cable is tested before the wall closes, and again before anything is measured for it.</summary>
/// <remarks>
/// <para>Why: what the drywall crew did to a cable is cheap to fix while the painter is still there.</para>
/// <para>To clear: read the loop now, with the far end shorted and with it open. Where a unit was given to a panel once its wall was closed, and nothing is
/// written of a cable, there may be none to read: open the wall, or feed the unit otherwise.</para>
/// </remarks>
public sealed class LoopTestLeftOut : RunCheck
{
    private static readonly Message NoFirst = new("The wall is closed and the loop was never read.", "first");
    private static readonly Message NoSecond = new("The window is being measured, and the loop was not read again after the drywall.", "second");
    private static readonly Message NoCable = new("It is to be fed by a panel, its wall is closed, and nothing is written of a cable to it.", "no-cable");
    private static readonly Message OtherPower =
        new("Feed it by a battery or a plug-in supply, or open the wall and pull a cable. If one lies there, write its tails and read its loop.");
    private static readonly Message ReadNow = new("Read it now, far end shorted and far end open, while the paint is fresh.");

    /// <summary>What only a cable that is there has.</summary>
    private static readonly ImmutableArray<Fact> OfACable =
    [
        RunFacts.TailAtWindow, RunFacts.TailAtPanel, RunFacts.LabelAtWindow, RunFacts.LabelAtPanel, RunFacts.OnePiece, RunFacts.BranchesOff,
        RunFacts.FirstLoop, RunFacts.TailFound, RunFacts.SecondLoop, RunFacts.Panel, RunFacts.OpenVolts,
    ];

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("loop-test-left-out", "A loop test was left out", Severity.Caution, Phase.CloseIn,
        new Source(Source.CommonPractice, "first test before a step of close-in; second test before a step of measure; " +
            "said to be fed by a panel = its cable is pulled before a step of close-in in its room, or in all of the house where its room has no other"));

    /// <inheritdoc/>
    public override Outcome Judge(HomeRun subject)
    {
        if (IsWithoutCable(subject) && (Moment.Begun(subject.Unit, Phase.CloseIn) || Moment.ItsRoomIsClosed(subject.Unit)))
            return new Outcome.Found(NoCable.With(), OtherPower, FieldRef.To(subject.Unit.Item, UnitFacts.Power));
        if (!Moment.Begun(subject.Unit, Phase.CloseIn))
            return new Outcome.DoesNotApply();
        var second = subject.SecondTest is null && Moment.Begun(subject.Unit, Phase.Measure);
        // Who let the first one go did not let the second go too: once that one is due it is another finding.
        if (subject.FirstTest is null && subject.SecondTest is null)
            return Found(subject, NoFirst.With().StandingFor(second ? [Arg.Label(RunFacts.SecondLoop)] : []), RunFacts.FirstLoop);
        return second ? Found(subject, NoSecond, RunFacts.SecondLoop) : new Outcome.Fine();
    }

    /// <summary>Whether somebody said that a panel feeds it, and nobody wrote or marked anything of a cable.</summary>
    private static bool IsWithoutCable(HomeRun run) => run.Unit.Power == PowerSource.Panel && OfACable.All(f => run.Item.Latest(f)?.Stored is null)
        && !StepList.All.Any(s => s is { Subject: ItemKind.Unit, Phase: Phase.RoughIn or Phase.CloseIn } && run.Unit.MarkOf(s) == StepMark.Done);

    private static Outcome.Found Found(HomeRun run, Sentence fault, Fact fact) => new(fault, ReadNow, FieldRef.To(run.Item, fact));
}
