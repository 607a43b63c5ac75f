using TrimOut.Core.Facts;

namespace TrimOut.Core.Houses;

/// <summary>The radio device that knows every unit.</summary>
public sealed class Hub(House house, Item item) : Subject(house, item)
{
    /// <summary>What the maker's sheet says about it; null while no type is chosen.</summary>
    public HubType? Type => Target(HubFacts.Type) is { } type ? new HubType(House, type) : null;

    /// <summary>Units paired with it.</summary>
    public IEnumerable<Unit> Units => House.UnitsAt(Lookups.UnitsByHub, Id);

    /// <summary>Remotes that count at it.</summary>
    public IEnumerable<Remote> Remotes => House.Look(Lookups.RemotesByHub, Id).Select(r => House.FindRemote(r)!);
}

/// <summary>A remote.</summary>
public sealed class Remote(House house, Item item) : Subject(house, item)
{
    /// <summary>What the maker's sheet says about it; null while no type is chosen.</summary>
    public RemoteType? Type => Target(RemoteFacts.Type) is { } type ? new RemoteType(House, type) : null;

    /// <summary>Where it is kept.</summary>
    public Room? Room => Target(RemoteFacts.Room) is { } room ? House.FindRoom(room.Id) : null;

    /// <summary>Units that it moves, in walking order.</summary>
    public IEnumerable<Unit> Units => House.UnitsAt(Lookups.UnitsByRemote, Id);

    /// <summary>Its presets.</summary>
    public IEnumerable<Preset> Presets => House.Under(Item, ItemKind.Preset).Select(i => new Preset(House, i));
}

/// <summary>A stored set of positions on one remote.</summary>
public sealed class Preset(House house, Item item) : Subject(house, item)
{
    /// <summary>When a timer calls it by itself, by the clocks of the house; null where only a key does.</summary>
    public TimeOnly? RunsAt => Item.Get(PresetFacts.RunsAt);

    /// <summary>
    /// The months in which its timer calls it, in their order: all where none were noted; over the turn of the year where the first is the later one.
    /// </summary>
    public IEnumerable<Month> RunsIn
    {
        get
        {
            const int months = (int)Month.December + 1;
            var (from, to) = (Item.Get(PresetFacts.RunsFrom) ?? Month.January, Item.Get(PresetFacts.RunsTo) ?? Month.December);
            var count = ((int)to - (int)from + months) % months + 1;
            return Enumerable.Range((int)from, count).Select(m => (Month)(m % months));
        }
    }

    /// <summary>The position of each unit in it, in per cent open, in walking order.</summary>
    public IEnumerable<(Unit Unit, int PercentOpen)> Positions =>
        House.UnitsAt(Lookups.UnitsByPreset, Id).Select(u => (u, Item.Get(PresetFacts.Position, u.Id)!.Value));
}
