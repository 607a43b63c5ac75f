using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.Inline;
using static TrimOut.Papers.Writing.MarkdownWriter;

namespace TrimOut.Papers.TradePapers;

/// <summary>What differs between the order sheets as they were frozen and the house as it stands.</summary>
internal sealed class SinceFrozen(HouseLog log, IReadOnlyList<FrozenUnit> frozen)
{
    private readonly Lazy<LastSaid> _said = new(() => new LastSaid(log));

    /// <summary>A row for each difference: box label, what, as frozen, now, by whom, when.</summary>
    public IEnumerable<Inline[]> Rows() => [.. frozen.SelectMany(OfUnit), .. OffTheSheets(), .. Controls()];

    /// <summary>What differs of one unit, in words, for the table.</summary>
    public IEnumerable<string> Of(FrozenUnit unit) => log.House.FindUnit(unit.AsFrozen.Id) is { } now
        ? OrderFact.All.Where(f => !f.Same(unit.AsFrozen, now)).Select(f => f.Label)
            .Concat(SizeByMeasures.All.Where(s => !s.Follows(unit.AsFrozen, now)).Select(s => s.Label)).Select(l => l.ToLowerInvariant())
        : [WhyGone(unit.AsFrozen, log.House)];

    /// <summary>Remotes, hubs and panels of a house by their type.</summary>
    public static IEnumerable<(string What, string Type, int Count)> ControlsOf(House house) =>
    [
        .. Counted("Remote", house.Remotes, RemoteFacts.Type), .. Counted("Hub", house.Hubs, HubFacts.Type), .. Counted("Panel", house.Panels, PanelFacts.Type),
    ];

    private IEnumerable<Inline[]> OfUnit(FrozenUnit unit)
    {
        var then = unit.AsFrozen;
        if (log.House.FindUnit(then.Id) is not { } now)
            return [Said(then.Tag, Ours("The unit"), Ours("ordered"), Ours(WhyGone(then, log.House)), GoneBy(then))];
        return OrderFact.All.Where(f => !f.Same(then, now))
            .Select(f => Said(then.Tag, Ours(f.Label), f.Entry(then), f.Entry(now), f.From(then).Concat(f.From(now))))
            .Concat(ByMeasures(then, now));
    }

    /// <summary>Sizes that the order does not follow any more from what it was worked out of, and what of that is another now.</summary>
    private IEnumerable<Inline[]> ByMeasures(Unit then, Unit now)
    {
        var sizes = SizeByMeasures.All.Where(s => !s.Follows(then, now)).ToList();
        foreach (var size in sizes)
        {
            yield return Said(then.Tag, Ours(size.Label), then.BySheet(size.Entry), now.BySheet(size.Entry),
                [.. size.ChangedSince(then, now).SelectMany(c => c.Fields), .. NewNeighbours(then, now)]);
        }
        foreach (var changed in sizes.SelectMany(s => s.ChangedSince(then, now)).DistinctBy(c => c.Fact).Where(c => !c.IsPrinted))
        {
            yield return Said(then.Tag, Ours(changed.Fact.Label), changed.Then?.Entry(changed.Fact) ?? Dash, changed.Now?.Entry(changed.Fact) ?? Dash,
                changed.Fields);
        }
    }

    /// <summary>Where a window has more or fewer units now, its opening is shared out anew.</summary>
    private static IEnumerable<(string, string)> NewNeighbours(Unit then, Unit now) =>
        then.Window.Units.Length == now.Window.Units.Length ? [] : OrderFact.Tag.From(now);

    /// <summary>Units that came into the house after the last sheet was frozen, and those that were taken off their sheet.</summary>
    private IEnumerable<Inline[]> OffTheSheets()
    {
        if (frozen.Count == 0)
            yield break;
        var last = frozen[^1].AsFrozen.House;
        foreach (var unit in log.House.Units.Where(u => u.Item.Get(UnitFacts.OrderedOn) is null))
        {
            if (unit.Item.Latest(UnitFacts.OrderedOn.Name) is not null)
                yield return Said(unit.Tag, Ours("The unit"), Ours("ordered"), Ours("off its sheet"), [(unit.Id, UnitFacts.OrderedOn.Name)]);
            else if (last.FindUnit(unit.Id) is null)
                yield return Said(unit.Tag, Ours("The unit"), Dash, Ours("added, not ordered yet"), [(unit.Id, Item.RemovedField), .. WhereItIs(unit)]);
        }
    }

    private IEnumerable<Inline[]> Controls()
    {
        if (frozen.Count == 0)
            yield break;
        var last = frozen[^1].AsFrozen.House;
        var then = ControlsOf(last).ToDictionary(c => (c.What, c.Type), c => c.Count);
        var now = ControlsOf(log.House).ToDictionary(c => (c.What, c.Type), c => c.Count);
        foreach (var (what, type) in now.Keys.Union(then.Keys))
        {
            var (before, after) = (then.GetValueOrDefault((what, type)), now.GetValueOrDefault((what, type)));
            if (before != after)
                yield return Said(Dash, Ours($"{Ours(what)}: {TypeOf(type)}"), Number(before), Number(after), [.. Fields(last), .. Fields(log.House)]);
        }
    }

    private Inline[] Said(Inline tag, Inline what, Inline asFrozen, Inline now, IEnumerable<(string, string)> fields) =>
        _said.Value.Of(fields) is { } change
            ? Row(tag, what, asFrozen, now, change.By, change.SaidAt.OnPaper())
            : Row(tag, what, asFrozen, now, Dash, Dash);

    /// <summary>Why a unit that was ordered is not among those of the house as it stands.</summary>
    public static string WhyGone(Unit then, House now) => IsLeftOut(then, now) ? "its window is left out" : "removed";

    private static bool IsLeftOut(Unit then, House now) =>
        now.Find(then.Id) is { Removed: false } && now.FindWindow(then.Window.Id) is { LeftOut: true };

    private IEnumerable<(string, string)> GoneBy(Unit then) => IsLeftOut(then, log.House) ? [(then.Window.Id, WindowFacts.Covered.Name)]
        : [(then.Id, Item.RemovedField), (then.Window.Id, Item.RemovedField)];

    private static (string, string)[] WhereItIs(Unit unit) => [(unit.Window.Id, Item.RemovedField), (unit.Window.Id, WindowFacts.Covered.Name)];

    private static IEnumerable<(string, string)> Fields(House house) =>
        from subject in house.Remotes.Concat<Subject>(house.Hubs).Concat(house.Panels)
        from field in new[] { Item.RemovedField, RemoteFacts.Type.Name }
        select (subject.Id, field);

    /// <summary>The type of a remote, hub or panel; a dash where none is chosen.</summary>
    public static Inline TypeOf(string type) => type.Length == 0 ? Dash : Entries.OfKit(type);

    private static IEnumerable<(string, string, int)> Counted(string what, IEnumerable<Subject> subjects, Fact type) =>
        subjects.GroupBy(s => s.Show(type)).Select(g => (what, g.Key, g.Count()));
}
