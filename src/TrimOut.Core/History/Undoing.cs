using System.Collections.Frozen;
using TrimOut.Core.Houses;

namespace TrimOut.Core.History;

/// <summary>Puts a last change that undoes others on top of a house: only the items that these were about are folded again.</summary>
internal static class Undoing
{
    /// <summary>The house after it, and the changes that were undone, each with the change that undid it.</summary>
    /// <param name="before">The house before it.</param>
    /// <param name="undoneBefore">The changes that were undone before it.</param>
    /// <param name="ordered">The changes in their order, it among them.</param>
    /// <returns>Null where items come or go with it, or went before: then all has to be folded.</returns>
    public static (House House, FrozenDictionary<ChangeId, ChangeId> Undone)? On(House before, FrozenDictionary<ChangeId, ChangeId> undoneBefore,
        IReadOnlyCollection<Change> ordered)
    {
        Change[] all = [.. ordered];
        var undone = Fold.Undone(all).ToFrozenDictionary(u => u.Key, u => u.Value.Id);
        // Who undid the adding of an item stands in the item, so that another one makes another item.
        var others = undone.Except(undoneBefore).Concat(undoneBefore.Except(undone)).Select(u => u.Key).Append(all[^1].Id).ToHashSet();
        var edits = all.Where(c => others.Contains(c.Id)).SelectMany(c => c.Edits).Where(e => e is not Edit.Undo).ToList();
        if (!edits.TrueForAll(e => e is Edit.Put))
            return null;
        var about = edits.Select(e => ((Edit.Put)e).Item).ToHashSet();
        var items = before.Items;
        var growing = new GrowingHouse(about.Select(items.Find).OfType<Item>());
        HashSet<string> added = [House.RootId];
        foreach (var change in all)
        {
            var puts = new List<Edit>();
            foreach (var edit in change.Edits)
            {
                if (edit is Edit.Add add && about.Contains(add.Item))
                {
                    if (undone.ContainsKey(change.Id))
                        return null;
                    added.Add(add.Item);
                }
                else if (edit is Edit.Put put && about.Contains(put.Item) && added.Contains(put.Item))
                {
                    puts.Add(put);
                }
            }
            if (puts.Count > 0 && !undone.ContainsKey(change.Id))
                growing.Add(new Change(change.Id, change.Stamp, change.SaidAt, change.By, change.What, [.. puts]));
        }
        var after = items.Edit();
        foreach (var item in growing.Items)
            after.Set(item);
        return (before.After(after.Done(), [.. edits]), undone);
    }
}
