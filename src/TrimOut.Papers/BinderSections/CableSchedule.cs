using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;
using TrimOut.Papers.Drawings;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.Inline;
using static TrimOut.Papers.Writing.MarkdownWriter;

namespace TrimOut.Papers.BinderSections;

/// <summary>Every home run: its way and length. Its labels and its output stand in the panel map.</summary>
internal static class CableSchedule
{
    public static Section Section { get; } = new("cables", "Cable schedule", Write);

    private static void Write(MarkdownWriter to, PaperData data)
    {
        var runs = data.House.Runs;
        to.Say("One unbroken cable, a home run, goes from each unit to its own panel output. As in the administration standard ANSI/TIA-606, " +
            "each cable has one identifier: the same on both ends, and in the panel map. Read it before you unplug anything.");
        if (runs.IsEmpty)
        {
            to.Say("There is no home run in this house.");
            return;
        }
        to.Say("Where the crew chose no other way, an identifier reads panel, output, unit. It is unique in the house, and never used again for another " +
            "cable. Whoever moves a cable to another output changes both labels, the panel map and the sheet on the panel door at once.");

        // The drawing goes first: a table can begin in what is left of its sheet.
        foreach (var sheet in Riser.Sheets(data.House))
            to.Draw("riser", Riser.Describe(sheet), words => Riser.Of(data.House, sheet, words));
        to.Filled(["Unit", "Legs, from the panel", "Tail at window", "Tail at panel", "In all, one way"], runs.Select(r => Row(
            r.Name, LegText.WayOf(r, Dash), Tail(r, data.House), r.Entry(RunFacts.TailAtPanel),
            (r.OneWay?.ShowRounded(data.House.DisplayUnits, LengthScale.Run)).FigureOrDash())));
        Spares(to, runs);
    }

    /// <summary>Cables that lie in the wall and are on no output: whoever does not know of them opens the wall for another one.</summary>
    private static void Spares(MarkdownWriter to, IEnumerable<HomeRun> runs)
    {
        var spares = runs.Where(r => r.Item.Get(RunFacts.SpareCables) > 0)
            .GroupBy(r => (r.Item.Get(RunFacts.SpareCables), r.Item.Get(RunFacts.SpareEnds))).ToList();
        if (spares.Count == 0)
            return;
        to.Say("Spare cables, for the day on which one fails:");
        to.List([.. spares.Select(g => (Of: g.Select(r => r.Name).JoinOrDash(), Ends: g.First().Entry(RunFacts.SpareEnds)) is var (of, ends) && g.Key.Item1 == 1
            ? Ours($"1 more cable beside each of {of}; where their ends are: {ends}.")
            : Ours($"{g.First().Entry(RunFacts.SpareCables)} more cables beside each of {of}; where their ends are: {ends}."))]);
    }

    private static Inline Tail(HomeRun run, House house) => (run.TailAtWindow?.Show(house.DisplayUnits)).FigureOrDash();
}
