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

    /// <summary>Which of the two is missing; null when none is.</summary>
    public static Outcome.NotChecked? Unknown(HomeRun run) =>
        run.Unit.ToFarEnd is null ? Checks.NotChecked.Of(run.Unit.Window, WindowFacts.RoughWidth)
        : run.TailAtWindow is null ? Checks.NotChecked.Of(run, RunFacts.TailAtWindow)
        : null;

    /// <summary>Both, where none is missing.</summary>
    public static (Length Tail, Length Width) Of(HomeRun run) => (run.TailAtWindow!.Value, run.Unit.ToFarEnd!.Value);

    /// <summary>The fact that the tail was read from.</summary>
    public static FieldRef Field(HomeRun run) => FieldRef.To(run.Item, run.Item.Get(RunFacts.TailFound) is null ? RunFacts.TailAtWindow : RunFacts.TailFound);

    /// <summary>The mend now, or what is left once the wall is closed.</summary>
    public static Sentence Mend(HomeRun run, Sentence now) => Moment.WallOpen(run.Unit) ? now : WallClosed;
}
