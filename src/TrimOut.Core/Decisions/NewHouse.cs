using System.Collections.Immutable;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;
using TrimOut.Core.Units;

namespace TrimOut.Core.Decisions;

/// <summary>Begins a house.</summary>
public static class NewHouse
{
    /// <summary>A house with a name, units and a blank kit.</summary>
    public static Result<Draft> Begin(string name, DisplayUnits units) => WithoutKit(name, units).Then<Draft>(d => d.WithBlankKit(units));

    /// <summary>A house with a name, units and parts of a kit that was kept; of the sorts that it has none of, it has blank ones.</summary>
    public static Result<Draft> Begin(string name, DisplayUnits units, IReadOnlyCollection<PartSheet> kit) => kit.Count == 0 ? Begin(name, units)
        : kit.GroupBy(p => p.Kind).SelectMany(k => k.GroupBy(p => p.Name, SameName.Comparer)).FirstOrDefault(n => n.Skip(1).Any()) is { } twice
        ? new Refusal($"Two files of the kit are one {KebabCase.Of(twice.First().Kind).Replace('-', ' ')}, {twice.Key}. Move one of them elsewhere.")
        : WithoutKit(name, units).Then<Draft>(d => kit.Aggregate(d, (draft, part) => TakePart.Put(draft, part, null)).WithBlankKit(units,
            [.. Enum.GetValues<ItemKind>().Where(k => FactTable.IsKit(k) && kit.All(p => p.Kind != k))]))
            .Then<Draft>(d => LacksNoCover(kit) ? d.WithNoCover(out _) : d);

    private static bool LacksNoCover(IReadOnlyCollection<PartSheet> kit) => kit.Any(p => p.Kind == ItemKind.HeadCover)
        && !kit.Any(p => p.Kind == ItemKind.HeadCover && SameName.Comparer.Equals(p.Name, HeadCover.NoCover));

    /// <summary>The parts of a blank kit that a house with a kept kit does not begin with, because that kit has other parts of their sort.</summary>
    public static ImmutableArray<string> LeftOut(DisplayUnits units, IReadOnlyCollection<PartSheet> kit) => kit.Count == 0 ? [] :
    [
        .. new Draft("").WithBlankKit(units, [.. kit.Select(p => p.Kind).Distinct()]).Edits.OfType<Edit.Put>()
            .Where(p => p.Field == CoveringKindFacts.Name.Name).Select(p => p.Value!)
            .Where(n => n != HeadCover.NoCover && kit.All(p => !SameName.Comparer.Equals(p.Name, n))),
    ];

    /// <summary>The units as they are typed where a house begins, long or short: inches or in, millimetres or mm.</summary>
    public static Result<DisplayUnits> ReadUnits(string typed) => typed.Trim().ToLowerInvariant() switch
    {
        "inches" or "inch" or "in" => DisplayUnits.Inches,
        "millimetres" or "millimetre" or "millimeters" or "millimeter" or "mm" => DisplayUnits.Millimetres,
        _ => new Refusal($"\"{typed.Trim()}\" are no units here: inches (in) or millimeters (mm)."),
    };

    /// <summary>A house with a name and units, and no parts yet.</summary>
    public static Result<Draft> WithoutKit(string name, DisplayUnits units) => HouseFacts.Name.ReadTyped(name, House.Empty).Then<Draft>(stored =>
        new Draft($"New house {stored}")
            .PutStored(House.RootId, HouseFacts.Name.Name, stored)
            .Put(House.RootId, HouseFacts.Units, units)
            .Put(House.RootId, HouseFacts.Dwelling, Dwelling.OneOrTwoFamily)
            .Put(House.RootId, HouseFacts.MeterStep, new Resistance(0.01m))
            .Put(House.RootId, HouseFacts.CableAllowance, 10m)
            .Put(House.RootId, HouseFacts.ConductorTemperature, new Temperature(30))
            .Put(House.RootId, HouseFacts.PanelTail, TapeMark.Whole(Length.FromInches(72), units))
            .Put(House.RootId, HouseFacts.SpreadLimit, TapeMark.Whole(Length.FromInches(0, 1, 4), units))
            .Put(House.RootId, HouseFacts.SquareLimit, TapeMark.Whole(Length.FromInches(0, 1, 4), units))
            .Put(House.RootId, HouseFacts.PassLimit, TapeMark.Whole(Length.FromInches(0, 1, 8), units)));
}
