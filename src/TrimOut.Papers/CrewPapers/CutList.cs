using TrimOut.Core.Houses;
using TrimOut.Core.Plans.Cutting;
using TrimOut.Core.Units;
using TrimOut.Papers.Drawings;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.Inline;
using static TrimOut.Papers.Writing.MarkdownWriter;

namespace TrimOut.Papers.CrewPapers;

/// <summary>Which run is cut from which full box, by the marks on the jacket.</summary>
internal static class CutList
{
    // Enough for a house of a few hundred runs in about a tenth of a second; past it the plan says how far it may be off.
    private const long PlanningSteps = CutPlanner.UsualSteps / 10;

    public static Section Section { get; } = new("cuts", "Cuts per box", Write);

    private static void Write(MarkdownWriter to, PaperData data)
    {
        to.Say("Out of full boxes, for the runs whose length is known; the crew's allowance is in the lengths. Marks count from the loose end.");
        var cables = data.House.Runs.Where(r => r is { Cable: not null, Needed: not null }).GroupBy(r => r.Cable!.Id).ToList();
        if (cables.Count == 0)
            to.Say("No run has a cable and a length yet.");
        foreach (var runs in cables)
            Cable(to, data.House, runs.First().Cable!, [.. runs]);
    }

    private static void Cable(MarkdownWriter to, House house, CableType cable, List<HomeRun> runs)
    {
        to.Heading(3, $"{cable.Name}");
        if (cable.BoxLength is not { } box)
        {
            to.Say("The kit does not say how much cable is in a box.");
            return;
        }
        var order = new CutOrder([.. runs.Select(r => new Piece(r.Id, r.Needed!.Value))], [], Length.Zero, box) { Units = house.DisplayUnits };
        var plan = CutPlanner.Solve(order, steps: PlanningSteps);
        if (!plan.Ok)
        {
            to.Say($"There is no plan: {plan.Reason}");
            return;
        }
        var names = runs.ToDictionary(r => r.Id, r => r.Name);
        to.Say(plan.Value.Says(house.DisplayUnits));
        foreach (var boxes in plan.Value.Boxes.Chunk(12))
            to.Draw(cable.Name, BoxCutsDrawing.Describe(boxes, names), words => BoxCutsDrawing.Of(boxes, names, house, words));
        to.Table(["Box", "Run", "From mark", "Cut at", "Left in the box"], plan.Value.Boxes.SelectMany((b, at) => b.Cuts.Select(c => Row(
            Number(at + 1), names[c.Piece.Id], Mark(c.From, house), Mark(c.To, house), c == b.Cuts[^1] ? Mark(b.LeftOver, house) : Dash))));
    }

    private static Inline Mark(Length length, House house) => length.ShowRounded(house.DisplayUnits, LengthScale.Run);
}
