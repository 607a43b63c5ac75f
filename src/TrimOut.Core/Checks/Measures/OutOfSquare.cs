using TrimOut.Core.Facts;
using TrimOut.Core.Geometry;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;

namespace TrimOut.Core.Checks.Measures;

/// <summary>The opening has square corners and parallel sides.</summary>
/// <remarks>
/// <para>Why: a straight unit in a leaning opening shows a wedge of light on one side. Equal diagonals alone prove nothing: an opening that is narrower at the top has them too.</para>
/// <para>To clear: shim the trim, order to the smallest width, or choose an outside mount.</para>
/// </remarks>
public sealed class OutOfSquare : WindowCheck
{
    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("out-of-square", "Opening is out of square", Severity.Caution, Phase.Measure,
        new Source("Cosine rule: lean = (d1^2 - d2^2) / (4 x width)", "difference of the diagonals, of top and bottom, and of left and right each within the limit"));

    /// <inheritdoc/>
    public override Outcome Judge(Window subject)
    {
        if (subject.House.Job.Get(HouseFacts.SquareLimit) is not { } limit)
            return Unknown.Of(new JobItself(subject.House), HouseFacts.SquareLimit);
        if (subject.Widths is not ({ } top, _, { } bottom))
            return Unknown.Of(subject, subject.Widths.Top is null ? WindowFacts.WidthTop : WindowFacts.WidthBottom);
        if (subject.Heights is not ({ } left, _, { } right))
            return Unknown.Of(subject, subject.Heights.Left is null ? WindowFacts.HeightLeft : WindowFacts.HeightRight);
        if (subject.Diagonals is not ({ } down, { } up))
            return Unknown.Of(subject, subject.Diagonals.Down is null ? WindowFacts.DiagonalDown : WindowFacts.DiagonalUp);
        var lean = Squareness.Lean((top + bottom) / 2, down, up).Abs();
        var working = Working.Of(Info.Source.Title, () =>
        [
            ("diagonals", $"{down.In(subject)} and {up.In(subject)}"), ("top and bottom", $"{top.In(subject)} and {bottom.In(subject)}"),
            ("left and right", $"{left.In(subject)} and {right.In(subject)}"), ("lean", lean.About(subject)), ("limit", limit.In(subject)),
        ]);
        var fault = (down - up).Abs() > limit ? $"The diagonals are {down.In(subject)} and {up.In(subject)}: the top stands {lean.About(subject)} to one side."
            : (top - bottom).Abs() > limit ? $"The top is {top.In(subject)} wide and the bottom {bottom.In(subject)}: the sides are not parallel, though the diagonals agree."
            : (left - right).Abs() > limit ? $"The left side is {left.In(subject)} high and the right {right.In(subject)}: head and sill are not parallel."
            : null;
        return fault is null
            ? new Outcome.Fine(working)
            : new Outcome.Found(fault, "Measure again; if it stays, shim the trim, or mount outside where it does not show.", FieldRef.To(subject.Item, WindowFacts.DiagonalDown), working);
    }
}
