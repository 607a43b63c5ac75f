using TrimOut.Core.Facts;
using TrimOut.Core.Kits;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Houses;

/// <summary>What items are called: what was typed stands as it was typed; what the program says around it, or where nothing was typed, can be worded.</summary>
internal static class ItemNames
{
    public static readonly Message NoTag = new("(no tag)");
    public static readonly Message Removed = new("(removed)");
    public static readonly Message RemovedOne = new("{0} (removed)");
    private static readonly Message NoHouseName = new("(no name yet)");
    private static readonly Message UnitAlone = new("(unit)");
    private static readonly Message UnitOf = new("unit of {0}");
    private static readonly Message RunAlone = new("(run)");
    private static readonly Message LegOf = new("leg of {0}");
    private static readonly Message PunchItem = new("(punch item)");
    private static readonly Message Visit = new("(visit)");
    private static readonly Message ServiceAlone = new("(service)");
    private static readonly Message Waiver = new("(waiver)");
    private static readonly Message Nameless = new("({0} without a name)");

    /// <summary>What an item is called.</summary>
    /// <param name="house">The house that it is in.</param>
    /// <param name="item">The item.</param>
    /// <param name="words">The words of a language for English ones.</param>
    public static string Of(House house, Item item, Func<string, string> words) => item.Kind switch
    {
        ItemKind.House => item.Get(HouseFacts.Name) ?? words(NoHouseName.English),
        ItemKind.Window => item.Get(WindowFacts.Tag) ?? words(NoTag.English),
        ItemKind.Unit => house.FindUnit(item.Id) is { } unit ? Of(house, unit.Window.Item, words) + unit.Letter
            : house.Find(item.Under) is { Kind: ItemKind.Window } window ? UnitOf.In(words, Of(house, window, words))
            : words(UnitAlone.English),
        ItemKind.Run => OfRun(house, item, words),
        ItemKind.Leg => LegOf.In(words, house.Find(item.Under) is { Kind: ItemKind.Run } run ? OfRun(house, run, words) : words(RunAlone.English)),
        ItemKind.Punch => item.Get(PunchFacts.What) ?? words(PunchItem.English),
        ItemKind.Visit => item.Get(VisitFacts.What) ?? words(Visit.English),
        ItemKind.Service => OfService(house, item, words),
        ItemKind.Waiver => item.Get(WaiverFacts.Check) ?? words(Waiver.English),
        _ => item.Latest("name") is { Stored: { } stored } head && (head.Value as string ?? stored) is { } name
            ? FactTable.IsKit(item.Kind) ? KitWords.In(words, name) : name
            : Nameless.In(words, words(KebabCase.Of(item.Kind))),
    };

    /// <summary>What it was done to, what was done and when: W03 replaced 2027-03-02.</summary>
    private static string OfService(House house, Item item, Func<string, string> words)
    {
        var about = house.Find(item.Under) is { Kind: not (ItemKind.House or ItemKind.Service) } of ? Of(house, of, words) : "";
        var did = ServiceFacts.Kind.ShowOf(item, house) is { Length: > 0 } shown ? words(shown) : words(ServiceAlone.English);
        return string.Join(' ', new[] { about, did, ServiceFacts.On.ShowOf(item, house) }.Where(w => w.Length > 0));
    }

    private static string OfRun(House house, Item run, Func<string, string> words) =>
        // A history that no program wrote may have a run lie under itself.
        house.Find(run.Under) is { Kind: ItemKind.Unit } unit ? Of(house, unit, words) : words(RunAlone.English);
}
