using Microsoft.Extensions.Time.Testing;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Units;
using TrimOut.Testing;

namespace TrimOut.Screens.Tests.Stories;

/// <summary>Somebody asks what a thinner cable would do, and where a figure comes from.</summary>
public class AskingStories
{
    // 60 ft of legs, 3 ft and 6 ft of tails; 1 A; 16 AWG stranded at 30 C.
    [Fact]
    public void WhatIfBeginsWithTheFiguresOfTheUnitUnderTheCursor()
    {
        using var user = At(Roughed());
        user.Press("=").Sees("What if, from W01").Sees("69 ft").Sees("16 AWG").Sees("arrive of 12 V");
    }

    [Fact]
    public void AThinnerGaugeIsTooLittleAndAThickerOneIsEnoughAgain()
    {
        using var user = At(Roughed());
        user.Press("=", "enter").Type("150 ft").Press("down").Press("left").Sees("18 AWG").Sees("too long").Press("right").Sees("16 AWG")
            .DoesNotSee("too long");
    }

    [Fact]
    public void VoltsAndCurrentOfABlankKitAreAskedForAndNothingIsWorkedOutBefore()
    {
        var scribe = new Scribe(new MemoryStore(), new FakeTimeProvider(), "Ash");
        Assert.True(NewHouse.Begin("Blank house", DisplayUnits.Inches).Then(scribe.Record).Ok);
        using var user = At(new TestJob(store: new MemoryStore("laptop", scribe.Log.Changes)).Window("W01"));
        user.Press("=").Sees("ask the sheet").Sees("Ask the sheet for the supply").Sees("current of the unit").DoesNotSee("arrive of").DoesNotSee("12 V");
        user.Press("down", "down", "down", "right").Sees("Ask the sheet first");
        user.Press("enter").Type("0.7").Sees("Ask the sheet for the supply").DoesNotSee("current of the unit").Sees("0.7 A");
        user.Press("down", "down", "down", "enter").Type("21").Press("down", "enter").Type("18").Sees("V arrive of 21 V");
    }

    [Fact]
    public void SeveralUnitsOnOneCableAreRefusedWhileTheSheetAllowsOne()
    {
        using var user = At(Roughed());
        user.Press("=", "down", "down", "down", "down", "enter").Type("3").Sees("The sheet allows 1 unit on an output: this is refused").Sees("1: 69 ft, 3 A");
    }

    [Fact]
    public void WhatMakesNoSenseIsRefusedOnTheSpotAndTheTextKept()
    {
        using var user = At(Roughed());
        user.Press("=", "enter").Type("0 ft").Sees("Length: a run is longer than nothing").Type("70 ft").Sees("70 ft");
    }

    [Fact]
    public void NothingOfItIsSaved()
    {
        var job = Roughed();
        var before = job.Scribe.Log.Changes.Count;
        using var user = At(job);
        user.Press("=", "enter").Type("150 ft").Press("down", "right", "esc");
        Assert.Equal(before, job.Scribe.Log.Changes.Count);
    }

    [Fact]
    public void ItIsFoundByItsName()
    {
        using var user = At(Roughed());
        user.Press(":").Type("What if").Sees("What if, from W01");
    }

    [Fact]
    public void AFigureSaysItsFormulaItsInputsAndItsSource()
    {
        using var user = At(Roughed());
        user.Press("y").Sees("Figures of W01").Press("down", "down").Sees("Cable off a box").Sees("legs x (1 + allowance / 100)").Sees("allowance 10 %");
    }

    [Fact]
    public void TheFiguresOfTheFactUnderTheCursorComeFirst()
    {
        var job = Roughed();
        using var user = At(job);
        user.Press("4", "enter");
        for (var tries = 0; tries < 40 && ((TrimOut.Screens.Sheets.SheetScreen)user.Shell.Screen).Current?.Fact != RunFacts.FirstLoop; tries++)
            user.Press("down");
        user.Press("y").Sees("Loop to expect:").Sees("2 x length x ohms per meter at the cable's temperature");
    }

    [Fact]
    public void WhereNothingIsUnderTheCursorThatIsSaid()
    {
        using var user = At(new TestJob());
        user.Press("y").Sees("Move to a unit");
    }

    private static TerminalUser At(TestJob job) => new(new TestDesk(new FakeTimeProvider()), job.Scribe);

    private static TestJob Roughed() => new TestJob().Window("W01")
        .Say("W01", WindowFacts.RoughWidth, "36\"").Say("W01", WindowFacts.RoughHeight, "60\"").Say("W01", RunFacts.Cable, "16/2")
            .Legs("W01", ("60 ft", CablePlace.InWall))
        .Say("W01", RunFacts.TailAtWindow, "36\"").Say("W01", RunFacts.TailAtPanel, "72\"");
}
