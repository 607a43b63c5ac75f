using TrimOut.Core.Facts;
using TrimOut.Core.Phases;
using TrimOut.Core.Plans.Deliveries;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.Inline;
using static TrimOut.Papers.Writing.MarkdownWriter;

namespace TrimOut.Papers.TradePapers;

/// <summary>For the day the boxes come: each box against its window.</summary>
internal static class ReceivingList
{
    public static Paper Paper
    { get; } = new("receiving-list", "Receiving list", "whoever takes the boxes in",
        "Each box against its window: label, size, damage, serial; what is not here, and what to reorder.",
        ShortCover.Write,
        new Section("boxes", "Boxes", Boxes), new Section("awaited", "Not here, and to reorder", Awaited),
        new Section("left_over", "Boxes that belong to no window", LeftOver))
    {
        Landscape = true,
        Warns = OpenStops.Of(Phase.Order, Phase.Receive),
    };

    /// <summary>What is written in by pen, in the order in which the walk of the phase asks for it, so that it is typed in line by line.</summary>
    internal static readonly Fact[] WrittenIn =
        [UnitFacts.BoxLabel, UnitFacts.DeliveredWidth, UnitFacts.DeliveredHeight, UnitFacts.SizeReadFrom, UnitFacts.FinishAsOrdered, UnitFacts.Damage,
            UnitFacts.LeadCameAt, UnitFacts.Serial];

    private static void Boxes(MarkdownWriter to, PaperData data)
    {
        to.Say(Ours("Open the box before you sign for it. Read the size from the label and from the unit.") +
            Ours($"The columns from {Ours(WrittenIn[0].Label)} to {Ours(WrittenIn[^1].Label)} stand in the order in which they are typed in."));
        to.Table(["Unit", "Room", "Ordered size", OrderFact.WidthIs.Label, "Maker's number", .. WrittenIn.Select(f => f.Label), "Seen"],
            data.House.Units.Select(u => Row([
                u.Tag, (u.Window.Room?.FullName).OrDash(), OrderFact.SizeOrdered(u, data),
                OrderFact.WidthIs.Entry(u), u.Entry(UnitFacts.Acknowledgement), .. WrittenIn.Select(f => u.IsOfTheLastBox(f) ? u.EntryOrBlank(f) : Blank),
                u.BoxDidNotCome ? Ours("did not arrive")
                    : u.Item.Get(UnitFacts.ReorderedOn) is not null && !WrittenIn.Any(u.IsOfTheLastBox) ? Box : Ticks.Of(u, "looked-over")])),
            "No units yet.");
        OrderFact[] besides = [OrderFact.Kind, OrderFact.LeadSide, OrderFact.Fabric, OrderFact.Colour, OrderFact.Opacity, OrderFact.HeadCover];
        if (data.House.Units.Any())
            to.Table(["Unit", .. besides.Select(f => f.Label)], data.House.Units.Select(u =>
                Row([u.Tag, .. besides.Select(f => f.Entry(data.FrozenOf(u) ?? u))])));
    }

    private static void Awaited(MarkdownWriter to, PaperData data)
    {
        to.Table(["Unit", "Ordered", "Maker's number", "How it stands", "Overdue", "Reorder"],
            AwaitedBox.Of(data.House, data.Report, data.Date).Select(b => Row(
            b.Unit.Tag, b.Unit.Entry(UnitFacts.OrderedOn), b.Unit.Entry(UnitFacts.Acknowledgement), Said(b.Why, data.House),
            b.Overdue ? Ours("yes") : Dash,
            !b.Reorder ? Dash : b.Unit.BoxIsHere ? Ours("yes, or what the maker puts right") : Ours("yes"))), "Nothing is awaited or to be reordered.");
        // Their boxes come all the same, and stand in no row above.
        if (data.Frozen.Where(f => data.House.FindUnit(f.AsFrozen.Id) is null).DistinctBy(f => f.AsFrozen.Id).ToList() is { Count: > 0 } gone)
        {
            var why = gone.Select(f => (Inline?)Join(": ", [f.AsFrozen.Tag, Ours(SinceFrozen.WhyGone(f.AsFrozen, data.House))])).JoinOrDash("; ");
            to.Say($"Ordered once, and not wanted any more: {why}. Ask about a box of theirs before it is opened or sent back.");
        }
    }

    private static void LeftOver(MarkdownWriter to, PaperData data) =>
        to.Table(["Label", "Size", "What was done with it"], Enumerable.Repeat(Row(Blank, Blank, Blank), 4));
}
