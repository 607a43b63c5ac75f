using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Orders;

/// <summary>The order size is the one that the measures give.</summary>
/// <remarks>
/// <para>Why: a size that somebody typed differs from the tape by a slip more often than on purpose.</para>
/// <para>To clear: take the size that is worked out; or waive it and say why another one is right, such as a covering on the face of the wall that is
/// to hang past the sill.</para>
/// </remarks>
public sealed class OrderOffMeasures : UnitCheck
{
    private static readonly Message OffMeasures = new("The order size is {0} x {1}; the measures give {2} x {3}.");
    private static readonly Message HeightOff = new("The order height is {0}; the measures give {1}.", "height");
    private static readonly Message WidthOff = new("The order width is {0}; the measures give {1}.", "width");
    private static readonly Message TakeWorkedOut = new("Take the size that is worked out, or waive this and say why.");
    private static readonly Message ReachesPastSill =
        new("It comes {0} past the sill. If that is wanted, on the face of the wall it lets no light in: waive this and say so. " +
            "Else take the size that is worked out.");
    private static readonly Message HoldAgainst = new("Compare it with the acknowledgement; call the maker if it is a slip.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("order-off-measures", "Order size does not match the measures", Severity.Caution, Phase.Order,
        new Source(Source.CommonPractice,
            "inside: smallest width rounded down, or what hangs plumb where the sheet's deduction does not cover the lean, largest height rounded up; " +
            "outside: largest width + 2 x overlap and largest height + head above, rounded up"));

    /// <inheritdoc/>
    public override Outcome Judge(Unit subject)
    {
        if (OneIsOff(subject) is { } off)
            return off;
        if (subject.Item.Get(UnitFacts.OrderWidth) is not { } width)
            return NotChecked.Of(subject, UnitFacts.OrderWidth);
        if (subject.Item.Get(UnitFacts.OrderHeight) is not { } height)
            return NotChecked.Of(subject, UnitFacts.OrderHeight);
        if (subject.Window is { Mount: Mount.Inside, Units.Length: 1, DiagonalsMisread: true })
            return NotChecked.Of(subject.Window, WindowFacts.DiagonalDown);
        if (subject.WorkedOutWidth is not { } workedWidth || subject.WorkedOutHeight is not { } workedHeight)
            return Missing(subject);
        var working = Working.Of(Info.Source.Formula, () =>
        [
            ("worked out", $"{workedWidth.In(subject)} x {workedHeight.In(subject)}"), ("ordered", $"{width.In(subject)} x {height.In(subject)}"),
            ("step", subject.Kind!.Show(CoveringKindFacts.RoundTo)),
        ]);
        return width == workedWidth && height == workedHeight
            ? Unsaid(subject) ?? (Outcome)new Outcome.Fine(working)
            : new Outcome.Found(OffMeasures.With(width, height, workedWidth, workedHeight),
                Mend(subject, width == workedWidth ? height - workedHeight : Length.Zero),
                FieldRef.To(subject.Item, width == workedWidth ? UnitFacts.OrderHeight : UnitFacts.OrderWidth), working);
    }

    /// <summary>The one of width and height that is off already, while something is missing that the other waits for.</summary>
    private static Outcome.Found? OneIsOff(Unit unit)
    {
        var wide = (Ordered: unit.Item.Get(UnitFacts.OrderWidth), Worked: unit.WorkedOutWidth);
        var high = (Ordered: unit.Item.Get(UnitFacts.OrderHeight), Worked: unit.WorkedOutHeight);
        var (knowsWidth, knowsHeight) = (wide is ({ }, { }), high is ({ }, { }));
        return knowsWidth == knowsHeight ? null
            : knowsHeight && high.Ordered != high.Worked
            ? new Outcome.Found(HeightOff.With(high.Ordered!.Value, high.Worked!.Value), Mend(unit, high.Ordered.Value - high.Worked.Value),
                FieldRef.To(unit.Item, UnitFacts.OrderHeight))
            : knowsWidth && wide.Ordered != wide.Worked && !unit.Window.DiagonalsMisread
            ? new Outcome.Found(WidthOff.With(wide.Ordered!.Value, wide.Worked!.Value), Mend(unit, Length.Zero), FieldRef.To(unit.Item, UnitFacts.OrderWidth))
            : null;
    }

    private static Sentence Mend(Unit unit, Length pastSill) => !Moment.NotOrdered(unit) ? HoldAgainst
        : unit.Window.Mount == Mount.Outside && pastSill > Length.Zero ? ReachesPastSill.With(pastSill)
        : TakeWorkedOut;

    /// <summary>What the sheet does not say of an inside width, where another size would be worked out if it did.</summary>
    private static Outcome.NotChecked? Unsaid(Unit unit) => unit.Window is { Mount: Mount.Inside, Units.Length: 1 } window
        && unit.WidthUnsaid is { } unsaid && !(unit.OrderedWidth == OrderedWidth.Opening && (window.PlumbWidth ?? window.SmallestWidth) >= window.SmallestWidth)
            ? NotChecked.Of(unit.Kind, unsaid, unit, UnitFacts.Kind)
            : null;

    private static Outcome.NotChecked Missing(Unit unit)
    {
        var window = unit.Window;
        if (unit.Kind?[CoveringKindFacts.RoundTo] is null)
            return NotChecked.Of(unit.Kind, CoveringKindFacts.RoundTo, unit, UnitFacts.Kind);
        if (window.Mount is null)
            return NotChecked.Of(window, WindowFacts.Mount);
        if (window.Units.Length > 1 && unit.Item.Get(UnitFacts.PartWidth) is null)
            return NotChecked.Of(unit, UnitFacts.PartWidth);
        if (window.LargestHeight is null)
            return NotChecked.Of(window, WindowFacts.HeightLeft);
        if (window.SmallestWidth is null)
            return NotChecked.Of(window, WindowFacts.WidthTop);
        return NotChecked.Of(window, window.Item.Get(WindowFacts.OverlapEachSide) is null ? WindowFacts.OverlapEachSide : WindowFacts.HeadAbove);
    }
}
