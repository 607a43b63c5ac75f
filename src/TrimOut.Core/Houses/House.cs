using System.Collections.Immutable;
using System.Runtime.InteropServices;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Reads;
using TrimOut.Core.Units;

namespace TrimOut.Core.Houses;

/// <summary>One house as its history left it. Never changes: a new change gives a new house.</summary>
/// <remarks>What it shows of its items is made when it is asked for, and everything that is read of it on the way is noted by whoever records.</remarks>
public sealed class House
{
    /// <summary>The id of the item that is the job itself.</summary>
    public const string RootId = "house";

    private Dictionary<string, Window>? _windowViews;
    private Window? _window;
    private Dictionary<int, Subject>? _views;
    private Lists? _lists;

    /// <summary>A house made of these items.</summary>
    public House(ItemTable items) : this(new HouseState(items, new(() => HouseShape.Of(items)), null)) { }

    /// <summary>Another view of a state of a house, with nothing worked out in it yet.</summary>
    internal House(HouseState state) => State = state;

    /// <summary>A house with nothing in it.</summary>
    public static House Empty { get; } = new(new ItemTable([new Item(RootId, ItemKind.House, "", 0)]));

    /// <summary>What it shares with other views of the same state.</summary>
    internal HouseState State { get; }

    /// <summary>All items, removed ones too.</summary>
    public ItemTable Items
    {
        get
        {
            ReadRecorder.Note(ReadKey.Everything);
            return State.Items;
        }
    }

    /// <summary>The item that is the job itself.</summary>
    public Item Job => State.Items[0];

    /// <summary>The house's name.</summary>
    public string Name => Job.Get(HouseFacts.Name) ?? "(no name yet)";

    /// <summary>What lengths are shown in: inches unless said otherwise.</summary>
    public DisplayUnits DisplayUnits => Job.Get(HouseFacts.Units) ?? DisplayUnits.Inches;

    /// <summary>Rooms, in walking order.</summary>
    public ImmutableArray<Room> Rooms => Once(ref Kept.Rooms, ReadKey.Rooms, State.Shape.Rooms, i => View(i, (h, x) => new Room(h, x)));

    /// <summary>Floors that rooms are on, in walking order.</summary>
    public IEnumerable<string> Floors => Rooms.Select(r => r.Floor).OfType<string>().Distinct(SameName.Comparer);

    /// <summary>Windows in walking order: by room, then by their place in it, then as they were added.</summary>
    public ImmutableArray<Window> Windows => Once(ref Kept.Windows, ReadKey.Windows, State.Shape.Windows, View);

    /// <summary>Their ids.</summary>
    internal IEnumerable<string> WindowIds
    {
        get
        {
            ReadRecorder.Note(ReadKey.Windows);
            return State.Shape.Windows.Select(place => State.Items[place].Id);
        }
    }

    /// <summary>Units in walking order; those of windows left out on purpose are not among them.</summary>
    public ImmutableArray<Unit> Units => Kept.Units.IsDefault ? Kept.Units = [.. State.Of(Lookups.Units).Keys.Select(u => FindUnit(u)!)] : Kept.Units;

    /// <summary>Home runs, in the order of their units.</summary>
    public ImmutableArray<HomeRun> Runs => Kept.Runs.IsDefault ? Kept.Runs = [.. State.Of(Lookups.Runs).Keys.Select(u => FindUnit(u)!.Run!)] : Kept.Runs;

    /// <summary>Runs that are landed though their unit is said to need none, by output.</summary>
    internal ImmutableArray<(Item Run, string Panel, int Output)> LandedNotWanted => Kept.NotWanted.IsDefault ? Kept.NotWanted =
    [
        .. from run in ItemsOf(ItemKind.Run)
           where run.Get(RunFacts.Panel) is not null && run.Get(RunFacts.Output) is not null && FindUnit(run.Under) is not { OnPanel: true }
           orderby run.Get(RunFacts.Output)
           select (run, run.Get(RunFacts.Panel)!.Value.Id, run.Get(RunFacts.Output)!.Value),
    ] : Kept.NotWanted;

    /// <summary>Panels, as they were added.</summary>
    public ImmutableArray<Panel> Panels => Kept.Panels.IsDefault ? Kept.Panels = [.. ItemsOf(ItemKind.Panel).Select(i => View(i, (h, x) => new Panel(h, x)))]
        : Kept.Panels;

    /// <summary>Hubs, as they were added.</summary>
    public ImmutableArray<Hub> Hubs => Kept.Hubs.IsDefault ? Kept.Hubs = [.. ItemsOf(ItemKind.Hub).Select(i => View(i, (h, x) => new Hub(h, x)))] : Kept.Hubs;

    /// <summary>Remotes, as they were added.</summary>
    public ImmutableArray<Remote> Remotes => Kept.Remotes.IsDefault
        ? Kept.Remotes = [.. ItemsOf(ItemKind.Remote).Select(i => View(i, (h, x) => new Remote(h, x)))] : Kept.Remotes;

