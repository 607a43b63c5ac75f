using TrimOut.Core.Houses;

namespace TrimOut.Core.History;

/// <summary>Who last said something about a value, also by undoing what was said of it before.</summary>
public sealed class LastSaid
{
    private readonly Dictionary<(string Item, string Field), Change> _last = [];

    /// <summary>Goes through a history once.</summary>
    public LastSaid(HouseLog log)
    {
        foreach (var change in log.Changes)
        {
            if (log.IsInForce(change.Id))
                Note(log, change, change, []);
        }
    }

    /// <summary>The last change in force that put one of these fields, took it away, or undid a change that had; null when none did.</summary>
    /// <remarks>The field <see cref="Item.RemovedField"/> stands for an item's being there at all: adding it counts too.</remarks>
    public Change? Of(IEnumerable<(string Item, string Field)> fields) =>
        fields.Select(f => _last.GetValueOrDefault(f)).OfType<Change>().OrderByDescending(c => c, Comparer<Change>.Create(Change.Order)).FirstOrDefault();

    private void Note(HouseLog log, Change said, Change by, HashSet<ChangeId> through)
    {
        foreach (var edit in said.Edits)
        {
            if (edit is Edit.Put put)
                _last[(put.Item, put.Field)] = by;
            else if (edit is Edit.Add add)
                _last[(add.Item, Item.RemovedField)] = by;
            else if (edit is Edit.Undo undo && through.Add(undo.Of) && log.Find(undo.Of) is { } undone)
                Note(log, undone, by, through);
        }
    }
}
