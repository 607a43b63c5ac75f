using TrimOut.Core.History;

namespace TrimOut.Testing;

/// <summary>A house of sample-jobs, read from its text.</summary>
public static class SampleHouse
{
    /// <summary>The names of all of them.</summary>
    public static IReadOnlyList<string> Names { get; } =
        [.. Directory.EnumerateDirectories(Path.Combine(Repository.Root, "sample-jobs")).Select(d => Path.GetFileName(d)).Order(StringComparer.Ordinal)];

    public static IReadOnlyList<Change> Changes(string name) =>
        [.. File.ReadLines(Path.Combine(Repository.Root, "sample-jobs", name, "history.jsonl")).Where(l => l.Length > 0).Select(l => ChangeJson.Read(l).Value)];

    /// <summary>Open in memory, for the crew member of that name.</summary>
    public static Scribe Open(string name, TimeProvider clock, string by = "Ash") => new(new MemoryStore("test-laptop", Changes(name)), clock, by);
}
