using TrimOut.Core.Units;

namespace TrimOut.Core.Geometry;

/// <summary>What the diagonals of an opening say about its corners.</summary>
public static class Squareness
{
    /// <summary>How far the top stands sideways over the bottom: (d1^2 - d2^2) / (4 x width), from the cosine rule. Positive when the first diagonal is the longer one.</summary>
    /// <exception cref="DivideByZeroException">There is no width.</exception>
    public static Length Lean(Length width, Length diagonal1, Length diagonal2) =>
        Length.FromMillimetres((diagonal1.Millimetres * diagonal1.Millimetres - diagonal2.Millimetres * diagonal2.Millimetres) / (4 * width.Millimetres));

    /// <summary>The diagonal of a true rectangle: sqrt(width^2 + height^2).</summary>
    public static Length Diagonal(Length width, Length height) =>
        Length.FromMillimetres((decimal)Math.Sqrt((double)(width.Millimetres * width.Millimetres + height.Millimetres * height.Millimetres)));

    /// <summary>The diagonal that two measured ones stand for by the parallelogram law: sqrt((d1^2 + d2^2) / 2). Far from <see cref="Diagonal"/>, one of the figures is misread.</summary>
    public static Length MeanDiagonal(Length diagonal1, Length diagonal2) =>
        Length.FromMillimetres((decimal)Math.Sqrt((double)(diagonal1.Millimetres * diagonal1.Millimetres + diagonal2.Millimetres * diagonal2.Millimetres) / 2));
}
