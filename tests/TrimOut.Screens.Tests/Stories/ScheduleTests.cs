using System.Collections.Immutable;
using Microsoft.Extensions.Time.Testing;
using TrimOut.Core;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Screens.JobSheet;
using TrimOut.Screens.Schedules;
using TrimOut.Screens.Shell;
using TrimOut.Testing;

namespace TrimOut.Screens.Tests.Stories;

/// <summary>An office sends a schedule: it is picked in a list, looked at, a column is put right, and then it is taken in.</summary>
public class ScheduleTests
{
    private const string File = "/media/stick/windows.xlsx";

    private readonly TestDesk _desk = new(new FakeTimeProvider(new DateTimeOffset(2026, 3, 5, 8, 0, 0, TimeSpan.Zero)));
    private readonly ShellState _shell;

    public ScheduleTests()
    {
        _desk.FoundSchedules[File] = Read;
        _shell = new ShellState(_desk, new TestJob().Window("W01").Scribe);
    }

    private static Result<ScheduleRead> Read(HouseLog log, IReadOnlyDictionary<string, string> columns) =>
        Read(AddItems.Window(log.House, "W02", null).Value, columns);

    private static Result<ScheduleRead> Read(Draft window, IReadOnlyDictionary<string, string> columns) => new ScheduleRead("Level 1",
        window, [new("W02", "Den, 30\" x 40\"") { Edits = window.Edits }],
        [new("W01", "Rough width: 36\" here, 40\" there. Kept: Ada typed it on 2026-03-04")], 0, ["W09"],
        [new("line 7", "Height: \"wide\" is no length. Left empty.")],
        [new("tag", "the window's tag", "Mark"), new("width", "rough width", columns.GetValueOrDefault("width"))], ["RO W"]);

    private void Press(params string[] keys)
    {
        foreach (var key in keys)
            _shell.Press(key);
    }

    private string Seen() => _shell.Draw(100, 30).ToText();

    [Fact]
    public void WhatWouldComeInIsSeenInFiveListsBeforeAnythingIsTakenIn()
    {
        Press("I", "enter");
        Assert.IsType<ScheduleScreen>(_shell.Screen);
        Assert.Contains("1 window would come in", Seen(), StringComparison.Ordinal);
        Assert.Contains("sheet Level 1", Seen(), StringComparison.Ordinal);
        Assert.Contains("left as they are: W09.", Seen(), StringComparison.Ordinal);
        Assert.Matches("W02 +Den, 30\" x 40\"", Seen());
        Press("right");
        Assert.Contains("Kept: Ada typed it", Seen(), StringComparison.Ordinal);
        Press("right");
        Assert.Matches("W09 +stays as it is", Seen());
        Press("right");
        Assert.Contains("\"wide\" is no length", Seen(), StringComparison.Ordinal);
        Press("right");
        Assert.Matches("tag +from \"Mark\"", Seen());
        Assert.Matches("width +from no column", Seen());
        Assert.Equal(["W01"], _shell.Context.House.Windows.Select(w => w.Tag));
    }

    [Fact]
    public void ADetailIsTakenFromAnotherColumn()
    {
        Press("I", "enter", "left", "down", "t");
        _shell.TextChanged("RO W");
        Press("enter");
        Assert.Matches("width +from \"RO W\"", Seen());
        Assert.Equal("RO W", Assert.IsType<ScheduleScreen>(_shell.Screen).Named["width"]);
    }

    [Fact]
    public void AUnitAloneIsThatOfTheColumnAsItIs()
    {
        Press("I", "enter", "left", "t");
        _shell.TextChanged("=mm");
        Press("enter");
        Assert.Equal("Mark=mm", Assert.IsType<ScheduleScreen>(_shell.Screen).Named["tag"]);
    }

    [Fact]
    public void ADetailIsTakenFromNoColumnWhereNothingIsTyped()
    {
        Press("I", "enter", "left", "down", "t");
        _shell.TextChanged("");
        Press("enter");
        Assert.Equal("", Assert.IsType<ScheduleScreen>(_shell.Screen).Named["width"]);
    }

