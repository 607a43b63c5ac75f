using TrimOut.Screens.Frames;

namespace TrimOut.Screens.Shell;

/// <summary>Draws what stands around every screen: the top line, the status or typing lines, and the keys.</summary>
internal static class ShellFrame
{
    private const int MessageLines = 5;

    /// <summary>What speaks against a mark is told whole: a stop that had no room would not be told.</summary>
    private const int WarningLines = 9;

    public static void Draw(ShellState shell, Frame frame, Ask.Confirm? confirm, string status, bool statusIsBad)
    {
        var (all, context) = (frame.All, shell.Context);
        var typing = shell.Typing;
        var (text, tone) = confirm is not null ? (confirm.Shown, Tone.Selected)
            : typing is not null ? typing.Refused is { } refused ? ($"{context.Glyphs.Stop} {refused}", Tone.Stop)
                : typing.Note is null && typing.Entry.Warning is { } warning ? ($"{context.Glyphs.Stop} {warning}", Tone.Stop)
                : typing.Note is { } note ? (note, Tone.Text) : (Understood(typing, context), Tone.Dim)
            : status.Length == 0 && shell.Doing is { } doing ? ($"{doing}. Esc stops it.", Tone.Strong)
            : statusIsBad ? ($"{context.Glyphs.Stop} {status}", Tone.Stop) : (status, Tone.Text);
        // A path or a reason is not cut: what it takes beyond its one line the screen does without.
        var most = typing?.Entry.Warning is null ? MessageLines : WarningLines;
        var lines = TextWidth.Wrap(text, all.Width - 2).ToList();
        var message = lines.Count <= most ? lines : [.. lines.Take(most - 1), TextWidth.Fit($"{lines[most - 1]} …", all.Width - 2)];
        var below = Math.Max(1, message.Count) + 1;
        var (caused, loud) = shell.Caused.Lines(context, all.Width - 2, typing is not null);
        TopLine.Draw(shell, all, context);
        var seen = typing?.Entry.Preview is { } preview ? preview(typing.Text, context) : context;
        // A field that is not on the screen itself stands above the message; what was caused stands above both.
        var above = below + (caused.Count > 0 && typing is not null ? 1 : 0);
        // What hides rows says so above them, on every screen.
        var top = 1;
        if (shell.Screen is IFiltered { Search.Length: > 0, FrameSays: true } filtered)
            all.PutFit(0, top++, all.Width, " " + Filtering.InWords(filtered, context, typing is not null), Tone.Strong);
        var body = all.Rows(top, frame.Height - top - above - caused.Count);
        shell.Screen.Draw(body, seen, typing);
        FreeHalf.Draw(body, seen);
        for (var at = 0; at < caused.Count; at++)
            all.PutFit(0, frame.Height - above - caused.Count + at, all.Width, " " + caused[at], loud);
        if (typing is not null)
            DrawTyping(all, typing, frame.Height - below, frame.Slot is not null);
        for (var at = 0; at < message.Count; at++)
            all.PutFit(0, frame.Height - below + at, all.Width, " " + message[at], tone);
        DrawKeys(shell, all.Rows(frame.Height - 1, 1), typing);
    }

    /// <summary>What is understood of the text so far, or what may be typed: choices in full, however many lines they take.</summary>
    private static string Understood(Typing typing, ScreenContext context) =>
        typing.Entry.Echo?.Invoke(typing.Text, context) is { Ok: true } echo && typing.Text.Length > 0 ? echo.Value : typing.Entry.Hint;

    /// <summary>The field above what is understood, where the screen has none of its own.</summary>
    private static void DrawTyping(Area all, Typing typing, int y, bool inPlace)
    {
        if (inPlace)
            return;
        var entry = typing.Entry;
        var field = all.Rows(y - 1, 1);
        field.Clear();
        var x = field.Put(1, 0, TextWidth.Fit(entry.Label, field.Width / 2) + ": ", Tone.Strong);
        field.PutFit(x, 0, field.Width - x - 1, typing.Text, Tone.Field);
        field.PutSlot(x, 0, field.Width - x - 1);
    }

    private static void DrawKeys(ShellState shell, Area keys, Typing? typing)
    {
        keys.Fill(0, 0, keys.Width, Tone.Bar);
        IEnumerable<(string Stroke, string Key, string Name)> shown = typing is null
            ? shell.Actions.Where(a => a.Action.OnBar).Select(a => (a.Action.Strokes[0], KeyNames.Shown(a.Action.Strokes[0]), a.Action.Name))
            : TypingKeys(typing.Entry);
        var x = 1;
        var help = typing is null ? "? keys" : "";
        foreach (var (stroke, key, name) in shown.Where(k => k.Key != "?"))
        {
            if (x + TextWidth.Of(key) + 1 + TextWidth.Of(name) > keys.Width - TextWidth.Of(help) - 2)
                break;
            var from = x;
            x = keys.Put(x, 0, key, Tone.Key);
            x = keys.Put(x, 0, " " + name + "  ", Tone.Bar);
            keys.Frame.Spots.Add(new Spot(keys.X + from, keys.Y, x - from - 1, stroke));
        }
        keys.PutRight(0, help + " ", Tone.Key);
        if (help.Length > 0)
            keys.Frame.Spots.Add(new Spot(keys.X + keys.Width - help.Length - 1, keys.Y, help.Length, "?"));
    }

    private static IEnumerable<(string, string, string)> TypingKeys(Entry entry)
    {
        yield return ("enter", "Enter", "take it");
        if (entry.AcceptAndNext is not null)
            yield return ("tab", "Tab", "take it, next");
        if (entry.Options.Count > 0 || entry.Live is not null)
            yield return ("down", "Up/Down", "choose");
        yield return ("esc", "Esc", "leave as it was");
        yield return (ShellState.EmptyKey, KeyNames.Shown(ShellState.EmptyKey), "empty the line");
    }
}
