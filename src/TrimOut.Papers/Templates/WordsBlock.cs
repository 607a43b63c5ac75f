using System.Text.RegularExpressions;
using TrimOut.Core;
using TrimOut.Papers.Writing;

namespace TrimOut.Papers.Templates;

/// <summary>The list of words in a template: a fenced block named <c>words</c>, one phrase a line, <c>English = instead</c>.</summary>
internal static partial class WordsBlock
{
    private const string Language = "language";

    /// <summary>Reads the list and takes it out of the template.</summary>
    public static Result<(string Body, Words Words, IReadOnlyCollection<string> Phrases)> Read(string template)
    {
        var text = template.ReplaceLineEndings("\n").TrimStart('\uFEFF');
        if (Block().Match(text) is not { Success: true } block)
            return (text, Words.English, []);
        var instead = new Dictionary<string, string>(StringComparer.Ordinal);
        var language = Words.English.Language;
        var line = 1 + text.AsSpan(0, block.Groups["lines"].Index).Count('\n');
        foreach (var words in block.Groups["lines"].Value.Split('\n'))
        {
            if (words.Trim().Length > 0)
            {
                var between = words.IndexOf(" = ", StringComparison.Ordinal);
                if (between <= 0 || words[(between + 3)..].Trim().Length == 0)
                    return new Refusal($"Line {line}: \"{words.Trim()}\" is no pair of words. Write: English = instead.");
                var (english, other) = (words[..between].Trim(), words[(between + 3)..].Trim());
                if (english == Language)
                    language = other;
                else if (!PlacesOf(english).SequenceEqual(PlacesOf(other)))
                    return new Refusal($"Line {line}: both sides must have the same places: {string.Join(" ", PlacesOf(english).DefaultIfEmpty("none"))}.");
                else if (!instead.TryAdd(english, other))
                    return new Refusal($"Line {line}: \"{english}\" is there twice.");
            }
            line++;
        }
        // The lines stay, empty, so that what is said about a line further down names the right one.
        return (text[..block.Index] + new string('\n', block.ValueSpan.Count('\n')) + text[(block.Index + block.Length)..],
            Words.With(instead, language), instead.Keys);
    }

    private static IEnumerable<string> PlacesOf(string phrase) => Place().Matches(phrase).Select(m => m.Value).Order(StringComparer.Ordinal);

    [GeneratedRegex(@"^```words[ \t]*\n(?<lines>.*?)^```[ \t]*(?:\n|\z)", RegexOptions.Multiline | RegexOptions.Singleline)]
    private static partial Regex Block();

    [GeneratedRegex(@"\{[0-9]\}")]
    private static partial Regex Place();
}
