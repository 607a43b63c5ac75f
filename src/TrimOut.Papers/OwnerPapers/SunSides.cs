using System.Collections.Immutable;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Sun;
using TrimOut.Papers.Drawings;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.Inline;

namespace TrimOut.Papers.OwnerPapers;

/// <summary>The sides of a house, and when to close and open each against the sun.</summary>
internal static class SunSides
{
    private const int SidesAcross = 6;

    private static readonly string[] Place = [HouseFacts.Latitude.Name, HouseFacts.Longitude.Name, HouseFacts.TimeZone.Name];

    /// <summary>A side of the house: windows that have the same sun.</summary>
    /// <param name="Name">What it faces, with a number where another side faces the same way and has something else before it.</param>
    /// <param name="Windows">Its windows.</param>
    /// <param name="Year">Its sun.</param>
    public sealed record Side(Inline Name, ImmutableArray<Window> Windows, FacadeYear Year);

    /// <summary>Says what is open about where the house stands and its time zone: whatever is reckoned of the sun goes by it.</summary>
    public static void Doubts(MarkdownWriter to, PaperData data)
    {
        foreach (var finding in data.Report.Findings.Where(f => f.Open && f.Found.Mends.Item == data.House.Job.Id && Place.Contains(f.Found.Mends.Field)))
            to.Say(Strong("Put right first where the house stands.") + SheetMarks.Said(data, finding));
    }

    /// <summary>The sides of a house; says what is missing where the sun can't be reckoned with, and which windows are not in here.</summary>
    public static List<Side> Of(MarkdownWriter to, House house)
    {
        if (HouseSun.Of(house) is not { } sun)
        {
            to.Say($"The house does not say where it stands. Still to type: {HouseSun.Missing(house).Select(f => Ours(f.Label)).JoinOrDash()}.");
            to.Say("On the screens key 0 has them, on the sheet of the house; without a screen trimout set does. A latitude is written 39.74, " +
                "a longitude -104.99, for west is negative, and a time zone America/Denver.");
            return [];
        }
        var facades = HouseSun.Facades(house);
        var sides = new List<Side>();
        foreach (var (facade, windows) in facades)
        {
            var faces = windows[0].Entry(WindowFacts.Facing);
            var alike = facades.Where(f => f.Facade.Facing == facade.Facing).ToList();
            var name = alike.Count == 1 ? faces : Ours($"{faces}, {alike.FindIndex(f => f.Facade == facade) + 1}");
            sides.Add(new Side(name, windows, sun.Of(facade)));
        }
        if (house.Windows.Where(w => !w.LeftOut && Facade.Of(w) is null).Select(w => w.Tag).ToList() is { Count: > 0 } unknown)
            to.Say($"Not in here, for nobody noted where they look out to: {string.Join(", ", unknown)}.");
        return sides;
    }

    /// <summary>When to close and open, side by side.</summary>
    public static void Times(MarkdownWriter to, House house, IReadOnlyList<Side> sides)
    {
        to.Say(
            "Close at the first time and open at the second: worked out for a clear sky on the 15th of each month, " +
            "by the clocks of the house, daylight saving and all.");
        foreach (var some in sides.Chunk(SidesAcross))
        {
            to.Say(Join("; ", [.. some.Select(s => Ours($"Side {s.Name}: {s.Windows.Select(w => w.Tag).JoinOrDash()}"))]));
            to.Table([Ours("Month"), .. some.Select(s => s.Name)], Enumerable.Range(0, 12).Select(m => (Inline[])
                [SunChart.MonthOf(house, m + 1), .. some.Select(s => Closed(s.Year.Months[m]))]));
        }
    }

    /// <summary>When it is closed in a month.</summary>
    public static Inline Closed(FacadeMonth month) => month.Closed.IsEmpty ? Ours("stays open") : SunChart.Spans(month.Closed);

    /// <summary>The chart of a side.</summary>
    public static Inline Chart(MarkdownWriter to, House house, Side side) =>
        to.Drawing("sun", SunChart.Describe(side.Name, side.Year), words => SunChart.Of(house, side.Year, words));
}
