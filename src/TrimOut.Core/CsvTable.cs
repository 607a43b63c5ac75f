using System.Text;

namespace TrimOut.Core;

/// <summary>A table for other programs: RFC 4180, comma and CRLF.</summary>
/// <remarks>A cell that a spreadsheet would take for a formula gets an apostrophe in front, as spreadsheets themselves mark text.</remarks>
public sealed class CsvTable
{
    private const string FormulaStarts = "=+-@\t\r\n＝＋－＠";

    private readonly StringBuilder _text = new();
    private readonly int _columns;

    /// <summary>A table with these columns.</summary>
    public CsvTable(IReadOnlyList<string> columns)
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

    /// <summary>Takes off the apostrophe that was put in front of a cell.</summary>
    public static string WithoutGuard(string cell) => cell.StartsWith('\'') && BeginsFormula(cell) ? cell[1..] : cell;

    /// <summary>
    /// Whether a text begins as a formula does, or as one with apostrophes in front: one more makes that taking one off gives the text again.
    /// </summary>
    private static bool BeginsFormula(string text) =>
        text.AsSpan().TrimStart('\'') is { Length: > 0 } rest && FormulaStarts.Contains(rest[0], StringComparison.Ordinal);

    private static string Cell(string text)
    {
        var guarded = BeginsFormula(text) ? "'" + text : text;
        return guarded.AsSpan().IndexOfAny("\",\r\n") >= 0 || guarded != guarded.Trim()
            ? $"\"{guarded.Replace("\"", "\"\"", StringComparison.Ordinal)}\""
            : guarded;
    }
}
