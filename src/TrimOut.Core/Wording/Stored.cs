using System.Text.RegularExpressions;

namespace TrimOut.Core.Wording;

/// <summary>What was typed, as it is stored among figures: so that none of its signs is taken for what parts two figures.</summary>
internal static partial class Stored
{
    /// <summary>A text between quotation marks.</summary>
    public static string Quoted(string text) => InQuotes().Replace(text, @"\$0");

    /// <summary>A text that stands by itself.</summary>
    public static string Plain(string text) => Parting().Replace(text, @"\$0");

    [GeneratedRegex(@"[\\""]")]
    private static partial Regex InQuotes();

    [GeneratedRegex(@"[\\"";,()\[\]]")]
    private static partial Regex Parting();
}
