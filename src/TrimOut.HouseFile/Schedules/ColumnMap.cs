using System.Globalization;
using TrimOut.Core;

namespace TrimOut.HouseFile.Schedules;

/// <summary>Which column of a schedule holds what.</summary>
internal sealed class ColumnMap
{
    private const int RowsToLookAt = 25;
    private const int RowsNamed = 3;
    private readonly Dictionary<ScheduleField, (int Column, string Unit)> _columns = [];
    private readonly HashSet<ScheduleField> _none = [];
    private readonly List<string> _remarks = [];
    private readonly List<string> _misfits = [];

    /// <summary>Its rows as they stand in the file: one, below one that heads several columns at once where there is such.</summary>
    private readonly SheetRow? _group;
    private readonly SheetRow _lower;

    private ColumnMap(int headerIndex, SheetRow header, SheetRow? group, IReadOnlyList<SheetRow> rows, IReadOnlyDictionary<ScheduleField, string> named)
    {
        (HeaderIndex, Header, _group, _lower) = (headerIndex, header, group, rows[headerIndex]);
        var plain = header.Cells.Select(HeaderName.Of).ToList();
        foreach (var (field, typed) in named.OrderBy(n => ScheduleField.All.IndexOf(n.Key)))
        {
            var read = NamedColumn.Of(header.Cells, field, typed, Matches(field, plain).Cast<int?>().FirstOrDefault());
            if (!read.Ok)
                _misfits.Add(read.Reason!);
            else if (read.Value.Column is not { } column)
                _none.Add(field);
            else
                Name(field, column, read.Value, typed);
            InFull += read is { Ok: true, Value: { InFull: true, Column: not null } } ? 1 : 0;
        }
        Told = _columns.Count;
        foreach (var field in ScheduleField.All.Where(f => !_columns.ContainsKey(f) && !_none.Contains(f)))
        {
            var free = Matches(field, plain).Where(c => _columns.Values.All(t => t.Column != c)).ToList();
            if (field == ScheduleField.Room && free.RemoveAll(c => plain[c].Name == "area" && HoldsFigures(rows.Skip(headerIndex + 1), c)) > 0)
                _remarks.Add("\"Area\" holds figures, and is taken for no room");
            if (free.Count == 0)
                continue;
            _columns[field] = (free[0], plain[free[0]].Unit);
            ByHeaders++;
        }
        // Where only a unit was said the column is found by its header all the same.
        bool IsNamed(ScheduleField field) => named.TryGetValue(field, out var typed) && !typed.TrimStart().StartsWith('=');
        foreach (var field in ScheduleField.All.Where(f => _columns.ContainsKey(f) && !IsNamed(f)))
        {
            var others = Matches(field, plain).Where(c => _columns.Values.All(t => t.Column != c)).Select(Quoted).ToList();
            if (others.Count > 0)
                _remarks.Add($"{field.Name} is taken from {Quoted(_columns[field].Column)}; {string.Join(", ", others)} would fit too");
        }
    }

    /// <summary>The place of the header among the rows.</summary>
    public int HeaderIndex { get; }

    /// <summary>The header.</summary>
    public SheetRow Header { get; }

    /// <summary>Each field that has a column, and those that are taken from none because somebody said so.</summary>
    /// <param name="bare">The unit of bare numbers where neither a header nor anybody names one.</param>
    public IEnumerable<PlannedColumn> Used(string bare) => ScheduleField.All.Where(f => _columns.ContainsKey(f) || _none.Contains(f))
        .Select(f => _columns.TryGetValue(f, out var at) ? new PlannedColumn(f, Header.At(at.Column), NameOf(at.Column),
            at.Unit == HeaderName.Of(Header.At(at.Column)).Unit ? "" : $"={at.Unit}", f.IsLength ? at.Unit.Length > 0 ? at.Unit : bare : "")
            : new PlannedColumn(f, null, "", "", ""));

    /// <summary>How many fields have a column.</summary>
    public int Fields => _columns.Count;

