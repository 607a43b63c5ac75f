using TrimOut.Core;

namespace TrimOut.Papers.Tables;

/// <summary>What a paper says as a table for other programs: the same rows as CSV and as a spreadsheet, numbers as numbers.</summary>
internal sealed class SheetTable(string name, params IReadOnlyList<string> columns)
{
    private readonly List<IReadOnlyList<SheetCell>> _rows = [];

    /// <summary>What it is called.</summary>
    public string Name => name;

    /// <summary>The heads of its columns; that of a number says the unit.</summary>
    public IReadOnlyList<string> Columns => columns;

    /// <summary>Its rows, each with a cell per column.</summary>
    public IReadOnlyList<IReadOnlyList<SheetCell>> Rows => _rows;

    /// <summary>One row.</summary>
    /// <exception cref="ArgumentException">It has another number of cells than there are columns.</exception>
    public void Row(params IReadOnlyList<SheetCell> cells)
    {
        if (cells.Count != columns.Count)
            throw new ArgumentException($"A row has {cells.Count} cells where there are {columns.Count} columns.", nameof(cells));
        _rows.Add(cells);
    }

    /// <summary>The table as CSV. No number of ours begins a formula: there are no negative ones.</summary>
    public string ToCsv()
    {
        var csv = new CsvTable(columns);
        foreach (var row in _rows)
            csv.Row([.. row.Select(c => c.Text)]);
        return csv.ToString();
    }
}
