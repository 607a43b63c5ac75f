using TrimOut.Core.Facts;
using TrimOut.Core.Geometry;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Measures;

/// <summary>The diagonals can belong to these widths and heights.</summary>
/// <remarks>
/// <para>Why: no opening has such diagonals with such sides; one of the figures is misread, most often by a whole inch.</para>
/// <para>To clear: measure the diagonals again, then the sides.</para>
/// </remarks>
public sealed class DiagonalsOffSides : WindowCheck
{
    private static readonly Message Misread = new("The diagonals stand for {0}, the widths and heights for {1}: one of them is misread.");
    private static readonly Message MeasureAgain = new("Measure the diagonals again, then the sides.");

    /// <summary>
    /// How far the two may be apart before a figure must be wrong, three times the mark that each is read to: common practice, no published source.
    /// </summary>
    public static readonly Length Tolerance = Length.FromInches(0, 3, 16);

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("diagonals-off-sides", "Diagonals do not match the sides", Severity.Stop, Phase.Measure,
        new Source("Parallelogram law: d1^2 + d2^2 = 2 (width^2 + height^2)", "sqrt((d1^2 + d2^2) / 2) and sqrt(width^2 + height^2) within 3/16 in"));

    /// <inheritdoc/>
    public override Outcome Judge(Window subject)
    {
        if (subject.Widths is not ({ } top, { } middle, { } bottom))
            return NotChecked.Of(subject, WindowFacts.WidthTop);
        if (subject.Heights is not ({ } left, { } centre, { } right))
            return NotChecked.Of(subject, WindowFacts.HeightLeft);
        if (subject.Diagonals is not ({ } down, { } up))
            return NotChecked.Of(subject, WindowFacts.DiagonalDown);
        var (width, height) = ((top + middle + bottom) / 3, (left + centre + right) / 3);
        var (read, expected) = (Squareness.MeanDiagonal(down, up), Squareness.Diagonal(width, height));
        var working = Working.Of(Info.Source.Formula, () =>
        [
            ("mean width", width.About(subject)), ("mean height", height.About(subject)), ("diagonals", $"{down.In(subject)} and {up.In(subject)}"),
            ("from the diagonals", read.About(subject)), ("from the sides", expected.About(subject)),
        ]);
        return (read - expected).Abs() <= Tolerance
            ? new Outcome.Fine(working)
            : new Outcome.Found(Misread.With(Arg.About(read), Arg.About(expected)), MeasureAgain, FieldRef.To(subject.Item, WindowFacts.DiagonalDown), working);
    }
}
