using System.Collections.Immutable;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;

namespace TrimOut.Core.History;

/// <summary>How two copies of a house differ.</summary>
/// <param name="OnlyHere">Changes that only the first has.</param>
/// <param name="OnlyThere">Changes that only the second has.</param>
/// <param name="Values">Facts that show differently: item and fact, here, there; a dash where there is none.</param>
public sealed record Difference(ImmutableArray<Change> OnlyHere, ImmutableArray<Change> OnlyThere,
    ImmutableArray<(string What, string Here, string There)> Values)
{
    /// <summary>Holds two histories against each other.</summary>
    public static Difference Between(HouseLog here, HouseLog there) => new(
        [.. here.Changes.Where(c => there.Find(c.Id) is null)],
        [.. there.Changes.Where(c => here.Find(c.Id) is null)],
        [.. Differing(here.House, there.House)]);

    private static IEnumerable<(string, string, string)> Differing(House here, House there)
    {
        foreach (var id in here.Items.Values.Concat(there.Items.Values).OrderBy(i => i.Place).Select(i => i.Id).Distinct())
        {
            var (a, b) = (Present(here, id), Present(there, id));
            if ((a ?? b) is not { } item)
                continue;
            var name = a is not null ? here.NameOf(a) : there.NameOf(item);
            foreach (var field in new[] { a, b }.OfType<Item>().SelectMany(i => i.Fields.Select(f => f.Key)).Distinct().Order(StringComparer.Ordinal))
            {
                if (a?.Latest(field)?.Stored != b?.Latest(field)?.Stored && FactTable.Find(item.Kind, field) is { } fact)
                    yield return ($"{name}: {fact.Label}", Shown(fact, a, here, field), Shown(fact, b, there, field));
            }
        }
    }

    private static Item? Present(House house, string id) =>
        house.Find(id) is { } item && house.ItemsOf(item.Kind).Any(i => i.Id == id) ? item : null;

    private static string Shown(Fact fact, Item? item, House house, string field) =>
        item?.Latest(field) is { Stored: { } stored } head ? head.Value is { } value ? fact.Show(value, house) : stored : "-";
}