    /// <summary>Boxes of cable on hand, as they were added.</summary>
    public ImmutableArray<CableBox> Boxes => Kept.Boxes.IsDefault
        ? Kept.Boxes = [.. ItemsOf(ItemKind.Box).Select(i => View(i, (h, x) => new CableBox(h, x)))] : Kept.Boxes;

    /// <summary>Who has a part in the job, by part, then as they were added.</summary>
    public IEnumerable<Contact> Contacts =>
        ItemsOf(ItemKind.Contact).Select(i => View(i, (h, x) => new Contact(h, x))).OrderBy(c => c.Part ?? (ContactPart)int.MaxValue);

    /// <summary>Visits by their day, those without one last.</summary>
    public IEnumerable<Visit> Visits => ItemsOf(ItemKind.Visit).Select(i => View(i, (h, x) => new Visit(h, x))).OrderBy(v => v.On ?? DateOnly.MaxValue);

    /// <summary>What was done in service, by its day, what has none last.</summary>
    public IEnumerable<Service> Services =>
        ItemsOf(ItemKind.Service).Select(i => View(i, (h, x) => new Service(h, x))).OrderBy(s => s.On ?? DateOnly.MaxValue);

    /// <summary>Punch items written by hand, as they were added.</summary>
    public ImmutableArray<PunchItem> PunchItems => Kept.PunchItems.IsDefault
        ? Kept.PunchItems = [.. ItemsOf(ItemKind.Punch).Select(i => View(i, (h, x) => new PunchItem(h, x)))] : Kept.PunchItems;

    /// <summary>Waivers, as they were given.</summary>
    public ImmutableArray<Waiver> Waivers => Kept.Waivers.IsDefault
        ? Kept.Waivers = [.. ItemsOf(ItemKind.Waiver).Select(i => View(i, (h, x) => new Waiver(h, x)))] : Kept.Waivers;

    /// <summary>The voltage that all panels of the house give, or all panels of its kit while it has none; null when they differ or nothing is known.</summary>
    public Voltage? UsualSupply
    {
        get
        {
            var types = ItemsOf(ItemKind.Panel).Any() ? Panels.Select(p => p.Type) : ItemsOf(ItemKind.PanelType).Select(i => new PanelType(this, i));
            return types.Select(t => t?.Supply).Distinct().Take(2).ToList() is [var one] ? one : null;
        }
    }

    /// <summary>An item by its id, removed or not; null when there is none.</summary>
    public Item? Find(string id)
    {
        var item = State.Items.Find(id);
        if (ReadRecorder.IsOn)
            ReadRecorder.Note(item is null ? ReadKey.NoSuch(id) : ReadKey.Presence(item.Place));
        return item;
    }

    /// <summary>Items that are in the house, as they were added.</summary>
    internal IEnumerable<Item> Present
    {
        get
        {
            ReadRecorder.Note(ReadKey.Present);
            return State.Shape.Present.Select(p => State.Items[p]);
        }
    }

    /// <summary>Items of which somebody said that they are removed, or are back.</summary>
    internal IEnumerable<Item> Removals
    {
        get
        {
            ReadRecorder.Note(ReadKey.Removals);
            return State.Shape.Removals.Select(p => State.Items[p]);
        }
    }

    /// <summary>Whether an item is in the house and not removed with what it belongs to.</summary>
    internal bool IsPresent(Item item)
    {
        ReadRecorder.Note(ReadKey.Presence(item.Place));
        return State.Shape.Contains(item.Place);
    }

    /// <summary>Items of one kind that are in the house, as they were added.</summary>
    public IEnumerable<Item> ItemsOf(ItemKind kind)
    {
        ReadRecorder.Note(ReadKey.OfKind(kind));
        return State.Shape.OfKind(kind).Select(p => State.Items[p]);
    }

    /// <summary>Items of one kind that belong to another item.</summary>
    public ImmutableArray<Item> Under(string id, ItemKind kind) => State.Items.Find(id) is { } item ? Under(item, kind) : [];

    /// <summary>Items of one kind that belong to another item.</summary>
    internal ImmutableArray<Item> Under(Item item, ItemKind kind)
    {
        ReadRecorder.Note(ReadKey.Children(item.Place, kind));
        var below = State.Shape.Under(item.Place);
        var (items, count) = (State.Items, 0);
        foreach (var place in below)
            count += items[place].Kind == kind ? 1 : 0;
        if (count == 0)
            return [];
        var (under, at) = (new Item[count], 0);
        foreach (var place in below)
        {
            if (items[place] is var one && one.Kind == kind)
                under[at++] = one;
        }
        return ImmutableCollectionsMarshal.AsImmutableArray(under);
    }

    /// <summary>This house with other values or more items.</summary>
    /// <param name="items">All items.</param>
    /// <param name="edits">What made them out of the items of this house.</param>
    internal House After(ItemTable items, ImmutableArray<Edit> edits) => new(State.After(items, new HouseStep(State.Items, edits)));

