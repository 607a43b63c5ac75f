using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using TrimOut.Core;
using TrimOut.Core.Units;

namespace TrimOut.Papers.Labels;

/// <summary>How labels lie on a sheet: rows and columns, the margins around them and the gaps between them; the labels share what is left.</summary>
public sealed partial record LabelGrid
{
    private const int Most = 30;
    private static readonly Length SmallestWide = Length.FromMillimetres(30);
    private static readonly Length SmallestHigh = Length.FromMillimetres(12);

    private LabelGrid(bool isLetter, int rows, int columns) => (IsLetter, Rows, Columns) = (isLetter, rows, columns);

    /// <summary>Whether the sheet is Letter (ANSI/ASME Y14.1, 8 1/2 x 11 in); else it is A4 (ISO 216, 210 x 297 mm).</summary>
    public bool IsLetter { get; }

    /// <summary>Labels from top to bottom, 1 to 30.</summary>
    public int Rows { get; }

    /// <summary>Labels from left to right, 1 to 30.</summary>
    public int Columns { get; }

    /// <summary>From the edge of the sheet to the first row.</summary>
    public Length Top { get; private init; }

    /// <summary>From the last row to the edge of the sheet.</summary>
    public Length Bottom { get; private init; }

    /// <summary>From the edge of the sheet to the first column.</summary>
    public Length Left { get; private init; }

    /// <summary>From the last column to the edge of the sheet.</summary>
    public Length Right { get; private init; }

    /// <summary>Between two columns.</summary>
    public Length Across { get; private init; }

    /// <summary>Between two rows.</summary>
    public Length Down { get; private init; }

    /// <summary>Whether lines are printed around the labels, along which plain paper is cut.</summary>
    public bool CutOut { get; private init; }

    /// <summary>Width of the sheet.</summary>
    public Length SheetWide => IsLetter ? Length.FromInches(8.5m) : Length.FromMillimetres(210);

    /// <summary>Height of the sheet.</summary>
    public Length SheetHigh => IsLetter ? Length.FromInches(11) : Length.FromMillimetres(297);

    /// <summary>Width of a label.</summary>
    public Length Wide => (SheetWide - Left - Right - Across * (Columns - 1)) / Columns;

    /// <summary>Height of a label.</summary>
    public Length High => (SheetHigh - Top - Bottom - Down * (Rows - 1)) / Rows;

    /// <summary>How many labels a sheet holds.</summary>
    public int OnASheet => Rows * Columns;

    /// <summary>A common sheet as it is typed: rows x columns, and the paper.</summary>
    public string Typed => string.Create(CultureInfo.InvariantCulture, $"{Rows}x{Columns},{(IsLetter ? "letter" : "a4")}");

    /// <summary>The sheet in words, with the size of a label.</summary>
    public string InWords
    {
        get
        {
            var units = IsLetter ? DisplayUnits.Inches : DisplayUnits.Millimetres;
            return string.Create(CultureInfo.InvariantCulture, $"{(IsLetter ? "Letter" : "A4")} sheets of {Rows} rows x {Columns}, {OnASheet} labels of ")
                + $"{Wide.ShowRounded(units, LengthScale.Opening)} x {High.ShowRounded(units, LengthScale.Opening)}";
        }
    }

    /// <summary>Sheets that are common, by rows, columns and margins; which one is in hand its wrapping says, and the test print shows.</summary>
    public static ImmutableArray<LabelGrid> Common { get; } =
    [
        Sheet(letter: true, 10, 3, top: 12.7m, side: 4.7625m, across: 3.175m),
        Sheet(letter: true, 10, 2, top: 12.7m, side: 3.96875m, across: 4.7625m),
        Sheet(letter: true, 7, 2, top: 21.1667m, side: 3.96875m, across: 4.7625m),
        Sheet(letter: true, 5, 2, top: 12.7m, side: 3.96875m, across: 4.7625m),
        Sheet(letter: false, 8, 3, top: 0, side: 0, across: 0),
        Sheet(letter: false, 8, 2, top: 13.1m, side: 4.65m, across: 2.5m),
        Sheet(letter: false, 7, 3, top: 15.15m, side: 7.2m, across: 2.5m),
        Sheet(letter: false, 7, 2, top: 15.15m, side: 4.65m, across: 2.5m),
    ];

