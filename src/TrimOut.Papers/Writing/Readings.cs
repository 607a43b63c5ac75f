using System.Globalization;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;

namespace TrimOut.Papers.Writing;

/// <summary>Who put a fact into the house, when, and with which instrument.</summary>
internal static class Readings
{
    /// <summary>A day as it stands on papers: year, month, day.</summary>
    public static string OnPaper(this DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    /// <summary>The day of a change, by the clock of the device that made it.</summary>
    public static string OnPaper(this DateTimeOffset at) => DateOnly.FromDateTime(at.DateTime).OnPaper();

    /// <summary>Instrument, person and day of the facts of an item that are known, each said once; a dash where none is known.</summary>
    public static Inline Taken(this Subject subject, params ReadOnlySpan<Fact> facts) => TakenBy(subject, facts)
        .Select(OnPaper)
        .JoinOrDash("; ");

    /// <summary>Instrument, person and day in one line.</summary>
    public static Inline OnPaper((string? Meter, string By, string On) taken) =>
        taken.Meter is null ? Inline.Join(", ", [taken.By, taken.On])
        : Inline.Join(", ", [string.IsNullOrWhiteSpace(taken.Meter) ? Inline.Ours("instrument not noted") : taken.Meter, taken.By, taken.On]);

    /// <summary>
    /// Instrument, person and day of the facts of an item that are known, each once; the instrument is empty where none was noted, and null for a length,
    /// which no meter reads.
    /// </summary>
    public static IEnumerable<(string? Meter, string By, string On)> TakenBy(this Subject subject, params ReadOnlySpan<Fact> facts)
    {
        var taken = new List<(string? Meter, string By, string On)>();
        foreach (var fact in facts)
        {
            if (subject.Item.Latest(fact.Name) is { Stored: not null } head)
                taken.Add((fact is Fact<Length> ? null : subject.Item.Latest(Companion.Meter(fact.Name))?.Stored ?? "", head.By, head.At.OnPaper()));
        }
        return taken.Distinct();
    }
}
