using TrimOut.Core.Units;

namespace TrimOut.Core.Electrical;

/// <summary>How much cable a home run takes off a box.</summary>
public static class NeededCable
{
    /// <summary>Legs with the crew's allowance for bends and slack, and both tails: legs x (1 + allowance / 100) + tails.</summary>
    /// <param name="legs">Sum of the legs.</param>
    /// <param name="tailAtWindow">Tail at the window.</param>
    /// <param name="tailAtPanel">Tail in the mechanical room.</param>
    /// <param name="allowancePercent">Allowance on the legs, in per cent.</param>
    /// <exception cref="ArgumentOutOfRangeException">One of them is negative.</exception>
    public static Length Of(Length legs, Length tailAtWindow, Length tailAtPanel, decimal allowancePercent) =>
        Refuse.Negative(legs) * (1 + Refuse.Negative(allowancePercent) / 100) + Refuse.Negative(tailAtWindow) + Refuse.Negative(tailAtPanel);
}
