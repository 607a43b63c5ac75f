using Microsoft.Extensions.Time.Testing;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Screens.Cables;
using TrimOut.Screens.JobSheet;
using TrimOut.Screens.Panels;
using TrimOut.Screens.Sheets;
using TrimOut.Screens.Shell;
using TrimOut.Screens.Walk;
using TrimOut.Testing;

namespace TrimOut.Screens.Tests.Stories;

/// <summary>Keys that were meant for something else: nothing is lost by them, and what a question says of them is so.</summary>
public class StrayKeysTests
{
    private readonly TestJob _job = new TestJob().Window("W01").Window("W02");

    private TerminalUser User() => new(new TestDesk(new FakeTimeProvider()), _job.Scribe);

    [Fact]
    public void AReadingTypedWithoutItsKeyComesBackWithItsPoint()
    {
        using var user = User();
        user.Press("4").Sees("Cables").Press("1").Sees("1 is Job sheet. Esc goes back to Cables.");
        user.Press(".");
        Assert.IsType<CablesScreen>(user.Shell.Screen);
        Assert.Equal("1.", user.Shell.Typing!.Text);
        user.Type("1.28").Sees("1.28 ohm");
    }

    [Fact]
    public void DigitsTypedOnASheetComeBackWithEsc()
    {
        using var user = User();
        user.Press("enter");
        var at = ((SheetScreen)user.Shell.Screen).Current!.Place;
        user.Press("4", "5").Sees("Esc goes back to W01, Kitchen and types 45 there.").Press("esc");
        Assert.Equal(at, ((SheetScreen)user.Shell.Screen).Current!.Place);
        Assert.Equal("45", user.Shell.Typing!.Text);
    }

    /// <summary>What a hand goes on with after a first digit: none of it may save, mark or open anything where the digit led.</summary>
    [Theory]
    [InlineData("60 1/2", "enter")]
    [InlineData("0", "enter")]
    [InlineData("8", "enter")]
    [InlineData("2 1/2", "enter")]
    [InlineData("2x4", "enter")]
    [InlineData("6-1/2", "tab")]
    [InlineData("3/4", "enter")]
    public void AFigureTypedAfterItsFieldWasLeftLandsNowhereAndComesBack(string figure, string end)
    {
        using var user = User();
        user.Press("enter");
        var (house, at) = (user.House, ((SheetScreen)user.Shell.Screen).Current!.Place);
        user.Press([.. figure.Select(c => c == ' ' ? "space" : c.ToString()), end]);
        user.Sees($"\"{figure}\" was typed for W01, Kitchen. Esc goes back and types it there;");
        Assert.Null(user.Shell.Typing);
        Assert.Same(house, user.House);
        user.Press("esc");
        Assert.Equal(at, ((SheetScreen)user.Shell.Screen).Current!.Place);
        Assert.Equal(figure, user.Shell.Typing!.Text);
    }

    [Fact]
    public void TheSecondFigureDoesNotBecomeTheNameOfTheHouse()
    {
        _job.SayOf("", HouseFacts.Name, "Ridge house").Say("W01", UnitFacts.BoxLabel, "W09");
        using var user = User();
        user.Press("enter").Press("3", "0", "enter", "3", "6", "enter", "6", "0", "enter");
        Assert.Equal("Ridge house", user.House.Name);
    }

    /// <summary>Where no figure is meant digits are keys; a number of them that is ended is no key all the same.</summary>
    [Fact]
    public void AFigureTypedWhereNoneIsMeantOpensNothing()
    {
        using var user = User();
        user.Press("3", "0", "enter").Sees("\"30\" was typed, and nothing took it. Esc goes back to Job sheet;");
        user.Press("3", "6", "enter");
        Assert.Null(user.Shell.Typing);
        user.Press("esc");
        Assert.IsType<JobSheetScreen>(user.Shell.Screen);
        user.Press("0", "enter");
        Assert.NotNull(user.Shell.Typing);
    }

    /// <summary>What comes after a pause is a key of the screen that the digit led to, and no part of a figure.</summary>
    [Fact]
    public void AKeyAfterAPauseDoesWhatItDoesThere()
    {
        var clock = new FakeTimeProvider();
        using var user = new TerminalUser(new TestDesk(clock), _job.Scribe);
        user.Press("4", "8");
        clock.Advance(TimeSpan.FromSeconds(1));
        user.Press("/");
        Assert.Equal("Show only", user.Shell.Typing!.Entry.Label);
        user.Press("esc", "4", "3");
        clock.Advance(TimeSpan.FromSeconds(1));
        user.Press("5");
        clock.Advance(TimeSpan.FromSeconds(1));
        user.Press("enter").DoesNotSee("was typed for");
    }

