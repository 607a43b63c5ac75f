using TrimOut.Core.Decisions;
using TrimOut.Core.Electrical;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Electrical;

public class LoadTests
{
    [Fact]
    public void TheLargerOfStartingAndRunningCounts()
    {
        var job = Jobs.Walked();
        Assert.Equal(new Current(1), Load.Of(job.Unit("W01")));
        Assert.Equal(new Current(2), Load.Of(job.SayOf("Roller", CoveringKindFacts.RunningCurrent, "2").Unit("W01")));
        Assert.Null(Load.Of(job.SayOf("Roller", CoveringKindFacts.RunningCurrent, "").Unit("W01")));
    }

    [Fact]
    public void AGroupOnTwoPanelsLoadsEachWithItsOwn()
    {
        var job = new TestJob().WithPanel().WithPanel("P2");
        foreach (var (tag, panel) in new[] { ("W01", "P1"), ("W02", "P1"), ("W03", "P2") })
            job.Window(tag).Say(tag, UnitFacts.Group, "South").Say(tag, RunFacts.Panel, panel);
        var both = Load.Largest([job.Unit("W01"), job.Unit("W02")])!.Value;
        Assert.Equal(("group South", 2, new Current(2)), (both.Name.For(new Reader(job.House)), both.Units, both.Peak));
        Assert.Equal(new Current(1), Load.Largest([job.Unit("W03")])!.Value.Peak);
        Assert.Null(Load.Largest([]));
    }

    /// <summary>What a clock starts at one minute starts together, whatever it is called.</summary>
    [Fact]
    public void PresetsThatRunAtOneMinuteAreOneLoad()
    {
        var job = new TestJob().Window("W01").Window("W02").Add(ItemKind.Remote, "Wall").Add(ItemKind.Remote, "Hand");
        job.Do(AddItems.Preset(job.House.Remotes[0], "Evening")).Do(AddItems.Preset(job.House.Remotes[1], "Cooking"))
            .SayOf("Evening", PresetFacts.Position, "50", job.Unit("W01").Id).SayOf("Cooking", PresetFacts.Position, "50", job.Unit("W02").Id)
            .SayOf("Evening", PresetFacts.RunsAt, "19:00").SayOf("Cooking", PresetFacts.RunsAt, "19:01");
        Assert.Equal(1, Largest().Units);
        job.SayOf("Cooking", PresetFacts.RunsAt, "19:00");
        Assert.Equal(("presets that run at 19:00", 2), (Largest().Name.For(new Reader(job.House)), Largest().Units));
        // In the summer the one, in the winter the other, over the turn of the year.
        job.SayOf("Evening", PresetFacts.RunsFrom, "April").SayOf("Evening", PresetFacts.RunsTo, "September")
            .SayOf("Cooking", PresetFacts.RunsFrom, "October").SayOf("Cooking", PresetFacts.RunsTo, "March");
        Assert.Equal(1, Largest().Units);
        job.SayOf("Cooking", PresetFacts.RunsTo, "April");
        Assert.Equal(2, Largest().Units);

        Load Largest() => Load.Largest([job.Unit("W01"), job.Unit("W02")])!.Value;
    }

    [Fact]
    public void AGroupIsOneHoweverManySpacesPartItsWords()
    {
        var job = new TestJob().Window("W01").Window("W02").Say("W01", UnitFacts.Group, "South side").Say("W02", UnitFacts.Group, "south  Side");
        Assert.Equal(2, Load.Together([job.Unit("W01"), job.Unit("W02")]).First().Units);
    }

    // W01 and W02 are one group however it is spelt; R1 moves W02 and W03; Evening is on both remotes, Morning on one.
    [Fact]
    public void WhateverOnePressMovesIsALoadInTheOrderOfTheHouse()
    {
        var job = new TestJob().Window("W01").Window("W02").Window("W03").Add(ItemKind.Remote, "R1").Add(ItemKind.Remote, "R2");
        job.Say("W01", UnitFacts.Group, "South").Say("W02", UnitFacts.Group, "south");
        job.Do(AddItems.Preset(job.House.Remotes[0], "Evening")).Do(AddItems.Preset(job.House.Remotes[0], "Morning"));
        job.Do(AddItems.Preset(job.House.Remotes[1], "evening"));
        string Id(string tag) => job.Unit(tag).Id;
        job.SayOf("R2", RemoteFacts.Moves, "yes", Id("W01")).SayOf("R1", RemoteFacts.Moves, "yes", Id("W02")).SayOf("R1", RemoteFacts.Moves, "yes", Id("W03"));
        job.SayOf("Morning", PresetFacts.Position, "50", Id("W01")).SayOf("evening", PresetFacts.Position, "50", Id("W01"));
        job.SayOf("Evening", PresetFacts.Position, "50", Id("W02")).SayOf("evening", PresetFacts.Position, "50", Id("W02"));
        Assert.Equal(
            [
                "group South: 2 x 1 A", "all that R1 moves: 2 x 1 A", "all that R2 moves: 1 x 1 A", "preset Evening of R1: 1 x 1 A",
                "preset Morning of R1: 1 x 1 A", "preset evening of R2: 2 x 1 A", "preset evening of several remotes: 2 x 1 A",
                "W01: 1 x 1 A", "W02: 1 x 1 A", "W03: 1 x 1 A",
            ],
            Load.Together([.. job.House.Units]).Select(l => $"{l.Name.For(new Reader(job.House))}: {l.Units} x {l.Peak * (1m / l.Units)}"));
        Assert.DoesNotContain(Load.Together([job.Unit("W03")]), l => l.Units > 1);
    }

    [Fact]
    public void TheFirstOfEqualLoadsIsTheLargest()
    {
        var house = new TestJob().Window("W01").Window("W02").House;
        Assert.Equal("W01", Load.Largest([.. house.Units])!.Value.Name.For(new Reader(house)));
    }

    [Fact]
    public void AUnitWhoseCurrentsAreNotKnownCountsAsNothing() => Assert.Equal(new Current(0),
        Load.Largest([new TestJob().Window("W01").SayOf("Roller", CoveringKindFacts.StartingCurrent, "").Unit("W01")])!.Value.Peak);

    [Fact]
    public void ARunThatBranchesOffIsFedWhereItsTrunkIs()
    {
        var job = new TestJob().WithPanel().WithPanel("P2").Window("W01").Window("W02").Window("W03");
        job.Say("W02", RunFacts.BranchesOff, "W01").Say("W03", RunFacts.BranchesOff, "W02");
        Assert.Null(Load.PanelOf(job.Run("W03")));
        Assert.Null(Load.OutputOf(job.Run("W03")));
        job.Say("W01", RunFacts.Panel, "P2").Say("W03", RunFacts.Panel, "P1");
        Assert.Null(Load.OutputOf(job.Run("W03")));
        job.Say("W01", RunFacts.Output, "4").Say("W03", RunFacts.Output, "7");
        var second = job.House.Panels[1].Id;
        Assert.Equal(second, Load.PanelOf(job.Run("W03"))?.Id);
        Assert.Equal((second, 4), Load.OutputOf(job.Run("W03")));
    }

    [Fact]
    public void ARunThatIsToBeLandedGoesToTheOnlyPanelThereIs()
    {
        var job = new TestJob().Window("W01");
        Assert.Null(Load.PanelOf(job.Run("W01")));
        Assert.Equal(job.WithPanel().House.Panels.Single().Id, Load.PanelOf(job.Run("W01"))?.Id);
        Assert.Null(Load.PanelOf(job.WithPanel("P2").Run("W01")));
    }
}
