using TrimOut.Core.Facts;
using TrimOut.Core.Kits;
using TrimOut.Core.Units;

namespace TrimOut.Core.Houses;

/// <summary>What the makers' sheets say about one part; every value may be missing, and may be unchecked.</summary>
public abstract class KitSheet(House house, Item item) : Subject(house, item)
{
    /// <summary>Whether somebody held a value against the maker's sheet.</summary>
    public bool IsChecked(Fact fact) => SheetMark.Holds(Item, fact);
}

/// <summary>The sheet of a kind of covering.</summary>
public sealed class CoveringKind(House house, Item item) : KitSheet(house, item)
{
    /// <summary>The end the motor is at.</summary>
    public MotorEnd? MotorEnd => Item.Get(CoveringKindFacts.MotorEnd);

    /// <summary>Whether it rolls or stacks.</summary>
    public RaisedForm? RaisedForm => Item.Get(CoveringKindFacts.RaisedForm);

    /// <summary>What it does when its power fails.</summary>
    public WithoutPower? WithoutPower => Item.Get(CoveringKindFacts.WithoutPower);

    /// <summary>A length on the sheet.</summary>
    public Length? this[Fact<Length> fact] => Item.Get(fact);

    /// <summary>Whether its sheet says that it needs no center support at any width; no while nothing is said of it.</summary>
    public bool NeedsNoCentreSupport => Item.Get(CoveringKindFacts.CentreFrom) == CoveringKindFacts.None;

    /// <summary>The voltage that its motor is made for.</summary>
    public Voltage? MotorVolts => Item.Get(CoveringKindFacts.MotorVolts);

    /// <summary>The least voltage at which it still lifts.</summary>
    public Voltage? LeastVolts => Item.Get(CoveringKindFacts.LeastVolts);

    /// <summary>Current while it lifts.</summary>
    public Current? RunningCurrent => Item.Get(CoveringKindFacts.RunningCurrent);

    /// <summary>Current in the first moment.</summary>
    public Current? StartingCurrent => Item.Get(CoveringKindFacts.StartingCurrent);
}

/// <summary>The sheet of a cable.</summary>
public sealed class CableType(House house, Item item) : KitSheet(house, item)
{
    /// <summary>Gauge or metric size.</summary>
    public ConductorSize? Conductor => Item.Get(CableTypeFacts.Conductor);

    /// <summary>Solid or stranded.</summary>
    public Stranding? Stranding => Item.Get(CableTypeFacts.Stranding);

    /// <summary>What is printed on the jacket.</summary>
    public CableListing? Listing => Item.Get(CableTypeFacts.Listing);

    /// <summary>The colour of its plus conductor, as the kit has it.</summary>
    public string? PlusColour => Item.Get(CableTypeFacts.Plus)?.Trim();

    /// <summary>The colour of its other conductor; null where the kit has other than two, or none of them is plus.</summary>
    public string? MinusColour =>
        PlusColour is { } plus && Colours is { Count: 2 } two && two.Where(c => !SameName.Comparer.Equals(c, plus)).ToList() is [var other] ? other : null;

    /// <summary>The colours of its conductors, as the kit lists them.</summary>
    public IReadOnlyList<string> Colours => Item.Get(CableTypeFacts.Colours) is { } typed
        ? typed.Split([',', ';', '/'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries) : [];

    /// <summary>What is joined to what, by the colours of the kit as far as it has them.</summary>
    public static string Joined(CableType? cable) => cable is { PlusColour: { } plus, MinusColour: { } minus }
        ? $"{plus} to {plus} (plus), {minus} to {minus} (minus)"
        : cable?.PlusColour is { } alone ? $"plus ({alone}) to plus, minus to minus" : "plus to plus, minus to minus";

    /// <summary>The longest run that the maker's table allows.</summary>
    public Length? LongestRun => Item.Get(CableTypeFacts.LongestRun);

    /// <summary>Over the jacket.</summary>
    public Length? Diameter => Item.Get(CableTypeFacts.Diameter);

    /// <summary>Cable in a full box.</summary>
    public Length? BoxLength => Item.Get(CableTypeFacts.BoxLength);

    /// <summary>How much of it there is for this house: what is left in its boxes, or while none is listed what was said of all together.</summary>
    public Length? OnHand
    {
        get
        {
            var boxes = House.Boxes.Where(b => b.Item.Get(BoxFacts.Cable)?.Id == Id && b.Left is not null).ToList();
            return boxes.Count == 0 ? Item.Get(CableTypeFacts.OnHand) : boxes.Aggregate(Length.Zero, (sum, b) => sum + b.Left!.Value);
        }
    }
}

/// <summary>The sheet of a panel.</summary>
public sealed class PanelType(House house, Item item) : KitSheet(house, item)
{
    /// <summary>How many outputs it has.</summary>
    public int? Outputs => Item.Get(PanelTypeFacts.Outputs);

    /// <summary>Voltage at its outputs.</summary>
    public Voltage? Supply => Item.Get(PanelTypeFacts.Supply);

    /// <summary>The most that one output gives.</summary>
    public Current? OutputCurrent => Item.Get(PanelTypeFacts.OutputCurrent);

    /// <summary>The most that all outputs give together.</summary>
    public Current? TotalCurrent => Item.Get(PanelTypeFacts.TotalCurrent);

    /// <summary>The most that it draws from the mains.</summary>
    public Current? InputCurrent => Item.Get(PanelTypeFacts.InputCurrent);

    /// <summary>How many units one output may feed.</summary>
    public int? UnitsPerOutput => Item.Get(PanelTypeFacts.UnitsPerOutput);
}

/// <summary>The sheet of a hub.</summary>
public sealed class HubType(House house, Item item) : KitSheet(house, item)
{
    /// <summary>How many units and remotes it knows.</summary>
    public int? Devices => Item.Get(HubTypeFacts.Devices);
}

/// <summary>The sheet of a remote.</summary>
public sealed class RemoteType(House house, Item item) : KitSheet(house, item)
{
    /// <summary>How many units it moves at the most.</summary>
    public int? Units => Item.Get(RemoteTypeFacts.Units);
}

/// <summary>The sheet of a head cover.</summary>
public sealed class HeadCover(House house, Item item) : KitSheet(house, item)
{
    /// <summary>The largest roll that turns freely inside it.</summary>
    public Length? RoomInside => Item.Get(HeadCoverFacts.RoomInside);

    /// <summary>How far it reaches back from its front.</summary>
    public Length? Depth => Item.Get(HeadCoverFacts.Depth);

    /// <summary>Whether it stands for no head cover at all, and so has no sheet; any other one without values is one whose sheet was not read yet.</summary>
    public bool IsNone => RoomInside is null && Depth is null && SameName.Comparer.Equals(Name, NoCover);

    /// <summary>The name of no head cover.</summary>
    public const string NoCover = "None";

    /// <summary>What stands for the one that is none in a house that has no part of that name; who chooses it adds the part.</summary>
    internal const string NoCoverToCome = "none";

    /// <summary>Whether a house has no part by the name of the one that is none.</summary>
    internal static bool IsNoCoverToCome(House house) =>
        !house.ItemsOf(ItemKind.HeadCover).Any(i => SameName.Comparer.Equals(house.NameOf(i), NoCover));
}
