namespace TrimOut.Core.History;

/// <summary>A change that added items, and the change that undid it.</summary>
internal sealed class TakenBack(Change added, Change by)
{
    private readonly Dictionary<string, string> _under = added.Edits.OfType<Edit.Add>().DistinctBy(a => a.Item).ToDictionary(a => a.Item, a => a.Under);

    /// <summary>The change that added.</summary>
    public Change Added { get; } = added;

    /// <summary>The change that undid it.</summary>
    public Change By { get; } = by;

    /// <summary>All items of a history whose adding was undone.</summary>
    /// <param name="ordered">The changes, in their order.</param>
    /// <param name="undone">Those that were undone, each with the change that undid it.</param>
    public static Dictionary<string, TakenBack> All(IReadOnlyList<Change> ordered, Dictionary<ChangeId, Change> undone)
    {
        var all = new Dictionary<string, TakenBack>();
        foreach (var change in ordered)
        {
            if (!undone.TryGetValue(change.Id, out var by) || !change.Edits.Any(e => e is Edit.Add))
                continue;
            var taken = new TakenBack(change, by);
            foreach (var item in taken._under.Keys)
                all.TryAdd(item, taken);
        }
        return all;
    }

    /// <summary>The outermost item that the change added above an item; null for an item that it did not add.</summary>
    public string? RootOf(string item)
    {
        if (!_under.ContainsKey(item))
            return null;
        // A history that no program wrote may go round in circles.
        for (var steps = _under.Count; steps > 0 && _under.TryGetValue(item, out var above) && _under.ContainsKey(above); steps--)
            item = above;
        return item;
    }
}
