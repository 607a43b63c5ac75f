using System.Collections.Immutable;

namespace TrimOut.Core.History;

/// <summary>The changes of a history that were folded at once: they are there, or are read when somebody asks for one of them.</summary>
internal sealed class FoldedChanges
{
    private readonly Lazy<(ImmutableList<Change> Ordered, Dictionary<ChangeId, Change> ById)> _changes;
    private readonly Lazy<Seen> _seen;

    /// <summary>Changes that are there.</summary>
    /// <param name="ordered">In their order.</param>
    /// <param name="byId">The same by name.</param>
    public FoldedChanges(ImmutableList<Change> ordered, Dictionary<ChangeId, Change> byId)
    {
        _changes = new((ordered, byId));
        _seen = new(() => Seen.Of(byId.Keys));
        Last = ordered.IsEmpty ? null : (ordered[^1].Stamp, ordered[^1].Id);
    }

    /// <summary>Changes that are read when somebody asks for one of them; all of them count.</summary>
    /// <param name="last">The last of them, by its stamp and name.</param>
    /// <param name="seen">How far each device's changes are among them.</param>
    /// <param name="takenBack">The items that they added and whose adding was undone.</param>
    /// <param name="read">Reads them, in any order, each once or more.</param>
    public FoldedChanges((long Stamp, ChangeId Id)? last, Seen seen, ImmutableArray<string> takenBack, Func<IReadOnlyList<Change>> read)
    {
        _changes = new(() =>
        {
            var byId = new Dictionary<ChangeId, Change>();
            foreach (var change in read())
                byId.TryAdd(change.Id, change);
            return ([.. byId.Values.Order(Comparer<Change>.Create(Change.Order))], byId);
        });
        _seen = new(seen);
        Last = last;
        TakenBack = takenBack;
        AllCounts = true;
    }

    /// <summary>In their order.</summary>
    public ImmutableList<Change> Ordered => _changes.Value.Ordered;

    /// <summary>The last of them, by its stamp and name; null when there is none.</summary>
    public (long Stamp, ChangeId Id)? Last { get; }

    /// <summary>How far each device's changes are among them.</summary>
    public Seen Seen => _seen.Value;

    /// <summary>The items that they added and whose adding was undone; null where that was not kept.</summary>
    public ImmutableArray<string>? TakenBack { get; }

    /// <summary>Whether it is known that nothing in them fails to count: see <see cref="NotCounted"/>.</summary>
    public bool AllCounts { get; }

    /// <summary>The change with that name; null when there is none.</summary>
    public Change? Find(ChangeId id) => _changes.IsValueCreated || Seen.Covers(id) ? _changes.Value.ById.GetValueOrDefault(id) : null;
}
