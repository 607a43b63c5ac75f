using System.Globalization;
using TrimOut.Core.Phases;
using TrimOut.Screens.Drawings;
using TrimOut.Screens.Frames;
using TrimOut.Screens.JobSheet;
using TrimOut.Screens.Punch;
using TrimOut.Screens.Walk;

namespace TrimOut.Screens.Shell;

/// <summary>
/// The top line of every screen: where one is, how many stops are open, what waits, and what is saved. What has no room gets shorter or goes; stops and
/// what waits stay.
/// </summary>
internal static class TopLine
{
    private const string Program = "TrimOut";

    public static void Draw(ShellState shell, Area all, ScreenContext context)
    {
        all.Fill(0, 0, all.Width, Tone.Bar);
        var saved = context.ReadOnlyBecause is not null ? "READING ONLY"
            : shell.SaveFailed ? "NOT SAVED"
            : context.LastSaved is { } at ? string.Create(CultureInfo.InvariantCulture, $"saved {at:HH:mm}")
            : shell.Open is null ? "" : "all saved";
        // What is saved here and not yet at the office stands beside what is saved.
        var office = shell.Open is null ? null : context.Office;
        if (office is { NotYetThere.Count: > 0 and var more })
            saved += string.Create(CultureInfo.InvariantCulture, $", {more} not at office");
        if (office is { PutOff: > 0 and var putOff })
            saved += string.Create(CultureInfo.InvariantCulture, $", {putOff} put off");
        var file = context.Where.Length == 0 ? "" : $"  {Path.GetFileName(context.Where)}";
        var stops = shell.Open is null ? 0 : context.Stops;
        var stop = stops == 0 ? "" : $"{FindingSigns.Counted(context.Glyphs.Stop, stops)} {(stops == 1 ? "stop" : "stops")}";
        var house = shell.Open is null ? "" : context.House.Name;
        var waiting = shell.Open is null ? ["", "", "", ""] : WaitingLine.Shorter(context.Report, PhaseOf(shell.Screen), context.Head.Next?.Step.Phase);
        var title = TextWidth.Fit($"{context.Glyphs.Arrow} {shell.Screen.Title}", Math.Max(0, all.Width - Wide(stop, saved, waiting[3]) - 3));

        (string Program, string House, string Waiting, string File)[] ways =
        [
            (Program, house, waiting[0], file), (Program, house, waiting[1], file), (Program, house, waiting[1], ""), ("", house, waiting[1], ""),
            ("", house, waiting[2], ""), ("", "", waiting[2], ""), ("", house, waiting[3], ""), ("", "", waiting[3], ""),
        ];
        var shown = ways.FirstOrDefault(w => Wide(w.Program, w.House, title, stop, w.Waiting, saved + w.File) <= all.Width, ways[^1]);
        // A long name gives way before what waits does.
        if (shown.House.Length == 0 && house.Length > 0 && all.Width - Wide("", "", title, stop, waiting[2], saved) - 3 is >= 6 and var room)
            shown = ("", TextWidth.Fit(house, room), waiting[2], "");
        var x = 1;
        foreach (var (part, tone) in (IEnumerable<(string, Tone)>)[(shown.Program, Tone.Bar), (shown.House, Tone.Bar), (title, Tone.Bar), (stop, Tone.Stop),
            (shown.Waiting, Tone.Key)])
        {
            if (part.Length > 0)
                x = all.Put(x, 0, part, tone) + (part == shown.House ? 1 : 2);
        }
        all.PutRight(0, saved + shown.File + " ", Tone.Bar);
    }

    private static Phase? PhaseOf(IScreen screen) => screen switch
    {
        JobSheetScreen sheet => sheet.PhaseShown,
        WalkScreen walk => walk.Phase,
        PunchScreen punch => punch.Only,
        _ => null,
    };

    private static int Wide(params string[] parts) => parts.Where(p => p.Length > 0).Sum(p => TextWidth.Of(p) + 2);
}
