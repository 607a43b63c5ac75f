using TrimOut.Core.Checks.Controls;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Sun;
using TrimOut.Core.Units;
using TrimOut.Papers.Drawings;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.Inline;
using static TrimOut.Papers.Writing.MarkdownWriter;

namespace TrimOut.Papers.OwnerPapers;

/// <summary>For whoever programs timers: when the sun is on each side of the house, month by month.</summary>
internal static class SunSheet
{
    public static Paper Paper { get; } = new("sun-sheet", "Sun sheet", "whoever programs the timers",
        "When the sun falls on each side of the house, month by month: when to close and open against it, glare and heat, as charts and tables.",
        Cover,
        new Section("times", "When to close and open", Times),
        new Section("timers", "What the timers do", Timers),
        new Section("sides", "Side by side", Sides),
        new Section("rules", "How it is worked out", Rules));

    private static void Cover(MarkdownWriter to, PaperData data)
    {
        var job = new JobItself(data.House);
        to.Known("About", "Entry", "Nothing was noted of it.", ("House", NameOf(data.House, data.House.Job)), ("Address", job.Entry(HouseFacts.Address)),
            ("Latitude", job.Entry(HouseFacts.Latitude)), ("Longitude", job.Entry(HouseFacts.Longitude)), ("Time zone", job.Entry(HouseFacts.TimeZone)));
        SunSides.Doubts(to, data);
    }

    private static void Times(MarkdownWriter to, PaperData data)
    {
        if (SunSides.Of(to, data.House) is { Count: > 0 } sides)
            SunSides.Times(to, data.House, sides);
        else if (HouseSun.Missing(data.House).IsEmpty)
            to.Say("No window has a covering and a direction yet.");
    }

    private static void Timers(MarkdownWriter to, PaperData data)
    {
        var timed = data.House.Remotes.SelectMany(r => r.Presets.Select(p => (Remote: r, Preset: p))).Where(p => p.Preset.RunsAt is not null).ToList();
        to.Table(["Preset", "Remote", "Runs at", "Months", "Closes", "Opens"], timed.Select(t => Row(
            t.Preset.Name, t.Remote.Name, ClockText.Show(t.Preset.RunsAt!.Value), Months(data.House, t.Preset),
            Units(t.Preset, p => p < ScheduleOffSun.Opens), Units(t.Preset, p => p >= ScheduleOffSun.Opens))), "No preset is called by a timer.");
        var off = data.Report.Findings.Where(f => f.Open && f.Found.Mends.Field == PresetFacts.RunsAt.Field()).ToList();
        if (off.Count > 0)
            to.List([.. off.Select(f => Said(f.Found.Message, data.House))]);
    }

    private static Inline Months(House house, Preset preset) => preset.RunsIn.ToList() is var months && months.Count == 12
        ? Ours("all year")
        : Join(" – ", [.. new[] { months[0], months[^1] }.Distinct().Select(m => SunChart.MonthOf(house, (int)m + 1))]);

    private static Inline Units(Preset preset, Predicate<int> positions) =>
        preset.Positions.Where(p => positions(p.PercentOpen)).Select(p => p.Unit.Tag).JoinOrDash();

    private static void Sides(MarkdownWriter to, PaperData data)
    {
        if (HouseSun.Of(data.House) is null)
        {
            to.Say("Once the house says where it stands.");
            return;
        }
        foreach (var side in SunSides.Of(new MarkdownWriter(to.Words, "", []), data.House))
        {
            to.Heading(3, $"Side {side.Name}");
            to.Say($"Windows: {side.Windows.Select(w => w.Tag).JoinOrDash()}.");
            Before(to, side);
            to.Say(SunSides.Chart(to, data.House, side));
            to.Table(["Month", "Close and open", "Direct sun", "Glare", "Heat", "Most straight on"], side.Year.Months.Select(m => Row(
                SunChart.MonthOf(data.House, m.Month), SunSides.Closed(m), SunChart.Spans(m.Direct), SunChart.Spans(m.Glare), SunChart.Spans(m.Heat),
                m.Straightest is { } angle ? Figure(NumberText.Show(Math.Round((decimal)angle), "deg")) : Ours("none"))));
        }
    }

    /// <summary>What stands before the sun on a side.</summary>
    private static void Before(MarkdownWriter to, SunSides.Side side)
    {
        var window = side.Windows[0];
        if (side.Year.Facade.Horizon > 0)
            to.Say($"Horizon: {window.Entry(WindowFacts.Horizon)} degrees above level.");
        if (side.Year.Facade.Overhang is not null)
            to.Say($"Overhang: stands out {window.Entry(WindowFacts.OverhangDepth)}, above the head {window.Entry(WindowFacts.OverhangAbove)}.");
    }

    private static void Rules(MarkdownWriter to, PaperData data) => to.List(
        Ours($"Close: direct sun meets the glass within {(int)SunRules.ClosesWithin} degrees of straight on, for {SunRules.ClosesFor} minutes or more."),
        Ours($"Glare: the sun is lower than {(int)SunRules.GlaresBelow} degrees and within {(int)SunRules.GlaresWithin} degrees of straight on."),
        Ours($"Heat: the beam of a clear sky brings {(int)SunRules.HeatsFrom} W/m² or more on the glass."),
        Ours($"Times are whole steps of {SunRules.Step} minutes: closing rounded to earlier, opening to later."),
        Ours("Between the 15th of one month and the next, times go over from one to the other; clouds, neighbors' trees and taste are yours to judge."));
}
