using System.Collections.Frozen;
using System.Text.RegularExpressions;
using TrimOut.Core;
using TrimOut.Papers.Writing;

namespace TrimOut.Papers.Templates;

/// <summary>Words for English ones, read from lines: one phrase a line, <c>English = instead</c>, and what is said of the language.</summary>
/// <param name="Instead">The words by the English ones.</param>
/// <param name="Language">The language; null where no line says.</param>
/// <param name="DecimalComma">Whether decimals are parted by a comma; null where no line says.</param>
internal sealed partial record WordLines(IReadOnlyDictionary<string, string> Instead, string? Language, bool? DecimalComma)
{
    private const string LanguageLine = "language";
    private const string DecimalsLine = "decimals";
    private const string PapersLine = "papers";

    /// <summary>The papers that the words are whole for, by their ids: the line <c>papers = walk-sheet, pull-sheet</c> of a language.</summary>
    public IReadOnlyList<string> Papers { get; init; } = [];

    /// <summary>No words.</summary>
    public static WordLines None { get; } = new(FrozenDictionary<string, string>.Empty, null, null);

    /// <summary>Reads lines.</summary>
    /// <param name="lines">The lines; empty ones count.</param>
    /// <param name="first">The number of the first one, for what is said about a wrong one.</param>
    public static Result<WordLines> Read(string lines, int first)
    {
        var instead = new Dictionary<string, string>(StringComparer.Ordinal);
        var (language, comma, papers) = ((string?)null, (bool?)null, Array.Empty<string>());
        foreach (var (at, words) in lines.ReplaceLineEndings("\n").TrimStart('\uFEFF').Split('\n').Index())
        {
            if (words.Trim().Length == 0)
                continue;
            var line = first + at;
            var between = words.IndexOf(" = ", StringComparison.Ordinal);
            if (between <= 0 || words[(between + 3)..].Trim().Length == 0)
                return new Refusal($"Line {line}: \"{words.Trim()}\" is no pair of words. Write: English = instead.");
            var (english, other) = (words[..between].Trim(), words[(between + 3)..].Trim());
            if (english == LanguageLine)
                language = other;
            else if (english == PapersLine)
                papers = other.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
            else if (english == DecimalsLine && other is not ("comma" or "point"))
                return new Refusal($"Line {line}: decimals are parted by a comma or by a point. Write: decimals = comma.");
            else if (english == DecimalsLine)
                comma = other == "comma";
            else if (!PlacesOf(english).SequenceEqual(PlacesOf(other)))
                return new Refusal($"Line {line}: both sides must have the same places: {string.Join(" ", PlacesOf(english).DefaultIfEmpty("none"))}.");
            else if (!instead.TryAdd(english, other))
                return new Refusal($"Line {line}: \"{english}\" is there twice.");
        }
        return new WordLines(instead, language, comma) { Papers = papers };
    }

    /// <summary>
    /// The wording of a template that has these lines: its own first, and for what they leave out the words that come with TrimOut in its language.
    /// </summary>
    public Words ToWords()
    {
        var language = Language ?? Words.English.Language;
        var shipped = ShippedWords.Of(language);
        var all = new Dictionary<string, string>(shipped.Instead, StringComparer.Ordinal);
        foreach (var (english, other) in ShippedWords.OfPapersIn(language).Instead.Concat(Instead))
            all[english] = other;
        return Words.With(all, language, DecimalComma ?? shipped.DecimalComma ?? false);
    }

    private static IEnumerable<string> PlacesOf(string phrase) => Place().Matches(phrase).Select(m => m.Value).Order(StringComparer.Ordinal);

    [GeneratedRegex(@"\{[0-9]\}")]
    private static partial Regex Place();
}
