using Microsoft.Extensions.Time.Testing;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Testing;

namespace TrimOut.Screens.Tests.Stories;

/// <summary>Keys come faster than the screens that they were meant for: none of them makes or says what nobody wanted.</summary>
public class TypedAheadTests
{
    private readonly TestJob _job = new TestJob().Window("W01").Window("W02");

    private TerminalUser User() => new(new TestDesk(new FakeTimeProvider()), _job.Scribe);

    /// <summary>The line stays open for the next window: whoever presses n once more has it in the tag.</summary>
    [Fact]
    public void TheKeyOfTheLineInAnOpenLineIsNoPartOfATag()
    {
        using var user = new TerminalUser(new TestDesk(new FakeTimeProvider()), new TestJob().Window("W01").Scribe);
        user.Press("n").Type("W02 30x40").Type("nW03").Sees("The line was open already").Sees("W03.");
        Assert.Equal(["W01", "W02"], user.House.Windows.Select(w => w.Tag));
        user.Type("W03");
        Assert.Equal(["W01", "W02", "W03"], user.House.Windows.Select(w => w.Tag));
    }

    [Theory]
    [InlineData("W03 o")]
    [InlineData("o")]
    [InlineData("W03 le")]
    public void OneStrayWordMakesNoWindowBeforeItIsTakenTwice(string line)
    {
        using var user = User();
        user.Press("n").Type(line).Sees("is all that is said of W03").Sees("Enter once more");
        Assert.Equal(2, user.House.Windows.Length);
        user.Press("enter", "esc");
        Assert.Equal(3, user.House.Windows.Length);
    }

    [Theory]
    [InlineData("W03")]
    [InlineData("W03 SW")]
    [InlineData("W03 left")]
    [InlineData("W09")]
    public void ALineThatDiffersInOneThingIsTakenAtOnce(string line)
    {
        using var user = User();
        user.Press("n").Type(line);
        Assert.Equal(3, user.House.Windows.Length);
    }

    [Fact]
    public void AnAnswerWithoutItsQuestionMakesNoWindow()
    {
        using var user = User();
        user.Press("n", "o", "enter");
        Assert.Equal(2, user.House.Windows.Length);
    }

    [Fact]
    public void TheFirstWindowOfAHouseIsNotATagAlone()
    {
        using var user = new TerminalUser(new TestDesk(new FakeTimeProvider()), new TestJob().Scribe);
        user.Press("n", "enter").Sees("Nothing is said of W01 yet");
        Assert.Empty(user.House.Windows);
        user.Press("enter");
        Assert.Single(user.House.Windows);
    }

    [Theory]
    [InlineData("no")]
    [InlineData("yes")]
    [InlineData("x")]
    [InlineData("1 2")]
    [InlineData("ok.")]
    public void AnAnswerIsNoReason(string answer)
    {
        using var user = User();
        user.Press("-").Type(answer).Sees("is no reason");
        Assert.False(user.House.Windows[0].LeftOut);
        user.Type("art wall");
        Assert.True(user.House.Windows[0].LeftOut);
    }

    [Fact]
    public void AnAnswerIsNoReasonForAStepThatIsNotNeededOrMarkedAllTheSame()
    {
        using var user = User();
        user.Press("2", "]", "]", "-").Type("no").Sees("\"no\" is no reason").Type("battery unit").Sees("not needed: battery unit");
        user.Press("esc", "n").Type("W03 out: no").Sees("\"no\" is no reason");
        Assert.Equal(2, user.House.Windows.Length);
    }

    [Fact]
    public void ATwoSignReasonOfAnotherWritingIsOne()
    {
        using var user = User();
        user.Press("-").Type("画廊");
        Assert.True(user.House.Windows[0].LeftOut);
    }

    [Fact]
    public void TheReasonGoesWhenTheWindowComesBackAndTheHistoryKeepsIt()
    {
        using var user = User();
        user.Press("-").Type("owner unsure").Press("b");
        Assert.Equal("", user.House.Windows[0].Show(WindowFacts.NotCoveredBecause));
        user.Press("8").Sees("it was left out: ").Press("u", "u");
        Assert.Equal("owner unsure", user.House.Windows[0].Show(WindowFacts.NotCoveredBecause));
    }

