using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;

namespace TrimOut.Core.Plans.Parts;

/// <summary>Panels by type and how many more the units ask for; plug-in supplies and batteries.</summary>
internal static class SupplyParts
{
    public static IEnumerable<PartLine> Of(House house)
    {
        foreach (var type in house.Panels.GroupBy(p => p.Show(PanelFacts.Type)))
            yield return new PartLine(PartGroup.Supplies, type.Key.Length == 0 ? "Panel of no type yet" : type.Key, type.Count(), "",
                $"panels of the house: {HouseParts.Names(type.Select(p => p.Name))}");
        if (house.Runs.Length > 0)
            yield return More(house);
        foreach (var (source, part) in ((PowerSource, string)[])[(PowerSource.PlugIn, "Plug-in supply"), (PowerSource.Battery, "Battery")])
        {
            foreach (var kind in house.Units.Where(u => u.Power == source).GroupBy(u => u.Kind?.Name ?? "no kind yet"))
                yield return new PartLine(PartGroup.Supplies, $"{part} for {kind.Key}", kind.Count(), "",
                    $"power of {HouseParts.Names(kind.Select(u => u.Tag))}");
        }
    }

    /// <summary>What is missing before the places on a panel can be counted.</summary>
    private static string Missing(Panel panel) => panel.Type switch
    {
        null => $"the type of {panel.Name} is not known",
        { Outputs: null, UnitsPerOutput: null } type => $"the sheet of {type.Name} does not say yet how many outputs it has, nor how many units one feeds",
        { Outputs: null } type => $"the sheet of {type.Name} does not say yet how many outputs it has",
        var type => $"the sheet of {type.Name} does not say yet how many units an output feeds",
    };

    private static PartLine More(House house)
    {
        var units = house.Runs.Length;
        var silent = house.Panels.FirstOrDefault(p => p.Type is not { Outputs: not null, UnitsPerOutput: not null });
        var types = house.ItemsOf(ItemKind.PanelType).Select(i => new PanelType(house, i)).Where(t => t is { Outputs: not null, UnitsPerOutput: not null })
            .ToList();
        if (silent is not null)
            return new PartLine(PartGroup.Supplies, "More panels", null, "", Missing(silent));
        var places = house.Panels.Sum(p => p.Type!.Outputs!.Value * p.Type.UnitsPerOutput!.Value);
        var from = $"{HouseParts.Many(units, "unit")} on panels, {HouseParts.Many(places, "place")} on those of the house";
        if (units <= places)
            return new PartLine(PartGroup.Supplies, "More panels", 0, "", from);
        if (types.Count == 0)
            return new PartLine(PartGroup.Supplies, "More panels", null, "", from + "; no sheet in the kit says how many a panel feeds");
        var each = types[0].Outputs!.Value * types[0].UnitsPerOutput!.Value;
        return new PartLine(PartGroup.Supplies, $"More: {types[0].Name}", (units - places + each - 1) / each, "",
            $"{from}; {NumberText.Plain(each)} to a panel");
    }
}