    /// <summary>Eight rows of two on plain paper, to be cut out: Letter in a house in inches, else A4.</summary>
    public static LabelGrid Plain(DisplayUnits units) => Plain(letter: units == DisplayUnits.Inches);

    /// <summary>Eight rows of two on plain paper of that size, Letter or else A4, to be cut out.</summary>
    public static LabelGrid Plain(bool letter) => Sheet(letter, 8, 2, top: 15, side: 10, across: 0) with { CutOut = true };

    /// <summary>
    /// Reads a grid: <c>10x3</c> for a common sheet, with <c>letter</c> or <c>a4</c> where both have one; each of <c>top=</c>, <c>bottom=</c>,
    /// <c>left=</c>, <c>right=</c>, <c>across=</c> and <c>down=</c>, in millimetres or as <c>1/2"</c>, changes it; for another sheet all that is not
    /// said is 0.
    /// </summary>
    public static Result<LabelGrid> Read(string typed)
    {
        var parts = typed.ToLowerInvariant().Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        if (parts.Length == 0 || RowsByColumns().Match(parts[0]) is not { Success: true } size || Number(size, "rows") is not { } rows
            || Number(size, "columns") is not { } columns)
            return new Refusal($"\"{typed}\" is no sheet of labels. Write rows x columns, such as 10x3, and what is different behind it: " +
                "10x3,a4,top=13,left=5.");
        var paper = parts.Contains("letter") ? true : parts.Contains("a4") ? false : (bool?)null;
        var grid = Common.FirstOrDefault(g => g.Rows == rows && g.Columns == columns && (paper is null || g.IsLetter == paper))
            ?? new LabelGrid(paper ?? false, rows, columns);
        foreach (var part in parts.Skip(1).Where(p => p is not ("letter" or "a4")))
        {
            if (part.Split('=', 2) is not [var name, var value])
                return new Refusal($"\"{part}\" is nothing that a sheet of labels has. Write top, bottom, left, right, across or down, = and a length.");
            var length = LengthText.Read(value, DisplayUnits.Millimetres);
            if (!length.Ok)
                return new Refusal($"{name}: {length.Reason}");
            if (grid.With(name.Trim(), length.Value) is not { } changed)
                return new Refusal($"A sheet of labels has no {name}. It has top, bottom, left, right, across and down.");
            grid = changed;
        }
        return grid.Wide >= SmallestWide && grid.High >= SmallestHigh
            ? grid
            : new Refusal($"Labels of {grid.Wide.Show(DisplayUnits.Millimetres)} x {grid.High.Show(DisplayUnits.Millimetres)} are too small to read: " +
                $"30 mm wide and 12 mm high is the least. Look at rows, columns and margins again.");
    }

    private LabelGrid? With(string name, Length length) => name switch
    {
        "top" => this with { Top = length },
        "bottom" => this with { Bottom = length },
        "left" => this with { Left = length },
        "right" => this with { Right = length },
        "across" => this with { Across = length },
        "down" => this with { Down = length },
        _ => null,
    };

    private static int? Number(Match size, string group) =>
        int.TryParse(size.Groups[group].ValueSpan, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number is >= 1 and <= Most
            ? number : null;

    private static LabelGrid Sheet(bool letter, int rows, int columns, decimal top, decimal side, decimal across) => new(letter, rows, columns)
    {
        Top = Length.FromMillimetres(top),
        Bottom = Length.FromMillimetres(top),
        Left = Length.FromMillimetres(side),
        Right = Length.FromMillimetres(side),
        Across = Length.FromMillimetres(across),
    };

    [GeneratedRegex(@"^(?<rows>[0-9]{1,2})\s*x\s*(?<columns>[0-9]{1,2})$", RegexOptions.CultureInvariant)]
    private static partial Regex RowsByColumns();
}
