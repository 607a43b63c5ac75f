using TrimOut.Core.History;
using TrimOut.Core.Houses;

namespace TrimOut.Core.Decisions;

/// <summary>Takes items out of the house, and brings them back with all they had.</summary>
public static class RemoveItems
{
    /// <summary>Takes an item and all that belongs to it out of the house.</summary>
    public static Result<Draft> Remove(House house, Item item) => item.Kind == ItemKind.House
        ? new Refusal("The house itself can't be removed.")
        : item.Removed ? new Refusal("That was removed already.")
        : new Draft($"Removed {house.NameOf(item)}").PutStored(item.Id, Item.RemovedField, "yes");

    /// <summary>Brings a removed item back.</summary>
    public static Result<Draft> BringBack(House house, Item item)
    {
        if (!item.Removed)
            return new Refusal("That was not removed.");
        if (item.Kind == ItemKind.Window && item.Latest(Facts.WindowFacts.Tag.Name)?.Stored is { } tag && Tags.Refuse(house, tag, item.Id) is { } taken)
            return taken;
        return new Draft($"Brought back {house.NameOf(item)}").PutStored(item.Id, Item.RemovedField, null);
    }
}
