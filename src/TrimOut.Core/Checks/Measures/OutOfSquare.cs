using TrimOut.Core.Facts;
using TrimOut.Core.Geometry;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Measures;

/// <summary>The opening has square corners and parallel sides, or so nearly that what is made for it hangs plumb in it.</summary>
/// <remarks>
/// <para>Why: a straight unit in a leaning opening shows a wedge of light on one side, and jams where the lean is more than what comes off its width. A tall
/// narrow opening leans far before its diagonals differ much; equal diagonals alone prove nothing, for an opening that is narrower at the top has them
/// too.</para>
/// <para>To clear: measure again, shim the trim, or mount outside. In a leaning opening the widest that hangs plumb counts, not the smallest width.</para>
/// </remarks>
public sealed class OutOfSquare : WindowCheck
{
    private static readonly Message Leans = new("The diagonals are {0} and {1}: the top stands {2} to one side.");
    private static readonly Message LeansPastWhatComesOff =
        new("The diagonals are {0} and {1}: the top stands {2} to one side, and only {3} come off the width of a unit.");
    private static readonly Message SidesNotParallel =
        new("The top is {0} wide and the bottom {1}: the sides are not parallel, though the diagonals agree.", "sides");
    private static readonly Message HeadNotParallel = new("The left side is {0} high and the right {1}: head and sill are not parallel.", "head-and-sill");
    private static readonly Message ByPlumbWidth =
        new("Measure again; if it stays, what hangs plumb is {0} wide at the most: order by that, shim the trim, or mount outside.");
    private static readonly Message ShimTrim = new("Measure again; if it stays, shim the trim, or mount outside where it does not show.");
    private static readonly Message ReachFarther = new("Measure again; if it stays, let the unit reach farther past the opening, or shim the trim.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("out-of-square", "Opening is out of square", Severity.Caution, Phase.Measure,
        new Source("Cosine rule: lean = (d1^2 - d2^2) / (4 x width)",
            "lean, and difference of top and bottom, and of left and right each within the limit, outside within the overlap; inside also, past what a tape " +
            "may be off, lean <= what comes off"));

    /// <inheritdoc/>
    public override Outcome Judge(Window subject)
    {
        if (subject.House.Job.Get(HouseFacts.SquareLimit) is not { } asked)
            return NotChecked.Of(new JobItself(subject.House), HouseFacts.SquareLimit);
        if (subject.Widths is not ({ } top, _, { } bottom))
            return NotChecked.Of(subject, subject.Widths.Top is null ? WindowFacts.WidthTop : WindowFacts.WidthBottom);
        if (subject.Heights is not ({ } left, _, { } right))
            return NotChecked.Of(subject, subject.Heights.Left is null ? WindowFacts.HeightLeft : WindowFacts.HeightRight);
        if (subject.Diagonals is not ({ } down, { } up))
            return NotChecked.Of(subject, subject.Diagonals.Down is null ? WindowFacts.DiagonalDown : WindowFacts.DiagonalUp);
        if (Hidden.Limits(subject, asked) is not ({ } sides, { } head))
            return NotChecked.Of(subject, subject.Item.Get(WindowFacts.OverlapEachSide) is null ? WindowFacts.OverlapEachSide : WindowFacts.HeadAbove);
        var width = (top + bottom) / 2;
        var lean = Squareness.Lean(width, down, up).Abs();
        var unsure = Squareness.LeanUnsure(width, down, up, TapeMark.Of(subject.House.DisplayUnits));
        var comesOff = subject.Mount == Mount.Inside && subject.Units is [{ Deduction: { } off }] ? off : (Length?)null;
        var working = Working.Of(Info.Source.Title, () =>
        [
            ("diagonals", $"{down.In(subject)} and {up.In(subject)}"), ("top and bottom", $"{top.In(subject)} and {bottom.In(subject)}"),
            ("left and right", $"{left.In(subject)} and {right.In(subject)}"), ("lean", lean.About(subject)), ("a tape may be off by", unsure.About(subject)),
            ("limit", asked.In(subject)), ("comes off the width", comesOff?.In(subject) ?? "not known"),
        ]);
        var (apart, tilted) = ((top - bottom).Abs() > sides, (left - right).Abs() > head);
        var leans = lean > sides && lean > unsure ? Leans.With(down, up, lean)
            : comesOff is { } slack && lean - unsure > slack ? LeansPastWhatComesOff.With(down, up, lean, slack)
            : null;
        Outcome.Found? Found(Sentence? fault) => fault is null ? null
            : new(fault, Mend(subject, !tilted), FieldRef.To(subject.Item, WindowFacts.DiagonalDown), working);
        // Where it leans, sides that are not parallel are a part of that.
        return Outcome.All(
            Found(leans is null && apart ? SidesNotParallel.With(top, bottom) : leans?.StandingFor(apart ? [top, bottom] : [])),
            Found(tilted ? HeadNotParallel.With(left, right) : null))
            ?? (comesOff is null && lean > unsure && subject is { Mount: Mount.Inside, Units: [var unit] }
                ? NotChecked.Of(unit.Kind, CoveringKindFacts.DeductionInside, unit, UnitFacts.Kind)
                : (Outcome)new Outcome.Fine(working));
    }

    private static Sentence Mend(Window window, bool ofSides) =>
        window.Mount == Mount.Outside ? ReachFarther
        : ofSides && window.PlumbWidth is { } plumb && plumb > Length.Zero ? ByPlumbWidth.With(Arg.AtMost(plumb))
        : ShimTrim;
}
