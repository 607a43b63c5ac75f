using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using static TrimOut.Papers.Writing.Inline;

namespace TrimOut.Papers.Writing;

/// <summary>
/// What the checks of a paper's phases pass by and nobody held against its sheet: the values, and the units that they are passed for. Whoever drills by the
/// paper has no other sign that no stop stands there only because of such a value.
/// </summary>
internal static class RestsOn
{
    /// <summary>Says it, part by part, values that the same units rest on together; nothing where every check rests on what was checked.</summary>
    public static void Say(MarkdownWriter to, PaperData data, Phase[] phases)
    {
        var unread = data.Report.Unread.Where(u => phases.Contains(u.Check.Phase)).ToList();
        if (unread.Count == 0)
            return;
        to.Say(Strong("Rests on values that nobody checked.") + Ours("Hold them against the makers' sheets first; other values may be a stop."));
        to.Table(["Part", "Values", "Where"], unread.SelectMany(u => u.Values, (u, value) => (u, value))
            .GroupBy(x => x.value.Item).OrderBy(g => data.House.Find(g.Key)!.Kind).ThenBy(g => data.House.Find(g.Key)!.Place)
            .SelectMany(part => Rows(data.House, data.House.Find(part.Key)!, part.ToLookup(x => x.value.Field, x => x.u.Subject))));
    }

    private static IEnumerable<Inline[]> Rows(House house, Item part, ILookup<string, Item> byValue) => byValue
        .Select(v => (Fact: FactTable.Find(part.Kind, v.Key)!, Names: v.SelectMany(s => Named(house, s, part)).Distinct().ToList()))
        .GroupBy(v => string.Join(", ", v.Names.Order(StringComparer.Ordinal)))
        .Select(g => MarkdownWriter.Row(NameOf(house, part),
            Join("; ", [.. g.OrderBy(v => FactTable.Of(part.Kind).ToList().IndexOf(v.Fact)).Select(v => Ours(v.Fact.Label) + Value(house, part, v.Fact))]),
            IsAll(house, part, g.First().Names) ? Ours("all with this part") : g.First().Names.JoinOrDash()));

    private static Inline Value(House house, Item part, Fact fact) => new Part(house, part).Entry(fact);

    /// <summary>The units of a window that have the part, the unit of a run, and of anything else its name.</summary>
    private static IEnumerable<string> Named(House house, Item subject, Item part) => subject.Kind switch
    {
        ItemKind.Window => house.FindWindow(subject.Id)!.Units.Where(u => u.Parts.Any(p => p.Id == part.Id)).Select(u => u.Tag)
            .DefaultIfEmpty(house.NameOf(subject)),
        ItemKind.Run or ItemKind.Leg => Named(house, house.Find(subject.Under)!, part),
        _ => [house.NameOf(subject)],
    };

    private static bool IsAll(House house, Item part, List<string> names) =>
        house.Units.Where(u => u.Parts.Any(p => p.Id == part.Id)).Select(u => u.Tag).ToList() is { Count: > 3 } all && all.TrueForAll(names.Contains);

    private sealed class Part(House house, Item item) : KitSheet(house, item);
}
