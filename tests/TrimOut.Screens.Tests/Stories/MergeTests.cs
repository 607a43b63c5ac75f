using Microsoft.Extensions.Time.Testing;
using TrimOut.Core;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Units;
using TrimOut.Screens.Copies;
using TrimOut.Screens.History;
using TrimOut.Screens.Shell;
using TrimOut.Testing;

namespace TrimOut.Screens.Tests.Stories;

/// <summary>Two laptops worked on one house: the copy is picked in a list, looked at, taken in, settled, and taken back.</summary>
public class MergeTests
{
    private const string Stick = "/media/stick/site.trimout";

    private readonly TestDesk _desk = new(new FakeTimeProvider(new DateTimeOffset(2026, 3, 5, 8, 0, 0, TimeSpan.Zero)));
    private readonly Scribe _mine;
    private readonly TestJob _site;

    public MergeTests()
    {
        var start = new TestJob().Window("W01").Window("W02").Window("W03").Scribe.Log.Changes;
        _mine = new Scribe(new MemoryStore("office", start), _desk.Clock, "Ada");
        _site = new TestJob(store: new MemoryStore("site", start));
        _site.Scribe.By = "Bo";
        _site.Say("W02", WindowFacts.RoughWidth, "40").Say("W01", WindowFacts.RoughWidth, "37");
        Assert.True(SetFact.Typed(_mine.House, _mine.House.FindTag("W01")!.Item, WindowFacts.RoughWidth, "36").Then(_mine.Record).Ok);
        _desk.OtherCopies[Stick] = new CopyRead(_site.Scribe.Log, []);
    }

    private ShellState AtLook()
    {
        var shell = new ShellState(_desk, _mine);
        foreach (var key in (string[])["8", "O", "enter"])
            shell.Press(key);
        Assert.IsType<MergeScreen>(shell.Screen);
        return shell;
    }

    private static string Seen(ShellState shell) => shell.Draw(100, 30).ToText();

    private Length? Width(string tag) => _mine.House.FindTag(tag)!.RoughWidth;

    [Fact]
    public void WhatWouldComeInIsSeenByWhomAndWhenAndWhatItChangesBeforeAnythingIsTakenIn()
    {
        var shell = AtLook();
        Assert.Contains("2 changes would come in (2 by Bo)", Seen(shell), StringComparison.Ordinal);
        Assert.Contains("1 change of this house is not in it", Seen(shell), StringComparison.Ordinal);
        Assert.Matches("2026-03-02 08:\\d\\d +Bo +W01: Rough width: 37\"", Seen(shell));
        shell.Press("right");
        Assert.Matches("W02: Rough width +- +► 40\"", Seen(shell));
        shell.Press("right");
        Assert.Matches("W01: Rough width: .*36\" by Ada.*37\" by Bo", Seen(shell).Replace('\n', ' '));
        Assert.Null(Width("W02"));
        Assert.Null(shell.Context.House.FindTag("W02")!.RoughWidth);
    }

    [Fact]
    public void AnyOtherKeyLeavesTheHouseAsItIs()
    {
        var shell = AtLook();
        shell.Press("enter");
        shell.Press("x");
        Assert.Null(Width("W02"));
        Assert.Contains("Nothing was done", Seen(shell), StringComparison.Ordinal);
    }

    [Fact]
    public void ItIsTakenInAndTheConflictIsChosenValueAgainstValue()
    {
        var shell = AtLook();
        shell.Press("enter");
        shell.Press("y");
        Assert.Equal(Length.FromInches(40), Width("W02"));
        Assert.IsType<ConflictsScreen>(shell.Screen);
        Assert.Contains("36\" by Ada on 2026-03-05", Seen(shell), StringComparison.Ordinal);
        Assert.Contains("37\" by Bo on 2026-03-02", Seen(shell), StringComparison.Ordinal);
        var way = ((ConflictsScreen)shell.Screen).Current!.Ways.Select(w => w.Says).ToList().FindIndex(w => w.StartsWith("37", StringComparison.Ordinal));
        while (((ConflictsScreen)shell.Screen).Way != way)
            shell.Press("right");
        shell.Press("enter");
        shell.Press("y");
        Assert.Equal(Length.FromInches(37), Width("W01"));
        Assert.Empty(Conflict.All(_mine.House));
        Assert.Contains("Nothing is in conflict", Seen(shell), StringComparison.Ordinal);
        shell.Press("u");
        shell.Press("u");
        Assert.Single(Conflict.All(_mine.House));
        shell.Press("esc");
        Assert.IsType<HistoryScreen>(shell.Screen);
        Assert.Contains("Bo", Seen(shell), StringComparison.Ordinal);
    }

