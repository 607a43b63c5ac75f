using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.JobSheet;

/// <summary>The state of the house in one line: units finished of all, what is next, and who waits for whom. The line above it counts the stops.</summary>
internal static class HeadLine
{
    public static void Draw(Area line, ScreenContext context)
    {
        var head = context.Head;
        var next = head.Next is { } n ? $"Next: {(n.Subject is JobItself ? "" : n.Subject.Name + " ")}{n.Step.Label}"
            : head.Finished == head.Units ? "" : "Next: what others do first";
        var finished = $"{NumberText.Plain(head.Finished)} of {NumberText.Plain(head.Units)} finished";
        (string Finished, string Waiting)[] ways =
        [
            ($"{NumberText.Plain(head.Finished)} of {NumberText.Counted(head.Units, "unit")} finished", Waiting(head, InFull)),
            (finished, Waiting(head, Short)),
            (finished,
                head.Waiting.IsEmpty ? "" : $"waiting: {string.Join(", ", head.Waiting.Select(w => $"{NumberText.Plain(w.Units)} {Short(w.For)}"))}"),
        ];
        var shown = ways.FirstOrDefault(w => 1 + Wide(w.Finished, next, w.Waiting) <= line.Width, ways[^1]);
        var x = line.Put(1, 0, shown.Finished, head.Units > 0 && head.Finished == head.Units ? context.Good : Tone.Strong) + 2;
        // Who waits is short; a long step gives way to it.
        var room = line.Width - x - (shown.Waiting.Length == 0 ? 0 : TextWidth.Of(shown.Waiting) + 2);
        if (next.Length > 0)
            x = line.Put(x, 0, TextWidth.Fit(next, Math.Max(0, room)), Tone.Heading) + 2;
        line.PutFit(x, 0, line.Width - x, shown.Waiting, Tone.Text);
    }

    private static string Waiting(HouseHead head, Func<WaitsFor, string> name) => head.Waiting.IsEmpty ? ""
        : $"{NumberText.Plain(head.Waiting[0].Units)} {(head.Waiting[0].Units == 1 ? "waits" : "wait")} for {name(head.Waiting[0].For)}"
            + string.Concat(head.Waiting.Skip(1).Select(w => $", {NumberText.Plain(w.Units)} for {name(w.For)}"));

    private static string InFull(WaitsFor whom) => whom switch
    {
        WaitsFor.Paint => "drywall and paint",
        WaitsFor.Electrician => "the licensed electrician",
        WaitsFor.Maker => "the maker",
        _ => "the owner",
    };

    private static string Short(WaitsFor whom) => whom switch
    {
        WaitsFor.Paint => "paint",
        WaitsFor.Electrician => "electrician",
        WaitsFor.Maker => "maker",
        _ => "owner",
    };

    private static int Wide(params string[] parts) => parts.Where(p => p.Length > 0).Sum(p => TextWidth.Of(p) + 2) - 2;
}
