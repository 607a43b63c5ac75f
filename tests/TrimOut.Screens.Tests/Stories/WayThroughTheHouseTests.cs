using Microsoft.Extensions.Time.Testing;
using TrimOut.Core.Facts;
using TrimOut.Core.Phases;
using TrimOut.Screens.JobSheet;
using TrimOut.Screens.Kit;
using TrimOut.Screens.Walk;
using TrimOut.Testing;

namespace TrimOut.Screens.Tests.Stories;

/// <summary>Where somebody stands after a screen was left, and what is said of what was typed on the way.</summary>
public class WayThroughTheHouseTests
{
    private readonly TestDesk _desk = new(new FakeTimeProvider());

    private TerminalUser At(TestJob job) => new(_desk, job.Scribe, width: 110, height: 40);

    private static TestJob ThreeWindows() => new TestJob().Window("W01").Window("W02").Window("W03");

    [Fact]
    public void ANewPartOfTheKitIsUnderTheCursor()
    {
        using var user = At(ThreeWindows());
        user.Press("9", "n").Type("Drape");
        Assert.Equal("Drape", user.House.NameOf(((KitScreen)user.Shell.Screen).Current(user.Shell.Context)!));
        user.Press("s").Sees("Sheet in hand: Drape");
    }

    [Fact]
    public void ANewPartThatTheFilterHidesIsShown()
    {
        using var user = At(ThreeWindows());
        user.Press("9", "/").Type("Roller").Press("n").Type("Drape");
        Assert.Equal("Drape", user.House.NameOf(((KitScreen)user.Shell.Screen).Current(user.Shell.Context)!));
    }

    [Fact]
    public void TheJobSheetStandsOnTheUnitThatWasWalkedLast()
    {
        using var user = At(ThreeWindows());
        user.Press("2", "right", "right", "esc");
        Assert.Equal("W03", ((JobSheetScreen)user.Shell.Screen).UnitAt(user.Shell.Context)!.Tag);
    }

    [Fact]
    public void TheWalkGoesOnInThePhaseThatWasWalkedLast()
    {
        using var user = At(ThreeWindows());
        user.Press("2", "]", "]", "]", "esc", "2");
        Assert.Equal(Phase.Measure, ((WalkScreen)user.Shell.Screen).Phase);
        user.Press("esc", "]", "2");
        Assert.Equal(Phase.WalkThrough, ((WalkScreen)user.Shell.Screen).Phase);
    }

    [Theory]
    [InlineData("7", "home")]
    [InlineData("7", "w")]
    [InlineData("3", "down")]
    [InlineData("9", "down")]
    public void EscGoesBackToTheWalkFromTheScreenThatWasGoneTo(string section, string key)
    {
        using var user = At(ThreeWindows());
        user.Press("2", "]", "right", section, key, "esc");
        var walk = Assert.IsType<WalkScreen>(user.Shell.Screen);
        Assert.Equal((Phase.RoughIn, "W02"), (walk.Phase, walk.UnitAt(user.Shell.Context)!.Tag));
        user.Press(section, key, "2");
        Assert.Equal(Phase.RoughIn, Assert.IsType<WalkScreen>(user.Shell.Screen).Phase);
        user.Press(section, key, "1").Press("esc").Sees("Close Test house");
    }

    [Fact]
    public void ATagThatReadsAsALengthIsAskedAbout()
    {
        using var user = At(ThreeWindows());
        user.Press("enter", "enter").Type("34 7/8").Sees("reads as a length");
        Assert.Equal("W01", user.House.Windows[0].Tag);
        user.Press("enter");
        Assert.Equal("34 7/8", user.House.Windows[0].Tag);
    }

    [Fact]
    public void AWholeNumberIsATagLikeOthers()
    {
        using var user = At(ThreeWindows());
        user.Press("enter", "enter").Type("101");
        Assert.Equal("101", user.House.Windows[0].Tag);
    }

    [Fact]
    public void TabTakesTheEvidenceAndGoesToTheNextField()
    {
        using var user = At(ThreeWindows());
        user.Press("2", "]", "]", "]");
        while (((WalkScreen)user.Shell.Screen).Step(user.Shell.Context)!.Evidence.Length < 3)
            user.Press("down");
        var step = ((WalkScreen)user.Shell.Screen).Step(user.Shell.Context)!;
        user.Press("enter");
        var first = user.Shell.Typing!.Entry.InPlace;
        user.Press("3", "6", "tab");
        Assert.NotEqual(first, user.Shell.Typing!.Entry.InPlace);
        Assert.Equal("36\"", step.Evidence[0].ShowOf(user.House.Windows[0].Item, user.House));
    }

    [Fact]
    public void UndoingAMarkSaysWhichEvidenceStays()
    {
        using var user = At(ThreeWindows().Say("W01", RunFacts.LabelAtWindow, "W01").Say("W01", RunFacts.LabelAtPanel, "W01")
            .Say("W02", UnitFacts.BoxLabel, "W02").Mark("W01", "both-ends-labelled"));
        user.Press("u").Sees("stays: ").Sees(RunFacts.LabelAtPanel.Label);
    }

    [Fact]
    public void APictureThatIsNotThereIsSaidWhenItIsTypedAndWhenItsStepIsMarked()
    {
        _desk.LostPictures.Add("photos/W01.jpg");
        using var user = At(ThreeWindows());
        user.Press("2", "]");
        while (!((WalkScreen)user.Shell.Screen).Step(user.Shell.Context)!.Evidence.Contains(RunFacts.Photo))
            user.Press("down");
        user.Press("enter").Type("photos/W01.jpg").Sees("There is no file photos/W01.jpg");
        Assert.Equal("photos/W01.jpg", user.House.Units[0].Run!.Item.Get(RunFacts.Photo));
        user.Press("up", "down", "space").DoesNotSee("There is no file").Type("the wall is open").Sees("There is no file photos/W01.jpg");
    }

    [Fact]
    public void AnEmptyOfferSaysWhichBlankItWaitsFor()
    {
        using var user = At(new TestJob().Window("W01").Say("W01", WindowFacts.Mount, "inside"));
        user.Press("2", "]", "]", "]", "]");
        while (!((WalkScreen)user.Shell.Screen).Step(user.Shell.Context)!.Evidence.Contains(UnitFacts.OrderWidth))
            user.Press("down");
        user.Press("enter").Sees("Nothing is offered: ");
    }

    [Fact]
    public void TheLastPhaseNamesNoNextOne()
    {
        Assert.Equal(Phase.Handover, PhaseNames.All[^1]);
        var job = new TestJob().Window("W01");
        foreach (var subject in Progress.Walkers(job.House).ToList())
        {
            foreach (var step in StepList.Of(Phase.Handover, subject))
                job.Do(Core.Decisions.MarkStep.Done(subject, step));
        }
        using var user = At(job);
        user.Press("2");
        while (((WalkScreen)user.Shell.Screen).Phase != Phase.Handover)
            user.Press("]");
        user.Press("space").Sees("It is the last phase.").DoesNotSee("] goes on to the next phase");
    }
}
