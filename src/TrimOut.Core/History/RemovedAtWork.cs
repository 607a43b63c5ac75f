using System.Collections.Immutable;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Wording;

namespace TrimOut.Core.History;

/// <summary>An item that one laptop removed while another, not knowing of it, went on with it or brought it back.</summary>
/// <param name="Item">The item; with what belongs to it.</param>
/// <param name="Removal">Who removed it, and when.</param>
/// <param name="Work">The values that were put by others meanwhile; for an item that was brought back meanwhile, that.</param>
public sealed record RemovedAtWork(Item Item, Head Removal, ImmutableArray<(Item Item, string Field, Head Head)> Work)
{
    private static readonly Message BroughtBack = new("{0} removed it on {1}, while {2} brought it back.");
    private static readonly Message WentOn = new("{0} removed it on {1}, while {2} went on with it ({3}).");
    private static readonly Message More = new("{0} more");

    private const int FactsShown = 4;

    /// <summary>All of a house, in the order in which items were added.</summary>
    public static IEnumerable<RemovedAtWork> All(House house)
    {
        var asked = house.Removals.ToList();
        if (asked.Count == 0)
            return [];
        // Who lets something pass does no work on it.
        var work = house.Items.Values.Where(i => i.Kind != ItemKind.Waiver && !house.IsPresent(i)).SelectMany(i => Unseen(house, i))
            .ToLookup(w => w.Root.Id, w => (w.Item, w.Field, w.Head));
        return asked.Select(i => Of(i, work[i.Id])).OfType<RemovedAtWork>();
    }

    /// <summary>What happened, without the item's name.</summary>
    public Sentence Words
    {
        get
        {
            var others = Arg.All(Work.Select(w => w.Head.By).Distinct().Select(Arg.Typed));
            var words = Work.Any(w => w.Field == Item.RemovedField)
                ? BroughtBack.With(Arg.Typed(Removal.By), Arg.When(Removal.At), others)
                : WentOn.With(Arg.Typed(Removal.By), Arg.When(Removal.At), others, Facts());
            return words.StandingFor(Work.Select(w => Arg.Typed($"{w.Item.Id} {w.Field}")));
        }
    }

    /// <summary>The same in English, as a house shows it.</summary>
    public string Show(House house) => Words.In(house);

    private static RemovedAtWork? Of(Item item, IEnumerable<(Item Item, string Field, Head Head)> work)
    {
        var heads = item.Heads(Item.RemovedField);
        if (heads.LastOrDefault(h => h.Stored is not null) is not { } removal)
            return null;
        // Where one brought it back and another removed it, whichever comes last in the history is in force; nobody decided that.
        var back = heads.Where(h => h.Stored is null).Select(h => (item, Item.RemovedField, h)).ToList();
        ImmutableArray<(Item, string, Head)> meanwhile = back.Count > 0 ? [.. back] : [.. work];
        return meanwhile.IsEmpty ? null : new RemovedAtWork(item, removal, meanwhile);
    }

    /// <summary>The values of an item that nobody had seen who removed it or what it belongs to, with the outermost item that was removed.</summary>
    private static IEnumerable<(Item Root, Item Item, string Field, Head Head)> Unseen(House house, Item item)
    {
        var above = new List<Item>();
        for (var at = item; at is not null && !above.Contains(at); at = house.Find(at.Under))
            above.Add(at);
        if (above.FindLast(i => i.Removed) is not { } root)
            yield break;
        foreach (var (field, heads) in item.Fields.OrderBy(f => f.Key, StringComparer.Ordinal))
        {
            foreach (var head in heads.Where(h => field != Item.RemovedField && !above.Any(i => Seen.ByRemover(i, h.Id))))
                yield return (root, item, field, head);
        }
    }

    private Arg Facts()
    {
        var facts = Work.OrderBy(w => w.Item.Place).Select(w => FactTable.Find(w.Item.Kind, w.Field)).OfType<Fact>().DistinctBy(f => f.Label).ToList();
        var labels = facts.Select(f => Arg.Label(f, small: false)).ToList();
        return facts.Count <= FactsShown ? Arg.All(labels)
            : Arg.Of(labels, Arg.All([.. labels.Take(FactsShown), More.With(facts.Count - FactsShown)]));
    }
}
