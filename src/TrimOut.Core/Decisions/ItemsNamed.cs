using System.Collections.Immutable;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Plans.Parts;

namespace TrimOut.Core.Decisions;

/// <summary>Which items a name means: whatever stands in a house can be named as the screens name it.</summary>
public static class ItemsNamed
{
    private static readonly ItemKind[] Kinds = [.. Enum.GetValues<ItemKind>().Where(k => k is not (ItemKind.House or ItemKind.Window or ItemKind.Unit
        or ItemKind.Run or ItemKind.Leg or ItemKind.Waiver))];

    /// <summary>What a sort of item is called: covering kind, punch.</summary>
    public static string Word(ItemKind kind) => KebabCase.Of(kind).Replace('-', ' ');

    /// <summary>The sort of item that a word means, of those that have names of their own; null for any other word.</summary>
    public static ItemKind? Sort(string word) => Kinds.Cast<ItemKind?>().FirstOrDefault(k => SameName.Comparer.Equals(Word(k!.Value), word.Replace('-', ' ')));

    /// <summary>
    /// The items that are meant, those first whose details are looked at first: of a tag the window, the unit and its run; of @Kitchen the room; of house the
    /// house; of anything else what has that name, behind its sort where two sorts have one: <c>panel P1</c>.
    /// </summary>
    public static Result<ImmutableArray<Item>> Find(House house, string typed)
    {
        var name = typed.Trim();
        if (name is ['@', .. var room])
            return Room(house, room.Trim());
        if (house.Windows.Count(w => SameName.Comparer.Equals(w.Tag, name)) is > 1 and var many)
            return new Refusal($"There are {many} windows {name}: rename one of them on the screens first.");
        var unit = house.Units.FirstOrDefault(u => SameName.Comparer.Equals(u.Tag, name));
        if ((house.FindTag(name) ?? unit?.Window) is { } window)
        {
            unit ??= window.Units.FirstOrDefault();
            return ImmutableArray.CreateRange(new[] { window.Item, unit?.Item, unit is null ? null : CableOf(unit) }.OfType<Item>());
        }
        var named = Kinds.SelectMany(k => house.ItemsOf(k)).Where(i => IsCalled(house, i, name)).ToList();
        return named is [var one] ? ImmutableArray.Create(one)
            : named.Count > 1 ? new Refusal(named.Select(i => i.Kind).Distinct().Count() > 1
                ? $"{name} is more than one thing: write {string.Join(" or ", named.Select(i => $"{Word(i.Kind)} {house.NameOf(i)}").Distinct())}."
                : named[0].Kind == ItemKind.Room ? $"There are {named.Count} rooms {name}. Write @ with the floor behind a slash, such as @{name}/Upper."
                : $"There are {named.Count} called {name}: rename one of them on the screens first.")
            : SameName.Comparer.Equals(name, "house") || SameName.Comparer.Equals(name, house.Name) ? ImmutableArray.Create(house.Job)
            : OfItsSort(house, name) is { } of ? of
            : new Refusal($"There is no window {name}, and nothing else of that name. Rooms, panels, hubs, remotes, boxes, contacts, visits and parts "
                + "of the kit are written by their names, the house itself as house.");
    }

    /// <summary>Its run; of a unit that needs none the cable that was landed or read all the same, so that what is written of it can be cleared.</summary>
    private static Item? CableOf(Unit unit) => unit.Run?.Item
        ?? (unit.CableThatIsThere is { } run && (run.Get(RunFacts.Panel) is not null || CableInWall.IsThere(unit)) ? run : null);

    /// <summary>Why a name behind its sort is none, with those that there are; null where no sort stands before it.</summary>
    private static Refusal? OfItsSort(House house, string name)
    {
        foreach (var kind in Kinds)
        {
            foreach (var sort in new[] { Word(kind), KebabCase.Of(kind) })
            {
                if (!SameName.Comparer.Equals(name, sort) && !name.StartsWith(sort + " ", StringComparison.OrdinalIgnoreCase))
                    continue;
                var names = string.Join(", ", house.ItemsOf(kind).Select(house.NameOf).Take(MostNames));
                return names.Length == 0 ? new Refusal($"This house has no {Word(kind)} yet.")
                    : SameName.Comparer.Equals(name, sort) ? new Refusal($"Say which {Word(kind)}: {names}.")
                    : new Refusal($"There is no {Word(kind)} {name[(sort.Length + 1)..].Trim()}. There are: {names}.");
            }
        }
        return null;
    }

    private const int MostNames = 8;

    private static bool IsCalled(House house, Item item, string name)
    {
        var called = house.NameOf(item);
        return new[] { called, $"{Word(item.Kind)} {called}", $"{KebabCase.Of(item.Kind)} {called}" }.Any(c => SameName.Comparer.Equals(c, name));
    }

    private static Result<ImmutableArray<Item>> Room(House house, string named) => RoomNames.Read(named, house).Then<ImmutableArray<Item>>(read =>
        read.Id is { } id && house.FindRoom(id) is { } room ? ImmutableArray.Create(room.Item) : new Refusal($"There is no room {named}."));
}
