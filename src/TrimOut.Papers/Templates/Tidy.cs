using System.Text.RegularExpressions;
using TrimOut.Papers.Writing;

namespace TrimOut.Papers.Templates;

/// <summary>Small repairs of what a filled template leaves.</summary>
internal static partial class Tidy
{
    /// <summary>At most one blank line between blocks, none at the start, and one line end at the end.</summary>
    public static string BlankLines(string markdown) => Several().Replace(markdown.ReplaceLineEndings("\n"), "\n\n").Trim('\n') + "\n";

    /// <summary>A list of links to the headings of the second level.</summary>
    public static string ContentsOf(string markdown) =>
        string.Join("\n", Heading().Matches(markdown).Select(m => $"- [{m.Groups["title"].Value}](#{Anchor.Of(m.Groups["title"].Value)})"));

    [GeneratedRegex(@"\n[ \t]*(?:\n[ \t]*)+\n")]
    private static partial Regex Several();

    [GeneratedRegex(@"^## (?<title>.+)$", RegexOptions.Multiline)]
    private static partial Regex Heading();
}
