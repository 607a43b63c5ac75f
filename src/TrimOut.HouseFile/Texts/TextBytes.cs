using System.Text;

namespace TrimOut.HouseFile.Texts;

/// <summary>Texts that somebody hands over as bytes: what is not UTF-8 is not turned into something else without a word.</summary>
/// <remarks>A replacement character that is really written so (U+FFFD as EF BF BD) is a character like any other.</remarks>
public static class TextBytes
{
    /// <summary>Stands in a text where its bytes are not UTF-8: a noncharacter, which no text for others has (Unicode 16.0, section 23.7).</summary>
    private const char NotRead = '\uffff';

    /// <summary>Why a line can't be taken, in a sentence.</summary>
    public const string NotUtf8 = "It holds bytes that are not UTF-8. Save the text as UTF-8 first; nothing of the line was taken.";

    /// <summary>UTF-8 that marks what can't be read, for a reader that goes by a byte-order mark where there is one.</summary>
    public static Encoding Marking { get; } =
        Encoding.GetEncoding("utf-8", EncoderFallback.ReplacementFallback, new DecoderReplacementFallback(NotRead.ToString()));

    /// <summary>Whether a text that was read by <see cref="Marking"/> had bytes that can't be read.</summary>
    public static bool IsBroken(string text) => text.Contains(NotRead, StringComparison.Ordinal);

    /// <summary>The first line whose bytes can't be read, from 1; null where all can.</summary>
    public static int? BrokenLine(string text) =>
        text.IndexOf(NotRead, StringComparison.Ordinal) is >= 0 and var at ? 1 + text.AsSpan(0, at).Count('\n') : null;
}
