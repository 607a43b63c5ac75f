using Microsoft.Extensions.Time.Testing;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Screens.Panels;
using TrimOut.Screens.Punch;
using TrimOut.Screens.Sheets;
using TrimOut.Testing;

namespace TrimOut.Screens.Tests.Stories;

public class ListsTests
{
    private static TerminalUser AtRidgeHouse(int width = 80, int height = 24)
    {
        var clock = new FakeTimeProvider();
        return new(new TestDesk(clock), SampleHouse.Open("ridge-house", clock), width, height);
    }

    private static SheetScreen Sheet(TerminalUser user) => Assert.IsType<SheetScreen>(user.Shell.Screen);

    /// <summary>Nothing goes by without a word: a unit without a position is said to stay so, and the arrow brings that of the unit above.</summary>
    [Fact]
    public void AnEmptyPositionOfAPresetIsSaidToStayOpenAndTheOneAboveIsOffered()
    {
        var job = new TestJob().Window("W01").Window("W02").Add(ItemKind.Remote, "R1");
        using var user = new TerminalUser(new TestDesk(job.Clock), job.Scribe, 120, 30);
        user.Press("5", "%").Type("Evening").Type("40");
        user.Press("%").Type("Evening").Sees("Up brings 40 %, as W01").Press("enter").Sees("W02 stays without a position in Evening");
        user.Press("up", "down", "%").Type("Evening").Press("up", "enter");
        Assert.Equal([40, 40], user.House.Remotes[0].Presets.Single().Positions.Select(p => p.PercentOpen));
    }

    [Fact]
    public void HomeEndAndPagesReachBothEndsOfAFactsSheet()
    {
        using var user = AtRidgeHouse();
        user.Press("enter");
        var first = Sheet(user).Selected;
        user.Press("end");
        var last = Sheet(user).Selected;
        Assert.True(last > first + 40);
        user.Press("home");
        Assert.Equal(first, Sheet(user).Selected);
        for (var press = 0; press < 20; press++)
            user.Press("pagedown");
        Assert.Equal(last, Sheet(user).Selected);
        for (var press = 0; press < 20; press++)
            user.Press("pageup");
        Assert.Equal(first, Sheet(user).Selected);
    }

    [Fact]
    public void AFindingUnderTheCursorIsSaidOnce()
    {
        using var user = AtRidgeHouse();
        user.Press("f");
        var text = user.Screen;
        Assert.Equal(text.IndexOf("The cable leaves the wall", StringComparison.Ordinal),
            text.LastIndexOf("The cable leaves the wall", StringComparison.Ordinal));
        user.Sees("◆");
    }

    [Fact]
    public void AWindowThatIsNarrowShowsWholeFilterAndKind()
    {
        using var user = AtRidgeHouse();
        user.Press("S", "/").Type("kitchen").Sees("Shown: stops first, \"kitchen\"").Press("*").Press("g").Type("W09").Sees("Wood blind");
    }

    [Fact]
    public void ARowWithAStopSaysWhyOnThePanels()
    {
        using var user = AtRidgeHouse();
        user.Press("3", "down", "down", "down").Sees("STOP").Sees("output 3");
    }

    [Fact]
    public void OutputsAreCountedOnceAndThoseThatAreNotThereAreNamed()
    {
        using var user = AtRidgeHouse();
        user.Press("3").Sees("A: 3 of 8? outputs used, 03 shared, 11 is not on it");
        Assert.Equal(3, PanelUse.Of(user.House.Panels[0]).Used);
    }

    [Fact]
    public void TheCursorDoesNotStopAtTheWordsAboveTheWaitingRuns()
    {
        using var user = AtRidgeHouse();
        user.Press("3");
        for (var press = 0; press < 40; press++)
        {
            user.Press("down");
            Assert.True(((PanelsScreen)user.Shell.Screen).Current(user.Shell.Context)!.CanBeChosen);
        }
        for (var press = 0; press < 40; press++)
        {
            user.Press("up");
            Assert.True(((PanelsScreen)user.Shell.Screen).Current(user.Shell.Context)!.CanBeChosen);
        }
    }

    [Fact]
    public void ATestReadingIsTypedInTheTableOfCables()
    {
        using var user = AtRidgeHouse();
        user.Press("4", "t").Type("0.53").Sees("0.53 ohm");
        Assert.Equal(0.53m, user.House.Runs[0].Item.Get(RunFacts.SecondLoop)!.Value.Ohms);
    }

