using System.Collections.Immutable;
using TrimOut.Core.Electrical;
using TrimOut.Core.Facts;
using TrimOut.Core.Units;

namespace TrimOut.Core.Houses;

/// <summary>The items of one house as what they are, and who points at whom.</summary>
internal sealed class HouseViews
{
    private readonly Lazy<ILookup<string, Window>> _windowsByTag;
    private readonly Lazy<ILookup<string, Window>> _windowsByRoom;
    private readonly Lazy<ILookup<string, HomeRun>> _runsByPanel;
    private readonly Lazy<ILookup<string, Unit>> _unitsByHub;
    private readonly Lazy<ILookup<string, Remote>> _remotesByHub;
    private readonly Lazy<ILookup<string, Remote>> _remotesByUnit;
    private readonly Lazy<Dictionary<string, Panel>> _panelsById;
    private readonly Lazy<Dictionary<string, decimal?>> _ohmsByCable;
    private readonly Lazy<Dictionary<string, int>> _placeByUnit;
    private readonly Lazy<Voltage?> _usualSupply;

    public HouseViews(House house, HouseShape shape)
    {
        Rooms = [.. shape.Rooms.Select(id => new Room(house, house.Items[id]))];
        RoomsById = Rooms.ToDictionary(r => r.Id);
        Windows = [.. shape.Windows.Select(id => new Window(house, house.Items[id]))];
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
        _windowsByTag = new(() => Windows.ToLookup(w => w.Tag, SameName.Comparer));
        _windowsByRoom = new(() => Windows.ToLookup(w => w.RoomId ?? ""));
        _runsByPanel = new(() => Runs.ToLookup(r => r.Item.Get(RunFacts.Panel)?.Id ?? ""));
        _unitsByHub = new(() => Units.ToLookup(u => u.Item.Get(UnitFacts.Hub)?.Id ?? ""));
        _remotesByHub = new(() => Remotes.ToLookup(r => r.Item.Get(RemoteFacts.Hub)?.Id ?? ""));
        _remotesByUnit = new(() => Remotes.SelectMany(r => r.Item.All(RemoteFacts.Moves).Where(m => m.Value == YesNo.Yes).Select(m => (Unit: m.Key, Remote: r))).ToLookup(m => m.Unit, m => m.Remote));
        _panelsById = new(() => Panels.ToDictionary(p => p.Id));
        _ohmsByCable = new(() => house.ItemsOf(ItemKind.CableType).ToDictionary(i => i.Id, i => OhmsPerMetre(house, new CableType(house, i))));
        _placeByUnit = new(() => Units.Select((u, at) => (u.Id, at)).ToDictionary(p => p.Id, p => p.at));
        _usualSupply = new(() => Usual(house));
    }

    public ImmutableArray<Room> Rooms { get; }
    public Dictionary<string, Room> RoomsById { get; }
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
    public Dictionary<string, Panel> PanelsById => _panelsById.Value;
    public ILookup<string, Window> WindowsByTag => _windowsByTag.Value;
    public ILookup<string, Window> WindowsByRoom => _windowsByRoom.Value;
    public ILookup<string, HomeRun> RunsByPanel => _runsByPanel.Value;
    public ILookup<string, Unit> UnitsByHub => _unitsByHub.Value;
    public ILookup<string, Remote> RemotesByHub => _remotesByHub.Value;
    public ILookup<string, Remote> RemotesByUnit => _remotesByUnit.Value;
    /// <summary>A unit's place on the walk.</summary>
    public int PlaceOf(Unit unit) => _placeByUnit.Value[unit.Id];

    public Voltage? UsualSupply => _usualSupply.Value;

    /// <summary>Resistance of one conductor of a cable of the kit at the warmest that cable gets here, in ohms per metre; null while a part is not known.</summary>
    public decimal? OhmsOf(string cable) => _ohmsByCable.Value.GetValueOrDefault(cable);

    private static decimal? OhmsPerMetre(House house, CableType cable) =>
        cable is { Conductor: { } size, Stranding: { } made } && house.Job.Get(HouseFacts.ConductorTemperature) is { } at &&
        Conductors.OhmsPerMetre(size, made, at) is { Ok: true } ohms ? ohms.Value : null;

    private Voltage? Usual(House house)
    {
        var types = Panels.IsEmpty ? house.ItemsOf(ItemKind.PanelType).Select(i => new PanelType(house, i)) : Panels.Select(p => p.Type);
        var supplies = types.Select(t => t?.Supply).Distinct().Take(2).ToList();
        return supplies.Count == 1 ? supplies[0] : null;
    }
}
