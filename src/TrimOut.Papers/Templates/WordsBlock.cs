using System.Text.RegularExpressions;
using TrimOut.Core;

namespace TrimOut.Papers.Templates;

/// <summary>The list of words in a template: a fenced block named <c>words</c>.</summary>
internal static partial class WordsBlock
{
    /// <summary>Reads the list and takes it out of the template.</summary>
    public static Result<(string Body, WordLines Words)> Read(string template)
    {
        var text = template.ReplaceLineEndings("\n").TrimStart('\uFEFF');
        if (Block().Match(text) is not { Success: true } block)
            return (text, WordLines.None);
        // The lines stay, empty, so that what is said about a line further down names the right one.
        var lines = block.Groups["lines"];
        var body = text[..block.Index] + new string('\n', block.ValueSpan.Count('\n')) + text[(block.Index + block.Length)..];
        return WordLines.Read(lines.Value, 1 + text.AsSpan(0, lines.Index).Count('\n')).Then<(string, WordLines)>(words => (body, words));
    }

    [GeneratedRegex(@"^```words[ \t]*\n(?<lines>.*?)^```[ \t]*(?:\n|\z)", RegexOptions.Multiline | RegexOptions.Singleline)]
    private static partial Regex Block();
}
