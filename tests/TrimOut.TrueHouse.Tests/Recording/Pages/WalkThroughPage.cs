using TrimOut.Core.Facts;
using TrimOut.Core.Phases;
using TrimOut.TrueHouse.Tests.Truth;
using static TrimOut.TrueHouse.Tests.Recording.Installer;

namespace TrimOut.TrueHouse.Tests.Recording.Pages;

/// <summary>Framing open: rough openings, what is to hang there, where the cable comes out.</summary>
internal static class WalkThroughPage
{
    public static void Write(Installer installer)
    {
        var (house, book, tape) = (installer.Truth, installer.Book, installer.Tape);
        foreach (var room in house.Rooms)
            book.AddRoom(room.Name, room.Floor);
        foreach (var opening in house.Openings)
        {
            book.AddWindow(opening.Tag, house.Slips.Typed(opening.Tag, WindowFacts.Tag, opening.Tag)!, opening.Room.Name,
                [.. opening.Units.Select(u => u.Key)]);
            book.Put(opening.Tag, (WindowFacts.Covered, opening.LeftOut ? "no" : "yes"), (WindowFacts.NotCoveredBecause, opening.LeftOutBecause),
                (WindowFacts.Facing, opening.Facing),
                (WindowFacts.Reach, "ladder"), (WindowFacts.Mount, opening.Outside ? "outside" : "inside"),
                (WindowFacts.RoughWidth, tape.Read(opening.Rough.Width, opening.Tag, "rough width")),
                (WindowFacts.RoughHeight, tape.Read(opening.Rough.Height, opening.Tag, "rough height")),
                (WindowFacts.Escape, opening.Escape ? "yes" : "no"));
            if (opening.LeftOut)
                continue;
            foreach (var unit in opening.Units)
                Unit(book, tape, unit);
        }
        book.Put(Book.JobItself, (HouseFacts.Openings, Number(house.Openings.Count + house.NotWalkedPast)));
        installer.MarkUnits(Phase.WalkThrough);
        installer.MarkHouse(Phase.WalkThrough);
    }

    private static void Unit(Book book, Tape tape, RealUnit unit)
    {
        book.Put(unit.Key, (UnitFacts.Position, Number(unit.Position)), (UnitFacts.Kind, unit.Kind.Name), (UnitFacts.LeadSide, Word(unit.Lead)),
            (UnitFacts.Power, Word(unit.Power)),
            (UnitFacts.Socket, unit.Power == PowerSource.PlugIn ? Word(unit.Socket) : null), (UnitFacts.Group, unit.Group));
        if (unit.Power == PowerSource.Panel)
        {
            book.Put(unit.Key, (UnitFacts.EntrySide, Word(unit.EntrySide)), (UnitFacts.EntryFromJamb, tape.Exactly(unit.EntryFromJamb)),
                (UnitFacts.EntryBack, tape.Exactly(unit.EntryBack)), (UnitFacts.EntryBelowHead, tape.Exactly(unit.EntryBelowHead)));
        }
    }
}
