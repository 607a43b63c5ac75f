using TrimOut.Core.Checks;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;
using TrimOut.Core.Phases;
using static TrimOut.Papers.Writing.Inline;

namespace TrimOut.Papers.Writing;

/// <summary>
/// What the printed figures of a paper, and the checks of its phases that pass, rest on and nobody held against its sheet: the values, and the units whose
/// figures and checks they are. Whoever drills by the paper has no other sign that no stop stands there only because of such a value.
/// </summary>
internal static class RestsOn
{
    /// <summary>Says it, part by part, values that the same units rest on together; nothing where all rests on what was checked.</summary>
    public static void Say(MarkdownWriter to, PaperData data, Phase[] phases)
    {
        var house = data.House;
        var rests = new Dictionary<FieldRef, HashSet<Item?>>();
        // Whether a sheet agrees with itself is a matter of the kit, and of no unit on a paper.
        foreach (var passed in data.Report.Unread.Where(u => phases.Contains(u.Check.Phase)))
        {
            foreach (var value in passed.Values.Where(v => v.Item != passed.Subject.Id))
                Add(value, passed.Subject);
        }
        // What a frozen sheet rested on may have been checked since.
        foreach (var mark in data.Printed.Where(m => IsUnchecked(house, m.Value)))
            Add(mark.Value, mark.Unit is { } unit ? house.Find(unit) : null);
        if (rests.Count == 0)
            return;
        to.Say(Strong("Rests on values that nobody checked.") + Ours("Hold them against the makers' sheets first; other values may be a stop."));
        to.Table(["Part", "Values", "Where"], rests.GroupBy(r => house.Find(r.Key.Item)!).OrderBy(g => g.Key.Kind).ThenBy(g => g.Key.Place)
            .SelectMany(part => Rows(house, part.Key, [.. data.UnitsByPart[part.Key.Id]], part)));

        void Add(FieldRef value, Item? of)
        {
            if (!rests.TryGetValue(value, out var all))
                rests.Add(value, all = []);
            all.Add(of);
        }
    }

    private static bool IsUnchecked(House house, FieldRef value) => house.Find(value.Item) is { Removed: false } part
        && SheetValues.NotHeldIn(part).Any(f => f.Name == value.Field);

    /// <param name="house">The house.</param>
    /// <param name="part">The part.</param>
    /// <param name="having">The units that have it.</param>
    /// <param name="byValue">What rests on each of its values; null for what rests on it wherever the part is.</param>
    private static IEnumerable<Inline[]> Rows(House house, Item part, Unit[] having,
        IEnumerable<KeyValuePair<FieldRef, HashSet<Item?>>> byValue)
    {
        var (byWindow, tags) = (having.ToLookup(u => u.Window.Id, u => u.Tag), Array.ConvertAll(having, u => u.Tag));
        var place = house.Units.Index().DistinctBy(u => u.Item.Tag).ToDictionary(u => u.Item.Tag, u => u.Index);
        // Many values of a part rest under the same units.
        var named = byValue.SelectMany(v => v.Value).DistinctBy(of => of?.Id).ToDictionary(of => of?.Id ?? "", of => Named(of).ToArray());
        return byValue
            .Select(v => (Fact: FactTable.Find(part.Kind, v.Key.Field)!, Names: v.Value.SelectMany(of => named[of?.Id ?? ""]).ToHashSet()))
            .GroupBy(v => v.Names, HashSet<string>.CreateSetComparer())
            .Select(g => MarkdownWriter.Row(NameOf(house, part),
                Join("; ", [.. g.OrderBy(v => FactTable.Of(part.Kind).ToList().IndexOf(v.Fact)).Select(v => Ours(v.Fact.Label) + Value(house, part, v.Fact))]),
                tags.Length > 3 && g.Key.IsSupersetOf(tags) ? Ours("all with this part")
                    : g.Key.OrderBy(n => place.GetValueOrDefault(n, -1)).JoinOrDash()));

        // The units of a window that have the part, the unit of a run, and of anything else its name; of the part itself the panels of its type, or the
        // units that have it.
        IEnumerable<string> Named(Item? subject) => subject?.Kind switch
        {
            null => part.Kind == ItemKind.PanelType ? house.Panels.Where(p => p.Type?.Id == part.Id).Select(p => p.Name) : tags,
            ItemKind.Window => byWindow[subject!.Id].DefaultIfEmpty(house.NameOf(subject)),
            ItemKind.Run or ItemKind.Leg => Named(house.Find(subject!.Under)!),
            _ => [house.NameOf(subject!)],
        };
    }

    private static Inline Value(House house, Item part, Fact fact) => new Part(house, part).Entry(fact);

    private sealed class Part(House house, Item item) : KitSheet(house, item);
}