    [Fact]
    public void AnArrowKeyStaysWhereTheDigitLedAndEnterThenOpensWhatIsThere()
    {
        using var user = User();
        user.Press("enter", "9", "enter").Sees("\"9\" was typed for W01, Kitchen.").Press("enter").Sees("\"9\" was typed for W01, Kitchen.");
        user.Press("down").Sees("\"9\" was not taken.");
        Assert.IsType<Kit.KitScreen>(user.Shell.Screen);
        user.Press("enter");
        Assert.IsType<SheetScreen>(user.Shell.Screen);
    }

    [Fact]
    public void AStopThatStandsDoesNotTakeTheEscThatLeadsBack()
    {
        _job.Mark("W01", "sheet-frozen");
        using var user = User();
        user.Press("2", "]", "]", "]", "]", "]", "enter").Type("W02").Press("esc");
        Assert.NotNull(user.Shell.Caused.Shown);
        user.Press("1", "2").Sees("types 12 there").Press("esc");
        Assert.Equal("12", user.Shell.Typing!.Text);
    }

    [Fact]
    public void EscOnTheJobSheetTakesNoOtherKey()
    {
        using var user = User();
        user.Press("esc").Sees("? y does. All is saved.").Press("down").DoesNotSee("? y does");
        Assert.Equal("W02", ((JobSheetScreen)user.Shell.Screen).Current(user.Shell.Context)!.Tag);
        user.Press("esc", "4");
        Assert.IsType<CablesScreen>(user.Shell.Screen);
        user.Press("1", "down", "esc", "esc", "esc", "esc");
        Assert.IsType<JobSheetScreen>(user.Shell.Screen);
        user.Press("y");
        Assert.IsType<HousePicker.PickerScreen>(user.Shell.Screen);
    }

    [Fact]
    public void OneDigitThatWasMeantAsAKeyIsLeftByAnyOtherKey()
    {
        using var user = User();
        user.Press("enter", "3");
        Assert.IsType<PanelsScreen>(user.Shell.Screen);
        user.Press("down", "esc");
        Assert.IsType<JobSheetScreen>(user.Shell.Screen);
        user.Press("enter", "3", "esc");
        Assert.IsType<SheetScreen>(user.Shell.Screen);
        Assert.Null(user.Shell.Typing);
    }

    [Theory]
    [InlineData("y")]
    [InlineData("u")]
    public void AQuestionNamesBothKeysThatSayYes(string yes)
    {
        using var user = User();
        user.Press("u").Sees("? u or y undoes it, any other key leaves it.").Press(yes);
        Assert.NotNull(user.Shell.Context.RedoNext);
        user.Press("U").Sees("Bring back what was undone: \"").Sees("? U or y brings it back").Press("x").Sees("Nothing was done.");
    }

    [Fact]
    public void AQuestionThatDoesNotNameYIsNotAnsweredByIt()
    {
        var shell = new ShellState(new TestDesk(new FakeTimeProvider()), _job.Scribe);
        var confirm = new Ask.Confirm("Sure?", "X", new Transition(JobSheetScreen.At(shell.Context)));
        Assert.False(confirm.IsYes("y"));
        Assert.True(confirm.IsYes("X"));
        Assert.True((confirm with { Question = "Sure? X does it, any other key does not." }).IsYes("y"));
    }

    [Fact]
    public void TwoWalksFromTheUnitUnderTheCursorOnAnyScreen()
    {
        using var user = User();
        user.Press("g").Type("W02").Press("enter", "2");
        Assert.Equal(user.House.Units[1].Id, ((WalkScreen)user.Shell.Screen).SubjectId);
        user.Press("1").Press("right", "right", "2");
        Assert.Equal(Core.Phases.Phase.RoughIn, ((WalkScreen)user.Shell.Screen).Phase);
    }

    [Fact]
    public void SpaceMarksTheNextStepOnTheSheetOfAUnit()
    {
        using var user = User();
        user.Press("enter", "space");
        Assert.NotNull(user.Shell.Typing);
    }

    [Fact]
    public void NextMissingGoesOnFromTheTopAfterTheLast()
    {
        using var user = User();
        user.Press("enter", "end", "e");
        Assert.True(((SheetScreen)user.Shell.Screen).Selected < ((SheetScreen)user.Shell.Screen).Rows.Count - 1);
        user.Sees("on from the top");
    }

    [Fact]
    public void OneMoreUnitIsAddedFromTheJobSheet()
    {
        _job.Say("W01", UnitFacts.Kind, "Roller").Say("W01", UnitFacts.LeadSide, "left").Say("W01", UnitFacts.Power, "panel");
        using var user = User();
        user.Press("+").Sees("W01B").Sees("as W01: kind, lead side, power");
        var units = user.House.FindTag("W01")!.Units;
        Assert.Equal(2, units.Length);
        Assert.Equal((units[0].Kind!.Id, units[0].LeadSide, units[0].Power), (units[1].Kind!.Id, units[1].LeadSide, units[1].Power));
    }

