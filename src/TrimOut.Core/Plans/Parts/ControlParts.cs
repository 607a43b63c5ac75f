using System.Globalization;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;

namespace TrimOut.Core.Plans.Parts;

/// <summary>Hubs, remotes by room, wall plates by gangs.</summary>
internal static class ControlParts
{
    public static IEnumerable<PartLine> Of(House house)
    {
        foreach (var type in house.Hubs.GroupBy(h => h.Show(HubFacts.Type)))
            yield return Line(type.Key.Length == 0 ? "Hub of no type yet" : type.Key, type.Count(),
                $"hubs of the house: {HouseParts.Names(type.Select(h => h.Name))}");
        if (house.Units.Length > 0)
            yield return MoreHubs(house);
        foreach (var place in house.Remotes.OrderBy(r => house.Rooms.IndexOf(r.Room!))
            .GroupBy(r => (Room: r.Room?.FullName ?? "no room yet", Type: r.Show(RemoteFacts.Type))))
            yield return Line($"{(place.Key.Type.Length == 0 ? "Remote of no type yet" : place.Key.Type)}, {place.Key.Room}", place.Count(),
                $"remotes of that room: {HouseParts.Names(place.Select(r => r.Name))}");
        foreach (var plate in Plates(house).GroupBy(p => p.Gangs).OrderBy(g => g.Key))
            yield return Line($"{NumberText.Plain(plate.Key)}-gang wall plate", plate.Count(), HouseParts.Names(plate.Select(p => p.From)));
        foreach (var silent in house.Remotes.Where(r => Gangs(r) is null))
            yield return new PartLine(PartGroup.Controls, $"Wall plate of {silent.Name}", null, "", "its type, or the gangs of its type, are not known");
    }

    private static PartLine MoreHubs(House house)
    {
        var devices = house.Units.Length + house.Remotes.Length;
        var from = $"{HouseParts.Many(house.Units.Length, "unit")} and {HouseParts.Many(house.Remotes.Length, "remote")}";
        if (house.Hubs.FirstOrDefault(h => h.Type?.Devices is null) is { } silent)
            return new PartLine(PartGroup.Controls, "More hubs", null, "", $"{from}; devices of {silent.Name} are not known");
        var known = house.Hubs.Sum(h => h.Type!.Devices!.Value);
        if (devices <= known)
            return Line("More hubs", 0, $"{from}; those of the house know {NumberText.Plain(known)}");
        return house.ItemsOf(ItemKind.HubType).Select(i => new HubType(house, i)).FirstOrDefault(t => t.Devices is not null) is { } type
            ? Line($"More: {type.Name}", (devices - known + type.Devices!.Value - 1) / type.Devices.Value,
                $"{from}; {NumberText.Plain(type.Devices.Value)} to a hub")
            : new PartLine(PartGroup.Controls, "More hubs", null, "", $"{from}; no sheet in the kit says how many a hub knows");
    }

    /// <summary>
    /// Wall plates: remotes of one room with the same plate share it; the place in it stands behind a comma. A remote without a plate gets one of its own.
    /// </summary>
    private static IEnumerable<(int Gangs, string From)> Plates(House house) =>
        from remote in house.Remotes
        where Gangs(remote) is > 0
        let plate = remote.Item.Get(RemoteFacts.Plate)?.Split(',')[0].Trim().ToUpperInvariant()
        group remote by (remote.Room?.Id, plate, plate is null ? remote.Id : "") into shared
        let needed = shared.Sum(r => Gangs(r)!.Value)
        select (Math.Max(needed, Said(shared.Key.plate)),
            $"{shared.First().Room?.FullName ?? "no room yet"} " +
            $"({string.Join(" and ", shared.Select(r => r.Name))}{(shared.Key.plate is null ? ", no plate said" : "")})");

    private static int? Gangs(Remote remote) => remote.Type?.Item.Get(RemoteTypeFacts.Gangs);

    /// <summary>The gangs that a plate's own name says: 2 of "2-gang"; 0 where it says none.</summary>
    private static int Said(string? plate) =>
        plate?.IndexOf("-GANG", StringComparison.Ordinal) is > 0 and var end
            && int.TryParse(plate.AsSpan(0, end), NumberStyles.None, CultureInfo.InvariantCulture, out var gangs) && gangs <= 12 ? gangs : 0;

    private static PartLine Line(string part, int count, string from) => new(PartGroup.Controls, part, count, "", from);
}
