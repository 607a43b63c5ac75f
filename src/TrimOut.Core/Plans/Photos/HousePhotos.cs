using System.Collections.Immutable;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;

namespace TrimOut.Core.Plans.Photos;

/// <summary>A picture that a house names.</summary>
/// <param name="Of">What it is of: a unit, a window or a punch item, by name.</param>
/// <param name="Holder">The item that has the detail.</param>
/// <param name="Fact">The detail.</param>
/// <param name="Path">Its path, as it was noted.</param>
public sealed record HousePhoto(string Of, Item Holder, Fact<string> Fact, string Path)
{
    /// <summary>What it shows, in a few words.</summary>
    public string Shows => Fact == RunFacts.Photo ? "the open wall" : Fact == UnitFacts.Photo ? "the unit" : Fact == WindowFacts.Photo ? "the window"
        : "a punch item";

    /// <summary>Who noted it last, and when by the clock of that laptop.</summary>
    public Head Noted => Holder.Latest(Fact)!;
}

/// <summary>The pictures that a house names: of windows, units, the open wall and punch items.</summary>
public static class HousePhotos
{
    /// <summary>All of them, in walking order; punch items last.</summary>
    public static ImmutableArray<HousePhoto> Of(House house) =>
    [
        .. house.Windows.SelectMany(Of), .. house.PunchItems.SelectMany(Of),
    ];

    /// <summary>Those of a window, of each of its units, and of their cables while the wall was open.</summary>
    public static IEnumerable<HousePhoto> Of(Window window) =>
        Named(window.Tag, window.Item, WindowFacts.Photo).Concat(window.Units.SelectMany(OfUnit));

    /// <summary>Those of a punch item.</summary>
    public static IEnumerable<HousePhoto> Of(PunchItem item) => Named(item.Name, item.Item, PunchFacts.Photo);

    /// <summary>Those of one unit: of its window, of itself, and of its cable while the wall was open.</summary>
    public static ImmutableArray<HousePhoto> Of(Unit unit) => [.. Named(unit.Window.Tag, unit.Window.Item, WindowFacts.Photo), .. OfUnit(unit)];

    private static IEnumerable<HousePhoto> OfUnit(Unit unit) => Named(unit.Tag, unit.Item, UnitFacts.Photo)
        .Concat(unit.CableThatIsThere is { } run ? Named(unit.Tag, run, RunFacts.Photo) : []);

    private static IEnumerable<HousePhoto> Named(string of, Item item, Fact<string> fact) =>
        item.Get(fact) is { } noted && !AbsenceWords.SayNoMore(noted) ? PhotoPaths.Of(noted).Select(p => new HousePhoto(of, item, fact, p)) : [];
}
