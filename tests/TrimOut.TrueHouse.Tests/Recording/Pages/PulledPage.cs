using TrimOut.Core.Facts;
using TrimOut.Core.Phases;
using TrimOut.TrueHouse.Tests.Truth;
using static TrimOut.TrueHouse.Tests.Recording.Installer;

namespace TrimOut.TrueHouse.Tests.Recording.Pages;

/// <summary>Cables pulled, kept from mains, labelled at both ends, photographed and tested.</summary>
internal static class PulledPage
{
    public static void Write(Installer installer)
    {
        var (house, book, tape, meter) = (installer.Truth, installer.Book, installer.Tape, installer.Meter);
        book.Put(Book.JobItself, (HouseFacts.CableAtTest, Number(Math.Round(house.CableAtFirstTest + (2 * house.Noise.Of("first test", "temperature"))))));
        book.Put(Book.JobItself, (HouseFacts.DrillGuard, "Glasses, masks, a vacuum at the drill"));
        foreach (var unit in house.Wired)
        {
            var cable = unit.Cable!;
            var tested = cable.ComesOutAs ?? cable;
            book.Put(unit.Key,
                (RunFacts.MainsDistance, tape.Read(cable.MainsDistance, unit.Key, "mains")), (RunFacts.MainsSheathed, cable.MainsSheathed ? "yes" : "no"),
                (RunFacts.HoleEdge, tape.Read(cable.HoleEdge + (cable.HoleReadToMiddle ? cable.HoleDrill / 2 : 0), unit.Key, "hole")),
                (RunFacts.HoleTo, cable.HoleReadToMiddle ? "middle" : "side"),
                (RunFacts.HoleDrill, cable.HoleReadToMiddle ? tape.Exactly(cable.HoleDrill) : null),
                (RunFacts.NailPlates, cable.Plated ? "yes" : "no"), (RunFacts.OnePiece, cable.Joined ? "no" : "yes"),
                (RunFacts.TailAtWindow, tape.Read(cable.TailAtWindow, unit.Key, "tail")),
                (RunFacts.TailAtPanel, tape.Read(cable.TailAtPanel * 1000, unit.Key, "panel tail")),
                (RunFacts.LabelAtWindow, cable.LabelAtWindow), (RunFacts.LabelAtPanel, cable.LabelAtPanel), (RunFacts.Photo, $"photos/{unit.Key}.jpg"),
                (RunFacts.SpareCables, Number(cable.Spares)), (RunFacts.SpareEnds, cable.Spares > 0 ? "Coiled beside the first" : null),
                (RunFacts.FirstLoop, meter.Ohms(tested.Ohms(Stage.Pulled, house.CableAtFirstTest), house.MeterLeads, unit.Key, "first loop")),
                (RunFacts.FirstApart, meter.Ohms(tested.Ohms(Stage.Pulled, house.CableAtFirstTest, shorted: false), house.MeterLeads, unit.Key, "first open")),
                (RunFacts.FirstToFrame, meter.Ohms(tested.OhmsToBuilding(Stage.Pulled, house.CableAtFirstTest), house.MeterLeads, unit.Key, "first frame")));
            for (var n = 0; n < cable.Legs.Count; n++)
            {
                book.Put($"{unit.Key}/{n + 1}", (LegFacts.SealedBy, cable.Legs[n].SealedBy),
                    (LegFacts.SealSeenOn, cable.Legs[n] is { SealedBy: not null, SealSeen: true } ? Day(house.Days[Stage.Pulled]) : null));
            }
        }
        installer.MarkUnits(Phase.RoughIn);
        installer.MarkHouse(Phase.RoughIn);
    }
}
