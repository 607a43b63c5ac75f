using System.Collections.Immutable;
using System.Globalization;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;

namespace TrimOut.Core.History;

/// <summary>What stands in a history and does not count in the house: nothing of it is lost, and nobody is left to think that it does.</summary>
public static class NotCounted
{
    /// <summary>A sentence for each such thing, in the order of the history; none for what was undone or put over since.</summary>
    public static ImmutableArray<string> Of(HouseLog log)
    {
        var added = log.Added;
        var sentences = ImmutableArray.CreateBuilder<string>();
        // In a fold that was kept all counts, and what comes after it without undoing anything can't change that.
        foreach (var change in log.Folded.AllCounts ? log.Late : log.Changes)
        {
            foreach (var edit in change.Edits)
            {
                if (WhyNot(log, added, change, edit) is { } why && log.IsInForce(change.Id))
                    sentences.Add(string.Create(CultureInfo.InvariantCulture, $"Change {change.Id}, {change.SaidAt:yyyy-MM-dd} by {change.By}: {why}"));
            }
        }
        return sentences.DrainToImmutable();
    }

    private static string? WhyNot(HouseLog log, HashSet<string> added, Change change, Edit edit) => edit switch
    {
        Edit.Unread => "an edit that was written by a newer TrimOut. It is kept, and does not count here.",
        Edit.Add add when !added.Contains(add.Under) => $"a {KebabCase.Of(add.Kind)} was added to {add.Under}, which isn't there.",
        Edit.Undo undo when log.Find(undo.Of) is null => $"change {undo.Of} was undone, which isn't there.",
        Edit.Put put when !added.Contains(put.Item) => $"{put.Field} was put to {put.Item}, which isn't there.",
        Edit.Put { Value: not null } put when log.House.Find(put.Item) is { } item && item.Latest(put.Field) is { Stored: not null } head
            && head.Id == change.Id => WhyNot(log.House, added, item, put.Field, head),
        _ => null,
    };

    private static string? WhyNot(House house, HashSet<string> added, Item item, string field, Head head)
    {
        if (field == Item.RemovedField || StepVersion.IsNote(field) || AskedAgain.IsNote(field))
            return null;
        if (FactTable.Find(item.Kind, Companion.Beside(field) ?? field) is not { } fact)
            return $"{house.NameOf(item)} has {field} \"{head.Stored}\". No detail of this version is called that: it is kept, and does not count here.";
        if (Companion.Beside(field) is not null)
            return null;
        if (fact.IsKeyed && !fact.IsByStep && !added.Contains(field[(fact.Name.Length + 1)..]))
            return $"{house.NameOf(item)}: {fact.Label} is about {field[(fact.Name.Length + 1)..]}, which isn't there.";
        return head.Value switch
        {
            null => $"{house.NameOf(item)}: {fact.Label} can't be \"{head.Stored}\". {fact.DecodeAny(head.Stored!).Reason}",
            ItemRef to when !added.Contains(to.Id) => $"{house.NameOf(item)}: {fact.Label} is {to.Id}, which isn't there.",
            _ => null,
        };
    }
}
