using System.Collections.Concurrent;

namespace TrimOut.Papers.Templates;

/// <summary>
/// Words that come with TrimOut, two files a language: <c>findings.es.txt</c> words findings, facts, steps and the names in a blank kit,
/// <c>papers.es.txt</c> what else stands on the papers that it names.
/// </summary>
internal static class ShippedWords
{
    private const string OfFindings = "findings";
    private const string OfPapers = "papers";

    private static readonly ConcurrentDictionary<(string File, string Language), WordLines> Read = new();

    /// <summary>The languages that word findings.</summary>
    public static IReadOnlyList<string> Languages { get; } = LanguagesOf(OfFindings);

    /// <summary>The languages that word whole papers.</summary>
    public static IReadOnlyList<string> PaperLanguages { get; } = LanguagesOf(OfPapers);

    /// <summary>The words of findings in a language: of <c>de-AT</c>, if it has none of its own, those of <c>de</c>; none where there is no file.</summary>
    public static WordLines Of(string language) => In(OfFindings, language);

    /// <summary>The words of papers in a language, in the same way.</summary>
    public static WordLines OfPapersIn(string language) => In(OfPapers, language);

    private static WordLines In(string file, string language) => Read.GetOrAdd((file, language.ToLowerInvariant()), static at => FileOf(at.File, at.Language)
        ?? (at.Language.LastIndexOf('-') is > 0 and var end ? In(at.File, at.Language[..end]) : WordLines.None));

    private static WordLines? FileOf(string file, string language)
    {
        using var stream = typeof(ShippedWords).Assembly.GetManifestResourceStream($"{file}.{language}.txt");
        if (stream is null)
            return null;
        using var reader = new StreamReader(stream);
        return WordLines.Read(reader.ReadToEnd(), 1).Value;
    }

    private static IReadOnlyList<string> LanguagesOf(string file) => [.. typeof(ShippedWords).Assembly.GetManifestResourceNames()
        .Where(n => n.StartsWith(file + ".", StringComparison.Ordinal) && n.EndsWith(".txt", StringComparison.Ordinal))
            .Select(n => n[(file.Length + 1)..^".txt".Length]).Order(StringComparer.Ordinal)];
}
