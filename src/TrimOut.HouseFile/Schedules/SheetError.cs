namespace TrimOut.HouseFile.Schedules;

/// <summary>What a spreadsheet shows in a cell that it could not work out (ECMA-376 part 1, 18.17.3), there and in the CSV made of it.</summary>
internal static class SheetError
{
    /// <summary>In place of one that is none of those below.</summary>
    public const string Unknown = "#VALUE!";

    /// <summary>In place of a formula that no spreadsheet has worked out since it was written.</summary>
    public const string NotWorkedOut = "#FORMULA";

    private static readonly string[] All = ["#NULL!", "#DIV/0!", Unknown, "#REF!", "#NAME?", "#NUM!", "#N/A", "#GETTING_DATA", NotWorkedOut];

    /// <summary>What is wrong with a cell; null where it is no error.</summary>
    public static string? Of(string cell) => !cell.StartsWith('#') || !All.Contains(cell, StringComparer.OrdinalIgnoreCase) ? null
        : cell == NotWorkedOut ? "there is a formula without a value: open it in a spreadsheet, and save it again."
        : $"{cell} is an error of the spreadsheet, and no value.";

    /// <summary>Whether a cell is one.</summary>
    public static bool IsOne(string cell) => Of(cell) is not null;
}
