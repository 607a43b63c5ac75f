using System.Collections.Immutable;
using System.Globalization;
using TrimOut.Core;
using TrimOut.Core.Houses;

namespace TrimOut.HouseFile.Schedules;

/// <summary>How a schedule is to be read.</summary>
/// <param name="Columns">Columns that the user named: field to header.</param>
/// <param name="Room">The room of windows that have none; null leaves them without.</param>
/// <param name="BareUnit">The unit of bare numbers where a header names none: "mm", "cm", "in" or "ft"; null takes the house's own.</param>
public sealed record ScheduleOptions(ImmutableDictionary<ScheduleField, string> Columns, string? Room, string? BareUnit)
{
    /// <summary>By the headers alone.</summary>
    public static ScheduleOptions ByHeaders { get; } = new(ImmutableDictionary<ScheduleField, string>.Empty, null, null);

    /// <summary>Reads <c>tag=Mark</c>.</summary>
    public static Result<KeyValuePair<ScheduleField, string>> ReadColumn(string typed)
    {
        var at = typed.IndexOf('=', StringComparison.Ordinal);
        if (at < 1 || at == typed.Length - 1)
            return new Refusal($"\"{typed}\" names no column. Write it as field=Header, such as tag=Mark.");
        return ScheduleField.Find(typed[..at]) is { } field
            ? new KeyValuePair<ScheduleField, string>(field, typed[(at + 1)..].Trim())
            : new Refusal($"\"{typed[..at]}\" is nothing that a schedule has. There are: {string.Join(", ", ScheduleField.All.Select(f => f.Name))}.");
    }
}

/// <summary>Plans the import of a window schedule from CSV.</summary>
public static class ScheduleImport
{
    /// <summary>The most bytes of a schedule.</summary>
    public const int MostBytes = 16 << 20;

    /// <summary>What importing would do.</summary>
    /// <param name="house">The house.</param>
    /// <param name="file">The bytes of the CSV file.</param>
    /// <param name="name">What the file is called, for the history.</param>
    /// <param name="options">How to read it.</param>
    /// <returns>The plan, or why nothing at all can be read.</returns>
    public static Result<SchedulePlan> Plan(House house, byte[] file, string name, ScheduleOptions options)
    {
        if (Array.IndexOf(file, (byte)0) >= 0 && file is not ([0xff, 0xfe, ..] or [0xfe, 0xff, ..]))
            return new Refusal($"{name} is no text file. Export the schedule as CSV.");
        return CsvRows.Decode(file).Then(CsvRows.Read)
            .Then(rows => ColumnMap.Find(rows, options.Columns).Then<SchedulePlan>(map =>
            {
                var planner = new SchedulePlanner(house, map, options);
                foreach (var row in rows.Skip(map.HeaderIndex + 1))
                {
                    planner.Add(row);
                    if (planner.Windows > CsvRows.MostRows)
                        return new Refusal($"{name} has more than {CsvRows.MostRows} windows: that is no house's schedule. Nothing was imported.");
                }
                return planner.Finish(string.Create(CultureInfo.InvariantCulture, $"Import {name}"));
            }));
    }
}
