using System.Text;
using CsvHelper;
using TrimOut.Core;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;

namespace TrimOut.HouseFile.Schedules;

/// <summary>The windows of a house as CSV, as the import reads them.</summary>
public static class WindowTable
{
    private static readonly CsvWriterOptions Options = new() { Injection = CsvInjection.Escape };

    /// <summary>The table: RFC 4180, in walking order. A cell that a spreadsheet would take for a formula gets an apostrophe, which the import takes off again.</summary>
    public static string Write(House house)
    {
        using var bytes = new MemoryStream();
        using (var csv = CsvWriter.Create(bytes, Options, leaveOpen: true))
        {
            csv.WriteHeader("Tag", "Room", "Floor", "Rough width", "Rough height", "Facing", "Reach", "Mount", "Kind", "Note");
            foreach (var window in house.Windows)
            {
                csv.WriteRecord(
                    Guarded(window.Tag), Guarded(window.Room?.Name), Guarded(window.Room?.Floor),
                    Guarded(window.Show(WindowFacts.RoughWidth)), Guarded(window.Show(WindowFacts.RoughHeight)),
                    Guarded(window.Show(WindowFacts.Facing)), Guarded(window.Show(WindowFacts.Reach)), Guarded(window.Show(WindowFacts.Mount)),
                    Guarded(window.Units.FirstOrDefault()?.Kind?.Name), Guarded(window.Show(WindowFacts.Note)));
            }
        }
        return Encoding.UTF8.GetString(bytes.ToArray());
    }

    /// <summary>One apostrophe more for a text that begins as a guarded one does, so that taking one off gives the text again.</summary>
    private static string? Guarded(string? text) => text is not null && CsvRows.LooksGuarded(ShownText.Kept(text)) ? "'" + ShownText.Kept(text) : text is null ? null : ShownText.Kept(text);
}
