using TrimOut.Core.Facts;

namespace TrimOut.Core.Houses;

/// <summary>What in a house uses a thing of it: the units of a kind of covering, the runs of a cable, the panels, hubs and remotes of a type.</summary>
public static class UsersOf
{
    /// <summary>All that name it in one of their details, in the order in which they were added; what was removed uses nothing.</summary>
    /// <param name="house">The house.</param>
    /// <param name="item">What is used.</param>
    public static IEnumerable<Item> All(House house, Item item) => house.Items.Values.Where(i => i.Id != item.Id && house.IsPresent(i)
        && FactTable.Of(i.Kind).OfType<Fact<ItemRef>>().Any(f => !f.IsKeyed && i.Get(f)?.Id == item.Id));

    /// <summary>What they are called, each once: a run is called as its unit.</summary>
    /// <param name="house">The house.</param>
    /// <param name="item">What is used.</param>
    public static IReadOnlyList<string> Names(House house, Item item) => [.. All(house, item).Select(house.NameOf).Distinct()];
}
