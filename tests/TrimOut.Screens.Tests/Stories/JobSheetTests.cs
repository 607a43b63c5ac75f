using Microsoft.Extensions.Time.Testing;
using TrimOut.Core.Facts;
using TrimOut.Core.Phases;
using TrimOut.Testing;

namespace TrimOut.Screens.Tests.Stories;

public class JobSheetTests
{
    private static TestJob Job() => new TestJob().Window("W01").Window("W02").Window("W03", "Study").Window("W04", "Study");

    private static TerminalUser At(TestJob job) => new(new TestDesk(new FakeTimeProvider()), job.Scribe);

    [Fact]
    public void PickedUnitsAreMarkedTogetherAndUndoneTogether()
    {
        var job = Job();
        foreach (var tag in (string[])["W01", "W02", "W03", "W04"])
            job.Pulled(tag);
        using var user = At(job);
        var step = StepList.Find("cable-found")!;
        user.Press("right", "right", "right", "V").Sees("4 units picked").Press("space");
        Assert.All(user.House.Units, u => Assert.NotNull(u.MarkOf(step)));
        user.Press("u").Sees("Undo \"Cable found again: W01, W02, W03, W04\"").Press("u");
        Assert.All(user.House.Units, u => Assert.Null(u.MarkOf(step)));
    }

    [Fact]
    public void PickedUnitsWithoutEvidenceAreNamedAndStayPicked()
    {
        using var user = At(Job());
        user.Press("right", "right", "right", "right", "v", "v", "space").Sees("Nothing is marked. Still missing: ").Sees(" of W01, W02.");
        Assert.Equal(2, ((JobSheet.JobSheetScreen)user.Shell.Screen).Picked.Count);
    }

    [Fact]
    public void WhatCanBeTheSameForAllIsAskedForOnce()
    {
        using var user = At(Job());
        user.Press("V", "space").Sees("Reached from of W01, W02, W03, W04").Type("ladder").Type("inside").Type("no").Sees("Nothing is marked. Still missing:");
        Assert.All(user.House.Windows, w => Assert.Equal((Reach.Ladder, Mount.Inside), (w.Reach, w.Mount)));
    }

    [Fact]
    public void ALineIsEmptiedByOneKeyAndTabTakesNothingWhereThereIsNoNext()
    {
        using var user = At(Job());
        user.Press("n", "tab");
        Assert.Equal(4, user.House.Windows.Length);
        user.Press("ctrl+u");
        Assert.Equal("", user.Shell.Typing!.Text);
        user.Type("K1 36x60").Press("esc");
        Assert.NotNull(user.House.FindTag("K1"));
    }

    [Fact]
    public void AFilterShowsWhatFitsAndTheSelectionStaysAmongIt()
    {
        using var user = At(Job());
        user.Press("/").Type("study").Sees(" W03  Roller").DoesNotSee(" W01  Roller");
        user.Press("enter").Sees("W03, Study");
    }

    [Fact]
    public void ATagIsJumpedTo()
    {
        using var user = At(Job());
        user.Press("g").Type("w04").Press("enter").Sees("W04, Study");
        user.Press("esc", "g").Type("W99").Sees("No unit has the tag W99.");
    }

    [Fact]
    public void EscNeverLeavesTheProgramAndQuittingAsks()
    {
        using var user = At(Job());
        user.Press("esc").Sees("Close Test house and go to the list of houses? y does.").Press("down").Sees("Job sheet");
        user.Press("esc", "y", "esc").Sees("q leaves TrimOut");
        Assert.False(user.Shell.Left);
        user.Press("q", "x").Sees("Nothing was done.");
        Assert.False(user.Shell.Left);
        user.Press("q", "q");
        Assert.True(user.Shell.Left);
    }

    [Fact]
    public void AnActionIsFoundByItsName()
    {
        using var user = At(Job());
        user.Press(":").Type("punch list").Sees("Punch list");
    }

    [Fact]
    public void AnActionOfAnotherScreenIsFoundAndDoneThere()
    {
        using var user = At(Job());
        user.Press(":").Write("new pan").Sees("New panel (Panels): Adds a panel.").Press("enter").Sees("Name of the panel").Press("enter");
        Assert.Equal("P1", user.House.Panels.Single().Name);
    }

    [Fact]
    public void AWindowThatWasRemovedComesBackWithAllItHad()
    {
        using var user = At(Job());
        user.Press("enter", "X", "X").Press("1");
        Assert.DoesNotContain(user.House.Units, u => u.Tag == "W01");
        user.Press("b").Press("enter");
        Assert.Contains(user.House.Units, u => u.Tag == "W01" && u.Kind is not null);
    }
}
