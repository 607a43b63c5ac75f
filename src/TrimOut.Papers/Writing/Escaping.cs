using System.Buffers;
using System.Text;

namespace TrimOut.Papers.Writing;

/// <summary>The one place where typed text is made safe for Markdown: what stands in the result reads, once rendered, as it was typed.</summary>
/// <remarks>Only what can act as markup gets a backslash, so that the Markdown still reads well as plain text. CommonMark 0.31, section 2.4.</remarks>
internal static class Escaping
{
    /// <summary>The text with a backslash before everything that CommonMark or a pipe table could take as markup.</summary>
    /// <remarks>Line ends and other control characters become one space: no text may leave its line.</remarks>
    public static string Escape(string typed)
    {
        if (IsPlain(typed))
            return typed;
        var text = OnOneLine(typed);
        var written = new StringBuilder(text.Length + 8);
        var number = LeadingNumber(text);
        for (var at = 0; at < text.Length; at++)
        {
            if (ActsAsMarkup(text, at) || at == number)
                written.Append('\\');
            written.Append(text[at]);
        }
        return written.ToString();
    }

    /// <summary>Whether nothing in a text can act as markup, which is so for most: then it is taken as it is.</summary>
    private static bool IsPlain(string text) =>
        text.AsSpan().IndexOfAnyExcept(Harmless) < 0 && (text.Length == 0 || (text[0] is not ' ' and not '-' && text[^1] != ' ')) && LeadingNumber(text) < 0;

    private static string OnOneLine(string typed)
    {
        var text = new StringBuilder(typed.Length);
        foreach (var rune in typed.EnumerateRunes())
        {
            if (!Rune.IsControl(rune) && rune.Value is not (0x2028 or 0x2029))
                text.Append(rune);
            else if (text.Length > 0 && text[^1] != ' ')
                text.Append(' ');
        }
        return text.ToString().Trim();
    }

    private static bool ActsAsMarkup(string text, int at) => text[at] switch
    {
        '\\' or '`' or '*' or '[' or ']' or '<' or '|' or '~' => true,
        '_' => !(IsWordAt(text, at - 1) && IsWordAt(text, at + 1)),
        '&' => IsEntityAt(text, at),
        '#' => at == 0 || text[at - 1] == ' ',
        '>' => at == 0,
        '-' or '+' => at == 0 && (text.Length == 1 || text[1] is ' ' or '-' or '+'),
        _ => false,
    };

    /// <summary>Where the mark behind a number stands that would begin a numbered list; -1 when there is none.</summary>
    private static int LeadingNumber(string text)
    {
        var end = 0;
        while (end < text.Length && char.IsAsciiDigit(text[end]))
            end++;
        return end > 0 && end < text.Length && text[end] is '.' or ')' && (end + 1 == text.Length || text[end + 1] == ' ') ? end : -1;
    }

    private static bool IsEntityAt(string text, int at)
    {
        var end = text.IndexOf(';', at);
        return end > at + 1 && text.AsSpan(at + 1, end - at - 1).TrimStart('#') is { Length: > 0 } name && name.IndexOfAnyExcept(Names) < 0;
    }

    private const string LettersAndDigits = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789";

    private static readonly SearchValues<char> Names = SearchValues.Create(LettersAndDigits);

    private static readonly SearchValues<char> Harmless = SearchValues.Create(LettersAndDigits + " -.,:;/()'\"%");

    private static bool IsWordAt(string text, int at) => at >= 0 && at < text.Length && char.IsLetterOrDigit(text[at]);
}
