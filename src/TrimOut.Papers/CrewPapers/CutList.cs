using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Plans.Cutting;
using TrimOut.Core.Units;
using TrimOut.Papers.Drawings;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.Inline;
using static TrimOut.Papers.Writing.MarkdownWriter;

namespace TrimOut.Papers.CrewPapers;

/// <summary>Which run is cut from which box, by the marks on the jacket: boxes on hand first, new ones where they don't do.</summary>
internal static class CutList
{
    private const int BoxesToADrawing = 12;

    public static Section Section { get; } = new("cuts", "Cuts per box", Write);

    private static void Write(MarkdownWriter to, PaperData data)
    {
        to.Say("For the runs that are not pulled yet and whose length is known; the crew's allowance is in the lengths. Marks count from the loose end.");
        to.Say(Loss(data.House) is { } loss
            ? Ours($"Each cut costs {loss}, which is in the marks.")
            : Ours("No loss per cut is noted in the house, so none is counted."));
        if (data.Cuts.IsEmpty)
            to.Say("No run has a cable yet.");
        foreach (var cable in data.Cuts)
            Cable(to, data.House, cable);
    }

    private static void Cable(MarkdownWriter to, House house, PlannedCable cable)
    {
        to.Heading(3, $"{cable.Cuts.Cable.Name}");
        var waiting = cable.Cuts.WithoutLength.Length;
        if (waiting > 0)
            to.Say(waiting == 1 ? Ours("1 run waits to be cut and has no length yet: it may take more boxes.")
                : Ours($"{waiting} runs wait to be cut and have no length yet: they may take more boxes."));
        if (cable.Plan is null)
            to.Say(waiting > 0 ? "Nothing can be planned yet."
                : cable.Cuts.Held.IsEmpty ? "Nothing of it waits to be cut." : "Nothing of it may be cut yet.");
        else if (!cable.Plan.Value.Ok)
            to.Say($"There is no plan: {cable.Plan.Value.Reason}");
        else
            Boxes(to, house, cable.Cuts.Cable, cable.Plan.Value.Value);
        if (!cable.Cuts.LeftOut.IsEmpty)
            to.Table(["Not in the plan", "Because"],
                cable.Cuts.LeftOut.GroupBy(l => l.Why).Select(g => Row(g.Select(l => l.Subject.Name).JoinOrDash(), Ours(g.Key))));
    }

    private static void Boxes(MarkdownWriter to, House house, CableType cable, CutPlan plan)
    {
        to.Say(Says(plan, house.DisplayUnits));
        var boxes = plan.Boxes.Select((b, at) => (Box: b, Name: NameOf(b, at))).ToList();
        foreach (var drawn in boxes.Chunk(BoxesToADrawing))
            to.Draw(cable.Name, BoxCutsDrawing.Describe(drawn), words => BoxCutsDrawing.Of(drawn, house, words));
        to.Table(["Box", "In it", "Run", "From mark", "Cut at", "Left in the box"], boxes.SelectMany(b => b.Box.Cuts.Select(c => Row(
            b.Name, c == b.Box.Cuts[0]
                ? Mark(b.Box.Box.Length, house)
                : Dash, c.Piece.Id, Mark(c.From, house), Mark(c.To, house), c == b.Box.Cuts[^1]
                ? Mark(b.Box.LeftOver, house)
                : Dash))));
        if (!plan.Shut.IsEmpty)
            to.Say($"On hand and not needed: {plan.Shut.Select(b => b.Id).JoinOrDash()}.");
    }

    /// <summary>How good a plan is: the sentence of <see cref="CutPlan.Says"/>, in the words of the paper.</summary>
    internal static Inline Says(CutPlan plan, DisplayUnits units)
    {
        var said = !plan.ToBuy.Proven ? Ours($"{Boxed(plan.ToBuy.Found)} to buy; it may be possible with {plan.ToBuy.Limit}, no fewer.")
            : !plan.Opened.Proven ? Ours($"{Boxed(plan.Opened.Found)} opened; it may be possible with {plan.Opened.Limit}, no fewer.")
            : plan.ToBuy.Found > 0 ? Ours($"{Boxed(plan.Opened.Found)} opened ({plan.ToBuy.Found} to buy): no plan needs fewer.")
            : Ours($"{Boxed(plan.Opened.Found)} opened: no plan needs fewer.");
        if (!plan.OpenedLength.Proven)
            said += Ours($"They hold {Mark(plan.OpenedLength.Found, units)}; {Mark(plan.OpenedLength.Limit, units)} might do.");
        return said + (plan.LongestLeft is { Proven: true } none && none.Found == Length.Zero ? Ours("Nothing is left over.")
            : plan.LongestLeft.Proven
                ? Ours($"The longest leftover is {Mark(plan.LongestLeft.Found, units)}: no plan for these boxes leaves a longer one.")
                : Ours($"The longest leftover is {Mark(plan.LongestLeft.Found, units)}; it can't be over {Mark(plan.LongestLeft.Limit, units)}."));
    }

    private static Inline Boxed(int count) => count == 1 ? Ours("1 box") : Ours($"{count} boxes");

    /// <summary>A box on hand by what is written on it; one to buy by its place in the plan.</summary>
    private static Inline NameOf(BoxCuts box, int at) => box.ToBuy ? Ours($"new {at + 1}") : box.Box.Id;

    private static Length? Known(Length? loss) => loss > Length.Zero ? loss : null;

    private static Inline? Loss(House house) =>
        Known(house.Job.Get(HouseFacts.CutLoss)) is { } loss ? Figure(loss.Show(house.DisplayUnits)) : null;

    private static Inline Mark(Length length, House house) => Mark(length, house.DisplayUnits);

    private static Inline Mark(Length length, DisplayUnits units) => Figure(length.ShowRounded(units, LengthScale.Run));
}
