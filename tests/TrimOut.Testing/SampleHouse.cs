using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;

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

    /// <summary>The ridge house with a listing that lets its one run that waits be cut; in the sample it is held back for its cable.</summary>
    public static Scribe OpenWithACut(TimeProvider clock)
    {
        var scribe = Open("ridge-house", clock);
        var cable = scribe.House.ItemsOf(ItemKind.CableType).Single(c => scribe.House.NameOf(c) == "18/2");
        scribe.Record(SetFact.Typed(scribe.House, cable, CableTypeFacts.Listing, "cl2p").Value);
        return scribe;
    }
}
