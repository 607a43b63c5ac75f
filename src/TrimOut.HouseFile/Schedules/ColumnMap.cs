using System.Globalization;
using System.Text;
using TrimOut.Core;

namespace TrimOut.HouseFile.Schedules;

/// <summary>Which column of a schedule holds what.</summary>
internal sealed class ColumnMap
{
    private const int RowsToLookAt = 25;
    private static readonly string[] Units = ["mm", "cm", "m", "inches", "inch", "in", "feet", "ft"];
    private readonly Dictionary<ScheduleField, (int Column, string Unit)> _columns;

    private ColumnMap(int headerIndex, SheetRow header, Dictionary<ScheduleField, (int, string)> columns)
    {
        HeaderIndex = headerIndex;
        Header = header;
        _columns = columns;
    }

    /// <summary>The place of the header among the rows.</summary>
    public int HeaderIndex { get; }

    /// <summary>The header.</summary>
    public SheetRow Header { get; }

    /// <summary>Each field that has a column, with that column's header.</summary>
    public IEnumerable<(ScheduleField Field, string Header)> Used =>
        ScheduleField.All.Where(_columns.ContainsKey).Select(f => (f, Header.At(_columns[f].Column)));

    /// <summary>Headers of columns that are taken for nothing.</summary>
    public IEnumerable<string> Unused =>
        Header.Cells.Where((h, at) => h.Length > 0 && _columns.Values.All(c => c.Column != at));

    /// <summary>The unit that a field's header names, such as "mm"; empty when it names none.</summary>
    public string UnitOf(ScheduleField field) => _columns.TryGetValue(field, out var at) ? at.Unit : "";

    /// <summary>The header of a field's column.</summary>
    public string HeaderOf(ScheduleField field) => _columns.TryGetValue(field, out var at) ? Header.At(at.Column) : field.Name;

    /// <summary>The cell of a row that holds a field; empty when no column does.</summary>
    public string Cell(SheetRow row, ScheduleField field) => _columns.TryGetValue(field, out var at) ? row.At(at.Column) : "";

    /// <summary>Finds the header row and maps its columns.</summary>
    /// <param name="rows">The file's rows.</param>
    /// <param name="named">Columns that the user named: field to header.</param>
    public static Result<ColumnMap> Find(IReadOnlyList<SheetRow> rows, IReadOnlyDictionary<ScheduleField, string> named)
    {
        if (rows.All(r => r.IsBlank))
            return new Refusal("The file is empty.");
        var best = rows.Take(RowsToLookAt).SelectMany((row, at) => new[] { Map(at, row, named), at > 0 ? Map(at, Under(rows[at - 1], row), named) : null })
            .OfType<ColumnMap>().MaxBy(m => (m._columns.Count, m.IsTold));
        if (best is not null)
            return best;
        var looked = rows[LikeliestHeader(rows, named)];
        var headers = string.Join(", ", looked.Cells.Where(c => c.Length > 0).Take(16));
        if (named.Count > 0 && named.FirstOrDefault(n => !looked.Cells.Contains(n.Value, StringComparer.OrdinalIgnoreCase)) is
            {
                Key: { } field,
                Value: { } missing
            })
            return new Refusal($"No column is headed \"{missing}\" (asked for as {field.Name}). The columns are: {headers}. Nothing was imported.");
        return new Refusal($"No row names a column with the windows' tags and one more thing to import. The columns are: {headers}. Say which is " +
            $"which, such as --column tag=\"{looked.Cells.First(c => c.Length > 0)}\". Nothing was imported.");
    }

    /// <summary>The columns of a file by the row that is most like a header, with none of them taken for the tags yet.</summary>
    public static ColumnMap Unmapped(IReadOnlyList<SheetRow> rows, IReadOnlyDictionary<ScheduleField, string> named)
    {
        var at = LikeliestHeader(rows, named);
        var columns = named.Select(n => (n.Key, Column: rows[at].Cells.ToList().FindIndex(c => c.Equals(n.Value.Trim(), StringComparison.OrdinalIgnoreCase))))
            .Where(n => n.Column >= 0).ToDictionary(n => n.Key, n => (n.Column, Plain(rows[at].Cells[n.Column]).Unit));
        return new ColumnMap(at, rows[at], columns);
    }