    [Fact]
    public void TheReasonGoesToWhereTheDetailIsPutToYes()
    {
        using var user = User();
        user.Press("-").Type("owner unsure").Press("enter");
        for (var row = 0; row < 20 && ((Sheets.SheetScreen)user.Shell.Screen).Current?.Fact != WindowFacts.Covered; row++)
            user.Press("down");
        user.Press("enter").Type("yes");
        Assert.Equal("", user.House.Windows[0].Show(WindowFacts.NotCoveredBecause));
    }

    [Fact]
    public void EnterAnswersNoQuestionAndSaysSo()
    {
        _job.Say("W01", UnitFacts.BoxLabel, "W01");
        using var user = User();
        user.Press("u", "enter").Sees("Enter answers nothing here.").Sees("u or y undoes it");
        user.Press("u");
        Assert.Equal("", user.House.Units[0].Show(UnitFacts.BoxLabel));
    }

    [Fact]
    public void AnyOtherKeyStillLeavesIt()
    {
        _job.Say("W01", UnitFacts.BoxLabel, "W01");
        using var user = User();
        user.Press("u", "enter", "down").Sees("Nothing was done.").Press("u");
        Assert.Equal("W01", user.House.Units[0].Show(UnitFacts.BoxLabel));
    }

    [Fact]
    public void ADoneStepSaysSoAndNothingRunsOn()
    {
        _job.Pulled("W01").Pulled("W02").Mark("W01", "cable-found");
        using var user = User();
        user.Press("2", "]", "]", "up", "up", "up");
        var walk = (Walk.WalkScreen)user.Shell.Screen;
        Assert.Equal("cable-found", walk.Step(user.Shell.Context)!.Id);
        user.Press("x").Sees("W01, ").Sees(" done already.");
        Assert.Equal(walk.SubjectId, ((Walk.WalkScreen)user.Shell.Screen).SubjectId);
        user.Press("space").Sees(" done already.");
    }

    [Fact]
    public void FromAUnitThatIsDoneTheWalkGoesOnAndSaysWhereTo()
    {
        foreach (var step in StepList.Of(Phase.CloseIn, _job.Unit("W01")))
            _job.Mark("W01", step.Id);
        using var user = User();
        user.Press("2", "]", "]").Sees("W01  Roller").Press("space").Sees("W01 is done here. This is W02.");
    }

    [Fact]
    public void TheKeyToAnotherStepStandsOnTheBottomLine()
    {
        using var user = User();
        user.Press("2").Sees("Up Step before");
    }

    [Fact]
    public void WhatIsMarkedIsWhatTheCardSaysAndAnEarlierStepIsNamed()
    {
        using var user = User();
        user.Press("right", "right");
        var step = StepList.All.First(s => s.Phase == Phase.RoughIn && s.Subject == ItemKind.Unit);
        user.Sees($"► {Phase.RoughIn.Full()}: ").Sees("Next of all is ").Press("left", "left").DoesNotSee("Next of all is ");
        Assert.NotNull(step);
    }

    [Fact]
    public void ATagThatIsARoomIsAskedAbout()
    {
        using var user = User();
        user.Press("enter", "home", "enter").Type("Kitchen").Sees("\"Kitchen\" is a room, and this is the tag of a window.");
        Assert.NotNull(user.House.FindTag("W01"));
    }

    [Fact]
    public void TheNameOfAFloorIsAskedForInCapitalsAndIsNoRoom()
    {
        _job.Room("Bath", "Main");
        using var user = User();
        user.Press("r", "home");
        for (var row = 0; row < 20 && ((Rooms.RoomsScreen)user.Shell.Screen).Current(user.Shell.Context) is not { IsFloor: true, Floor: "Main" }; row++)
            user.Press("down");
        user.Press("enter").Sees("Name of the FLOOR Main").Type("Kitchen").Sees("Kitchen is a room, and this names the floor");
        Assert.Contains("Main", user.House.Floors);
    }

    [Theory]
    [InlineData("W03 floor 1 left")]
    [InlineData("W03 Ground floor left")]
    public void AFloorAmongTheWordsIsToldWhereItStands(string line)
    {
        using var user = User();
        user.Press("n").Type(line).Sees("A floor of the house stands last");
        Assert.Equal(line, user.Shell.Typing!.Text);
    }
}
