using TrimOut.Core.Units;

namespace TrimOut.Core.Geometry;

/// <summary>What the diagonals of an opening say about its corners.</summary>
public static class Squareness
{
    /// <summary>
    /// How far the top stands sideways over the bottom: (d1^2 - d2^2) / (4 x width), from the cosine rule. Positive when the first diagonal is the longer one.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no width, or a diagonal is negative.</exception>
    public static Length Lean(Length width, Length diagonal1, Length diagonal2) =>
        Length.FromMillimetres((Square(Refuse.Negative(diagonal1)) - Square(Refuse.Negative(diagonal2))) / (4 * Refuse.NothingOrLess(width).Millimetres));

    /// <summary>
    /// How far a lean may be off because each diagonal is read to a mark, with hook and eye by three quarters of one: 3/4 mark x (d1 + d2) / (2 x width).
    /// </summary>
    /// <param name="width">Width of the opening.</param>
    /// <param name="diagonal1">One diagonal.</param>
    /// <param name="diagonal2">The other one.</param>
    /// <param name="mark">The mark of the tape.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no width, or a diagonal is negative.</exception>
    public static Length LeanUnsure(Length width, Length diagonal1, Length diagonal2, Length mark) =>
        mark * (0.75m * ((Refuse.Negative(diagonal1) + Refuse.Negative(diagonal2)) / (Refuse.NothingOrLess(width) * 2)));

    /// <summary>The diagonal of a true rectangle: sqrt(width^2 + height^2).</summary>
    /// <exception cref="ArgumentOutOfRangeException">One of them is negative.</exception>
    public static Length Diagonal(Length width, Length height) =>
        Length.FromMillimetres((decimal)Math.Sqrt((double)(Square(Refuse.Negative(width)) + Square(Refuse.Negative(height)))));

    /// <summary>
    /// The diagonal that two measured ones stand for by the parallelogram law: sqrt((d1^2 + d2^2) / 2). Far from <see cref="Diagonal"/>, one of the figures is
    /// misread.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">One of them is negative.</exception>
    public static Length MeanDiagonal(Length diagonal1, Length diagonal2) =>
        Length.FromMillimetres((decimal)Math.Sqrt((double)(Square(Refuse.Negative(diagonal1)) + Square(Refuse.Negative(diagonal2))) / 2));

    private static decimal Square(Length length) => length.Millimetres * length.Millimetres;
}
