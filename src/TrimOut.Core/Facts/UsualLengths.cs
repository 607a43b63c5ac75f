using System.Collections.Immutable;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Facts;

/// <summary>Between what the lengths of a house usually lie, each with the reason: wide enough for any house, narrow enough for a wrong unit.</summary>
/// <remarks>
/// Common practice, no published source. What can't be at all is refused where it is typed, by the form of the value; the lengths of a maker's sheet stand
/// in <see cref="Kits.UsualValues"/>.
/// </remarks>
public static class UsualLengths
{
    private static readonly Message Openings = new("windows and doors are so large");
    private static readonly Message Walls = new("walls with their finish are so thick");
    private static readonly Message Hardware = new("brackets, handles and trim are so large");
    private static readonly Message Timber = new("studs, joists and drills are so large");
    private static readonly Message Tails = new("what is left hanging is so long");
    private static readonly Message Cables = new("there is so much of it in a house");
    private static readonly Message Rooms = new("rooms are so large");
    private static readonly Message Limits = new("a tape and an eye tell so much");

    /// <summary>All of them.</summary>
    public static ImmutableArray<UsualLength> All { get; } =
    [
        Inches(HouseFacts.PanelTail, 6, 360, Tails), Inches(HouseFacts.CutLoss, 0, 36, Tails),
        Inches(HouseFacts.SpreadLimit, 0.03125m, 1, Limits), Inches(HouseFacts.SquareLimit, 0.03125m, 1, Limits),
        Inches(HouseFacts.PassLimit, 0.03125m, 1, Limits),

        Inches(WindowFacts.RoughWidth, 8, 300, Openings), Inches(WindowFacts.RoughHeight, 8, 300, Openings),
        Inches(WindowFacts.WidthTop, 8, 300, Openings), Inches(WindowFacts.WidthMiddle, 8, 300, Openings), Inches(WindowFacts.WidthBottom, 8, 300, Openings),
        Inches(WindowFacts.HeightLeft, 8, 300, Openings), Inches(WindowFacts.HeightMiddle, 8, 300, Openings),
        Inches(WindowFacts.HeightRight, 8, 300, Openings),
        Inches(WindowFacts.DiagonalDown, 11, 390, Openings), Inches(WindowFacts.DiagonalUp, 11, 390, Openings),
        Inches(WindowFacts.Depth, 0.5m, 24, Walls) with { LeastOnlyInside = true },
        Inches(WindowFacts.WidthAgain, 8, 300, Openings), Inches(WindowFacts.HeightAgain, 8, 300, Openings),
        Inches(WindowFacts.InTheWayDepth, 0, 8, Hardware), Inches(WindowFacts.OverlapEachSide, 0, 12, Hardware), Inches(WindowFacts.HeadAbove, 0, 24, Rooms),
        Inches(WindowFacts.GlassBelowHead, 0, 12, Hardware), Inches(WindowFacts.ClearHeight, 20, 144, Openings), Inches(WindowFacts.WallAbove, 0, 96, Rooms),
        Inches(WindowFacts.ToCornerRight, 0, 120, Rooms), Inches(WindowFacts.ToCornerLeft, 0, 120, Rooms),
        Inches(WindowFacts.OverhangDepth, 0, 240, Rooms), Inches(WindowFacts.OverhangAbove, 0, 120, Rooms),

        Inches(UnitFacts.EntryFromJamb, 0, 120, Openings), Inches(UnitFacts.EntryBack, 0, 24, Walls), Inches(UnitFacts.EntryBelowHead, 0, 96, Openings),
        Inches(UnitFacts.EntryAsBuilt, 0, 120, Openings), Inches(UnitFacts.PartWidth, 8, 300, Openings),
        Inches(UnitFacts.OrderWidth, 8, 300, Openings), Inches(UnitFacts.OrderHeight, 8, 300, Openings),
        Inches(UnitFacts.DeliveredWidth, 8, 300, Openings), Inches(UnitFacts.DeliveredHeight, 8, 300, Openings),
        Inches(UnitFacts.Setback, 0, 12, Hardware), Inches(UnitFacts.OutOfLevel, 0, 2, Limits), Inches(UnitFacts.MiddleScrew, 2, 240, Openings),
        Inches(UnitFacts.FreeCord, 0, 144, Rooms), Inches(UnitFacts.OpenGap, 0, 18, Openings), Inches(UnitFacts.CloseGap, 0, 6, Openings),

        Inches(RunFacts.MainsDistance, 0, 240, Rooms), Inches(RunFacts.HoleEdge, 0, 6, Timber), Inches(RunFacts.HoleDrill, 0.125m, 3, Timber),
        Inches(RunFacts.TailAtWindow, 2, 300, Tails), Inches(RunFacts.TailAtPanel, 6, 360, Tails), Inches(RunFacts.TailFound, 2, 300, Tails),
        Feet(LegFacts.Length, 0.25m, 300, Cables), Feet(BoxFacts.Left, 0, 2500, Cables), Feet(CableTypeFacts.OnHand, 0, 20000, Cables),
    ];

    /// <summary>Those of one sort of item.</summary>
    public static ImmutableArray<UsualLength> Of(ItemKind kind) => ByKind[(int)kind];

    private static readonly ImmutableArray<UsualLength>[] ByKind =
        [.. Enum.GetValues<ItemKind>().Select(k => All.Where(u => u.Fact.Subject == k).ToImmutableArray())];

    private static UsualLength Inches(Fact<Length> fact, decimal least, decimal most, Message why) =>
        new(fact, Length.FromInches(least), Length.FromInches(most), why);

    private static UsualLength Feet(Fact<Length> fact, decimal least, decimal most, Message why) =>
        new(fact, Length.FromFeet(least), Length.FromFeet(most), why) { IsOfCable = true };
}

/// <summary>Between what a length usually lies, both ends included.</summary>
/// <param name="Fact">Which length.</param>
/// <param name="Least">The least.</param>
/// <param name="Most">The most.</param>
/// <param name="Why">Why it is no more and no less.</param>
public sealed record UsualLength(Fact<Length> Fact, Length Least, Length Most, Message Why)
{
    /// <summary>Whether the least holds for an inside mount only: an outside mount needs no reveal at all.</summary>
    public bool LeastOnlyInside { get; init; }

    /// <summary>Whether it is a length of cable, told in feet and inches or in metres.</summary>
    public bool IsOfCable { get; init; }

    /// <summary>Whether a length of an item lies between; yes where the item has none.</summary>
    public bool HoldsIn(Item item) => item.Get(Fact) is not { } length
        || (length <= Most && (length >= Least || (LeastOnlyInside && item.Get(WindowFacts.Mount) == Mount.Outside)));
}