    /// <summary>Headers of columns that are taken for nothing.</summary>
    public IEnumerable<string> Unused =>
        Header.Cells.Where((h, at) => h.Length > 0 && _columns.Values.All(c => c.Column != at));

    /// <summary>What of the columns somebody should look at.</summary>
    public IEnumerable<string> Remarks => _remarks;

    /// <summary>Why columns that were named could not be found, a sentence or two each.</summary>
    public IReadOnlyList<string> Misfits => _misfits;

    /// <summary>Whether it names a column with the windows' tags.</summary>
    public bool HasTags => _columns.ContainsKey(ScheduleField.Tag);

    /// <summary>Whether windows can be read by it: their tags, and one more thing.</summary>
    public bool CanRead => HasTags && _columns.Count > 1;

    private int InFull { get; }

    private int Told { get; }

    private int ByHeaders { get; }

    /// <summary>Whether a row is the header again, as at the head of each page.</summary>
    public bool IsHeader(SheetRow row) => row.Cells.SequenceEqual(_lower.Cells) || (_group is { } group && row.Cells.SequenceEqual(group.Cells));

    /// <summary>Whether it is the table of a house that TrimOut wrote: each of its rows is a window.</summary>
    public bool IsOurs => Header.Cells.SequenceEqual(WindowTable.Headers);

    /// <summary>The unit that a field's header names, such as "mm"; empty when it names none.</summary>
    public string UnitOf(ScheduleField field) => _columns.TryGetValue(field, out var at) ? at.Unit : "";

    /// <summary>Whether a field has a column.</summary>
    public bool Has(ScheduleField field) => _columns.ContainsKey(field);

    /// <summary>The header of a field's column.</summary>
    public string HeaderOf(ScheduleField field) => _columns.TryGetValue(field, out var at) ? Header.At(at.Column) : field.Name;

    /// <summary>The cell of a row that holds a field; empty when no column does.</summary>
    public string Cell(SheetRow row, ScheduleField field) => _columns.TryGetValue(field, out var at) ? row.At(at.Column) : "";

    /// <summary>Finds the header row and maps its columns; where no row names a column with the tags, that which is most like a header.</summary>
    /// <param name="rows">The file's rows, of which one is not blank.</param>
    /// <param name="named">Columns that the user named: field to header.</param>
    public static ColumnMap Find(IReadOnlyList<SheetRow> rows, IReadOnlyDictionary<ScheduleField, string> named)
    {
        var maps = rows.Take(RowsToLookAt).SelectMany((_, at) => at == 0 ? [Map(at, rows, named)] : new[] { Map(at, rows, named), Under(at, rows, named) })
            .ToList();
        var best = maps.Where(m => m.CanRead).MaxBy(m => (m.InFull, m.ByHeaders, m.Told, m.IsTold))
            ?? Map(LikeliestHeader(rows, named), rows, named);
        best.SayRowsAbove(rows);
        return best;
    }

    private static ColumnMap Map(int at, IReadOnlyList<SheetRow> rows, IReadOnlyDictionary<ScheduleField, string> named) =>
        new(at, rows[at], null, rows, named);

    /// <summary>A header below one that heads several columns at once: each by both, the upper one reaching as far as nothing else stands in it.</summary>
    private static ColumnMap Under(int at, IReadOnlyList<SheetRow> rows, IReadOnlyDictionary<ScheduleField, string> named)
    {
        var (group, row, over) = (rows[at - 1], rows[at], "");
        var both = row with
        {
            Cells = [.. row.Cells.Select((cell, column) =>
            {
                over = group.At(column) is { Length: > 0 } begins ? begins : over;
                // A cell that is merged over both rows stands in each.
                return cell.Length == 0 || cell == group.At(column) ? group.At(column)
                    : group.At(column).Length == 0 && IsByItself(over, cell) ? cell : $"{over} {cell}".Trim();
            })],
        };
        return new ColumnMap(at, both, group, rows, named);
    }

