using System.Text.RegularExpressions;

namespace TrimOut.Core.Decisions;

/// <summary>The words of a line that adds a window: a size stays one word however it is spaced.</summary>
internal static partial class QuickWords
{
    /// <summary>Parts a line at its spaces, except within <c>35 3/8 x 60 1/4</c> and <c>900 mm by 1200 mm</c>.</summary>
    public static string[] Of(string text)
    {
        var joined = Fraction().Replace(text, "${whole}-${part}");
        joined = Unit().Replace(joined, "${number}${unit}");
        joined = Times().Replace(joined, "x");
        joined = Several().Replace(joined, "${number}units");
        return joined.Split(' ', StringSplitOptions.RemoveEmptyEntries);
    }

    /// <summary>Whether a word that means nothing else can be a tag: it has a digit, and is neither a size nor a length.</summary>
    public static bool MayBeTag(string word) =>
        word.Any(char.IsAsciiDigit) && !word.EndsWith("units", StringComparison.OrdinalIgnoreCase)
        && !word.Contains('x', StringComparison.OrdinalIgnoreCase) && !word.Contains('/', StringComparison.Ordinal);

    [GeneratedRegex(@"(?<![A-WYZa-wyz0-9.])(?<whole>\d+)\s+(?<part>\d+/\d+)")]
    private static partial Regex Fraction();

    [GeneratedRegex("(?<number>[0-9½¼¾])\\s+(?<unit>mm|cm|m|in)\\b", RegexOptions.IgnoreCase)]
    private static partial Regex Unit();

    [GeneratedRegex(@"(?<![\w./-])(?<number>\d)\s*-?\s*units?\b", RegexOptions.IgnoreCase)]
    private static partial Regex Several();

    [GeneratedRegex("(?<=[0-9½¼¾\"'mn])(?:\\s*[x×]\\s*|\\s+by\\s+)(?=[0-9½¼¾])", RegexOptions.IgnoreCase)]
    private static partial Regex Times();
}
