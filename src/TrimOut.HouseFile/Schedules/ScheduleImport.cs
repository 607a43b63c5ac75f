using System.Collections.Immutable;
using System.Text.RegularExpressions;
using TrimOut.Core;
using TrimOut.Core.History;

namespace TrimOut.HouseFile.Schedules;

/// <summary>How a schedule is to be read.</summary>
/// <param name="Columns">
/// Columns that the user named: field to header, or to a part of it; <c>=mm</c> behind it is the unit of its bare numbers, and nothing is no column.
/// </param>
/// <param name="Room">The room of windows that have none; null leaves them without.</param>
/// <param name="BareUnit">The unit of bare numbers where a header names none: "mm", "cm", "in" or "ft"; null takes the house's own.</param>
public sealed record ScheduleOptions(ImmutableDictionary<ScheduleField, string> Columns, string? Room, string? BareUnit)
{
    /// <summary>The sheet of a spreadsheet; null takes the one whose header names the most.</summary>
    public string? Sheet { get; init; }

    /// <summary>The encoding of a text file, such as 850; null goes by the text.</summary>
    public string? Encoding { get; init; }

    /// <summary>Whether the schedule is a revised one: windows that the house has are compared, and what nobody typed since is taken over.</summary>
    public bool Revised { get; init; }

    /// <summary>
    /// Whether a file of which no column is known to hold the tags is shown with its columns, for somebody to say which is which, and not refused.
    /// </summary>
    public bool Unmapped { get; init; }

    /// <summary>Whether the columns are those of a schedule before: one that this file has not is said, and found by its header; else it is refused.</summary>
    public bool AsBefore { get; init; }

    /// <summary>By the headers alone.</summary>
    public static ScheduleOptions ByHeaders { get; } = new(ImmutableDictionary<ScheduleField, string>.Empty, null, null);

    /// <summary>Reads <c>tag=Mark</c>.</summary>
    public static Result<KeyValuePair<ScheduleField, string>> ReadColumn(string typed)
    {
        var at = typed.IndexOf('=', StringComparison.Ordinal);
        if (at < 1)
            return new Refusal($"\"{typed}\" names no column. Write it as field=Header, such as tag=Mark.");
        return ScheduleField.Find(typed[..at]) is { } field
            ? new KeyValuePair<ScheduleField, string>(field, typed[(at + 1)..].Trim())
            : new Refusal($"\"{typed[..at]}\" is nothing that a schedule has. There are: {string.Join(", ", ScheduleField.All.Select(f => f.Name))}.");
    }
}

/// <summary>Plans the import of a window schedule from CSV, a spreadsheet or a building model.</summary>
public static partial class ScheduleImport
{
    private const string Begins = "Import ";
    private const int HeadersNamed = 16;

    /// <summary>Whether a change is an import, by what it is called in the history: an item may be called Import too.</summary>
    internal static bool IsOne(Change change) => Called().IsMatch(change.What);

    [GeneratedRegex(@"^Import .+: [0-9]+ windows?(, [0-9]+ values? of others)?(, [0-9]+ gone)?$", RegexOptions.Singleline)]
    private static partial Regex Called();

    /// <summary>What importing would do.</summary>
    /// <param name="log">The house with its history, which tells what was imported and what somebody typed.</param>
    /// <param name="file">The bytes of the file: CSV, .xlsx, .xls or IFC as STEP text.</param>
    /// <param name="name">What the file is called, for the history.</param>
    /// <param name="options">How to read it.</param>
    /// <returns>The plan, or why nothing at all can be read.</returns>
    public static Result<SchedulePlan> Plan(HouseLog log, byte[] file, string name, ScheduleOptions options) =>
        ScheduleSheets.Read(file, name, options).Then(sheets => Chosen(sheets, name, options)).Then<SchedulePlan>(chosen =>
            {
                var planner = new SchedulePlanner(log, chosen.Map, options)
                {
                    TagsOfFile = chosen.Sheet.Rows.Skip(chosen.Map.HeaderIndex + 1).Select(r => chosen.Map.Cell(r, ScheduleField.Tag))
                        .ToHashSet(SameName.Comparer),
                };
                if (!chosen.Map.CanRead)
                    planner.SayNothingToRead();
                foreach (var row in !chosen.Map.CanRead ? [] : chosen.Sheet.Rows.Skip(chosen.Map.HeaderIndex + 1))
                {
                    planner.Add(row);
                    if (planner.Windows > CsvRows.MostRows)
                        return new Refusal($"{name} has more than {CsvRows.MostRows} windows: that is no house's schedule. Nothing was imported.");
                }
                var of = chosen.Sheet.Name is { } sheet && sheet != name ? $"{name}, sheet {sheet}" : name;
                var plan = planner.Finish($"{Begins}{of}") with { Sheet = chosen.Sheet.Name };
                return plan with { Understood = [.. new[] { chosen.Sheet.Remark, OtherSheets(chosen.Others) }.OfType<string>(), .. plan.Understood] };
            });

    /// <summary>That there are more sheets with tags, such as one for each floor; null where there are none.</summary>
    private static string? OtherSheets(IReadOnlyList<string> others) => others.Count == 0 ? null
        : $"nothing is taken from {(others.Count == 1 ? "another sheet" : "other sheets")} with tags: {string.Join(", ", others)}; trimout import --sheet "
            + "\"" + others[0] + "\" takes in that one";

    private static Result<(Sheet Sheet, ColumnMap Map, IReadOnlyList<string> Others)> Chosen(IReadOnlyList<Sheet> sheets, string name, ScheduleOptions options)
    {
        var asked = options.Sheet is not { } wanted ? sheets
            : [.. sheets.Where(s => string.Equals(s.Name, wanted, StringComparison.OrdinalIgnoreCase))];
        if (asked.Count == 0)
            return new Refusal(options.Sheet is null ? $"{name} has no sheet that can be seen. Nothing was imported."
                : $"{name} has no sheet \"{options.Sheet}\". There are: {string.Join(", ", sheets.Select(s => s.Name ?? "one without a name"))}.");
        var mapped = asked.Where(s => !s.Rows.All(r => r.IsBlank)).Select(s => (Sheet: s, Map: ColumnMap.Find(s.Rows, options.Columns))).ToList();
        if (mapped.Count == 0)
            return new Refusal("The file is empty.");
        var (sheet, map) = mapped.MaxBy(m => (m.Map.CanRead, -m.Map.Misfits.Count, m.Map.Fields));
        if (map.Misfits.Count > 0 && !options.AsBefore)
            return new Refusal($"{string.Join(" ", map.Misfits)} Nothing was imported.");
        var headers = map.Header.Cells.Where(c => c.Length > 0).ToList();
        var others = options.Sheet is not null ? []
            : mapped.Where(m => m.Map.CanRead && m.Sheet != sheet && m.Sheet.Name is not null).Select(m => m.Sheet.Name!).ToList();
        return map.CanRead || options.Unmapped ? (sheet, map, others)
            : new Refusal("No row names a column with the windows' tags and one more thing to import. The columns are: "
                + $"{string.Join(", ", headers.Take(HeadersNamed))}. Say which is which, such as --column tag=\"{headers[0]}\". Nothing was imported.");
    }
}
