using TrimOut.Core.Checks;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Screens.Frames;

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

    /// <summary>
    /// How many checks of a unit wait, how many of them for makers' sheets, and how many of these pass by values that nobody checked, with the keys
    /// that lead there; empty where none waits.
    /// </summary>
    public static string Of(CheckReport report, Unit unit)
    {
        var (missing, unread) = (report.MissingAbout(unit).ToList(), report.UnreadAbout(unit).ToList());
        var sheets = missing.Count(report.WaitsForSheet) + unread.Count;
        return missing.Count + unread.Count == 0 ? ""
            : $"{Waiting.Of(missing, unread)} (m){(sheets == 0 ? "" : $"; {NumberText.Plain(sheets)} for makers' sheets (9)")}"
                + (unread.Count == 0 ? "" : $", {Passing(unread.Count)}");
    }

    /// <summary>The same in one line of so many cells: how many pass by such values goes first, then how many wait for sheets.</summary>
    public static string Fit(CheckReport report, Unit unit, int width)
    {
        var (all, unread) = (Of(report, unit), report.UnreadAbout(unit).Count());
        if (TextWidth.Of(all) <= width || all.Length == 0)
            return all;
        var passing = unread == 0 ? "" : $", {Passing(unread)}";
        var waiting = all[..^passing.Length];
        return TextWidth.Of(waiting) <= width ? waiting
            : $"{NumberText.Counted(report.MissingAbout(unit).Count() + unread, "check waits", "checks wait")} (m){passing}";
    }

    /// <summary>How many of those that wait pass by such values.</summary>
    public static string Passing(int unread) =>
        $"{NumberText.Counted(unread, "passes", "pass")} by values nobody checked";

    /// <summary>For the top line of every screen, shorter and shorter; empty where nothing waits.</summary>
    /// <param name="report">What is waited for.</param>
    /// <param name="phase">The phase that is shown; null for all.</param>
    /// <param name="current">The phase that is worked in: what waits for a later one is no work yet. Null where nothing is left to do.</param>
    public static IReadOnlyList<string> Shorter(CheckReport report, Phase? phase, Phase? current)
    {
        if (report.Waiting is not { None: false } all)
            return ["", "", "", ""];
        var now = (phase ?? current) is { } until ? report.WaitingUpTo(until) : all.Checks;
        var brief = InShort(all, now);
        return [report.WaitingForSheets.None ? brief[0] : Of(report, phase ?? current), .. brief, $"{NumberText.Plain(now)} wait (m)"];
    }

    /// <summary>How many wait now and how many later, in two lengths.</summary>
    /// <param name="all">All that wait.</param>
    /// <param name="now">How many of them wait in the phase that is worked in, or before it.</param>
    public static IReadOnlyList<string> InShort(Waiting all, int now)
    {
        var later = all.Checks - now;
        return later == 0 ? [$"{all} (m)", $"{NumberText.Counted(all.Checks, "check waits", "checks wait")} (m)"]
            : [$"{NumberText.Counted(now, "check waits", "checks wait")} now, {NumberText.Plain(later)} for later phases (m)",
                $"{NumberText.Counted(now, "check waits", "checks wait")}, {NumberText.Plain(later)} later (m)"];
    }
}