    /// <summary>What an item is called on screens and papers.</summary>
    public string NameOf(Item item) => NameOf(item, static english => english);

    /// <summary>What an item is called in another language: what was typed as it was typed, everything else in the words of that language.</summary>
    /// <param name="item">The item.</param>
    /// <param name="words">The words of the language for English ones.</param>
    public string NameOf(Item item, Func<string, string> words) => ItemNames.Of(this, item, words);

    /// <summary>A unit by its id; null when it is not in the house.</summary>
    public Unit? FindUnit(string id) => State.Of(Lookups.Units)[id] is [var window] ? View(State.Items[window]).UnitOf(State.Items[id]) : null;

    /// <summary>A unit by its id, in the house or removed, without working out the views of the whole house; null when there is no such unit.</summary>
    public Unit? UnitAlone(string id)
    {
        if (Find(id) is not { Kind: ItemKind.Unit } item || Find(item.Under) is not { Kind: ItemKind.Window } above)
            return null;
        var window = new Window(this, above);
        return window.Units.FirstOrDefault(u => u.Id == id) ?? new Unit(this, item, window);
    }

    /// <summary>A window by its id; null when it is not in the house.</summary>
    public Window? FindWindow(string id) => Here(id, ItemKind.Window) is { } window ? View(window) : null;

    /// <summary>A window by its tag, whatever its case; null when there is none.</summary>
    public Window? FindTag(string tag) => State.Of(Lookups.WindowsByTag)[tag] is [var window, ..] ? View(State.Items[window]) : null;

    /// <summary>A panel by its id; null when it is not in the house.</summary>
    public Panel? FindPanel(string id) => Here(id, ItemKind.Panel) is { } panel ? View(panel, (h, i) => new Panel(h, i)) : null;

    /// <summary>A remote by its id; null when it is not in the house.</summary>
    public Remote? FindRemote(string id) => Here(id, ItemKind.Remote) is { } remote ? View(remote, (h, i) => new Remote(h, i)) : null;

    /// <summary>A room by its id; null when it is not in the house.</summary>
    public Room? FindRoom(string id) => Here(id, ItemKind.Room) is { } room ? View(room, (h, i) => new Room(h, i)) : null;

    /// <summary>What is under a key of a lookup, in its order.</summary>
    internal IReadOnlyList<T> Look<T>(Lookup<T> lookup, string key)
        where T : IEquatable<T> => State.Of(lookup)[key];

    /// <summary>The units under a key of a lookup, in its order.</summary>
    internal IEnumerable<Unit> UnitsAt(Lookup<string> lookup, string key) => State.Of(lookup)[key].Select(u => FindUnit(u)!);

    /// <summary>The panels under a key of a lookup, in its order.</summary>
    internal IEnumerable<Panel> PanelsAt(Lookup<string> lookup, string key) => State.Of(lookup)[key].Select(p => FindPanel(p)!);

    /// <summary>The unit before another on the walk; null for the first.</summary>
    internal Unit? UnitBefore(Unit unit) => State.Of(Lookups.Units).Before(unit.Id) is { } before ? FindUnit(before) : null;

    private Item? Here(string id, ItemKind kind) => Find(id) is { } item && item.Kind == kind && State.Shape.Contains(item.Place) ? item : null;

    /// <summary>An item as what it is, the same object whenever it is asked for.</summary>
    private T View<T>(Item item, Func<House, Item, T> make)
        where T : Subject
    {
        _views ??= [];
        if (!_views.TryGetValue(item.Place, out var view))
            _views.Add(item.Place, view = make(this, item));
        return (T)view;
    }

    private Window View(Item window)
    {
        if (_window is { } last && last.Id == window.Id)
            return last;
        if (_windowViews is null && _window is null)
            return _window = new Window(this, window);
        _windowViews ??= new() { [_window!.Id] = _window };
        if (!_windowViews.TryGetValue(window.Id, out var view))
            _windowViews.Add(window.Id, view = new Window(this, window));
        return _window = view;
    }

    private ImmutableArray<T> Once<T>(ref ImmutableArray<T> views, ReadKey read, ImmutableArray<int> places, Func<Item, T> view)
    {
        if (!views.IsDefault)
            return views;
        ReadRecorder.Note(read);
        return views = [.. places.Select(p => view(State.Items[p]))];
    }

    /// <summary>Lists that were asked for once.</summary>
    private Lists Kept => _lists ??= new();

    private sealed class Lists
    {
        public ImmutableArray<Room> Rooms;
        public ImmutableArray<Window> Windows;
        public ImmutableArray<Unit> Units;
        public ImmutableArray<HomeRun> Runs;
        public ImmutableArray<(Item Run, string Panel, int Output)> NotWanted;
        public ImmutableArray<Waiver> Waivers;
        public ImmutableArray<PunchItem> PunchItems;
        public ImmutableArray<CableBox> Boxes;
        public ImmutableArray<Remote> Remotes;
        public ImmutableArray<Hub> Hubs;
        public ImmutableArray<Panel> Panels;
    }
}
