using TrimOut.Core.Checks;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;

namespace TrimOut.Screens.Shell;

/// <summary>Says how many checks wait, for what, and which keys lead there: those that wait for makers' sheets apart, for one does not walk to them.</summary>
internal static class WaitingLine
{
    /// <summary>All that wait: for the sheets of how many parts, and for what else, in the phase that is shown where one is.</summary>
    public static string Of(CheckReport report, Phase? phase) =>
        Of(report.Waiting, report.WaitingForSheets, report.PartsWaitedFor, phase is { } shown ? (shown.Full(), report.WaitingIn(shown)) : null);

    /// <summary>The same of counts.</summary>
    /// <param name="all">All that wait.</param>
    /// <param name="sheets">Those that wait for a value of a sheet.</param>
    /// <param name="parts">How many parts these values are of.</param>
    /// <param name="phase">The phase that is shown, and how many of the others wait in it.</param>
    public static string Of(Waiting all, Waiting sheets, int parts, (string Name, int Checks)? phase)
    {
        var rest = all.Checks - sheets.Checks;
        var others = phase is { } shown ? $"{NumberText.Plain(shown.Checks)} for {shown.Name}, {NumberText.Plain(rest - shown.Checks)} later or before (m)"
            : $"{NumberText.Plain(rest)} for {NumberText.Counted(all.Facts - sheets.Facts, "detail")} (m)";
        return sheets.None ? $"{all} (m)"
            : $"{NumberText.Counted(sheets.Checks, "check")} {(sheets.Checks == 1 ? "waits" : "wait")} for the {(parts == 1 ? "sheet" : "sheets")} of "
                + $"{NumberText.Counted(parts, "part")} (9){(rest == 0 ? "" : "; " + others)}";
    }

    /// <summary>For the top line of every screen, shorter and shorter; empty where nothing waits.</summary>
    public static IReadOnlyList<string> Shorter(CheckReport report, Phase? phase) => report.Waiting is { None: false } all
        ? [Of(report, phase), $"{all} (m)", $"{NumberText.Plain(all.Checks)} not checked (m)"]
        : ["", "", ""];
}
