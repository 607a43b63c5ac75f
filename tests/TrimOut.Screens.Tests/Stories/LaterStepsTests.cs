using Microsoft.Extensions.Time.Testing;
using TrimOut.Core.Decisions;
using TrimOut.Core.Phases;
using TrimOut.Screens.Shell;
using TrimOut.Screens.Walk;
using TrimOut.Testing;

namespace TrimOut.Screens.Tests.Stories;

public class LaterStepsTests
{
    private readonly TestJob _job = Updated();

    [Fact]
    public void TheWalkOffersWhatALaterVersionAddedAndWaitsForItOnlyWhereThePhaseWasOpen()
    {
        var shell = AtHang();
        var seen = shell.Draw(100, 30).ToText();
        Assert.Contains(" + Head leveled (offered, not asked)", seen, StringComparison.Ordinal);
        Assert.Contains("■■■■+", seen, StringComparison.Ordinal);
        shell.Press("space");
        Assert.Equal(_job.Unit("W02").Id, ((WalkScreen)shell.Screen).SubjectId);
        Assert.DoesNotContain("offered", shell.Draw(100, 30).ToText(), StringComparison.Ordinal);
    }

    [Fact]
    public void MarkingGoesOnToWhatIsAskedAndPastWhatIsOffered()
    {
        var shell = AtHang();
        shell.Press("right");
        while (!Progress.Of(_job.Unit("W02"), Phase.Hang, _job.Scribe.Steps).Complete)
            MarkHere(shell);
        Assert.True(Progress.Of(_job.House, Phase.Hang, _job.Scribe.Steps).Complete);
        Assert.Null(_job.Unit("W01").MarkOf(LaterSteps.Levelled));
        Assert.NotNull(_job.Unit("W02").MarkOf(LaterSteps.Levelled));
        shell.Press("space");
        Assert.Contains("Hang is done for every one.", shell.Draw(100, 30).ToText(), StringComparison.Ordinal);
    }

    [Fact]
    public void WhatIsOfferedCanBeMarked()
    {
        var shell = AtHang();
        while (((WalkScreen)shell.Screen).Step(shell.Context) != LaterSteps.Levelled)
            shell.Press("down");
        shell.Press("space");
        Assert.NotNull(_job.Unit("W01").MarkOf(LaterSteps.Levelled));
    }

    [Fact]
    public void TheJobSheetCountsAPhaseAsDoneThatWasComplete()
    {
        var shell = new ShellState(new TestDesk(new FakeTimeProvider()), _job.Scribe);
        Assert.Equal(new Progress(4, 9), shell.Context.SumOf(Phase.Hang));
    }

    private static void MarkHere(ShellState shell)
    {
        shell.Press("space");
        while (shell.Typing is not null)
        {
            shell.TextChanged(shell.Typing.Entry.Label.Contains("photo", StringComparison.OrdinalIgnoreCase) ? "photos/w02.jpg"
                : shell.Typing.Entry.Warning is null ? "1" : "hung by the builder");
            shell.Press("enter");
        }
    }

    private ShellState AtHang()
    {
        var shell = new ShellState(new TestDesk(new FakeTimeProvider()), _job.Scribe);
        shell.Press("2");
        for (var phase = Phase.WalkThrough; phase < Phase.Hang; phase++)
            shell.Press("]");
        return shell;
    }

    /// <summary>One unit hung before the later version came, and one that was not.</summary>
    private static TestJob Updated()
    {
        var old = new TestJob(steps: LaterSteps.First).Window("W01").Window("W02");
        foreach (var step in LaterSteps.First.Asked(Phase.Hang, old.Unit("W01")).ToList())
            old.Do(MarkStep.Done(old.Unit("W01"), step));
        return new TestJob(store: new MemoryStore("laptop", old.Scribe.Log.Changes), steps: LaterSteps.Second);
    }
}
