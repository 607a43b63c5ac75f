namespace TrimOut.Core.Plans;

/// <summary>How much work a plan may still take, counted in steps so that the same order always gives the same plan.</summary>
/// <remarks>A step is a few dozen machine operations. The core has no clock; time is what a caller makes of it.</remarks>
internal sealed class WorkBudget(long budget, CancellationToken stop, WorkBudget? whole = null)
{
    private const long LookEvery = 16_384;

    private long _sinceLook;

    /// <summary>Steps that are left.</summary>
    public long Left { get; private set; } = budget;

    /// <summary>Whether none is left.</summary>
    public bool Spent => Left <= 0;

    /// <summary>A part of what is left, taken from this one as it is used.</summary>
    public WorkBudget Part(long most) => new(Math.Min(most, Left), stop, this);

    /// <summary>Takes steps.</summary>
    /// <returns>False when no more are left.</returns>
    /// <exception cref="OperationCanceledException">The caller does not want the plan any more.</exception>
    public bool Take(long count = 1)
    {
        Left -= count;
        _sinceLook += count;
        if (_sinceLook >= LookEvery)
            Look();
        return Left > 0;
    }

    /// <summary>Books what was taken with the whole that this is a part of.</summary>
    public void Look()
    {
        stop.ThrowIfCancellationRequested();
        whole?.Take(_sinceLook);
        _sinceLook = 0;
        if (whole is { Spent: true })
            Left = 0;
    }
}
