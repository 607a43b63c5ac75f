using Microsoft.Extensions.Time.Testing;
using TrimOut.Core.Facts;
using TrimOut.Screens.Sheets;
using TrimOut.Screens.Shell;
using TrimOut.Testing;

namespace TrimOut.Screens.Tests.Stories;

/// <summary>What neighbors have alike is taken over by one key; what is read on each cable is not.</summary>
public class AsTheUnitBeforeTests
{
    [Fact]
    public void OneKeyTakesTheCableOfTheRunBefore()
    {
        var (job, shell) = Begun();
        On(shell, RunFacts.Cable);
        shell.Press("\"");
        Assert.Equal(job.Run("W01").Cable!.Name, job.Run("W03").Cable!.Name);
        Assert.EndsWith(", as W01", job.Scribe.Log.Changes[^1].What, StringComparison.Ordinal);
        Assert.NotEqual(RunFacts.Cable, ((SheetScreen)shell.Screen).Current!.Fact);
    }

    [Fact]
    public void TheLegInTheSamePlaceIsTakenOver()
    {
        var (job, shell) = Begun();
        On(shell, LegFacts.AirMoves);
        shell.Press("\"");
        Assert.Equal(YesNo.No, job.Run("W03").Legs[0].Item.Get(LegFacts.AirMoves));
    }

    [Fact]
    public void UpBringsItWhereTheFieldIsOpenAndTheOtherChoicesStay()
    {
        var (job, shell) = Begun();
        On(shell, RunFacts.Cable);
        shell.Press("enter");
        Assert.Equal("", shell.Typing!.Text);
        Assert.Contains("Up brings 16/2, as W01", shell.Draw(120, 40).ToText(), StringComparison.Ordinal);
        shell.Press("up");
        Assert.Equal("16/2", shell.Typing!.Text);
        Assert.Equal(job.House.ItemsOf(Core.Houses.ItemKind.CableType).Count(), shell.Typing.Entry.Options.Count);
        shell.Press("enter");
        Assert.Equal("16/2", job.Run("W03").Cable!.Name);
    }

    [Fact]
    public void AReadingIsNeverTakenOver()
    {
        var (job, shell) = Begun();
        foreach (var fact in (Fact[])[RunFacts.TailAtWindow, RunFacts.FirstLoop])
        {
            On(shell, fact);
            shell.Press("\"");
            Assert.Contains("is read on each one", shell.Draw(80, 24).ToText(), StringComparison.Ordinal);
            Assert.Null(job.Run("W03").Item.Latest(fact.Name)?.Stored);
        }
    }

    [Fact]
    public void WhatHasAValueStays()
    {
        var (job, shell) = Begun(j => j.Say("W03", RunFacts.Cable, "18/2"));
        On(shell, RunFacts.Cable);
        shell.Press("\"");
        Assert.Contains("has a value", shell.Draw(80, 24).ToText(), StringComparison.Ordinal);
        Assert.Equal("18/2", job.Run("W03").Cable!.Name);
    }

    private static void On(ShellState shell, Fact fact)
    {
        while (((SheetScreen)shell.Screen).Current!.Fact != fact)
            shell.Press("down");
    }

    /// <summary>The sheet of the third window, of which nothing but its leg is known; the second one has no cable either.</summary>
    private static (TestJob Job, ShellState Shell) Begun(Action<TestJob>? more = null)
    {
        var job = new TestJob().Window("W01").Window("W02").Window("W03").Say("W01", RunFacts.Cable, "16/2").Say("W01", RunFacts.FirstLoop, "0.4")
            .Say("W01", RunFacts.TailAtWindow, "36").Legs("W01", ("20 ft", CablePlace.InWall)).Legs("W03", ("20 ft", CablePlace.InWall));
        job.Do(Core.Decisions.SetFact.Typed(job.House, job.Run("W01").Legs[0].Item, LegFacts.AirMoves, "no"));
        more?.Invoke(job);
        var shell = new ShellState(new TestDesk(new FakeTimeProvider()), job.Scribe);
        foreach (var key in (string[])["down", "down", "enter"])
            shell.Press(key);
        return (job, shell);
    }
}
