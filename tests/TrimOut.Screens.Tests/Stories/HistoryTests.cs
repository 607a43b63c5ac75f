using Microsoft.Extensions.Time.Testing;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Screens.History;
using TrimOut.Screens.JobSheet;
using TrimOut.Screens.Shell;
using TrimOut.Testing;

namespace TrimOut.Screens.Tests.Stories;

public class HistoryTests
{
    private readonly TestJob _job = new();
    private readonly List<Action> _waiting = [];

    [Fact]
    public void TheHouseAtTheChangeUnderTheCursorHasWhatWasRemovedSinceAndNotWhatCameSince()
    {
        _job.Window("W01").Window("W02");
        _job.Do(RemoveItems.Remove(_job.House, _job.House.FindTag("W01")!.Item)).Window("W03");
        var shell = AtHistory();
        Assert.DoesNotContain("W01", Sheet(shell), StringComparison.Ordinal);
        Back(shell, "W02: Kind");
        var seen = shell.Draw(100, 30).ToText();
        Assert.Contains("AS IT STOOD after change", seen, StringComparison.Ordinal);
        Assert.Contains("Only to look at", seen, StringComparison.Ordinal);
        Assert.Contains("W01", seen, StringComparison.Ordinal);
        Assert.DoesNotContain("W03", seen, StringComparison.Ordinal);
        shell.Press("esc");
        Assert.IsType<HistoryScreen>(shell.Screen);
        Assert.DoesNotContain("W01", Sheet(shell), StringComparison.Ordinal);
    }

    [Fact]
    public void MarksAndFindingsAreThoseOfThen()
    {
        _job.Window("W01").Say("W01", UnitFacts.LeadSide, "right");
        var shell = AtHistory();
        _job.Say("W01", UnitFacts.LeadSide, "left");
        shell.Tick();
        shell.Press("down");
        Open(shell);
        var then = Assert.IsType<AsItStoodScreen>(shell.Screen).Then;
        Assert.Contains(then.Report.Findings, f => f.Check.Id == "lead-away-from-motor");
        Assert.DoesNotContain(shell.Context.Report.Findings, f => f.Check.Id == "lead-away-from-motor");
    }

    [Fact]
    public void WhatWasUndoneLaterIsInForceThere()
    {
        _job.Window("W01").Say("W01", WindowFacts.RoughWidth, "45");
        _job.Scribe.Undo();
        var shell = AtHistory();
        Back(shell, "W01: Rough width");
        Assert.NotNull(((AsItStoodScreen)shell.Screen).Then.House.FindTag("W01")!.RoughWidth);
        shell.Press("right");
        Finish(shell);
        Assert.Null(((AsItStoodScreen)shell.Screen).Then.House.FindTag("W01")!.RoughWidth);
    }

    [Fact]
    public void LeftAndRightGoFromChangeToChangeAndStopAtBothEnds()
    {
        _job.Window("W01").Window("W02");
        var shell = AtHistory();
        Open(shell);
        var all = _job.Scribe.Log.Changes.Count;
        shell.Press("right");
        Assert.Contains("This is the latest change.", shell.Draw(100, 30).ToText(), StringComparison.Ordinal);
        for (var count = all - 1; count >= 1; count--)
        {
            shell.Press("left");
            Finish(shell);
            Assert.Equal(count, ((AsItStoodScreen)shell.Screen).Count);
        }
        shell.Press("left");
        Assert.Contains("This is the first change.", shell.Draw(100, 30).ToText(), StringComparison.Ordinal);
        shell.Press("esc");
        Assert.IsType<HistoryScreen>(shell.Screen);
    }

    [Fact]
    public void TheUnitThatTheChangeWasAboutIsSelected()
    {
        _job.Window("W01").Window("W02").Window("W03").Say("W02", UnitFacts.LeadSide, "left");
        var shell = AtHistory();
        Open(shell);
        Assert.Equal(_job.Unit("W02").Id, ((AsItStoodScreen)shell.Screen).Sheet.UnitId);
        shell.Press("down");
        Assert.Equal(_job.Unit("W03").Id, ((AsItStoodScreen)shell.Screen).Sheet.UnitId);
    }