    [Fact]
    public void UndoIsAboutTheMergeFirstAndBringsTheHouseBackAsItWas()
    {
        var shell = AtLook();
        shell.Press("enter");
        shell.Press("y");
        shell.Press("u");
        Assert.Contains("Take back 2 changes that came in?", Seen(shell), StringComparison.Ordinal);
        shell.Press("u");
        Assert.Null(Width("W02"));
        Assert.Equal(Length.FromInches(36), Width("W01"));
        Assert.Empty(Conflict.All(_mine.House));
        shell.Press("U");
        shell.Press("U");
        Assert.Equal(Length.FromInches(40), Width("W02"));
    }

    [Fact]
    public void OnceSomethingElseWasDoneUndoIsAboutThat()
    {
        var shell = AtLook();
        shell.Press("enter");
        shell.Press("y");
        shell.Press("enter");
        shell.Press("y");
        shell.Press("u");
        Assert.Contains("Undo \"W01: Rough width: chosen", Seen(shell), StringComparison.Ordinal);
        shell.Press("u");
        Assert.Equal(Length.FromInches(40), Width("W02"));
    }

    [Fact]
    public void WhatOneRemovedWhileTheOtherWentOnIsSettledTheSameWay()
    {
        _site.Do(RemoveItems.Remove(_site.House, _site.House.FindTag("W03")!.Item));
        Assert.True(SetFact.Typed(_mine.House, _mine.House.FindTag("W03")!.Item, WindowFacts.RoughWidth, "44").Then(_mine.Record).Ok);
        _desk.OtherCopies[Stick] = new CopyRead(_site.Scribe.Log, []);
        var shell = AtLook();
        shell.Press("enter");
        shell.Press("y");
        shell.Press("end");
        Assert.Contains("while Ada went on with it", Seen(shell).Replace("\n", " ", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.Contains("► bring it back with all it had", Seen(shell), StringComparison.Ordinal);
        shell.Press("enter");
        shell.Press("y");
        Assert.Equal(Length.FromInches(44), Width("W03"));
    }

    [Fact]
    public void ACopyThatCannotBeReadOrIsOfAnotherHouseSaysSoAndNothingIsChanged()
    {
        _desk.OtherCopies.Clear();
        _desk.OtherCopies["/media/stick/torn.trimout"] = new Refusal("/media/stick/torn.trimout is damaged: its contents are not what was written.");
        _desk.OtherCopies["/media/stick/elm.trimout"] = new CopyRead(new TestJob(store: new MemoryStore("elm")).Scribe.Log, []);
        var before = _mine.Log.Changes.Count;
        var shell = new ShellState(_desk, _mine);
        foreach (var key in (string[])["8", "O", "enter"])
            shell.Press(key);
        Assert.Contains("! /media/stick/torn.trimout is damaged", Seen(shell), StringComparison.Ordinal);
        shell.Press("down");
        shell.Press("enter");
        Assert.Contains("no change in common", Seen(shell).Replace("\n", " ", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.IsType<CopiesScreen>(shell.Screen);
        shell.Press("O");
        shell.TextChanged("/nowhere/at-all.trimout");
        shell.Press("enter");
        Assert.Contains("there is no such file", Seen(shell), StringComparison.Ordinal);
        Assert.Equal(before, _mine.Log.Changes.Count);
    }

    [Fact]
    public void ACopyThatBringsNothingSaysSo()
    {
        _desk.OtherCopies[Stick] = new CopyRead(_mine.Log, []);
        var shell = AtLook();
        Assert.Contains("Nothing would come in", Seen(shell), StringComparison.Ordinal);
        shell.Press("enter");
        Assert.Contains("Nothing would come in from this copy.", Seen(shell), StringComparison.Ordinal);
    }

    [Fact]
    public void WhereNoCopyIsFoundItSaysWhatToDo()
    {
        _desk.OtherCopies.Clear();
        var shell = new ShellState(_desk, _mine);
        foreach (var key in (string[])["8", "O"])
            shell.Press(key);
        Assert.Contains("No other house file was found", Seen(shell), StringComparison.Ordinal);
    }

    [Fact]
    public void WhatTheMergeBroughtUpIsShownLikeWhatASaveBroughtUp()
    {
        _site.Say("W02", UnitFacts.BoxLabel, "W09");
        _desk.OtherCopies[Stick] = new CopyRead(_site.Scribe.Log, []);
        var shell = AtLook();
        shell.Press("enter");
        shell.Press("y");
        Assert.NotNull(shell.Caused.Shown);
    }

    [Fact]
    public void OneEnterTooManyAfterACopyWasTakenInSettlesNothing()
    {
        var shell = AtLook();
        foreach (var key in (string[])["enter", "y", "enter"])
            shell.Press(key);
        Assert.Contains("y settles it", Seen(shell), StringComparison.Ordinal);
        shell.Press("enter");
        Assert.Single(Conflict.All(_mine.House));
        Assert.IsType<ConflictsScreen>(shell.Screen);
    }
}
