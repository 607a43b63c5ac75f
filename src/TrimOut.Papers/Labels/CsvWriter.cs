using System.Text;

namespace TrimOut.Papers.Labels;

/// <summary>Writes tables for other programs: RFC 4180, comma and CRLF.</summary>
/// <remarks>A cell that a spreadsheet would take for a formula gets an apostrophe in front, as spreadsheets themselves mark text.</remarks>
internal sealed class CsvWriter
{
    private const string FormulaStarts = "=+-@\t\r\n＝＋－＠";

    private readonly StringBuilder _text = new();
    private readonly int _columns;

    /// <summary>A table with these columns.</summary>
    public CsvWriter(IReadOnlyList<string> columns)
    {
        _columns = columns.Count;
        Row(columns);
    }

    /// <summary>One row.</summary>
    /// <exception cref="ArgumentException">It has another number of cells than there are columns.</exception>
    public void Row(IReadOnlyList<string> cells)
    {
        if (cells.Count != _columns)
            throw new ArgumentException($"A row has {cells.Count} cells where there are {_columns} columns.", nameof(cells));
        _text.AppendJoin(',', cells.Select(Cell)).Append("\r\n");
    }

    /// <summary>The table.</summary>
    public override string ToString() => _text.ToString();

    private static string Cell(string text)
    {
        var guarded = text.Length > 0 && FormulaStarts.Contains(text[0], StringComparison.Ordinal) ? "'" + text : text;
        return guarded.AsSpan().IndexOfAny("\",\r\n") >= 0 || guarded != guarded.Trim() ? $"\"{guarded.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : guarded;
    }
}