    /// <summary>Whether a header is no longer below the group to its left: the room behind a rough opening, which is no width or height of it.</summary>
    private static bool IsByItself(string over, string cell)
    {
        static ScheduleField? Of(string header) => ScheduleField.All.FirstOrDefault(f => f.Headers.Contains(HeaderName.Of(header).Name));
        return Of($"{over} {cell}") is null && Of(cell) is { IsLength: false };
    }

    /// <summary>The row that has most of the headers that were asked for, and then most cells of words: rows of windows have figures.</summary>
    private static int LikeliestHeader(IReadOnlyList<SheetRow> rows, IReadOnlyDictionary<ScheduleField, string> named) =>
        Enumerable.Range(0, rows.Count).Where(at => !rows[at].IsBlank).Take(RowsToLookAt).MaxBy(at => (
            named.Values.Count(n => rows[at].Cells.Contains(n.Trim(), StringComparer.OrdinalIgnoreCase)),
            rows[at].Cells.Count(c => c.Length > 0 && !c.Any(char.IsAsciiDigit)),
            -at));

    /// <summary>Whether a column has sizes of rooms or glass rather than names: figures, with a unit of area or without.</summary>
    private static bool HoldsFigures(IEnumerable<SheetRow> rows, int column)
    {
        var cells = rows.Take(RowsToLookAt).Select(r => r.At(column)).Where(c => c.Length > 0).ToList();
        return cells.Count > 0 && cells.All(c => char.IsAsciiDigit(c[0])
            && c.All(s => char.IsAsciiDigit(s) || " .,mftsq²2".Contains(s, StringComparison.Ordinal)));
    }

    /// <summary>Columns that are headed as such a field usually is, the surest header first.</summary>
    private static IEnumerable<int> Matches(ScheduleField field, List<HeaderName> header) =>
        field.Headers.SelectMany(h => Enumerable.Range(0, header.Count).Where(c => header[c].Name == h));

    /// <summary>Whether no two columns have one header, such as a width below "Rough opening" and another below "Unit".</summary>
    private bool IsTold => Header.Cells.Where(h => h.Length > 0).GroupBy(h => h, StringComparer.OrdinalIgnoreCase).All(h => h.Count() == 1);

    /// <summary>What tells a column from all others the next time: its header, or its place where another one is headed so.</summary>
    private string NameOf(int column) => Header.Cells.Count(c => c.Equals(Header.Cells[column], StringComparison.OrdinalIgnoreCase)) == 1
        ? Header.Cells[column] : NamedColumn.Place(column);

    private string Quoted(int column) => NameOf(column) is ['#', ..] place ? $"\"{Header.Cells[column]}\" ({place})" : $"\"{Header.Cells[column]}\"";

    private void Name(ScheduleField field, int column, NamedColumn named, string typed)
    {
        var header = Header.Cells[column];
        if (!named.InFull)
            _remarks.Add($"{typed.Trim()} read as the column \"{header}\", for {field.Name}");
        if (HeaderName.Of(header).Unit is { Length: > 0 } says && says != named.Unit)
            _remarks.Add($"bare numbers below \"{header}\" are taken for {named.Unit}, as you said, and not for {says}");
        foreach (var (other, _) in _columns.Where(c => c.Value.Column == column))
            _remarks.Add($"\"{header}\" is taken for {other.Name} and for {field.Name}");
        _columns[field] = (column, named.Unit);
    }

    private void SayRowsAbove(IReadOnlyList<SheetRow> rows)
    {
        var above = rows.Take(HeaderIndex - (_group is null ? 0 : 1)).Where(r => !r.IsBlank).ToList();
        if (above.Count > 0)
            _remarks.Add(string.Create(CultureInfo.InvariantCulture, $"line {Header.Line} is the header; above it {above.Count} left out: ")
                + string.Join(", ", above.Take(RowsNamed).Select(r => $"\"{r.Cells.First(c => c.Length > 0)}\"")) + (above.Count > RowsNamed ? ", ..." : ""));
    }
}
