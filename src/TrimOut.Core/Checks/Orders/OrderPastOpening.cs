using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Orders;

/// <summary>What is ordered for an inside mount goes into the opening.</summary>
/// <remarks>
/// <para>Why: a unit that is an eighth too wide does not go in, and can't be cut.</para>
/// <para>To clear: order the size that is worked out.</para>
/// </remarks>
public sealed class OrderPastOpening : UnitCheck
{
    private static readonly Message PastWidth = new("The order width is {0}; the smallest width is {1}.", "opening");
    private static readonly Message PastPart = new("The order width is {0}; its part of the opening is {1}.", "part");
    private static readonly Message NothingTakenOff =
        new("The order width is {0} and the smallest width {1}; it is made as ordered, and {2} must come off.");
    private static readonly Message OrderThis = new("Order {0}.");
    private static readonly Message CallMaker = new("Call the maker today: before it is cut, the size can still be changed.");

    private static readonly Message BoxIsHere =
        new("It is made: hold it to the opening before it is hung. If it does not run free of both jambs, order it again, narrower.");

    private static readonly Message SeeHowItHangs =
        new("It hangs: see that it runs free of both jambs from end to end, and waive this; one that rubs is ordered again, narrower.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("order-past-opening", "Ordered wider than the opening", Severity.Stop, Phase.Order,
        new Source(Source.CommonPractice,
            "order width <= smallest of top, middle, bottom, less what comes off where the made width is ordered; " +
            "with several units, <= its part"));

    /// <inheritdoc/>
    public override Outcome Judge(Unit subject)
    {
        if (subject.Window.Mount == Mount.Outside)
            return new Outcome.DoesNotApply();
        if (subject.Item.Get(UnitFacts.OrderWidth) is not { } order)
            return NotChecked.Of(subject, UnitFacts.OrderWidth);
        var single = subject.Window.Units.Length == 1;
        if ((single ? subject.Window.SmallestWidth : subject.Item.Get(UnitFacts.PartWidth)) is not { } room)
            return single ? NotChecked.Of(subject.Window, WindowFacts.WidthTop) : NotChecked.Of(subject, UnitFacts.PartWidth);
        var working = Working.Of(Info.Source.Formula, () => [("order width", order.In(subject)),
            (single ? "smallest width" : "part of the opening", room.In(subject))]);
        // A made width that is as wide as its opening has nothing taken off by anybody.
        var off = single && subject.OrderedWidth == OrderedWidth.Made ? subject.Deduction ?? Length.Zero : Length.Zero;
        return order <= room - off
            ? (single ? Unsaid(subject, order, room) : null) ?? (Outcome)new Outcome.Fine(working)
            : new Outcome.Found(order <= room ? NothingTakenOff.With(order, room, off) : (single ? PastWidth : PastPart).With(order, room),
                Moment.NotOrdered(subject) ? OrderThis.With(Arg.AtMost(subject.WorkedOutWidth ?? room - off))
                    : Moment.Hangs(subject) ? SeeHowItHangs : subject.BoxIsHere ? BoxIsHere : CallMaker,
                FieldRef.To(subject.Item, UnitFacts.OrderWidth), working);
    }

    /// <summary>The mount, or what the sheet does not say of the width, where the order would be too wide if it is the made width.</summary>
    private static Outcome.NotChecked? Unsaid(Unit unit, Length order, Length room) =>
        unit.OrderedWidth == OrderedWidth.Opening || (unit.Deduction is { } off && order <= room - off) ? null
        : unit.Window.Mount is null ? NotChecked.Of(unit.Window, WindowFacts.Mount)
        : unit.WidthUnsaid is { } unsaid ? NotChecked.Of(unit.Kind, unsaid, unit, UnitFacts.Kind)
        : null;
}
