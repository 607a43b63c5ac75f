using TrimOut.Core.Facts;

namespace TrimOut.Core.Houses;

/// <summary>Something that was done in service: after a unit was hung, or after the house was handed over.</summary>
public sealed class Service(House house, Item item) : Subject(house, item)
{
    /// <summary>What it was done to.</summary>
    public Item? About => House.Find(Item.Under);

    /// <summary>What was done.</summary>
    public ServiceKind? Kind => Item.Get(ServiceFacts.Kind);

    /// <summary>The day on which it was done; null while none is noted.</summary>
    public DateOnly? On => Item.Get(ServiceFacts.On);

    /// <summary>The number of its warranty claim; null where there is none.</summary>
    public string? Claim => Item.Evidence(ServiceFacts.Claim);

    /// <summary>Whether a claim was made and nobody wrote what became of it.</summary>
    public bool ClaimIsOpen => Claim is not null && Item.Get(ServiceFacts.Outcome) is null;

    /// <summary>
    /// The serial of what was put in its place: what the next one took off, or what the unit has now; null where nothing was replaced or nobody read it.
    /// </summary>
    public string? NewSerial => Kind != ServiceKind.Replaced || About is not { Kind: ItemKind.Unit } unit ? null
        : Of(House, unit).SkipWhile(s => s.Id != Id).Skip(1).FirstOrDefault(s => s.Kind == ServiceKind.Replaced) is { } next
            ? next.Item.Get(ServiceFacts.OldSerial)
            : unit.Get(UnitFacts.Serial);

    /// <summary>All that was done to one thing, by its day.</summary>
    public static IEnumerable<Service> Of(House house, Item about) =>
        house.Under(about, ItemKind.Service).Select(i => new Service(house, i)).OrderBy(s => s.On ?? DateOnly.MaxValue);
}