    [Fact]
    public void NoKeyThereChangesTheHouse()
    {
        _job.Window("W01").Say("W01", UnitFacts.LeadSide, "right").Say("W01", UnitFacts.LeadSide, "left");
        var before = _job.Scribe.Log.Changes.Count;
        var keys = KeyTableTests.EveryScreen().SelectMany(s => s.Keys).SelectMany(k => k.Strokes)
            .Concat(CommonKeys.For(AtHistory()).SelectMany(k => k.Strokes)).Distinct().Except(CommonKeys.Sections.Select(s => s.Stroke)).Except(["esc", "f2"]);
        foreach (var key in keys)
        {
            var shell = AtHistory();
            shell.Press("down");
            Open(shell);
            foreach (var stroke in new[] { key, "y", key, "enter" })
                shell.Press(stroke);
            Finish(shell);
            Assert.True(before == _job.Scribe.Log.Changes.Count, $"{key} changed the house");
        }
    }

    [Fact]
    public void GoingBackDoesNotHoldUpTheKeys()
    {
        _job.Window("W01");
        var shell = AtHistory();
        shell.Press("enter");
        Assert.IsType<HistoryScreen>(shell.Screen);
        shell.Press("down");
        Assert.Equal(1, ((HistoryScreen)shell.Screen).Selected);
        Assert.Equal($"Going back to change {_job.Scribe.Log.Changes.Count}", shell.Doing);
    }

    [Theory]
    [InlineData("2026-03-02", "W01: Kind", "")]
    [InlineData("2026-03-04", "W02: Kind", "")]
    [InlineData("2026-02-01", "New house", "Nothing was done by then")]
    [InlineData("soon", null, "is no date")]
    public void ADayIsGoneToByItsLastChange(string day, string? what, string says)
    {
        _job.Window("W01").Clock.Advance(TimeSpan.FromDays(2));
        _job.Window("W02").Clock.Advance(TimeSpan.FromDays(2));
        _job.Window("W03");
        var shell = AtHistory();
        shell.Press("g");
        shell.TextChanged(day);
        shell.Press("enter");
        Assert.Contains(says, shell.Draw(100, 30).ToText(), StringComparison.Ordinal);
        if (what is not null)
            Assert.StartsWith(what, Under(shell), StringComparison.Ordinal);
    }

    private ShellState AtHistory()
    {
        var shell = new ShellState(new TestDesk(new FakeTimeProvider()), _job.Scribe, beside: _waiting.Add);
        shell.Press("8");
        return shell;
    }

    private string Under(ShellState shell) => _job.Scribe.Log.Changes[_job.Scribe.Log.Changes.Count - 1 - ((HistoryScreen)shell.Screen).Selected].What;

    private void Back(ShellState shell, string what)
    {
        while (!Under(shell).StartsWith(what, StringComparison.Ordinal))
        {
            Assert.True(((HistoryScreen)shell.Screen).Selected < _job.Scribe.Log.Changes.Count - 1,
                string.Join("\n", _job.Scribe.Log.Changes.Select(c => c.What)));
            shell.Press("down");
        }
        Open(shell);
    }

    private void Open(ShellState shell)
    {
        shell.Press("enter");
        Finish(shell);
        Assert.IsType<AsItStoodScreen>(shell.Screen);
    }

    private void Finish(ShellState shell)
    {
        foreach (var work in _waiting)
            work();
        _waiting.Clear();
        shell.Tick();
    }

    private static string Sheet(ShellState shell)
    {
        var frame = new Frames.Frame(100, 30);
        JobSheetScreen.At(shell.Context).Draw(frame.All, shell.Context, null);
        return frame.ToText();
    }
}
