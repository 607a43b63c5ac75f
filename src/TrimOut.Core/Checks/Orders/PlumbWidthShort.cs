using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Orders;

/// <summary>What is made of an ordered width hangs plumb in an opening that leans.</summary>
/// <remarks>
/// <para>Why: in a parallelogram every width is the same, and a straight unit of that width touches one jamb at the head and the other at the sill.</para>
/// <para>To clear: order by what hangs plumb, shim the trim, or mount outside. The sheet of the kind says whether the maker takes something off.</para>
/// </remarks>
public sealed class PlumbWidthShort : UnitCheck
{
    private static readonly Message TooWide = new("Ordered {0} wide it is made {1} wide; {2} hang plumb between these jambs.");
    private static readonly Message OrderThis = new("Order {0}, shim the trim, or mount it outside.");
    private static readonly Message ShimOrOutside = new("Shim the trim, or mount it outside.");
    private static readonly Message CallMaker = new("Call the maker today: before it is cut, the size can still be changed. Else shim the trim.");

    private static readonly Message BoxIsHere =
        new("It is made: hold it to the opening before it is hung, and shim the trim until it runs free, or order it again, narrower.");

    private static readonly Message ShimIt = new("It hangs: shim the trim until it runs free from end to end, or order it again, narrower.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("plumb-width-short", "Made wider than will hang plumb", Severity.Stop, Phase.Order,
        new Source("Plane geometry: in a parallelogram the plumb width is the width less the lean, (d1^2 - d2^2) / (4 x width)",
            "order width, less what the maker takes off, <= plumb width"));

    /// <inheritdoc/>
    public override Outcome Judge(Unit subject)
    {
        if (subject.Window.Mount is not { } mount)
            return NotChecked.Of(subject.Window, WindowFacts.Mount);
        if (mount == Mount.Outside || subject.Window.Units.Length > 1)
            return new Outcome.DoesNotApply();
        if (subject.Item.Get(UnitFacts.OrderWidth) is not { } ordered)
            return NotChecked.Of(subject, UnitFacts.OrderWidth);
        if (subject.Window.PlumbWidth is not { } plumb)
            return NotChecked.Of(subject.Window, subject.Window.SmallestWidth is null ? WindowFacts.WidthTop : WindowFacts.DiagonalDown);
        if (subject.OrderedWidth is not { } by)
            return NotChecked.Of(subject.Kind, CoveringKindFacts.OrderedInside, subject, UnitFacts.Kind);
        if (subject.Deduction is not { } off)
            return NotChecked.Of(subject.Kind, CoveringKindFacts.DeductionInside, subject, UnitFacts.Kind);
        var made = by == OrderedWidth.Made ? ordered : ordered - off;
        var working = Working.Of(Info.Source.Formula, () =>
        [
            ("order width", ordered.In(subject)), ("ordered width is", by == OrderedWidth.Made ? "the made width" : "the opening"),
            ("comes off", off.In(subject)),
            ("made", made.In(subject)), ("smallest width", subject.Window.SmallestWidth!.Value.In(subject)), ("hangs plumb", plumb.About(subject)),
        ]);
        return made <= plumb
            ? new Outcome.Fine(working)
            : new Outcome.Found(TooWide.With(ordered, Arg.AtLeast(made), Arg.AtMost(plumb)),
                Moment.Hangs(subject) ? ShimIt : subject.BoxIsHere ? BoxIsHere : !Moment.NotOrdered(subject) ? CallMaker
                    : subject.WorkedOutWidth is { } width && width < ordered ? OrderThis.With(width) : ShimOrOutside,
                FieldRef.To(subject.Item, UnitFacts.OrderWidth), working);
    }
}
