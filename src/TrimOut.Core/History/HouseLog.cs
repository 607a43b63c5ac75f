using System.Collections.Immutable;
using TrimOut.Core.Houses;

namespace TrimOut.Core.History;

/// <summary>All changes of a house in their agreed order, and the house that they make.</summary>
public sealed class HouseLog
{
    private readonly ImmutableDictionary<ChangeId, Change> _byId;
    private readonly ImmutableHashSet<ChangeId> _outOfForce;

    private HouseLog(ImmutableList<Change> changes, ImmutableDictionary<ChangeId, Change> byId, ImmutableHashSet<ChangeId> outOfForce, House house)
    {
        Changes = changes;
        House = house;
        _byId = byId;
        _outOfForce = outOfForce;
    }

    /// <summary>No changes yet.</summary>
    public static HouseLog Empty { get; } = new([], ImmutableDictionary<ChangeId, Change>.Empty, [], House.Empty);

    /// <summary>The changes, in the order in which they are replayed.</summary>
    public ImmutableList<Change> Changes { get; }

    /// <summary>The house.</summary>
    public House House { get; }

    /// <summary>The largest stamp so far; 0 when there is no change.</summary>
    public long LargestStamp => Changes.IsEmpty ? 0 : Changes[^1].Stamp;

    /// <summary>The log of these changes, in whatever order they come; a change that comes twice counts once.</summary>
    /// <returns>The log, or which change came twice with different contents.</returns>
    public static Result<HouseLog> Of(IEnumerable<Change> changes)
    {
        var byId = ImmutableDictionary.CreateBuilder<ChangeId, Change>();
        foreach (var change in changes)
        {
            if (byId.TryGetValue(change.Id, out var seen) && ChangeJson.Write(seen) != ChangeJson.Write(change))
                return new Refusal($"Change {change.Id} is there twice with different contents. Neither was picked.");
            byId[change.Id] = change;
        }
        var ordered = byId.Values.ToList();
        ordered.Sort(Change.Order);
        var (house, outOfForce) = Fold.All(ordered);
        return new HouseLog([.. ordered], byId.ToImmutable(), outOfForce, house);
    }

    /// <summary>The change with that name; null when there is none.</summary>
    public Change? Find(ChangeId id) => _byId.GetValueOrDefault(id);

    /// <summary>Whether a change counts: it is there and no undo in force is about it.</summary>
    public bool IsInForce(ChangeId id) => _byId.ContainsKey(id) && !_outOfForce.Contains(id);

    /// <summary>The house as a draft would leave it, without anything being recorded.</summary>
    public static House Preview(House house, Draft draft) => Fold.Replacing(house, draft);

    /// <summary>This log and one more change.</summary>
    /// <exception cref="ArgumentException">A change with that name is there already.</exception>
    public HouseLog With(Change change)
    {
        if (_byId.ContainsKey(change.Id))
            throw new ArgumentException($"Change {change.Id} is there already.", nameof(change));
        var isLast = Changes.IsEmpty || Change.Order(Changes[^1], change) < 0;
        return isLast && !change.Edits.Any(e => e is Edit.Undo)
            ? new(Changes.Add(change), _byId.Add(change.Id, change), _outOfForce, Fold.One(House, change))
            : Of(Changes.Add(change)).Value;
    }
}
