using TrimOut.Core;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;

namespace TrimOut.HouseFile.Schedules;

/// <summary>The windows of a house as CSV, as the import reads them.</summary>
public static class WindowTable
{
    /// <summary>The table, in walking order. An apostrophe that keeps a spreadsheet from taking a cell for a formula the import takes off again.</summary>
    public static string Write(House house)
    {
        var table = new CsvTable(["Tag", "Room", "Floor", "Rough width", "Rough height", "Facing", "Reach", "Mount", "Kind", "Note"]);
        foreach (var window in house.Windows)
        {
            table.Row([.. new[]
            {
                window.Tag, window.Room?.Name, window.Room?.Floor,
                window.Show(WindowFacts.RoughWidth), window.Show(WindowFacts.RoughHeight),
                window.Show(WindowFacts.Facing), window.Show(WindowFacts.Reach), window.Show(WindowFacts.Mount),
                window.Units.FirstOrDefault()?.Kind?.Name, window.Show(WindowFacts.Note),
            }.Select(c => ShownText.Kept(c ?? ""))]);
        }
        return table.ToString();
    }
}
