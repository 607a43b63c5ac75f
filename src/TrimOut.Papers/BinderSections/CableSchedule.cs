using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;
using TrimOut.Papers.Drawings;
using TrimOut.Papers.Writing;
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
        to.Say("Where the crew chose no other way, an identifier reads panel, output, unit: " +
            "P1.3 W07 is the cable on output 3 of panel P1 that feeds unit W07. It is unique in the house, and never used again for another cable. " +
            "Whoever moves a cable to another output changes both labels and the panel map, or none of them.");
        if (runs.IsEmpty)
        {
            to.Say("There is no home run in this house.");
            return;
        }

        // The drawing goes first: a table can begin in what is left of its sheet.
        foreach (var sheet in Riser.Sheets(data.House))
            to.Draw("riser", Riser.Describe(sheet), words => Riser.Of(data.House, sheet, words));
        to.Filled(["Unit", "Legs, from the panel", "Tail at window", "Tail at panel", "In all, one way"], runs.Select(r => Row(
            r.Name, r.Legs.Select(LegText.Of).JoinOrDash("; "), Tail(r, data.House), r.Entry(RunFacts.TailAtPanel),
            (r.OneWay?.ShowRounded(data.House.DisplayUnits, LengthScale.Run)).FigureOrDash())));
    }

    private static Inline Tail(HomeRun run, House house) => (run.TailAtWindow?.Show(house.DisplayUnits)).FigureOrDash();
}
