using System.Buffers;
using System.Globalization;
using System.Text;

namespace TrimOut.Core;

/// <summary>
/// The one place where a text, wherever it is from, is made safe to be shown: what would act on a terminal, or stand there unseen, is written out
/// instead.
/// </summary>
/// <remarks>
/// Control characters begin the sequences that terminals obey (ECMA-48); bidirectional controls turn the order of what
/// follows (Unicode UAX 9; CVE-2021-42574); invisible characters make two names look like one (Unicode UTS 39).
/// A joiner between two signs that need it, and a choice of how a sign is drawn, are part of what is seen and stay.
/// </remarks>
public static class ShownText
{
    private const int ZeroWidthNonJoiner = 0x200c;
    private const int ZeroWidthJoiner = 0x200d;

    /// <summary>Nothing in a text of these alone needs a second look: the letters, figures and signs of most texts.</summary>
    private static readonly SearchValues<char> Plain = SearchValues.Create(
        [.. Enumerable.Range(' ', 0x7f - ' ').Concat(Enumerable.Range(0xa1, 0xac - 0xa0)).Concat(Enumerable.Range(0xae, 0x2ff - 0xad)).Select(c => (char)c),
            '–', '—', '…', '“', '”', '‘', '’', '×', '²', '√']);

    private static readonly SearchValues<char> PlainOrLineEnd = SearchValues.Create([.. Enumerable.Range(' ', 0x7f - ' ').Select(c => (char)c), '\n', '\t']);

    /// <summary>One line of text as it can be shown: <c>W01</c> with an escape sequence behind it becomes <c>W01&lt;U+001B&gt;[31m</c>.</summary>
    public static string Line(string text) => text.AsSpan().IndexOfAnyExcept(Plain) < 0 ? text : Written(text, lines: false, (c, _) => $"<U+{c:X4}>");

    /// <summary>Several lines of text as they can be shown; line ends, CR LF among them, and tabs stay.</summary>
    public static string Lines(string text) => text.AsSpan().IndexOfAnyExcept(PlainOrLineEnd) < 0 ? text : Written(text, lines: true, (c, _) => $"<U+{c:X4}>");

    /// <summary>JSON that holds the same as before, with whatever would act written as JSON's own escapes.</summary>
    public static string Json(string json) => json.AsSpan().IndexOfAnyExcept(PlainOrLineEnd) < 0 ? json
        : Written(json, lines: true, (c, _) => string.Concat(new Rune(c).ToString()
            .Select(u => string.Create(CultureInfo.InvariantCulture, $"\\u{(int)u:x4}"))));

    /// <summary>
    /// A text without whatever would act or stand unseen in it: as it is kept when somebody types or imports it. Control characters become a space.
    /// </summary>
    public static string Kept(string text) => text.AsSpan().IndexOfAnyExcept(Plain) < 0 ? text
        : Written(text, lines: false, (c, before) => c is not (< 0x20 or (>= 0x7f and < 0xa0) or 0x2028 or 0x2029) || before.Length == 0 || before[^1] == ' '
            ? "" : " ");

    /// <summary>
    /// What of a name can be seen: two names that look alike because they differ by invisible characters alone, or by how many spaces part their words,
    /// have one key.
    /// </summary>
    public static string Key(string name)
    {
        if (name.AsSpan().IndexOfAnyExcept(Plain) < 0)
            return OneSpace(name.Trim());
        var key = new StringBuilder(name.Length);
        foreach (var rune in name.EnumerateRunes())
        {
            if (!Acts(rune) && !IsInvisible(rune) && !IsJoinerOrChoice(rune.Value))
                key.Append(rune);
        }
        return OneSpace(ComposedText.Of(key.ToString()).Trim());
    }

    private static string OneSpace(string name) =>
        name.Contains("  ", StringComparison.Ordinal) ? string.Join(' ', name.Split(' ', StringSplitOptions.RemoveEmptyEntries)) : name;

    private static string Written(string text, bool lines, Func<int, StringBuilder, string> instead)
    {
        var written = new StringBuilder(text.Length + 16);
        var before = 0;
        for (var at = 0; at < text.Length;)
        {
            var whole = Rune.TryGetRuneAt(text, at, out var rune);
            var value = whole ? rune.Value : text[at];
            // A table's line ends are CR LF (RFC 4180): together they begin a line and do nothing else.
            var stays = whole && ((lines && (value is '\n' or '\t' || (value == '\r' && at + 1 < text.Length && text[at + 1] == '\n')))
                || (!Acts(rune) && (!IsInvisible(rune) || IsPartOfAFlag(value, before)) && (!IsJoinerOrChoice(value) || Joins(before))));
            if (stays)
                written.Append(rune);
            else if (whole)
                written.Append(instead(value, written));
            else
                written.Append('\ufffd');
            before = value;
            at += whole ? rune.Utf16SequenceLength : 1;
        }
        return written.ToString();
    }

    /// <summary>Controls, line and paragraph ends, and what turns the order of writing.</summary>
    private static bool Acts(Rune rune) =>
        Rune.IsControl(rune)
            || rune.Value is 0x2028 or 0x2029 or 0x061c or 0x200e or 0x200f or (>= 0x202a and <= 0x202e)
            or (>= 0x2066 and <= 0x2069) or (>= 0xfff9 and <= 0xfffb);

    /// <summary>Format characters and fillers that take no place, or look like a space and are a letter.</summary>
    private static bool IsInvisible(Rune rune) =>
        rune.Value is 0x034f or 0x115f or 0x1160 or 0x17b4 or 0x17b5 or 0x3164 or 0xffa0 or 0x2800
            or (>= 0xe0000 and <= 0xe0fff) and not (>= 0xe0100 and <= 0xe01ef)
        || (Rune.GetUnicodeCategory(rune) == UnicodeCategory.Format && !IsJoinerOrChoice(rune.Value));

    private static bool IsJoinerOrChoice(int value) =>
        value is ZeroWidthNonJoiner or ZeroWidthJoiner or (>= 0xfe00 and <= 0xfe0f) or (>= 0x180b and <= 0x180d) or (>= 0xe0100 and <= 0xe01ef);

    /// <summary>
    /// Whether a joiner, or a choice of form, behind a sign can be seen: not behind plain letters and figures, nor behind another one, nor at the
    /// beginning.
    /// </summary>
    private static bool Joins(int before) => before > 0x2ff && before is not (ZeroWidthJoiner or ZeroWidthNonJoiner)
        || before is '#' or '*' or (>= '0' and <= '9') or 0xa9 or 0xae;

    /// <summary>The letters of a region's flag stand behind a black flag and each other (Unicode UTS 51, emoji tag sequences).</summary>
    private static bool IsPartOfAFlag(int value, int before) => value is >= 0xe0020 and <= 0xe007f && before is 0x1f3f4 or (>= 0xe0020 and <= 0xe007e);
}
