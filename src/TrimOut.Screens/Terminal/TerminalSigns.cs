using TrimOut.Screens.Frames;

namespace TrimOut.Screens.Terminal;

/// <summary>Which signs the terminal can be trusted with.</summary>
internal static class TerminalSigns
{
    private static readonly string[] Locale = ["LC_ALL", "LC_CTYPE", "LANG"];

    /// <summary>Drawn signs in a UTF-8 locale on a terminal that has them, else plain ASCII.</summary>
    public static Glyphs Best() => Best(Environment.GetEnvironmentVariable);

    internal static Glyphs Best(Func<string, string?> variable)
    {
        var locale = Locale.Select(variable).FirstOrDefault(v => !string.IsNullOrEmpty(v)) ?? "";
        var utf8 = locale.Contains("UTF-8", StringComparison.OrdinalIgnoreCase) || locale.Contains("utf8", StringComparison.OrdinalIgnoreCase);
        return utf8 && variable("TERM") is not ("linux" or "dumb" or "vt100") ? Glyphs.Drawn : Glyphs.Ascii;
    }

    /// <summary>Whether the terminal takes titles and texts for its clipboard, or passes over them; some print what they do not know.</summary>
    public static bool TakesWords() => TakesWords(Environment.GetEnvironmentVariable);

    internal static bool TakesWords(Func<string, string?> variable) =>
        variable("TERM") is { Length: > 0 } term && term is not ("linux" or "dumb") && !term.StartsWith("vt", StringComparison.Ordinal);

    /// <summary>How many colours the terminal has, by what it says of itself; none where NO_COLOR is set and not empty.</summary>
    public static ColourDepth Colours() => Colours(Environment.GetEnvironmentVariable);

    internal static ColourDepth Colours(Func<string, string?> variable)
    {
        var term = variable("TERM") ?? "";
        if (!string.IsNullOrEmpty(variable("NO_COLOR")) || term is "" or "dumb" || term.StartsWith("vt", StringComparison.Ordinal)
            || term.EndsWith("-mono", StringComparison.Ordinal) || term.EndsWith("-m", StringComparison.Ordinal))
            return ColourDepth.None;
        if (variable("COLORTERM") is "truecolor" or "24bit" || term.Contains("direct", StringComparison.Ordinal))
            return ColourDepth.Full;
        return term.Contains("256color", StringComparison.Ordinal) || !string.IsNullOrEmpty(variable("COLORTERM"))
            ? ColourDepth.Many
            : ColourDepth.Sixteen;
    }
}
