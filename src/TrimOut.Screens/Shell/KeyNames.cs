namespace TrimOut.Screens.Shell;

/// <summary>Keys as help and the bottom line write them.</summary>
internal static class KeyNames
{
    public static string Shown(string stroke) => stroke switch
    {
        "enter" => "Enter",
        "space" => "Space",
        "esc" => "Esc",
        "tab" => "Tab",
        "up" => "Up",
        "down" => "Down",
        "left" => "Left",
        "right" => "Right",
        "pageup" => "PgUp",
        "pagedown" => "PgDn",
        "home" => "Home",
        "end" => "End",
        "delete" => "Del",
        "backspace" => "Bksp",
        "insert" => "Ins",
        ['f', >= '0' and <= '9', ..] => stroke.ToUpperInvariant(),
        _ when stroke.StartsWith("ctrl+", StringComparison.Ordinal) => "Ctrl+" + stroke[5..].ToUpperInvariant(),
        _ when stroke.StartsWith("alt+", StringComparison.Ordinal) => "Alt+" + stroke[4..],
        _ => stroke,
    };
}
