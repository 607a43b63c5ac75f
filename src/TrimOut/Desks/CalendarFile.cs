using System.Text;
using TrimOut.Core;
using TrimOut.Core.History;
using TrimOut.HouseFile.Files;
using TrimOut.Papers.Calendars;

namespace TrimOut.Desks;

/// <summary>Writes the visits of a house to a file that calendars take in.</summary>
internal static class CalendarFile
{
    // More than the first lines of such a file take.
    private const int Start = 256;

    /// <summary>The name of the file beside a house file.</summary>
    public static string Beside(string house) => Path.ChangeExtension(house, null) + "-visits.ics";

    /// <summary>Writes it whole or not at all; over a file only where TrimOut wrote that.</summary>
    /// <param name="path">Where.</param>
    /// <param name="log">The house with its history.</param>
    /// <param name="today">The day on which it is written.</param>
    /// <returns>The file, or why it was not written.</returns>
    public static Result<string> Write(string path, HouseLog log, DateOnly today)
    {
        if (PlainFile.NameOf(path) is { } other)
            return new Refusal($"{path} is {other}, not a file.");
        if (File.Exists(path) && !Encoding.UTF8.GetString(DiskStart(path)).Contains(VisitCalendar.Maker, StringComparison.Ordinal))
            return new Refusal($"{path} is there already, and TrimOut did not write it. Name another file.");
        OwnFile.Write(path, Encoding.UTF8.GetBytes(VisitCalendar.Write(log, today)));
        return path;
    }

    private static byte[] DiskStart(string path)
    {
        using var file = PlainFile.OpenRead(path);
        var start = new byte[Start];
        return start[..file.ReadAtLeast(start, Start, throwOnEndOfStream: false)];
    }
}
