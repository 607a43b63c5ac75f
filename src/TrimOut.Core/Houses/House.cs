using System.Collections.Immutable;
using TrimOut.Core.Facts;
using TrimOut.Core.Units;

namespace TrimOut.Core.Houses;

/// <summary>One house as its history left it. Never changes: a new change gives a new house.</summary>
public sealed class House
{
    /// <summary>The id of the item that is the job itself.</summary>
    public const string RootId = "house";

    private static readonly Item Root = new(RootId, ItemKind.House, "", 0, ImmutableDictionary<string, ImmutableArray<Head>>.Empty);

    private readonly ImmutableDictionary<string, Item> _items;
    private readonly Lazy<ILookup<(string Under, ItemKind Kind), Item>> _children;
    private readonly Lazy<ILookup<ItemKind, Item>> _byKind;
    private readonly Lazy<Views> _views;

    /// <summary>A house made of these items.</summary>
    public House(ImmutableDictionary<string, Item> items)
    {
        _items = items;
        _byKind = new(() => Present().OrderBy(i => i.Place).ToLookup(i => i.Kind));
        _children = new(() => Present().OrderBy(i => i.Place).ToLookup(i => (i.Under, i.Kind)));
        _views = new(() => new Views(this));
    }

    /// <summary>A house with nothing in it.</summary>
    public static House Empty { get; } = new(ImmutableDictionary<string, Item>.Empty.Add(RootId, Root));

    /// <summary>All items, removed ones too.</summary>
    public ImmutableDictionary<string, Item> Items => _items;

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

    /// <summary>Items of one kind that are in the house, as they were added.</summary>
    public IEnumerable<Item> ItemsOf(ItemKind kind) => _byKind.Value[kind];

    /// <summary>Items of one kind that belong to another item.</summary>
    public IEnumerable<Item> Under(string id, ItemKind kind) => _children.Value[(id, kind)];

    /// <summary>What an item is called on screens and papers.</summary>
    public string NameOf(Item item) => item.Kind switch
    {
        ItemKind.House => Name,
        ItemKind.Window => item.Get(WindowFacts.Tag) ?? "(no tag)",
        ItemKind.Unit => FindUnit(item.Id)?.Tag ?? "(unit)",
        ItemKind.Run => Find(item.Under) is { } unit ? NameOf(unit) : "(run)",
        ItemKind.Leg => "leg of " + (Find(item.Under) is { } run ? NameOf(run) : "(run)"),
        ItemKind.Punch => item.Get(PunchFacts.What) ?? "(punch item)",
        ItemKind.Waiver => item.Get(WaiverFacts.Check) ?? "(waiver)",
        _ => item.Latest("name")?.Stored ?? $"({KebabCase.Of(item.Kind)} without a name)",
    };

    /// <summary>A unit by its id; null when it is not in the house.</summary>
    public Unit? FindUnit(string id) => _views.Value.UnitsById.GetValueOrDefault(id);

    /// <summary>A window by its id; null when it is not in the house.</summary>
    public Window? FindWindow(string id) => _views.Value.WindowsById.GetValueOrDefault(id);

    /// <summary>A window by its tag, whatever its case; null when there is none.</summary>
    public Window? FindTag(string tag) => Windows.FirstOrDefault(w => string.Equals(w.Tag, tag, StringComparison.OrdinalIgnoreCase));

    /// <summary>A panel by its id; null when it is not in the house.</summary>
    public Panel? FindPanel(string id) => Panels.FirstOrDefault(p => p.Id == id);

    private IEnumerable<Item> Present() => _items.Values.Where(IsPresent);

    private bool IsPresent(Item item)
    {
        for (var at = item; ;)
        {
            if (at.Removed)
                return false;
            if (at.Under.Length == 0)
                return true;
            if (!_items.TryGetValue(at.Under, out var above))
                return false;
            at = above;
        }
    }

    private sealed class Views
    {
        public Views(House house)
        {
            Rooms = [.. house.ItemsOf(ItemKind.Room).Select(i => new Room(house, i)).OrderBy(r => r.WalkingOrder ?? int.MaxValue)];
            var place = Rooms.Select((r, at) => (r.Id, at)).ToDictionary(p => p.Id, p => p.at);
            Windows = [.. house.ItemsOf(ItemKind.Window).Select(i => new Window(house, i)).OrderBy(w => w.RoomId is { } id && place.TryGetValue(id, out var at) ? at : int.MaxValue)];
            WindowsById = Windows.ToDictionary(w => w.Id);
            Units = [.. Windows.Where(w => !w.LeftOut).SelectMany(w => w.Units)];
            UnitsById = Units.ToDictionary(u => u.Id);
            Runs = [.. Units.Select(u => u.Run).OfType<HomeRun>()];
            Panels = [.. house.ItemsOf(ItemKind.Panel).Select(i => new Panel(house, i))];
            Hubs = [.. house.ItemsOf(ItemKind.Hub).Select(i => new Hub(house, i))];
            Remotes = [.. house.ItemsOf(ItemKind.Remote).Select(i => new Remote(house, i))];
            Boxes = [.. house.ItemsOf(ItemKind.Box).Select(i => new CableBox(house, i))];
            PunchItems = [.. house.ItemsOf(ItemKind.Punch).Select(i => new PunchItem(house, i))];
            Waivers = [.. house.ItemsOf(ItemKind.Waiver).Select(i => new Waiver(house, i))];
            var types = Panels.IsEmpty ? house.ItemsOf(ItemKind.PanelType).Select(i => new PanelType(house, i)) : Panels.Select(p => p.Type);
            var supplies = types.Select(t => t?.Supply).Distinct().Take(2).ToList();
            UsualSupply = supplies.Count == 1 ? supplies[0] : null;
        }

        public ImmutableArray<Room> Rooms { get; }
        public ImmutableArray<Window> Windows { get; }
        public Dictionary<string, Window> WindowsById { get; }
        public ImmutableArray<Unit> Units { get; }
        public Dictionary<string, Unit> UnitsById { get; }
        public ImmutableArray<HomeRun> Runs { get; }
        public ImmutableArray<Panel> Panels { get; }
        public ImmutableArray<Hub> Hubs { get; }
        public ImmutableArray<Remote> Remotes { get; }
        public ImmutableArray<CableBox> Boxes { get; }
        public ImmutableArray<PunchItem> PunchItems { get; }
        public ImmutableArray<Waiver> Waivers { get; }
        public Voltage? UsualSupply { get; }
    }
}
