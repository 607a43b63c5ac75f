using TrimOut.Core.Facts;
using TrimOut.Core.Houses;

namespace TrimOut.Core.Checks;

/// <summary>The subjects of one sort in a house.</summary>
/// <typeparam name="T">The sort of subject.</typeparam>
/// <param name="Ids">Their ids, in the order in which they are reported.</param>
/// <param name="Find">One of them by its id.</param>
public sealed record Subjects<T>(Func<House, IEnumerable<string>> Ids, Func<House, string, T> Find)
    where T : Subject;

/// <summary>The sorts of subject that rules are held against.</summary>
public static class Subjects
{
    /// <summary>Units that are to be hung, in walking order.</summary>
    public static Subjects<Unit> Units { get; } = new(house => house.State.Of(Lookups.Units).Keys, (house, id) => house.FindUnit(id)!);

    /// <summary>Home runs, in the order of their units; each by the id of its unit.</summary>
    public static Subjects<HomeRun> Runs { get; } = new(house => house.State.Of(Lookups.Runs).Keys, (house, id) => house.FindUnit(id)!.Run!);

    /// <summary>All windows, in walking order.</summary>
    public static Subjects<Window> Windows { get; } = new(house => house.WindowIds, (house, id) => house.FindWindow(id)!);

    /// <summary>Windows that get a covering, in walking order.</summary>
    public static Subjects<Window> CoveredWindows { get; } = new(house => house.State.Of(Lookups.CoveredWindows).Keys, (house, id) => house.FindWindow(id)!);

    /// <summary>Kinds of covering in the kit, as they were added.</summary>
    public static Subjects<CoveringKind> Kinds { get; } = Of(ItemKind.CoveringKind, (house, item) => new CoveringKind(house, item));

    /// <summary>Cables in the kit, as they were added.</summary>
    public static Subjects<CableType> Cables { get; } = Of(ItemKind.CableType, (house, item) => new CableType(house, item));

    /// <summary>Panels, as they were added.</summary>
    public static Subjects<Panel> Panels { get; } = Of(ItemKind.Panel, (house, item) => new Panel(house, item));

    /// <summary>Hubs, as they were added.</summary>
    public static Subjects<Hub> Hubs { get; } = Of(ItemKind.Hub, (house, item) => new Hub(house, item));

    /// <summary>What was done in service, as it was recorded.</summary>
    public static Subjects<Service> Services { get; } = Of(ItemKind.Service, (house, item) => new Service(house, item));

    /// <summary>Remotes, as they were added.</summary>
    public static Subjects<Remote> Remotes { get; } = Of(ItemKind.Remote, (house, item) => new Remote(house, item));

    /// <summary>Everything that walks through phases: units, then panels, then the house itself.</summary>
    public static Subjects<Subject> Walkers { get; } = new(
        house => [.. house.State.Of(Lookups.Units).Keys, .. house.ItemsOf(ItemKind.Panel).Select(p => p.Id), Houses.House.RootId],
        (house, id) => id == Houses.House.RootId ? new JobItself(house) : house.FindUnit(id) as Subject ?? house.FindPanel(id)!);

    /// <summary>The job itself.</summary>
    public static Subjects<JobItself> House { get; } = new(_ => [Houses.House.RootId], (house, _) => new JobItself(house));

    /// <summary>Parts of the kit, as they were added.</summary>
    public static Subjects<AnyItem> Parts { get; } = new(
        house => Enum.GetValues<ItemKind>().Where(FactTable.IsKit).SelectMany(house.ItemsOf).OrderBy(i => i.Place).Select(i => i.Id),
        (house, id) => new AnyItem(house, house.State.Items[id]));

    /// <summary>Items of one kind, as they were added.</summary>
    public static Subjects<T> Of<T>(ItemKind kind, Func<House, Item, T> view)
        where T : Subject => new(house => house.ItemsOf(kind).Select(i => i.Id), (house, id) => view(house, house.State.Items[id]));
}
