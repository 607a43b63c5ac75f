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
        // Whether a sheet agrees with itself is a matter of the kit, and of no unit on a paper.
        var passed = data.Report.Unread.Where(u => phases.Contains(u.Check.Phase))
            .SelectMany(u => u.Values.Where(v => v.Item != u.Subject.Id), (u, value) => (Value: value, Of: (Item?)u.Subject));
        // What a frozen sheet rested on may have been checked since.
        var printed = data.Printed.Where(m => IsUnchecked(house, m.Value)).Select(m => (m.Value, Of: m.Unit is { } unit ? house.Find(unit) : null));
        var rests = passed.Concat(printed).ToList();
        if (rests.Count == 0)
            return;
        to.Say(Strong("Rests on values that nobody checked.") + Ours("Hold them against the makers' sheets first; other values may be a stop."));
        to.Table(["Part", "Values", "Where"], rests
            .GroupBy(x => x.Value.Item).OrderBy(g => house.Find(g.Key)!.Kind).ThenBy(g => house.Find(g.Key)!.Place)
            .SelectMany(part => Rows(house, house.Find(part.Key)!, [.. data.UnitsByPart[part.Key]], part.ToLookup(x => x.Value.Field, x => x.Of))));
    }

    private static bool IsUnchecked(House house, FieldRef value) => house.Find(value.Item) is { Removed: false } part
        && SheetValues.NotHeldIn(part).Any(f => f.Name == value.Field);

    /// <param name="house">The house.</param>
    /// <param name="part">The part.</param>
    /// <param name="having">The units that have it.</param>
    /// <param name="byValue">What rests on each of its values; null for what rests on it wherever the part is.</param>
    private static IEnumerable<Inline[]> Rows(House house, Item part, Unit[] having, ILookup<string, Item?> byValue)
    {
        var byWindow = having.ToLookup(u => u.Window.Id, u => u.Tag);
        return byValue
            .Select(v => (Fact: FactTable.Find(part.Kind, v.Key)!, Names: v.Distinct().SelectMany(Named).ToHashSet()))
            .GroupBy(v => v.Names, HashSet<string>.CreateSetComparer())
            .Select(g => MarkdownWriter.Row(NameOf(house, part),
                Join("; ", [.. g.OrderBy(v => FactTable.Of(part.Kind).ToList().IndexOf(v.Fact)).Select(v => Ours(v.Fact.Label) + Value(house, part, v.Fact))]),
                having.Length > 3 && having.All(u => g.Key.Contains(u.Tag)) ? Ours("all with this part") : g.Key.JoinOrDash()));

        // The units of a window that have the part, the unit of a run, and of anything else its name; of the part itself the panels of its type, or the
        // units that have it.
        IEnumerable<string> Named(Item? subject) => subject?.Kind switch
        {
            null => part.Kind == ItemKind.PanelType ? house.Panels.Where(p => p.Type?.Id == part.Id).Select(p => p.Name) : having.Select(u => u.Tag),
            ItemKind.Window => byWindow[subject!.Id].DefaultIfEmpty(house.NameOf(subject)),
            ItemKind.Run or ItemKind.Leg => Named(house.Find(subject!.Under)!),
            _ => [house.NameOf(subject!)],
        };
    }

    private static Inline Value(House house, Item part, Fact fact) => new Part(house, part).Entry(fact);

    private sealed class Part(House house, Item item) : KitSheet(house, item);
}
