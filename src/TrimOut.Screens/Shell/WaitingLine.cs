using TrimOut.Core.Checks;
using TrimOut.Core.Units;

namespace TrimOut.Screens.Shell;

/// <summary>Says how many checks wait, and which keys lead to what they wait for.</summary>
internal static class WaitingLine
{
    /// <summary>All that wait, and those that wait for a maker's sheet.</summary>
    public static string Of(CheckReport report)
    {
        var sheets = report.WaitingForSheets;
        return $"{report.Waiting} (m lists them)"
            + (sheets.None ? "" : $"; {NumberText.Plain(sheets.Checks)} wait for {Values(sheets)} (9)");
    }

    /// <summary>For the top line of every screen: those that wait for a maker's sheet; nothing where none does.</summary>
    public static string OnTop(CheckReport report) =>
        report.WaitingForSheets is { None: false } sheets
            ? $"{NumberText.Plain(sheets.Checks)} {(sheets.Checks == 1 ? "check waits" : "checks wait")} for the sheet: 9"
            : "";

    private static string Values(Waiting sheets) => sheets.Facts == 1 ? "1 value of the sheets" : $"{NumberText.Plain(sheets.Facts)} values of the sheets";
}
