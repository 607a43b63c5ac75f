using TrimOut.HouseFile.Durable;

namespace TrimOut.HouseFile.Rescues;

/// <summary>Sound entries of one house from wherever they were found, and the one chain among them that the house's own file and journal stand for.</summary>
/// <remarks>An entry is known by its seal; which number it has is told by the chain, and by the entry itself only where its seal says so.</remarks>
internal sealed class Pool
{
    private readonly Dictionary<string, Entry> _bySeal = new(StringComparer.Ordinal);
    private readonly ILookup<string, Entry> _byAfter;

    /// <summary>The pool of these entries, each sound by itself.</summary>
    public Pool(IEnumerable<Entry> entries)
    {
        foreach (var entry in entries)
            _bySeal.TryAdd(entry.Seal, entry);
        _byAfter = _bySeal.Values.ToLookup(e => e.After, StringComparer.Ordinal);
    }

    /// <summary>Every entry.</summary>
    public IReadOnlyCollection<Entry> All => _bySeal.Values;

    /// <summary>The entries that are tied to a place that is known for certain, by their numbers.</summary>
    /// <param name="root">The seal that the house begins with; null when nobody knows.</param>
    /// <param name="anchors">Seals whose numbers are known.</param>
    public SortedDictionary<long, Entry> Trunk(string? root, IReadOnlyList<(long Number, string Seal)> anchors)
    {
        var trunk = new SortedDictionary<long, Entry>();
        foreach (var (number, seal) in anchors)
            Back(trunk, number, seal);
        // From the beginning, and on from each anchor: forward as long as there is one way to go, or one that is known.
        if (root is not null)
            Forward(trunk, 0, root);
        foreach (var (number, seal) in anchors)
            Forward(trunk, number, seal);
        return trunk;
    }

    private void Back(SortedDictionary<long, Entry> trunk, long number, string seal)
    {
        while (number > 0 && _bySeal.TryGetValue(seal, out var entry) && trunk.TryAdd(number, entry with { Number = number }))
            (number, seal) = (number - 1, entry.After);
    }

    private void Forward(SortedDictionary<long, Entry> trunk, long number, string seal)
    {
        for (var next = number + 1; next < long.MaxValue; next++)
        {
            if (trunk.TryGetValue(next, out var known))
            {
                if (known.After != seal)
                    return;
                seal = known.Seal;
                continue;
            }
            if (_byAfter[seal].ToList() is not [var only] || (Seal.SaysWhere(only) && only.Number != next))
                return;
            trunk.Add(next, only with { Number = next });
            seal = only.Seal;
        }
    }
}
