using System.Collections.Immutable;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Wording;

namespace TrimOut.Core.History;

/// <summary>A fact to which two laptops put different values, neither having seen the other's.</summary>
/// <param name="Item">The item.</param>
/// <param name="Fact">The fact.</param>
/// <param name="Key">For a keyed fact, which of its values; else null.</param>
/// <param name="Heads">The values with who put them and when; the last is the one that is shown.</param>
public sealed record Disagreement(Item Item, Fact Fact, string? Key, ImmutableArray<Head> Heads)
{
    private static readonly Message PutBy = new("{0} by {1} on {2}");
    private static readonly Message TakenAwayBy = new("nothing by {0} on {1}");

    /// <summary>All of a house, in the order in which items were added.</summary>
    public static IEnumerable<Disagreement> All(House house) =>
        Enum.GetValues<ItemKind>().SelectMany(house.ItemsOf).SelectMany(Of).OrderBy(d => d.Item.Place);

    /// <summary>Whether there is one about a fact of an item.</summary>
    public static bool IsAbout(Item item, Fact fact)
    {
        if (fact.IsKeyed)
            return Of(item).Any(d => d.Fact == fact);
        item.Latest(fact.Name, out var several);
        return several && Of(item).Any(d => d.Fact == fact);
    }

    /// <summary>All of one item, in the order of its fields.</summary>
    public static IEnumerable<Disagreement> Of(Item item)
    {
        List<Disagreement>? found = null;
        foreach (var (field, heads) in item.Fields)
        {
            if (heads.Length > 1 && heads.Select(h => h.Stored).Distinct().Count() > 1 && FactTable.Find(item.Kind, field) is { } fact)
                (found ??= []).Add(new Disagreement(item, fact, fact.IsKeyed ? field[fact.Field("").Length..] : null, heads));
        }
        return found?.OrderBy(d => d.Fact.Field(d.Key), StringComparer.Ordinal) ?? Enumerable.Empty<Disagreement>();
    }

    /// <summary>One of the values as it is shown: the value, by whom, when by that laptop's clock.</summary>
    public Sentence Words(Head head) => head.Stored is { } stored
        ? PutBy.With(head.Value is { } value ? Arg.Value(Fact, value) : Arg.Typed(stored), Arg.Typed(head.By), Arg.When(head.At))
        : TakenAwayBy.With(Arg.Typed(head.By), Arg.When(head.At));

    /// <summary>The same in English, as a house shows it.</summary>
    public string Show(Head head, House house) => Words(head).In(house);
}
