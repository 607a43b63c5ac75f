using System.Collections.Immutable;
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

    /// <summary>
    /// The record that says what became of its claim: itself, else the last one that says it of the claim of that number; null while that is open.
    /// </summary>
    public Service? SettledBy => Item.Get(ServiceFacts.Outcome) is not null ? this : Claim is not { } claim ? null
        : House.Services.LastOrDefault(s => Same(s.Claim, claim) && s.Item.Get(ServiceFacts.Outcome) is not null);

    /// <summary>What became of its claim; null while that is open, and where none was made.</summary>
    public ClaimOutcome? Outcome => SettledBy?.Item.Get(ServiceFacts.Outcome);

    /// <summary>Whether a claim was made and nobody wrote what became of it.</summary>
    public bool ClaimIsOpen => Claim is not null && Outcome is null;

    /// <summary>Whether it is the last record with its claim: of a claim that several name, nobody is asked twice.</summary>
    public bool IsLastOfClaim => Claim is { } claim && House.Services.LastOrDefault(s => Same(s.Claim, claim))?.Id == Id;

    /// <summary>
    /// Whether it says that something failed, and no record of a later day, or written after it for the same day, says that it was replaced or repaired.
    /// </summary>
    public bool IsOpenFailure => Kind == ServiceKind.Failed && About is { } about
        && !Of(House, about).Any(s => s.Mends && (s.On is null || On is null || s.On > On || (s.On == On && s.Item.Place > Item.Place)));

    /// <summary>Whether what failed waits for the maker: until it is replaced or repaired, or its claim came to nothing.</summary>
    public bool WaitsForMaker => IsOpenFailure && Outcome is not (ClaimOutcome.Refused or ClaimOutcome.Withdrawn);

    private bool Mends => Kind is ServiceKind.Replaced or ServiceKind.MotorReplaced or ServiceKind.PartReplaced or ServiceKind.BatteryChanged
        or ServiceKind.Repaired;

    /// <summary>
    /// The serial of what was put in its place; null where nothing was replaced or nobody read it. Of the unit that hangs there now the unit says it, for there
    /// it is put right; of one that was replaced since, what was noted then, or what the next one took off.
    /// </summary>
    public string? NewSerial
    {
        get
        {
            if (!ReplacesUnit || About is not { } unit)
                return null;
            var (all, noted) = (Replacements(House, unit), Item.Get(ServiceFacts.NewSerial));
            if (all.SkipWhile(s => s.Id != Id).Skip(1).FirstOrDefault() is { } next)
                return noted ?? (Same(next.Item.Get(ServiceFacts.OldSerial), Item.Get(ServiceFacts.OldSerial)) ? null
                    : next.Item.Get(ServiceFacts.OldSerial));
            var now = unit.Get(UnitFacts.Serial);
            // Two laptops replaced it, and the unit shows the serial of the one that was taken off since.
            return noted is not null && all.Any(s => s.Id != Id && Same(s.Item.Get(ServiceFacts.NewSerial), now)) ? noted : now;
        }
    }

    /// <summary>
    /// The serial of what was taken off; null where nobody noted it. Days decide, not the order in which records were written: it is what the replacement
    /// before put in, where that is known.
    /// </summary>
    public string? TakenOff
    {
        get
        {
            var noted = Item.Get(ServiceFacts.OldSerial);
            return !ReplacesUnit || About is not { } unit || Replacements(House, unit).TakeWhile(s => s.Id != Id).LastOrDefault() is not { } before ? noted
                : before.Item.Get(ServiceFacts.NewSerial) ?? (Same(noted, before.Item.Get(ServiceFacts.OldSerial)) ? null : noted);
        }
    }

    /// <summary>Whether it put another unit in the place of one.</summary>
    public bool ReplacesUnit => Kind == ServiceKind.Replaced && About?.Kind == ItemKind.Unit;

    /// <summary>The replacements of one thing, by their day.</summary>
    internal static ImmutableArray<Service> Replacements(House house, Item about) => [.. Of(house, about).Where(s => s.Kind == ServiceKind.Replaced)];

    /// <summary>All that was done to one thing, by its day.</summary>
    public static IEnumerable<Service> Of(House house, Item about) =>
        house.Under(about, ItemKind.Service).Select(i => new Service(house, i)).OrderBy(s => s.On ?? DateOnly.MaxValue);

    private static bool Same(string? one, string? other) => one is not null && other is not null && SameName.Comparer.Equals(one.Trim(), other.Trim());
}
