using System.Globalization;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Plans.Parts;

/// <summary>Hubs, remotes by room, wall plates by gangs.</summary>
internal static class ControlParts
{
    private static readonly Message HubOfNoType = new("Hub of no type yet");
    private static readonly Message HubsOfTheHouse = new("hubs of the house: {0}");
    private static readonly Message RemoteOfNoType = new("Remote of no type yet");
    private static readonly Message NoRoomYet = new("no room yet");
    private static readonly Message InRoom = new("{0}, {1}");
    private static readonly Message RemotesOfThatRoom = new("remotes of that room: {0}");
    private static readonly Message GangPlate = new("{0}-gang wall plate");
    private static readonly Message PlateOf = new("Wall plate of {0}");
    private static readonly Message GangsNotKnown = new("its type, or the gangs of its type, are not known");
    private static readonly Message MoreOfThem = new("More hubs");
    private static readonly Message MoreOfType = new("More: {0}");
    private static readonly Message UnitsAndRemotes = new("{0} and {1}");
    private static readonly Message DevicesNotKnown = new("devices of {0} are not known");
    private static readonly Message HubsKnow = new("those of the house know {0}");
    private static readonly Message ToAHub = new("{0} to a hub");
    private static readonly Message NoSheetSays = new("no sheet in the kit says how many a hub knows");
    private static readonly Message Shared = new("{0} ({1})");
    private static readonly Message NoPlateSaid = new("{0}, no plate said");

    public static IEnumerable<PartLine> Of(House house)
    {
        foreach (var type in house.Hubs.GroupBy(h => h.Show(HubFacts.Type)))
            yield return Line(type.Key.Length == 0 ? HubOfNoType : PartWords.Called(type.Key), type.Count(),
                HubsOfTheHouse.With(PartWords.Names(type.Select(h => h.Name)))) with
            { Name = type.Key, Items = [.. type.Select(h => new CountedItem(h.Item))] };
        if (house.Units.Length > 0)
            yield return MoreHubs(house);
        foreach (var place in house.Remotes.OrderBy(r => house.Rooms.IndexOf(r.Room!)).GroupBy(r => (Room: r.Room?.FullName, Type: r.Show(RemoteFacts.Type))))
            yield return Line(InRoom.With(place.Key.Type.Length == 0 ? RemoteOfNoType : PartWords.OfKit(place.Key.Type), Named(place.Key.Room)),
                place.Count(), RemotesOfThatRoom.With(PartWords.Names(place.Select(r => r.Name)))) with
            { Name = place.Key.Type, Items = [.. place.Select(r => new CountedItem(r.Item))] };
        foreach (var plate in Plates(house).GroupBy(p => p.Gangs).OrderBy(g => g.Key))
            yield return plate.SelectMany(p => p.Types).Aggregate(
                Line(GangPlate.With(plate.Key), plate.Count(), PartWords.All([.. plate.Select(p => p.From)]))
                    with
                {
                    Name = string.Create(CultureInfo.InvariantCulture, $"{plate.Key}-gang wall plate"),
                    // A plate is not there while one of its remotes is not.
                    Items = [.. plate.SelectMany(p => p.Remotes.OrderBy(r => AlreadyHere.Is(house, r.Item, Phase.Pair))
                        .Select((r, at) => new CountedItem(r.Item, at == 0 ? 1 : 0)))],
                },
                (line, type) => line.By(type.Item, RemoteTypeFacts.Gangs));
        foreach (var silent in house.Remotes.Where(r => Gangs(r) is null))
            yield return new PartLine(PartGroup.Controls, PlateOf.With(Arg.Typed(silent.Name)), null, "", GangsNotKnown);
    }

    private static PartLine MoreHubs(House house)
    {
        var devices = house.Units.Length + house.Remotes.Length;
        var from = UnitsAndRemotes.With(PartWords.ManyUnits(house.Units.Length), PartWords.ManyRemotes(house.Remotes.Length));
        if (house.Hubs.FirstOrDefault(h => h.Type?.Devices is null) is { } silent)
            return new PartLine(PartGroup.Controls, MoreOfThem, null, "", from.And(DevicesNotKnown.With(Arg.Typed(silent.Name))));
        var known = house.Hubs.Sum(h => h.Type!.Devices!.Value);
        if (devices <= known)
            return By(house.Hubs.Select(h => h.Type!), Line(MoreOfThem, 0, from.And(HubsKnow.With(known))));
        return house.ItemsOf(ItemKind.HubType).Select(i => new HubType(house, i)).FirstOrDefault(t => t.Devices is not null) is { } type
            ? By([type, .. house.Hubs.Select(h => h.Type!)], Line(MoreOfType.With(PartWords.OfKit(type.Name)),
                (devices - known + type.Devices!.Value - 1) / type.Devices.Value, from.And(ToAHub.With(type.Devices.Value)))) with
            { Name = type.Name }
            : new PartLine(PartGroup.Controls, MoreOfThem, null, "", from.And(NoSheetSays));
    }

    /// <summary>
    /// Wall plates: remotes of one room with the same plate share it; the place in it stands behind a comma. A remote without a plate gets one of its own.
    /// </summary>
    private static IEnumerable<(int Gangs, Sentence From, IEnumerable<RemoteType> Types, IEnumerable<Remote> Remotes)> Plates(House house) =>
        from remote in house.Remotes
        where Gangs(remote) is > 0
        let plate = remote.Item.Get(RemoteFacts.Plate)?.Split(',')[0].Trim().ToUpperInvariant()
        group remote by (remote.Room?.Id, plate, plate is null ? remote.Id : "") into shared
        let needed = shared.Sum(r => Gangs(r)!.Value)
        let names = Arg.Typed(string.Join(", ", shared.Select(r => r.Name)))
        select (Math.Max(needed, Said(shared.Key.plate)),
            Shared.With(Named(shared.First().Room?.FullName), shared.Key.plate is null ? NoPlateSaid.With(names) : names),
            shared.Select(r => r.Type!), shared.AsEnumerable());

    private static Arg Named(string? room) => room is null ? NoRoomYet : Arg.Typed(room);

    private static int? Gangs(Remote remote) => remote.Type?.Item.Get(RemoteTypeFacts.Gangs);

    /// <summary>The gangs that a plate's own name says: 2 of "2-gang"; 0 where it says none.</summary>
    private static int Said(string? plate) =>
        plate?.IndexOf("-GANG", StringComparison.Ordinal) is > 0 and var end
            && int.TryParse(plate.AsSpan(0, end), NumberStyles.None, CultureInfo.InvariantCulture, out var gangs) && gangs <= 12 ? gangs : 0;

    private static PartLine By(IEnumerable<HubType> types, PartLine line) => types.Aggregate(line, (l, type) => l.By(type.Item, HubTypeFacts.Devices));

    private static PartLine Line(Sentence part, int count, Sentence from) => new(PartGroup.Controls, part, count, "", from);
}