    [Fact]
    public void AWrittenItemLeadsToTheDetailThatItNames()
    {
        _job.Do(j => PunchList.Write(j.House, j.Unit("W02").Item, "rough width was read upside down", Core.Phases.Phase.WalkThrough));
        using var user = User();
        user.Press("6").Sees("rough width was read").Press([.. Rows(user, "rough width")]).Press("enter");
        Assert.Equal(WindowFacts.RoughWidth, ((SheetScreen)user.Shell.Screen).Current!.Fact);
    }

    [Fact]
    public void AWrittenItemThatNamesNoDetailLeadsToItsPhase()
    {
        _job.Do(j => PunchList.Write(j.House, j.Unit("W02").Item, "fascia scratched", Core.Phases.Phase.Hang));
        using var user = User();
        user.Press("6").Press([.. Rows(user, "fascia")]).Press("enter");
        Assert.Equal(Core.Phases.Phase.Hang, ((SheetScreen)user.Shell.Screen).Current!.Fact!.Phase);
    }

    [Fact]
    public void AWrittenItemAboutTheHouseOpensItself()
    {
        _job.Do(j => PunchList.Write(j.House, j.House.Job, "sweep the hall", Core.Phases.Phase.Handover));
        using var user = User();
        user.Press("6").Press([.. Rows(user, "sweep")]).Press("enter");
        Assert.Equal(PunchFacts.What, ((SheetScreen)user.Shell.Screen).Current!.Fact);
    }

    [Fact]
    public void SpreadOutSaysWhichMotorsGetOtherVoltsBeforeItIsDone()
    {
        _job.SayOf("Roller", CoveringKindFacts.MotorVolts, "12").Add(ItemKind.Panel, "P1");
        _job.SayOf(_job.House.Panels[0].Type!.Name, PanelTypeFacts.Supply, "24");
        using var user = User();
        user.Press("3", "p").Sees("STOP W01:").Sees("24 V").Press("x");
        Assert.All(user.House.Runs, r => Assert.Null(r.Output));
    }

    [Fact]
    public void ALabelAndABoxAreOffered()
    {
        using var user = User();
        user.Press("enter");
        var rows = ((SheetScreen)user.Shell.Screen).Rows.ToList();
        var at = rows.FindIndex(r => r.Fact == RunFacts.LabelAtWindow);
        while (((SheetScreen)user.Shell.Screen).Selected < at)
            user.Press("down");
        user.Press("enter").Sees("Up brings W01").Press("up");
        Assert.Equal("W01", user.Shell.Typing!.Text);
        user.Press("enter").Press("4", "n");
        Assert.Equal("A", user.Shell.Typing!.Text);
        user.Press("enter").Press("4", "n");
        Assert.Equal("B", user.Shell.Typing!.Text);
    }

    [Fact]
    public void AHouseInMillimetresHasExamplesInMillimetres()
    {
        using var user = new TerminalUser(new TestDesk(new FakeTimeProvider()), new TestJob(Core.Units.DisplayUnits.Millimetres).Scribe);
        user.Sees("W01 roller left 900x1500 SW").DoesNotSee("36x60").Press("n").Type("W01 roller left 900x1500 @Kitchen").Press("esc", "enter");
        var at = ((SheetScreen)user.Shell.Screen).Rows.ToList().FindIndex(r => r.Fact == WindowFacts.RoughWidth);
        while (((SheetScreen)user.Shell.Screen).Selected < at)
            user.Press("down");
        user.Press("enter").Sees("1156").DoesNotSee("45 1/2,");
    }

    [Fact]
    public void ChoicesAreShownInFullAtEightyColumns()
    {
        using var user = User();
        user.Press("0");
        while (((SheetScreen)user.Shell.Screen).Current!.Fact != HouseFacts.Dwelling)
            user.Press("down");
        user.Press("enter");
        Assert.All(HouseFacts.Dwelling.Options(user.House), o => Assert.Contains(o.Shown, user.Screen.ReplaceLineEndings(" "), StringComparison.Ordinal));
        user.DoesNotSee("…");
    }

    [Fact]
    public void WhoeverStartsOnAMachineIsAskedOnceAndStandsBesideTheChanges()
    {
        var desk = new TestDesk(new FakeTimeProvider()) { Who = null };
        using (var user = new TerminalUser(desk, _job.Scribe))
        {
            user.Sees("Who is working here").Type("Ash Example").Press("n").Type("W03 @Kitchen").Press("esc");
            Assert.Equal("Ash Example", _job.Scribe.Log.Changes[^1].By);
        }
        using var again = new TerminalUser(desk, _job.Scribe);
        again.DoesNotSee("Who is working here").Press("f3").Sees("Who is working here").Press("esc");
        Assert.Equal("Ash Example", desk.Who);
    }

    private static IEnumerable<string> Rows(TerminalUser user, string text)
    {
        var rows = Punch.PunchRows.Of((Punch.PunchScreen)user.Shell.Screen, user.Shell.Context).ToList();
        return Enumerable.Repeat("down", rows.FindIndex(r => r.Text.StartsWith(text, StringComparison.Ordinal)));
    }
}
