using System.Globalization;
using TrimOut.Core.Houses;

namespace TrimOut.Core.History;

/// <summary>How far somebody had seen a history: up to which change of each device.</summary>
/// <remarks>
/// A removal is stored with it, as "device:number" for every device with spaces between. What was done to the removed item
/// and is not covered was done without knowing of the removal. The order of changes can't tell: it is the same whether the
/// earlier one was seen or not.
/// </remarks>
internal sealed class Seen
{
    private readonly SortedDictionary<string, long> _last = new(StringComparer.Ordinal);

    /// <summary>All of these changes, and whatever their devices did before.</summary>
    public static Seen Of(IEnumerable<ChangeId> changes)
    {
        var seen = new Seen();
        foreach (var change in changes)
            seen._last[change.Device] = Math.Max(change.Sequence, seen._last.GetValueOrDefault(change.Device));
        return seen;
    }

    /// <summary>All of this, these changes, and whatever their devices did before.</summary>
    public Seen With(IEnumerable<ChangeId> changes) => Of(Last.Concat(changes));

    /// <summary>The last change of each device.</summary>
    public IEnumerable<ChangeId> Last => _last.Select(l => new ChangeId(l.Key, l.Value));

    /// <summary>The number of a device's last change; 0 when it has none.</summary>
    public long LastOf(string device) => _last.GetValueOrDefault(device);

    /// <summary>Reads the stored form; null when it does not say.</summary>
    public static Seen? Read(string stored)
    {
        var changes = stored.Split(' ').Select(ChangeId.Read).ToList();
        return changes.Contains(null) ? null : Of(changes.OfType<ChangeId>());
    }

    /// <summary>Whether a change had been seen.</summary>
    public bool Covers(ChangeId change) => change.Sequence <= _last.GetValueOrDefault(change.Device);

    /// <summary>What was seen of all devices but one, in the stored form.</summary>
    public string Without(string device) => Stored(_last.Where(l => l.Key != device));

    /// <summary>The stored form.</summary>
    public override string ToString() => Stored(_last);

    /// <summary>Whether whoever removed an item, or last said anything about that, had seen a change.</summary>
    public static bool ByRemover(Item item, ChangeId change) =>
        item.Heads(Item.RemovedField).Any(h => h.Stored is { } stored && (Read(stored)?.Covers(change) ?? true));

    private static string Stored(IEnumerable<KeyValuePair<string, long>> last) =>
        string.Join(' ', last.Select(l => string.Create(CultureInfo.InvariantCulture, $"{l.Key}:{l.Value}")));
}
