using TrimOut.Core.Units;

namespace TrimOut.Papers.Tables;

/// <summary>A cell of a table for other programs: a text as it was typed, or a number without its unit, which stands in the head of the column.</summary>
/// <param name="Text">The text; of a number how it is written with a point; empty for nothing.</param>
/// <param name="Number">The number; null for a text.</param>
internal readonly record struct SheetCell(string Text, decimal? Number)
{
    // 1/64 in has six decimals; what comes of millimetres shown in inches has no end.
    private const int Decimals = 6;

    /// <summary>A number.</summary>
    public static implicit operator SheetCell(decimal number) =>
        Math.Round(number, Decimals, MidpointRounding.AwayFromZero) is var rounded ? new(NumberText.Plain(rounded), rounded) : default;

    /// <summary>A text.</summary>
    public static implicit operator SheetCell(string text) => new(text, null);

    /// <summary>A length of an opening in the units of a house; empty where there is none.</summary>
    public static SheetCell Of(Length? length, DisplayUnits units) =>
        length is { } known ? units == DisplayUnits.Inches ? known.Inches : known.Millimetres : "";

    /// <summary>What the lengths of openings are in, for the head of a column.</summary>
    public static string UnitOf(DisplayUnits units) => units == DisplayUnits.Inches ? "in" : "mm";
}