    /// <summary>Whether a column is known to hold the tags of the windows.</summary>
    public bool HasTags => _columns.ContainsKey(ScheduleField.Tag);

    /// <summary>The row that has most of the headers that were asked for, and then most cells of words: rows of windows have figures.</summary>
    private static int LikeliestHeader(IReadOnlyList<SheetRow> rows, IReadOnlyDictionary<ScheduleField, string> named) =>
        Enumerable.Range(0, rows.Count).Where(at => !rows[at].IsBlank).Take(RowsToLookAt).MaxBy(at => (
            named.Values.Count(n => rows[at].Cells.Contains(n.Trim(), StringComparer.OrdinalIgnoreCase)),
            rows[at].Cells.Count(c => c.Length > 0 && !c.Any(char.IsAsciiDigit)),
            -at));

    /// <summary>Whether no two columns have one header, such as a width below "Rough opening" and another below "Unit".</summary>
    private bool IsTold => Header.Cells.Where(h => h.Length > 0).GroupBy(h => h, StringComparer.OrdinalIgnoreCase).All(h => h.Count() == 1);

    /// <summary>A header below one that heads several columns at once: each by both, the upper one reaching as far as nothing else stands in it.</summary>
    private static SheetRow Under(SheetRow group, SheetRow row)
    {
        var over = "";
        return row with
        {
            Cells = [.. row.Cells.Select((cell, at) =>
            {
                over = group.At(at) is { Length: > 0 } begins ? begins : over;
                return cell.Length == 0 ? group.At(at) : $"{over} {cell}".Trim();
            })],
        };
    }

    private static ColumnMap? Map(int at, SheetRow row, IReadOnlyDictionary<ScheduleField, string> named)
    {
        var columns = new Dictionary<ScheduleField, (int Column, string Unit)>();
        foreach (var (field, header) in named)
        {
            var column = row.Cells.ToList().FindIndex(c => c.Equals(header.Trim(), StringComparison.OrdinalIgnoreCase));
            if (column < 0)
                return null;
            columns[field] = (column, Plain(row.Cells[column]).Unit);
        }
        var free = Enumerable.Range(0, row.Cells.Count).Where(c => row.Cells[c].Length > 0 && columns.Values.All(t => t.Column != c))
            .Select(c => (Column: c, Header: Plain(row.Cells[c]))).ToList();
        foreach (var field in ScheduleField.All.Where(f => !columns.ContainsKey(f)))
        {
            var match = field.Headers.Select(h => free.FindIndex(f => f.Header.Name == h)).FirstOrDefault(found => found >= 0, -1);
            if (match < 0)
                continue;
            columns[field] = (free[match].Column, free[match].Header.Unit);
            free.RemoveAt(match);
        }
        return columns.ContainsKey(ScheduleField.Tag) && columns.Count > 1 ? new ColumnMap(at, row, columns) : null;
    }

    /// <summary>A header in lower case, letters only, with the unit at its end taken off: "Overall Width (mm)" is width in mm.</summary>
    private static (string Name, string Unit) Plain(string header)
    {
        var words = new StringBuilder();
        for (var at = 0; at < header.Length; at++)
        {
            if (at > 0 && char.IsUpper(header[at]) && char.IsLower(header[at - 1]))
                words.Append(' ');
            words.Append(char.IsLetterOrDigit(header[at]) ? char.ToLower(header[at], CultureInfo.InvariantCulture) : ' ');
        }
        var list = words.ToString().Split(' ', StringSplitOptions.RemoveEmptyEntries).ToList();
        var unit = "";
        if (list.Count > 1 && Units.Contains(list[^1]))
        {
            unit = list[^1] switch { "inches" or "inch" => "in", "feet" => "ft", var u => u };
            list.RemoveAt(list.Count - 1);
        }
        if (list is ["overall", _])
            list.RemoveAt(0);
        return (string.Concat(list), unit);
    }
}