    [Fact]
    public void FactsOfARunOpenAtWhatItsPhaseStillWants()
    {
        using var user = AtRidgeHouse();
        user.Press("4", "enter");
        Assert.Equal(RunFacts.TailFound, Sheet(user).Current!.Fact);
    }

    [Fact]
    public void ACutPlanOfPulledRunsSaysThatNothingIsLeftToCut()
    {
        using var user = AtRidgeHouse();
        user.Press("4", "p").Sees("Nothing is left to cut of this cable").Sees("pulled already: W01, W02");
    }

    [Fact]
    public void WhatComesOffABoxIsTheSameInTheTableAsInThePlan()
    {
        var job = new TestJob().Window("W01").Say("W01", UnitFacts.Power, "panel").Say("W01", RunFacts.Cable, "16/2");
        job.Do(AddItems.Leg(job.Run("W01")));
        job.Do(SetFact.Typed(job.House, job.Run("W01").Legs[0].Item, LegFacts.Length, "50")).Say("W01", RunFacts.TailAtWindow, "36")
            .Say("W01", RunFacts.TailAtPanel, "72");
        using var user = new TerminalUser(new TestDesk(new FakeTimeProvider()), job.Scribe);
        var needed = Core.Units.LengthText.ShowRounded(user.House.Runs[0].Needed!.Value, user.House.DisplayUnits, Core.Units.LengthScale.Run);
        user.Press("4").Sees(needed).Press("p").Sees($"W01 {needed}");
    }

    // 50 ft with a tenth more and 9 ft of tails are 64 ft, of a cable that may be 62 ft.
    [Fact]
    public void WhereLessIsCutThanTheWholeAllowanceTheScreenSaysHowMuchLess()
    {
        var job = new TestJob().Window("W01").Say("W01", UnitFacts.Power, "panel").Say("W01", RunFacts.Cable, "16/2");
        job.Do(AddItems.Leg(job.Run("W01")));
        job.Do(SetFact.Typed(job.House, job.Run("W01").Legs[0].Item, LegFacts.Length, "50")).Say("W01", RunFacts.TailAtWindow, "36")
            .Say("W01", RunFacts.TailAtPanel, "72").SayOf("", HouseFacts.CableAllowance, "10").SayOf("16/2", CableTypeFacts.LongestRun, "62 ft");
        using var user = new TerminalUser(new TestDesk(new FakeTimeProvider()), job.Scribe);
        user.Press("4").Sees("Cut 62 ft, not 64 ft: its cable may be no longer.");
    }

    [Fact]
    public void RemotesBeyondTheEdgeAreCountedAndNamesAreWhole()
    {
        var job = new TestJob().Window("W01");
        string[] names =
            ["Living room front", "Living room rear", "Main bedroom", "Guest room", "Study", "Kitchen", "Breakfast corner", "Wing hall", "Stair landing"];
        foreach (var name in names)
            job.Add(ItemKind.Remote, name);
        using var user = new TerminalUser(new TestDesk(new FakeTimeProvider()), job.Scribe);
        user.Press("5").Sees("more to the right").Sees("bedroom");
        for (var press = 0; press < 9; press++)
            user.Press("right");
        user.Sees("more to the left").Sees("landing");
    }

    [Fact]
    public void MissingFactsAreListedAndLeadToTheirFields()
    {
        using var user = AtRidgeHouse();
        user.Press("6", "m");
        // What passes by a value that nobody checked goes first, of the phase that is worked in.
        while (!Row().Text.StartsWith("Missing: ", StringComparison.Ordinal))
        {
            Assert.Equal(PunchRows.Unchecked, Row().State);
            user.Press("down");
        }
        var row = Row();
        user.Press("enter");
        Assert.Equal($"{row.FillIn!.Item}/{row.FillIn.Field}", Sheet(user).Current!.Place);

        PunchRow Row() => Assert.IsType<PunchScreen>(user.Shell.Screen).Current(user.Shell.Context)!;
    }

    [Fact]
    public void EveryMissingFactOfTheReportIsInTheList()
    {
        using var user = AtRidgeHouse();
        user.Press("6", "m");
        var rows = PunchRows.Of((PunchScreen)user.Shell.Screen, user.Shell.Context);
        var house = user.Shell.Context.House;
        Assert.All(user.Shell.Context.Report.Missing, m => Assert.Contains(rows, r =>
            r.Text.Contains(m.NotChecked.Missing.In(house), StringComparison.Ordinal) && r.Text.Contains(m.Check.Title, StringComparison.Ordinal)));
    }
}
