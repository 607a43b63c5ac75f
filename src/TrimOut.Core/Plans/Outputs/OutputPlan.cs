using System.Collections.Immutable;

namespace TrimOut.Core.Plans.Outputs;

/// <summary>Where a run lands.</summary>
/// <param name="Run">The run.</param>
/// <param name="At">Its panel and output.</param>
/// <param name="Moved">Whether it was landed elsewhere before.</param>
public sealed record LandedRun(RunToLand Run, OutputPlace At, bool Moved);

/// <summary>Which run lands on which output. Its figures come in the order in which they count; the limit of each holds for the figures before it.</summary>
/// <param name="Runs">Every run, in the order of the order.</param>
/// <param name="Panels">Panels used: as few as can be.</param>
/// <param name="Spread">By how many runs the fullest of them differs from the emptiest.</param>
/// <param name="Peak">The largest load on one panel of units that move together.</param>
/// <param name="RoomSplits">Panels that rooms are spread over beyond the first, all rooms together.</param>
/// <param name="Moved">Landed runs that are moved.</param>
/// <param name="LoadIn">What the peak is counted in.</param>
public sealed record OutputPlan(
    ImmutableArray<LandedRun> Runs,
    Bounded<int> Panels,
    Bounded<int> Spread,
    Bounded<int> Peak,
    Bounded<int> RoomSplits,
    Bounded<int> Moved,
    string LoadIn)
{
    /// <summary>Whether nothing about it can be bettered, proven.</summary>
    public bool Proven => Panels.Proven && Spread.Proven && Peak.Proven && RoomSplits.Proven && Moved.Proven;

    /// <summary>What it does and how good it is, in words.</summary>
    public string Says()
    {
        var peak = Peak.Found == 1 && LoadIn == OutputOrder.Units ? "no two units that move together share a panel"
            : Peak.Proven ? $"at most {Peak.Found} {LoadIn} move at once on a panel"
            : $"at most {Peak.Found} {LoadIn} move at once on a panel ({Peak.Limit} may be possible)";
        var rooms = RoomSplits is { Found: 0, Proven: true } ? "every room on one panel"
            : $"rooms split {RoomSplits.Found} time{(RoomSplits.Found == 1 ? "" : "s")}{(RoomSplits.Proven ? "" : $" ({RoomSplits.Limit} may be possible)")}";
        var moved = Moved.Found == 0 ? "No landed cable is moved." : Moved.Found == 1 ? "1 landed cable is moved." : $"{Moved.Found} landed cables are moved.";
        return $"{Panels.Found} panel{(Panels.Found == 1 ? "" : "s")}, loaded {(Spread.Found == 0 ? "alike" : $"to within {Spread.Found}")}; {peak}; " +
            $"{rooms}. {moved}{(Proven ? " No plan is better." : "")}";
    }
}
