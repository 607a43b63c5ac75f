using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Plans.Parts;

/// <summary>Panels by type and how many more the units ask for; plug-in supplies and batteries.</summary>
internal static class SupplyParts
{
    private static readonly Message PanelOfNoType = new("Panel of no type yet");
    private static readonly Message PanelsOfTheHouse = new("panels of the house: {0}");
    private static readonly Message PlugInFor = new("Plug-in supply for {0}");
    private static readonly Message BatteryFor = new("Battery for {0}");
    private static readonly Message NoKindYet = new("no kind yet");
    private static readonly Message PowerOf = new("power of {0}");
    private static readonly Message MorePanels = new("More panels");
    private static readonly Message MoreOfType = new("More: {0}");
    private static readonly Message TypeNotKnown = new("the type of {0} is not known");
    private static readonly Message OutputsAndUnitsNotKnown = new("the sheet of {0} does not say yet how many outputs it has, nor how many units one feeds");
    private static readonly Message OutputsNotKnown = new("the sheet of {0} does not say yet how many outputs it has");
    private static readonly Message UnitsNotKnown = new("the sheet of {0} does not say yet how many units an output feeds");
    private static readonly Message Places = new("{0} on panels; the panels of the house have room for {1}");
    private static readonly Message NoSheetSays = new("no sheet in the kit says how many a panel feeds");
    private static readonly Message ToAPanel = new("{0} to a panel");

    public static IEnumerable<PartLine> Of(House house)
    {
        foreach (var type in house.Panels.GroupBy(p => p.Show(PanelFacts.Type)))
            yield return Line(type.Key.Length == 0 ? PanelOfNoType : PartWords.Called(type.Key), type.Count(),
                PanelsOfTheHouse.With(PartWords.Names(type.Select(p => p.Name)))) with
            { Name = type.Key, Items = [.. type.Select(p => new CountedItem(p.Item))] };
        if (house.Runs.Length > 0)
            yield return More(house);
        foreach (var (source, part, name) in ((PowerSource, Message, string)[])
            [(PowerSource.PlugIn, PlugInFor, "plug-in supply"), (PowerSource.Battery, BatteryFor, "battery")])
        {
            foreach (var kind in house.Units.Where(u => u.Power == source).GroupBy(u => u.Kind?.Name))
                yield return Line(part.With(kind.Key is { } of ? PartWords.OfKit(of) : NoKindYet), kind.Count(),
                    PowerOf.With(PartWords.Names(kind.Select(u => u.Tag)))) with
                { Name = name, Items = [.. kind.Select(u => new CountedItem(u.Item))] };
        }
    }

    /// <summary>What is missing before the places on a panel can be counted.</summary>
    private static Sentence Missing(Panel panel) => panel.Type switch
    {
        null => TypeNotKnown.With(Arg.Name(panel)),
        { Outputs: null, UnitsPerOutput: null } type => OutputsAndUnitsNotKnown.With(PartWords.OfKit(type.Name)),
        { Outputs: null } type => OutputsNotKnown.With(PartWords.OfKit(type.Name)),
        var type => UnitsNotKnown.With(PartWords.OfKit(type.Name)),
    };

    private static PartLine More(House house)
    {
        var units = house.Runs.Length;
        var silent = house.Panels.FirstOrDefault(p => p.Type is not { Outputs: not null, UnitsPerOutput: not null });
        var types = house.ItemsOf(ItemKind.PanelType).Select(i => new PanelType(house, i)).Where(t => t is { Outputs: not null, UnitsPerOutput: not null })
            .ToList();
        if (silent is not null)
            return Line(MorePanels, null, Missing(silent));
        var places = house.Panels.Sum(p => p.Type!.Outputs!.Value * p.Type.UnitsPerOutput!.Value);
        var from = Places.With(PartWords.ManyUnits(units), places);
        if (units <= places)
            return By(house.Panels.Select(p => p.Type!), Line(MorePanels, 0, from));
        if (types.Count == 0)
            return Line(MorePanels, null, from.And(NoSheetSays));
        var each = types[0].Outputs!.Value * types[0].UnitsPerOutput!.Value;
        return By([types[0], .. house.Panels.Select(p => p.Type!)],
            Line(MoreOfType.With(PartWords.OfKit(types[0].Name)), (units - places + each - 1) / each, from.And(ToAPanel.With(each))))
            with
        { Name = types[0].Name };
    }

    private static PartLine By(IEnumerable<PanelType> types, PartLine line) =>
        types.Aggregate(line, (l, type) => l.By(type.Item, PanelTypeFacts.Outputs, PanelTypeFacts.UnitsPerOutput));

    private static PartLine Line(Sentence part, int? count, Sentence from) => new(PartGroup.Supplies, part, count, "", from);
}