    [Fact]
    public void ItIsTakenInAfterAQuestionAndOneUndoTakesItBack()
    {
        Press("I", "enter", "enter", "x");
        Assert.Equal(["W01"], _shell.Context.House.Windows.Select(w => w.Tag));
        Press("enter", "y");
        Assert.IsType<JobSheetScreen>(_shell.Screen);
        Assert.Equal(["W01", "W02"], _shell.Context.House.Windows.Select(w => w.Tag));
        Press("u", "u");
        Assert.Equal(["W01"], _shell.Context.House.Windows.Select(w => w.Tag));
    }

    [Fact]
    public void ARowIsLeftAndAWindowThatIsGoneIsNoted()
    {
        Press("I", "enter", "space");
        Assert.Contains("Nothing is chosen.", Seen(), StringComparison.Ordinal);
        Press("enter", "y");
        Assert.Equal(["W01"], _shell.Context.House.Windows.Select(w => w.Tag));
        Press("space");
        Assert.Contains("1 window would come in", Seen(), StringComparison.Ordinal);
    }

    /// <summary>What the house keeps stays unless somebody takes it, and whoever does is told first who typed what is there.</summary>
    [Fact]
    public void AValueThatTheHouseKeepsIsTakenAfterAll()
    {
        var window = _shell.Context.House.Windows.Single();
        var edits = new Draft("").PutStored(window.Id, WindowFacts.Note.Name, "by the office").Edits;
        _desk.FoundSchedules[File] = (log, columns) => Read(log, columns).Value with
        {
            Differing = [new("W01", "Note: nothing here, by the office there. Kept: Ada emptied it on 2026-03-04") { Edits = edits, Kept = true }],
            Draft = null,
            Windows = [],
        };
        Press("I", "enter", "enter", "y");
        Assert.Equal("", _shell.Context.House.Windows.Single().Show(WindowFacts.Note));
        Press("right", "space");
        Assert.Contains("1 value would come in", Seen(), StringComparison.Ordinal);
        Press("space", "enter", "y");
        Assert.Equal("", _shell.Context.House.Windows.Single().Show(WindowFacts.Note));
        Press("space", "enter", "y");
        Assert.Equal("by the office", _shell.Context.House.Windows.Single().Show(WindowFacts.Note));
        Press("u", "u");
        Assert.Equal("", _shell.Context.House.Windows.Single().Show(WindowFacts.Note));
    }

    [Fact]
    public void OfAWindowThatIsGoneSpaceSaysWhatBecomesOfIt()
    {
        _desk.FoundSchedules[File] = (log, columns) => Read(log, columns).Value with { Missing = ["W01"], Draft = null, Windows = [], Taken = 0 };
        Press("I", "enter", "right", "right", "space");
        Assert.Contains("what becomes of 1 window that is gone would come in", Seen(), StringComparison.Ordinal);
        Press("enter", "y");
        Assert.Equal("Gone from the schedule of 2026-03-05", _shell.Context.House.Windows.Single().Show(WindowFacts.Note));
        Assert.False(_shell.Context.House.Windows.Single().LeftOut);
    }

    /// <summary>Whoever presses Space there is told first what hangs on it.</summary>
    [Fact]
    public void OfAWindowThatIsGoneItIsSaidWhatThereIsOfItAlready()
    {
        _desk.FoundSchedules[File] = (log, columns) => Read(log, columns).Value with
        {
            Missing = ["W01"],
            Standing = ImmutableDictionary<string, string>.Empty.Add("W01", "W01 is on order"),
        };
        Press("I", "enter", "right", "right");
        Assert.Contains("W01 is on order: stays as it is; Space", Seen(), StringComparison.Ordinal);
    }

    [Fact]
    public void WhereNothingWouldComeInNothingIsTaken()
    {
        _desk.FoundSchedules[File] = (log, columns) => Read(log, columns).Value with { Draft = null, Windows = ImmutableArray<ScheduleLine>.Empty };
        Press("I", "enter", "enter");
        Assert.Contains("Nothing would come in.", Seen(), StringComparison.Ordinal);
        Press("y");
        Assert.Equal(["W01"], _shell.Context.House.Windows.Select(w => w.Tag));
    }

    [Fact]
    public void AFileThatIsFoundNowhereIsSaid()
    {
        _desk.FoundSchedules.Clear();
        Press("I");
        Assert.Contains("No such file was found", Seen(), StringComparison.Ordinal);
        Press("O");
        _shell.TextChanged("/x.csv");
        Press("enter");
        Assert.Contains("There is no file /x.csv.", Seen(), StringComparison.Ordinal);
    }
}
