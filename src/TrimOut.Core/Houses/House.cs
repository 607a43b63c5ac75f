using System.Collections.Immutable;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Units;

namespace TrimOut.Core.Houses;

/// <summary>One house as its history left it. Never changes: a new change gives a new house.</summary>
public sealed class House
{
    /// <summary>The id of the item that is the job itself.</summary>
    public const string RootId = "house";

    private static readonly Item Root = new(RootId, ItemKind.House, "", 0, ImmutableDictionary<string, ImmutableArray<Head>>.Empty);

    private readonly ImmutableDictionary<string, Item> _items;
    private readonly Lazy<HouseShape> _shape;
    private readonly Lazy<HouseViews> _views;

    /// <summary>A house made of these items.</summary>
    public House(ImmutableDictionary<string, Item> items) : this(items, new(() => HouseShape.Of(items)), null) { }

    private House(ImmutableDictionary<string, Item> items, Lazy<HouseShape> shape, HouseStep? step)
    {
        _items = items;
        _shape = shape;
        _views = new(() => new HouseViews(this, _shape.Value));
        Step = step;
    }

    /// <summary>A house with nothing in it.</summary>
    public static House Empty { get; } = new(ImmutableDictionary<string, Item>.Empty.Add(RootId, Root));

    /// <summary>All items, removed ones too.</summary>
    public ImmutableDictionary<string, Item> Items => _items;

    /// <summary>How it came from the house before it; null when it was folded from its whole history.</summary>
    internal HouseStep? Step { get; }

    /// <summary>The item that is the job itself.</summary>
    public Item Job => _items[RootId];

    /// <summary>The house's name.</summary>
    public string Name => Job.Get(HouseFacts.Name) ?? "(no name yet)";

    /// <summary>What lengths are shown in: inches unless said otherwise.</summary>
    public DisplayUnits DisplayUnits => Job.Get(HouseFacts.Units) ?? DisplayUnits.Inches;

    /// <summary>Rooms, in walking order.</summary>
    public ImmutableArray<Room> Rooms => _views.Value.Rooms;

    /// <summary>Windows in walking order: by room, then as they were added.</summary>
    public ImmutableArray<Window> Windows => _views.Value.Windows;

    /// <summary>Units in walking order; those of windows left out on purpose are not among them.</summary>
    public ImmutableArray<Unit> Units => _views.Value.Units;

    /// <summary>Home runs, in the order of their units.</summary>
    public ImmutableArray<HomeRun> Runs => _views.Value.Runs;

    /// <summary>Panels, as they were added.</summary>
    public ImmutableArray<Panel> Panels => _views.Value.Panels;

    /// <summary>Hubs, as they were added.</summary>
    public ImmutableArray<Hub> Hubs => _views.Value.Hubs;

    /// <summary>Remotes, as they were added.</summary>
    public ImmutableArray<Remote> Remotes => _views.Value.Remotes;

    /// <summary>Boxes of cable on hand, as they were added.</summary>
    public ImmutableArray<CableBox> Boxes => _views.Value.Boxes;

    /// <summary>Punch items written by hand, as they were added.</summary>
    public ImmutableArray<PunchItem> PunchItems => _views.Value.PunchItems;

    /// <summary>Waivers, as they were given.</summary>
    public ImmutableArray<Waiver> Waivers => _views.Value.Waivers;

    /// <summary>The voltage that all panels of the house give, or all panels of its kit while it has none; null when they differ or nothing is known.</summary>
    public Voltage? UsualSupply => _views.Value.UsualSupply;

    /// <summary>An item by its id, removed or not; null when there is none.</summary>
    public Item? Find(string id) => _items.GetValueOrDefault(id);

    /// <summary>Items that are in the house, as they were added.</summary>
    internal IEnumerable<Item> Present => _shape.Value.Present.Select(id => _items[id]);

    /// <summary>Whether an item is in the house and not removed with what it belongs to.</summary>
    internal bool IsPresent(Item item) => _shape.Value.Contains(item.Id);

    /// <summary>Items of one kind that are in the house, as they were added.</summary>
    public IEnumerable<Item> ItemsOf(ItemKind kind) => _shape.Value.OfKind(kind).Select(id => _items[id]);

    /// <summary>Items of one kind that belong to another item.</summary>
    public IEnumerable<Item> Under(string id, ItemKind kind) => _shape.Value.Under(id, kind).Select(i => _items[i]);

    /// <summary>This house with other values or more items.</summary>
    /// <param name="items">All items.</param>
    /// <param name="edits">What made them out of the items of this house.</param>
    internal House After(ImmutableDictionary<string, Item> items, ImmutableArray<Edit> edits) =>
        new(items, edits.Any(e => HouseShape.IsChangedBy(e, items)) ? new(() => HouseShape.Of(items)) : _shape, new HouseStep(_items, edits));

    /// <summary>What an item is called on screens and papers.</summary>
    public string NameOf(Item item) => item.Kind switch
    {
        ItemKind.House => Name,
        ItemKind.Window => item.Get(WindowFacts.Tag) ?? "(no tag)",
        ItemKind.Unit => FindUnit(item.Id)?.Tag ?? (Find(item.Under) is { Kind: ItemKind.Window } window ? $"unit of {NameOf(window)}" : "(unit)"),
        ItemKind.Run => Find(item.Under) is { } unit ? NameOf(unit) : "(run)",
        ItemKind.Leg => "leg of " + (Find(item.Under) is { } run ? NameOf(run) : "(run)"),
        ItemKind.Punch => item.Get(PunchFacts.What) ?? "(punch item)",
        ItemKind.Waiver => item.Get(WaiverFacts.Check) ?? "(waiver)",
        _ => item.Latest("name")?.Stored ?? $"({KebabCase.Of(item.Kind)} without a name)",
    };

    /// <summary>A unit by its id; null when it is not in the house.</summary>
    public Unit? FindUnit(string id) => _views.Value.UnitsById.GetValueOrDefault(id);

    /// <summary>A unit by its id, in the house or removed, without working out the views of the whole house; null when there is no such unit.</summary>
    internal Unit? UnitAlone(string id)
    {
        if (Find(id) is not { Kind: ItemKind.Unit } item || Find(item.Under) is not { Kind: ItemKind.Window } above)
            return null;
        var window = new Window(this, above);
        return window.Units.FirstOrDefault(u => u.Id == id) ?? new Unit(this, item, window);
    }

    /// <summary>A window by its id; null when it is not in the house.</summary>
    public Window? FindWindow(string id) => _views.Value.WindowsById.GetValueOrDefault(id);

    /// <summary>A window by its tag, whatever its case; null when there is none.</summary>
    public Window? FindTag(string tag) => _views.Value.WindowsByTag[tag].FirstOrDefault();

    /// <summary>A panel by its id; null when it is not in the house.</summary>
    public Panel? FindPanel(string id) => _views.Value.PanelsById.GetValueOrDefault(id);

    /// <summary>A room by its id; null when it is not in the house.</summary>
    public Room? FindRoom(string id) => _views.Value.RoomsById.GetValueOrDefault(id);

    /// <summary>What is looked up by another item, made when it is first asked for.</summary>
    internal HouseViews Views => _views.Value;

}
