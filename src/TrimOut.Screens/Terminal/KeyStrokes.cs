using System.Text;
using Terminal.Gui.Drivers;
using Terminal.Gui.Input;

namespace TrimOut.Screens.Terminal;

/// <summary>Turns the library's keys into the names that key tables use.</summary>
internal static class KeyStrokes
{
    public static string? Of(Key key)
    {
        if (key.IsModifierOnly)
            return null;
        if (Named(key.NoShift.NoCtrl.NoAlt) is { } named)
            return With(key, named);
        if (key.IsCtrl || key.IsAlt)
            return key.NoCtrl.NoAlt.NoShift.TryGetPrintableRune(out var letter) ? With(key, Rune.ToLowerInvariant(letter).ToString()) : null;
        return key.TryGetPrintableRune(out var rune) ? rune.ToString() : null;
    }

    private static string With(Key key, string name) => key.IsCtrl ? "ctrl+" + name : key.IsAlt ? "alt+" + name : name;

    private static string? Named(Key key) => key.KeyCode switch
    {
        KeyCode.Enter => "enter",
        KeyCode.Space => "space",
        KeyCode.Esc => "esc",
        KeyCode.Tab => "tab",
        KeyCode.Backspace => "backspace",
        KeyCode.Delete => "delete",
        KeyCode.Insert => "insert",
        KeyCode.Home => "home",
        KeyCode.End => "end",
        KeyCode.PageUp => "pageup",
        KeyCode.PageDown => "pagedown",
        KeyCode.CursorUp => "up",
        KeyCode.CursorDown => "down",
        KeyCode.CursorLeft => "left",
        KeyCode.CursorRight => "right",
        >= KeyCode.F1 and <= KeyCode.F12 => $"f{1 + (int)(key.KeyCode - KeyCode.F1)}",
        _ => null,
    };
}
