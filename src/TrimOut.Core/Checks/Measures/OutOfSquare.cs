using TrimOut.Core.Facts;
using TrimOut.Core.Geometry;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Measures;

/// <summary>The opening has square corners and parallel sides.</summary>
/// <remarks>
/// <para>Why: a straight unit in a leaning opening shows a wedge of light on one side. Equal diagonals alone prove nothing: an opening that is
/// narrower at the top has them too.</para>
/// <para>To clear: shim the trim, order to the smallest width, or choose an outside mount.</para>
/// </remarks>
public sealed class OutOfSquare : WindowCheck
{
    private static readonly Message Leans = new("The diagonals are {0} and {1}: the top stands {2} to one side.");
    private static readonly Message SidesNotParallel =
        new("The top is {0} wide and the bottom {1}: the sides are not parallel, though the diagonals agree.", "sides");
    private static readonly Message HeadNotParallel = new("The left side is {0} high and the right {1}: head and sill are not parallel.", "head-and-sill");
    private static readonly Message ShimTrim = new("Measure again; if it stays, shim the trim, or mount outside where it does not show.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("out-of-square", "Opening is out of square", Severity.Caution, Phase.Measure,
        new Source("Cosine rule: lean = (d1^2 - d2^2) / (4 x width)",
            "difference of the diagonals, of top and bottom, and of left and right each within the limit"));

    /// <inheritdoc/>
    public override Outcome Judge(Window subject)
    {
        if (subject.House.Job.Get(HouseFacts.SquareLimit) is not { } limit)
            return NotChecked.Of(new JobItself(subject.House), HouseFacts.SquareLimit);
        if (subject.Widths is not ({ } top, _, { } bottom))
            return NotChecked.Of(subject, subject.Widths.Top is null ? WindowFacts.WidthTop : WindowFacts.WidthBottom);
        if (subject.Heights is not ({ } left, _, { } right))
            return NotChecked.Of(subject, subject.Heights.Left is null ? WindowFacts.HeightLeft : WindowFacts.HeightRight);
        if (subject.Diagonals is not ({ } down, { } up))
            return NotChecked.Of(subject, subject.Diagonals.Down is null ? WindowFacts.DiagonalDown : WindowFacts.DiagonalUp);
        var lean = Squareness.Lean((top + bottom) / 2, down, up).Abs();
        var working = Working.Of(Info.Source.Title, () =>
        [
            ("diagonals", $"{down.In(subject)} and {up.In(subject)}"), ("top and bottom", $"{top.In(subject)} and {bottom.In(subject)}"),
            ("left and right", $"{left.In(subject)} and {right.In(subject)}"), ("lean", lean.About(subject)), ("limit", limit.In(subject)),
        ]);
        var fault = (down - up).Abs() > limit ? Leans.With(down, up, Arg.About(lean))
            : (top - bottom).Abs() > limit ? SidesNotParallel.With(top, bottom)
            : (left - right).Abs() > limit ? HeadNotParallel.With(left, right)
            : null;
        return fault is null
            ? new Outcome.Fine(working)
            : new Outcome.Found(fault, ShimTrim, FieldRef.To(subject.Item, WindowFacts.DiagonalDown), working);
    }
}
