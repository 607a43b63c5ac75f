using TrimOut.Core.Checks;
using TrimOut.Core.Units;

namespace TrimOut.Screens.Shell;

/// <summary>Says how many checks wait, and which keys lead to what they wait for.</summary>
internal static class WaitingLine
{
    /// <summary>All that wait, and those that wait for a maker's sheet.</summary>
    public static string Of(CheckReport report) => Of(report.Waiting, report.WaitingForSheets);

    /// <summary>The same of counts; five figures in each fit into 78 cells.</summary>
    public static string Of(Waiting all, Waiting sheets) =>
        $"{all} (m)" + (sheets.None ? "" : $"; {NumberText.Plain(sheets.Checks)} for {NumberText.Counted(sheets.Facts, "sheet value")}: key 9");

    /// <summary>The same for the top line of every screen, shorter and shorter; empty where nothing waits.</summary>
    public static IReadOnlyList<string> Shorter(CheckReport report) => report.Waiting is { None: false } all
        ? [Of(report), $"{all} (m)", $"{NumberText.Plain(all.Checks)} {(all.Checks == 1 ? "waits" : "wait")} (m)"]
        : ["", "", ""];
}
