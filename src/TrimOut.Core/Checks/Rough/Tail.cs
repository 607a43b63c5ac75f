using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Rough;

/// <summary>The tail at a window and the way along the head that it is held against.</summary>
internal static class Tail
{
    private static readonly Message WallClosed =
        new("Look for slack behind the drywall first; else a new run, or a joint in a box that stays within reach, where the code allows one.");

    private static readonly Message PullMore = new("Pull {0} more to the window now: that makes the whole width. {1} more is the least.");
    private static readonly Message PullAll = new("Pull {0} more to the window now.");
    private static readonly Message PullIfThereIs = new("Pull {0} more to the window now, if there is cable to pull.", "if-there-is");

    /// <summary>Which of the two is missing; null when none is.</summary>
    public static Outcome.NotChecked? Unknown(HomeRun run) =>
        run.Unit.ToFarEnd is null ? Checks.NotChecked.Of(run.Unit.Window, WindowFacts.RoughWidth)
        : run.TailAtWindow is null ? Checks.NotChecked.Of(run, RunFacts.TailAtWindow)
        : null;

    /// <summary>Both, where none is missing.</summary>
    public static (Length Tail, Length Width) Of(HomeRun run) => (run.TailAtWindow!.Value, run.Unit.ToFarEnd!.Value);

    /// <summary>The fact that the tail was read from.</summary>
    public static FieldRef Field(HomeRun run) => FieldRef.To(run.Item, run.Item.Get(RunFacts.TailFound) is null ? RunFacts.TailAtWindow : RunFacts.TailFound);

    /// <summary>
    /// The mend of a tail that is too short, or what is left once the wall is closed. Every check of one tail names the same lengths: whoever mends by one
    /// of them does not hear of the next one.
    /// </summary>
    public static Sentence Mend(HomeRun run, Length tail)
    {
        if (!Moment.WallOpen(run.Unit))
            return WallClosed;
        var (least, whole) = (run.Unit.LeastTail!.Value, run.Unit.WholeTail!.Value);
        return tail >= least ? PullIfThereIs.With(Arg.AtLeast(whole - tail))
            : whole > least ? PullMore.With(Arg.AtLeast(whole - tail), Arg.AtLeast(least - tail))
            : PullAll.With(Arg.AtLeast(least - tail));
    }
}
