using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;

namespace TrimOut.Screens.Sheets;

/// <summary>What a sheet is about, and which rows it has.</summary>
internal abstract record SheetOf
{
    /// <summary>What it is about, for the top line.</summary>
    public abstract string Title(House house);

    /// <summary>Its rows; empty when what it is about is no longer in the house.</summary>
    public abstract IReadOnlyList<SheetRow> Rows(House house);

    /// <summary>What shows the same after the house changed: a unit whose window is left out shows as that window, and the other way round.</summary>
    public virtual SheetOf Still(House house) => this;

    /// <summary>The sheet on which a field of an item is filled in.</summary>
    public static SheetOf Holding(House house, Item item) => item.Kind switch
    {
        ItemKind.House => new OfItem(House.RootId),
        ItemKind.Window when house.FindWindow(item.Id) is { LeftOut: false } window && window.Units.FirstOrDefault() is { } unit => new OfUnit(unit.Id),
        ItemKind.Unit => new OfUnit(item.Id),
        ItemKind.Run or ItemKind.Leg when house.Find(item.Under) is { } above => Holding(house, above),
        ItemKind.Preset => new OfItem(item.Under),
        _ => new OfItem(item.Id),
    };
}

/// <summary>A unit with its window, its home run and the legs of that, by phase.</summary>
internal sealed record OfUnit(string UnitId) : SheetOf
{
    public override string Title(House house) => house.FindUnit(UnitId) is { } unit ? $"{unit.Tag}, {unit.Window.Room?.FullName ?? "no room"}" : "(removed)";

    public override SheetOf Still(House house) =>
        house.Find(UnitId)?.Under is { } above && house.FindWindow(above) is { LeftOut: true } window ? new OfItem(window.Id) : this;

    public override IReadOnlyList<SheetRow> Rows(House house)
    {
        if (house.FindUnit(UnitId) is not { } unit)
            return [];
        var rows = new List<SheetRow>();
        foreach (var phase in PhaseNames.All)
        {
            var facts = Of(unit, phase).ToList();
            if (facts.Count == 0)
                continue;
            rows.Add(SheetRow.Head(phase.Full()));
            rows.AddRange(facts);
        }
        rows.Add(SheetRow.Head("Notes"));
        rows.AddRange(FactTable.Of(ItemKind.Window).Where(f => f.Phase is null).Select(f => SheetRow.Of(unit.Window.Item, f, label: $"Window: {f.Label}")));
        rows.AddRange(FactTable.Of(ItemKind.Unit).Where(f => f is { Phase: null, IsKeyed: false })
            .Select(f => SheetRow.Of(unit.Item, f, label: $"Unit: {f.Label}")));
        return rows;
    }

    private static IEnumerable<SheetRow> Of(Unit unit, Phase phase)
    {
        foreach (var fact in FactTable.Of(ItemKind.Window).Where(f => f.Phase == phase))
            yield return SheetRow.Of(unit.Window.Item, fact);
        foreach (var fact in FactTable.Of(ItemKind.Unit).Where(f => f.Phase == phase))
            yield return SheetRow.Of(unit.Item, fact);
        if (unit.Run is not { } run)
            yield break;
        foreach (var fact in FactTable.Of(ItemKind.Run).Where(f => f.Phase == phase))
            yield return SheetRow.Of(run.Item, fact);
        if (phase != Phase.RoughIn)
            yield break;
        foreach (var (leg, number) in run.Legs.Select((l, at) => (l, at + 1)))
        {
            foreach (var fact in FactTable.Of(ItemKind.Leg))
                yield return SheetRow.Of(leg.Item, fact, label: $"Leg {number}: {fact.Label}");
        }
    }
}

/// <summary>Anything else: all facts of one item.</summary>
internal sealed record OfItem(string ItemId) : SheetOf
{
    public override string Title(House house) => house.Find(ItemId) is { } item ? house.NameOf(item) : "(removed)";

    public override SheetOf Still(House house) => house.Find(ItemId) is { Kind: ItemKind.Window } window ? Holding(house, window) : this;

    public override IReadOnlyList<SheetRow> Rows(House house) => house.Find(ItemId) is { Removed: false } item
        ? [.. FactTable.Of(item.Kind).SelectMany(f => Rows(house, item, f)), .. Presets(house, item)]
        : [];

    /// <summary>The presets of a remote, each with its timer; positions have a screen of their own.</summary>
    private static IEnumerable<SheetRow> Presets(House house, Item item)
    {
        foreach (var preset in house.FindRemote(item.Id)?.Presets ?? [])
        {
            yield return SheetRow.Head($"Preset {preset.Name}");
            foreach (var fact in FactTable.Of(ItemKind.Preset).Where(f => !f.IsKeyed))
                yield return SheetRow.Of(preset.Item, fact);
        }
    }

    /// <summary>
    /// A detail, or for each contact whether it is expected; what else is one by one, such as which remote moves what, has a screen of its own.
    /// </summary>
    private static IEnumerable<SheetRow> Rows(House house, Item item, Fact fact) => !fact.IsKeyed ? [SheetRow.Of(item, fact)]
        : fact == VisitFacts.Expects ? house.Contacts.Select(c => SheetRow.Of(item, fact, c.Id, $"{fact.Label}: {c.Name}"))
        : [];
}
