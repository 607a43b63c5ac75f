using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Plans.Cutting;
using TrimOut.Core.Plans.Firm;
using TrimOut.Core.Plans.Parts;
using TrimOut.Core.Units;
using TrimOut.Papers.CrewPapers;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.Inline;
using static TrimOut.Papers.Writing.MarkdownWriter;

namespace TrimOut.Papers.FirmPapers;

/// <summary>What several houses take, summed by part and by the day to have it by, and one cut plan for the cable of all of them.</summary>
internal static class CallOffOfHouses
{
    public static void Write(MarkdownWriter to, FirmData data)
    {
        to.Heading(2, "Parts");
        to.Say("What is still to be ordered, summed by part and by the day to have it by. Cable that stands in the plan below is not in it.");
        var cables = FirmCuts.Of(data.Houses, data.Stop);
        var lines = data.Houses.SelectMany(h => CallOff.Of(h.House, h.Changes, HouseParts.Of(h.House)).Select(c => (h.House, Call: c)))
            .Where(c => c.Call.State == CallOffState.Open && !IsBoxes(c.Call.Line) && !IsPlanned(c.House, c.Call.Line, cables))
            .ToList();
        to.Table(["Part", "How many", "Here by", "Order by", "Houses"], lines
            .GroupBy(c => (Part: c.Call.Line.Part.In(c.House), c.Call.Line.Unit, c.Call.NeededBy, c.Call.OrderBy))
            .OrderBy(g => g.Key.OrderBy ?? g.Key.NeededBy ?? DateOnly.MaxValue).ThenBy(g => g.Min(c => c.Call.Line.Group))
            .ThenBy(g => g.Key.Part, StringComparer.Ordinal)
            .Select(g => Row(
                Said(g.First().Call.Line.Part, g.First().House), Sum(g.Select(c => c.Call).ToList()),
                g.Key.NeededBy?.OnPaper() ?? Dash, g.Key.OrderBy?.OnPaper() ?? Dash,
                g.Select(c => c.House.Name).Distinct().JoinOrDash())), "Nothing.");
        var undated = lines.Where(c => c.Call.Line.MadeFor.IsEmpty && CallOff.OrderDay(c.House, c.Call.Line.NeededIn) is null)
            .GroupBy(c => c.House).Select(g => (Inline?)Ours($"{g.Key.Name} ({Phases(g.Select(c => c.Call.Line.NeededIn))})")).ToList();
        if (undated.Count > 0)
            to.Say($"No order day noted, so it counts as not ordered: {undated.JoinOrDash()}.");
        Reorder(to, data);
        to.Heading(2, "Cable and cuts");
        to.Say("One plan for the runs of all these houses that are not pulled yet and whose length is known: what is left of a box goes on to the next house. "
            + "Marks count from the loose end.");
        foreach (var cable in cables)
            Cable(to, cable);
    }

    private static Inline Phases(IEnumerable<Phase> phases) => phases.Distinct().Order().Select(p => (Inline?)Ours(p.Full())).JoinOrDash();

    /// <summary>Units whose boxes did not arrive or came wrong: they were ordered once, so that no line above has them.</summary>
    private static void Reorder(MarkdownWriter to, FirmData data)
    {
        var again = data.Summaries.SelectMany(s => s.Boxes.Where(b => b.Reorder).GroupBy(b => b.Here)
            .Select(g => Row(g.Select(b => b.Tag).JoinOrDash(), s.Name, g.Key ? Ours("came wrong") : Ours("did not arrive")))).ToList();
        if (again.Count == 0)
            return;
        to.Heading(2, "To be ordered again");
        to.Table(["Units", "House", "Because"], again);
    }

    private static bool IsBoxes(PartLine line) => line is { Group: PartGroup.Cable, Name.Length: > 0 };

    /// <summary>Whether the line is of the length of a cable whose cuts stand below, which say what of it is to be bought.</summary>
    private static bool IsPlanned(House house, PartLine line, IReadOnlyList<FirmCable> cables)
    {
        if (line is not { Group: PartGroup.Cable, Unit.Length: > 0 })
            return false;
        var cut = cables.Where(c => c.Plan is { Ok: true }).SelectMany(c => c.Runs.Values).Where(r => r.House == house.Name).Select(r => r.Name).ToHashSet();
        return line.Items.Any(i => cut.Contains(house.NameOf(i.Item)));
    }

    private static Inline Sum(List<CallOff> calls)
    {
        if (calls.TrueForAll(c => c.Left is null))
            return NotYet;
        var (sum, unit) = (calls.Sum(c => c.Left ?? 0), calls[0].Line.Unit);
        var number = Figure(unit.Length == 0 ? NumberText.Plain(sum) : NumberText.Show(sum, unit));
        return calls.Exists(c => c.Line.AtLeast || c.Left is null) ? Ours($"at least {number}") : number;
    }

    private static void Cable(MarkdownWriter to, FirmCable cable)
    {
        if (cable.Differs.Length == 0)
            to.Heading(3, $"{cable.Cable}");
        else
            to.Heading(3, $"{cable.Cable} ({cable.Differs})");
        if (cable.Order.LossPerCut > Length.Zero)
            to.Say($"Each cut costs {Mark(cable.Order.LossPerCut, cable)}, which is in the marks.");
        if (cable.Plan is not { } plan)
            Waits(to, cable);
        else if (!plan.Ok)
            to.Say($"There is no plan: {plan.Reason}");
        else
            Boxes(to, cable, plan.Value);
        if (!cable.LeftOut.IsEmpty)
        {
            to.Table(["Not in the plan", "House", "Because"],
                cable.LeftOut.GroupBy(l => (l.House, l.Why)).Select(g => Row(g.Select(l => l.Name).JoinOrDash(), g.Key.House, Ours(g.Key.Why))));
        }
    }

    private static void Waits(MarkdownWriter to, FirmCable cable)
    {
        if (cable.WithoutLength > 0)
            to.Say($"Runs that have no length yet: {cable.WithoutLength}.");
        else
            to.Say("Nothing of it waits to be cut.");
    }

    private static void Boxes(MarkdownWriter to, FirmCable cable, CutPlan plan)
    {
        if (cable.WithoutLength > 0)
            to.Say($"Runs that have no length yet: {cable.WithoutLength}.");
        to.Say(CutList.Says(plan, cable.Order.Units));
        to.Table(["Box", "In it", "House", "Run", "From mark", "Cut at", "Left in the box"], plan.Boxes.SelectMany((b, at) => b.Cuts.Select(c => Row(
            b.ToBuy ? Ours($"new {at + 1}") : Called(cable.Boxes[b.Box.Id]),
            c == b.Cuts[0] ? Mark(b.Box.Length, cable) : Dash,
            cable.Runs[c.Piece.Id].House, cable.Runs[c.Piece.Id].Name, Mark(c.From, cable), Mark(c.To, cable),
            c == b.Cuts[^1] ? Mark(b.LeftOver, cable) : Dash))));
    }

    private static Inline Called(FirmBox box) =>
        box.OrderedOn is { } on ? Ours($"ordered on {on.OnPaper()} ({box.House})") : Ours($"{box.Name} ({box.House})");

    private static Inline Mark(Length length, FirmCable cable) => Figure(length.ShowRounded(cable.Order.Units, LengthScale.Run));
}
