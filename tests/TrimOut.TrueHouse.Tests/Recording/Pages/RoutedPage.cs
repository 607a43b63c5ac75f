using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.TrueHouse.Tests.Truth;
using static TrimOut.TrueHouse.Tests.Recording.Installer;

namespace TrimOut.TrueHouse.Tests.Recording.Pages;

/// <summary>Before a cable is pulled: panels, boxes on hand, the cable and the way of each home run.</summary>
internal static class RoutedPage
{
    public static void Write(Installer installer)
    {
        var (house, book, tape) = (installer.Truth, installer.Book, installer.Tape);
        foreach (var panel in house.Panels)
        {
            book.Add(ItemKind.Panel, panel.Name);
            book.Put(panel.Name, (PanelFacts.Type, panel.Sheet.Name), (PanelFacts.Location, "Mechanical room, north wall"));
        }
        foreach (var cable in house.Cables)
        {
            book.Put(cable.Name, (CableTypeFacts.OnHand, tape.Run(house.Boxes[cable.Name].Sum())));
            for (var n = 0; n < house.Boxes[cable.Name].Count; n++)
            {
                var box = $"{cable.Name[..5]}{n + 1}";
                book.Add(ItemKind.Box, box);
                book.Put(box, (BoxFacts.Cable, cable.Name), (BoxFacts.Left, tape.Run(house.Boxes[cable.Name][n])));
            }
        }
        foreach (var unit in house.Wired)
        {
            book.Put(unit.Key, (RunFacts.Cable, unit.Cable!.Sheet.Name));
            for (var n = 0; n < unit.Cable.Legs.Count; n++)
            {
                var (leg, name) = (unit.Cable.Legs[n], $"{unit.Key}/{n + 1}");
                book.AddLeg(unit.Key, name);
                book.Put(name, (LegFacts.Length, tape.Pace(leg.Metres, unit.Key, "leg", name)), (LegFacts.Direction, Word(leg.Direction)),
                    (LegFacts.Place, Word(leg.Around)),
                    (LegFacts.AirMoves, leg.Direction == LegDirection.Across ? leg.Around == CablePlace.AirHandlingSpace ? "yes" : "no" : null),
                    (LegFacts.Conduit, "none"), (LegFacts.FireBarrier, leg.FireBarrier ? "yes" : "no"));
            }
            book.MarkAll(book.Unit(unit.Key), unit.Key, Phase.RoughIn,
                "kept-from-mains", "holes-guarded", "cable-pulled", "both-ends-labelled", "wall-photographed", "tested-first",
                "spares-noted", "fire-stops-seen");
        }
    }
}
