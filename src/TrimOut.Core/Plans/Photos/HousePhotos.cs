using System.Collections.Immutable;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
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

    /// <summary>Who noted it here, and when by the clock of that laptop: of several in one detail each has its own.</summary>
    /// <param name="log">The house with its history.</param>
    /// <remarks>The change by which it came there the last time; whoever notes another one beside it, or takes one out, did not note this one.</remarks>
    public Change NotedIn(HouseLog log)
    {
        var came = (Change?)null;
        foreach (var change in log.Changes.Where(c => log.IsInForce(c.Id)))
        {
            if (change.Edits.OfType<Edit.Put>().LastOrDefault(p => p.Item == Holder.Id && p.Field == Fact.Name) is { } put)
                came = PhotoPaths.Of(put.Value).Contains(Path, StringComparer.Ordinal) ? came ?? change : null;
        }
        return came ?? log.Find(Holder.Latest(Fact)!.Id)!;
    }
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
