using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;

namespace TrimOut.Core.Decisions;

/// <summary>Takes items out of the house, and brings them back with all they had.</summary>
public static class RemoveItems
{
    /// <summary>Takes an item and all that belongs to it out of the house.</summary>
    public static Result<Draft> Remove(House house, Item item) => item.Kind == ItemKind.House
        ? new Refusal("The house itself can't be removed.")
        : item.Removed ? new Refusal("That was removed already.")
        : item.Kind == ItemKind.Service ? RecordService.WithSerialBefore(Out(item, $"Removed {house.NameOf(item)}"), new Service(house, item))
        : Out(item, $"Removed {house.NameOf(item)}{UsedBy(house, item)}");

    /// <summary>By how many things a part, a panel or a hub is used that go without it once it is removed, and by which; empty where nothing uses it.</summary>
    /// <param name="house">The house.</param>
    /// <param name="item">The item.</param>
    public static string UsedBy(House house, Item item)
    {
        const int told = 8;
        var names = FactTable.IsKit(item.Kind) || item.Kind is ItemKind.Panel or ItemKind.Hub ? UsersOf.Names(house, item) : [];
        return names.Count == 0 ? ""
            : $", used by {NumberText.Plain(names.Count)}: {string.Join(", ", names.Take(told))}"
                + (names.Count > told ? $" and {NumberText.Plain(names.Count - told)} more" : "");
    }

    /// <summary>Brings a removed item back with all it had.</summary>
    public static Result<Draft> BringBack(House house, Item item) => !item.Removed ? new Refusal("That was not removed.") : Back(house, item, "Brought back");

    /// <summary>Settles what to do with an item that one laptop removed while another went on with it.</summary>
    /// <param name="house">The house.</param>
    /// <param name="removal">What happened.</param>
    /// <param name="back">Whether it is to be in the house, with all it had.</param>
    public static Result<Draft> Settle(House house, RemovedAtWork removal, bool back) => back
        ? Back(house, removal.Item, removal.Item.Removed ? "Brought back" : "Left in")
        : Out(removal.Item, $"{(removal.Item.Removed ? "Left removed:" : "Removed again:")} {house.NameOf(removal.Item)}");

    private static Draft Out(Item item, string what) => new Draft(what).PutStored(item.Id, Item.RemovedField, "yes");

    private static Result<Draft> Back(House house, Item item, string what) =>
        item.Kind == ItemKind.Window && item.Latest(Facts.WindowFacts.Tag.Name)?.Stored is { } tag && Tags.Refuse(house, tag, item.Id) is { } taken
            ? taken
            : new Draft($"{what} {house.NameOf(item)}").PutStored(item.Id, Item.RemovedField, null);
}
