using TrimOut.Core.History;

namespace TrimOut.Testing;

/// <summary>Keeps changes in memory, and can be told to fail.</summary>
public sealed class MemoryStore(string device = "laptop", IReadOnlyList<Change>? opened = null) : IHouseStore
{
    private readonly List<Change> _saved = [];

    public string Where => "memory";

    public string Device => device;

    public string? ReadOnlyBecause { get; set; }

    /// <summary>The message that the next saves fail with; null when they work.</summary>
    public string? FailWith { get; set; }

    /// <summary>Why what was saved is not to be found any more; null where it is.</summary>
    public string? NotHeldBecause { get; set; }

    public IReadOnlyList<Change> Opened { get; } = opened ?? [];

    public IReadOnlyList<Change> Saved => _saved;

    public void Append(Change change)
    {
        if (FailWith is { } message)
            throw new HouseStoreException(message);
        _saved.Add(change);
    }

    public void Take(IReadOnlyList<Change> changes)
    {
        if (FailWith is { } message)
            throw new HouseStoreException(message);
        _saved.AddRange(changes);
    }
}
