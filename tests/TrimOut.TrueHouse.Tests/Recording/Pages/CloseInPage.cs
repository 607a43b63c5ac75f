using TrimOut.Core.Facts;
using TrimOut.Core.Phases;
using TrimOut.TrueHouse.Tests.Truth;
using static TrimOut.TrueHouse.Tests.Recording.Installer;

namespace TrimOut.TrueHouse.Tests.Recording.Pages;

/// <summary>After drywall and paint: every cable found, measured and tested again.</summary>
internal static class CloseInPage
{
    public static void Write(Installer installer)
    {
        var (house, book, tape, meter) = (installer.Truth, installer.Book, installer.Tape, installer.Meter);
        book.Put(Book.JobItself, (HouseFacts.CableAtTest, Number(Math.Round(house.CableAtSecondTest + (2 * house.Noise.Of("second test", "temperature"))))));
        foreach (var unit in house.Wired)
        {
            var tested = unit.Cable!.ComesOutAs ?? unit.Cable;
            book.Put(unit.Key, (UnitFacts.EntryAsBuilt, tape.Read(unit.EntryAsBuilt, unit.Key, "entry")));
            book.Put(unit.Key, (RunFacts.TailFound, tape.Read(unit.Cable.TailFound, unit.Key, "tail found")),
                (RunFacts.SecondLoop, meter.Ohms(tested.Ohms(Stage.CloseIn, house.CableAtSecondTest), house.MeterLeads, unit.Key, "second loop")),
                (RunFacts.SecondApart, meter.Ohms(tested.Ohms(Stage.CloseIn, house.CableAtSecondTest, shorted: false), house.MeterLeads, unit.Key,
                    "second open")),
                (RunFacts.SecondToFrame,
                    meter.Ohms(tested.OhmsToBuilding(Stage.CloseIn, house.CableAtSecondTest), house.MeterLeads, unit.Key, "second frame")));
        }
        installer.MarkUnits(Phase.CloseIn);
    }
}
