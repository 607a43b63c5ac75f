using TrimOut.Core;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;

namespace TrimOut.HouseFile.Schedules;

/// <summary>The windows of a house as CSV, as the import reads them.</summary>
public static class WindowTable
{
    /// <summary>What stands there for a window that is left out, and nobody said why.</summary>
    internal const string LeftOutUnsaid = "yes";

    /// <summary>What an office may write for one that is not.</summary>
    internal const string NotLeftOut = "no";

    /// <summary>Its header.</summary>
    internal static string[] Headers { get; } = ["Tag", "Room", "Floor", "Rough width", "Rough height", "Facing", "Reach", "Mount", "Kind", "Lead side",
        "Power", "Left out because", "Note"];

    /// <summary>Windows of which the table says less than the house: it has one unit a window, as a schedule has.</summary>
    public static IReadOnlyList<Window> WithMoreUnits(House house) => [.. house.Windows.Where(w => w.Units.Length > 1)];

    /// <summary>The table, in walking order. An apostrophe that keeps a spreadsheet from taking a cell for a formula the import takes off again.</summary>
    public static string Write(House house)
    {
        var table = new CsvTable(Headers);
        foreach (var window in house.Windows)
        {
            table.Row([.. new[]
            {
                window.Tag, window.Room?.Name, window.Room?.Floor,
                window.Show(WindowFacts.RoughWidth), window.Show(WindowFacts.RoughHeight),
                window.Show(WindowFacts.Facing), window.Show(WindowFacts.Reach), window.Show(WindowFacts.Mount),
                window.Units.FirstOrDefault()?.Kind?.Name, window.Units.FirstOrDefault()?.Show(UnitFacts.LeadSide),
                window.Units.FirstOrDefault()?.Show(UnitFacts.Power), LeftOut(window), window.Show(WindowFacts.Note),
            }.Select(c => ShownText.Kept(c ?? ""))]);
        }
        return table.ToString();
    }

    private static string LeftOut(Window window) => !window.LeftOut ? "" : window.Show(WindowFacts.NotCoveredBecause) is { Length: > 0 } because ? because
        : LeftOutUnsaid;
}
