using System.Collections.Concurrent;

namespace TrimOut.Papers.Templates;

/// <summary>Words of findings, facts, steps and the names in a blank kit that come with TrimOut, a file for each language: <c>findings.de.txt</c>.</summary>
internal static class ShippedWords
{
    private static readonly ConcurrentDictionary<string, WordLines> Read = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>The languages that have a file.</summary>
    public static IReadOnlyList<string> Languages { get; } = [.. typeof(ShippedWords).Assembly.GetManifestResourceNames()
        .Where(n => n.StartsWith("findings.", StringComparison.Ordinal) && n.EndsWith(".txt", StringComparison.Ordinal))
            .Select(n => n["findings.".Length..^".txt".Length]).Order(StringComparer.Ordinal)];

    /// <summary>The words of a language: of <c>de-AT</c>, if it has none of its own, those of <c>de</c>; none for a language that has no file.</summary>
    public static WordLines Of(string language) => Read.GetOrAdd(language, static l => FileOf(l)
        ?? (l.LastIndexOf('-') is > 0 and var end ? Of(l[..end]) : WordLines.None));

    private static WordLines? FileOf(string language)
    {
        using var stream = typeof(ShippedWords).Assembly.GetManifestResourceStream($"findings.{language.ToLowerInvariant()}.txt");
        if (stream is null)
            return null;
        using var reader = new StreamReader(stream);
        return WordLines.Read(reader.ReadToEnd(), 1).Value;
    }
}
