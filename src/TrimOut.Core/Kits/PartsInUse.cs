using TrimOut.Core.Houses;

namespace TrimOut.Core.Kits;

/// <summary>The parts of the kit that something in a house is made of.</summary>
public static class PartsInUse
{
    /// <summary>Each once, in the order of the kit; no head cover is no part.</summary>
    /// <param name="house">The house.</param>
    public static IEnumerable<KitSheet> Of(House house) =>
        new IEnumerable<KitSheet?>[]
        {
            house.Units.Select(u => u.Kind), house.Runs.Select(r => r.Cable), house.Units.Select(u => u.HeadCover is { IsNone: false } cover ? cover : null),
            house.Panels.Select(p => p.Type), house.Hubs.Select(h => h.Type), house.Remotes.Select(r => r.Type),
        }.SelectMany(s => s).OfType<KitSheet>().DistinctBy(p => p.Id).OrderBy(p => p.Item.Kind).ThenBy(p => p.Item.Place);
}
