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
