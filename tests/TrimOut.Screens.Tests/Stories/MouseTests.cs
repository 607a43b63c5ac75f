using Microsoft.Extensions.Time.Testing;
using TrimOut.Screens.JobSheet;
using TrimOut.Screens.Punch;
using TrimOut.Screens.Sheets;
using TrimOut.Screens.Shell;
using TrimOut.Testing;

namespace TrimOut.Screens.Tests.Stories;

/// <summary>Choose, open, scroll, press a key of the bottom line: all with the mouse, and nothing that no key does.</summary>
public class MouseTests
{
    private readonly TestDesk _desk = new(new FakeTimeProvider());

    private TerminalUser User(int windows = 3)
    {
        var job = new TestJob();
        for (var n = 1; n <= windows; n++)
            job.Window($"W{n:00}");
        return new TerminalUser(_desk, job.Scribe);
    }

    [Fact]
    public void AClickChoosesARowAndAnotherOneOpensIt()
    {
        using var user = User();
        user.ClickOn(" W03  Roller");
        Assert.Equal("W03", ((JobSheetScreen)user.Shell.Screen).Current(user.Shell.Context)!.Tag);
        user.ClickOn(" W03  Roller").Sees("W03, Kitchen");
        Assert.IsType<SheetScreen>(user.Shell.Screen);
    }

    [Fact]
    public void ADoubleClickOpensARowThatWasNotChosen()
    {
        using var user = User();
        user.ClickOn(" W02  Roller", times: 2).Sees("W02, Kitchen");
        Assert.IsType<SheetScreen>(user.Shell.Screen);
    }

    [Fact]
    public void ADoubleClickOnTheChosenRowOpensItAndDoesNothingOnTheScreenThatCame()
    {
        using var user = User();
        user.ClickOn(" W01  Roller", times: 2);
        Assert.IsType<SheetScreen>(user.Shell.Screen);
        Assert.Null(user.Shell.Typing);
    }

    [Fact]
    public void AKeyOfTheBottomLineIsPressedByAClick()
    {
        using var user = User();
        user.ClickOn("Filter").Sees("Show only");
        user.ClickOn("leave as it was");
        Assert.Null(user.Shell.Typing);
        user.ClickOn("? keys").Sees("Keys of Job sheet");
    }

    [Fact]
    public void ADoubleClickPressesAKeyOnce()
    {
        using var user = User();
        user.ClickOn("Stops only", times: 2);
        Assert.True(((JobSheetScreen)user.Shell.Screen).OnlyStops);
    }

    [Fact]
    public void TheWheelScrolls()
    {
        using var user = User(windows: 40);
        user.Wheel(1);
        Assert.Equal("W04", ((JobSheetScreen)user.Shell.Screen).Current(user.Shell.Context)!.Tag);
        user.Wheel(-1);
        Assert.Equal("W01", ((JobSheetScreen)user.Shell.Screen).Current(user.Shell.Context)!.Tag);
        user.Press("?");
        var first = user.Screen;
        user.Wheel(1);
        Assert.NotEqual(first, user.Screen);
    }

    [Fact]
    public void WhatIsTypedIsNotTouchedByAClickOrTheWheelBesideItsField()
    {
        using var user = User();
        user.Press("/").Write("W0").ClickOn(" W03").Wheel(2);
        Assert.Equal("W0", user.Shell.Typing!.Text);
        user.Press("enter").Sees("Shown: \"W0\"");
    }

    [Fact]
    public void AClickInTheFieldPutsTheCursorThere()
    {
        using var user = User();
        user.Press("/").Write("W3");
        var row = Array.FindIndex(user.Screen.Split('\n'), l => l.StartsWith(" Show only: W3", StringComparison.Ordinal));
        user.Click(" Show only: ".Length, row);
        user.Press("right", "0");
        Assert.Equal("W03", user.Shell.Typing!.Text);
    }

    [Fact]
    public void NoClickAndNoTurnOfTheWheelAnswersAQuestion()
    {
        using var user = User();
        user.Press("q").ClickOn(" W03").Wheel(1).Press("q");
        Assert.True(user.Shell.Left);
    }

    [Fact]
    public void NothingCountsDownLessBecauseOfTheWheel()
    {
        var job = new TestJob().Window("W01").Window("W02").SayOf("Roller", Core.Facts.CoveringKindFacts.PairHold, "9");
        using var user = new TerminalUser(_desk, job.Scribe);
        user.Press("2", "]", "]", "]", "]", "]", "]", "]", "]", "h").Sees("keep holding");
        user.Wheel(1).Sees("keep holding");
    }

    [Fact]
    public void EveryRowOfEveryListThatTheCursorStopsAtIsChosenByAClick()
    {
        foreach (var keys in (string[][])[[], ["r"], ["P"], ["enter"], ["2"], ["3"], ["4"], ["5"], ["6"], ["7"], ["8"], ["9"], ["0"], ["="], ["y"], ["9", "s"]])
        {
            var clock = new FakeTimeProvider(new DateTimeOffset(2026, 6, 8, 14, 5, 0, TimeSpan.Zero));
            var shell = new ShellState(new TestDesk(clock), SampleHouse.Open("ridge-house", clock), Look.Dark);
            foreach (var key in keys)
                shell.Press(key);
            var rows = shell.Draw(80, 24).Spots.Where(s => s.Choose is not null).ToList();
            Assert.True(rows.Count > 0, $"{string.Join(' ', keys)} has no row to click on");
            foreach (var row in rows.Where(r => !r.IsChosen))
            {
                shell.Draw(80, 24);
                if (row.Choose!() is not { } chosen)
                    continue;
                shell.Click(row.X, row.Y);
                Assert.Equal(chosen.GetType(), shell.Screen.GetType());
                Assert.Contains(shell.Draw(80, 24).Spots, s => s.IsChosen);
                break;
            }
        }
    }

    [Fact]
    public void F4LeavesTheMouseToTheTerminalAndTakesItBackAndIsRemembered()
    {
        using var user = User();
        user.Press("f4").Sees("left to the terminal");
        Assert.False(_desk.TakesMouse);
        Assert.False(user.Shell.TakesMouse);
        user.Press("f4").Sees("Clicks choose and open");
        Assert.True(_desk.TakesMouse);
    }

    [Fact]
    public void OnThePunchListAClickSaysThatWhatWasCausedIsSeenAsAKeyDoes()
    {
        using var user = new TerminalUser(_desk, new TestJob().Window("W01").Window("W02").Say("W02", Core.Facts.UnitFacts.BoxLabel, "W09").Scribe);
        user.Press("6");
        Assert.IsType<PunchScreen>(user.Shell.Screen);
        user.ClickOn("STOP").Press("6");
        Assert.Null(user.Shell.Caused.Shown);
    }
}
