using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Panels;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Panels;

public class PanelOverloadedTests
{
    private static readonly PanelOverloaded Check = new();

    public static Example Finds => new(Own, j => j.SayOf("Invented supply", PanelTypeFacts.TotalCurrent, "3.1"));

    public static Example Passes => new(Own, j => j.SayOf("Invented supply", PanelTypeFacts.TotalCurrent, "4.2"));

    // Three units of one group draw 1 A each when they start.
    [Fact]
    public void JustAsMuchAsItGivesIsFine() => Assert.IsType<Outcome.Fine>(Group("3").Of(Check, "P1"));

    [Fact]
    public void AMilliampereMoreIsAStop() =>
        Assert.Equal("The 3 units of group South on P1 draw 3 A when they start together; it gives 2.999 A.", Group("2.999").FaultOf(Check, "P1").Message);

    [Fact]
    public void OneAloneDrawsLess() => Assert.IsType<Outcome.Fine>(Group("2").Forget("W03", UnitFacts.Group).Of(Check, "P1"));

    [Fact]
    public void APresetMovesItsUnitsTogetherToo()
    {
        var job = Group("2").Forget("W01", UnitFacts.Group).Forget("W02", UnitFacts.Group).Forget("W03", UnitFacts.Group).Add(ItemKind.Remote, "R1");
        job.Do(AddItems.Preset(job.House.Remotes[0], "Evening"));
        foreach (var unit in job.House.Units)
            job.SayOf("Evening", PresetFacts.Position, "50", unit.Id);
        Assert.Contains("preset Evening of R1", job.FaultOf(Check, "P1").Message, StringComparison.Ordinal);
    }

    [Fact]
    public void OnePressOfARemoteMovesAllItsUnits()
    {
        var job = Ungrouped("2.999").Add(ItemKind.Remote, "R1");
        foreach (var unit in job.House.Units)
            job.SayOf("R1", RemoteFacts.Moves, "yes", unit.Id);
        Assert.Equal("The 3 units of all that R1 moves on P1 draw 3 A when they start together; it gives 2.999 A.", job.FaultOf(Check, "P1").Message);
        Assert.IsType<Outcome.Fine>(job.SayOf("Invented supply", PanelTypeFacts.TotalCurrent, "3").Of(Check, "P1"));
    }

    [Fact]
    public void APresetOfOneNameOnTwoRemotesIsOnePress()
    {
        var job = Ungrouped("2.5").Add(ItemKind.Remote, "R1").Add(ItemKind.Remote, "R2");
        job.Do(AddItems.Preset(job.House.Remotes[0], "Evening")).Do(AddItems.Preset(job.House.Remotes[1], "evening"));
        job.SayOf("Evening", PresetFacts.Position, "50", job.Unit("W01").Id).SayOf("Evening", PresetFacts.Position, "50", job.Unit("W02").Id);
        Assert.IsType<Outcome.Fine>(job.Of(Check, "P1"));
        Assert.Contains("The 3 units of preset Evening of several remotes", job.SayOf("evening", PresetFacts.Position, "50", job.Unit("W03").Id)
            .FaultOf(Check, "P1").Message, StringComparison.Ordinal);
    }

    [Fact]
    public void TheOnlyPanelIsJudgedBeforeAnythingIsLanded()
    {
        var job = Group("2.999");
        foreach (var tag in new[] { "W01", "W02", "W03" })
            job.Forget(tag, RunFacts.Output).Forget(tag, RunFacts.Panel);
        Assert.Contains("draw 3 A", job.FaultOf(Check, "P1").Message, StringComparison.Ordinal);
        Assert.DoesNotContain(job.WithPanel("P2").Report.Findings, f => f.Check.Id == "panel-overloaded");
    }

    [Fact]
    public void AUnitThatBranchesOffIsFedByThePanelOfItsTrunk()
    {
        var job = Group("2.5").WithPanel("P2").Forget("W03", RunFacts.Output).Forget("W03", RunFacts.Panel);
        var report = job.Report;
        Assert.DoesNotContain(report.Findings, f => f.Check.Id == "panel-overloaded");
        Assert.Contains(report.After(job.Say("W03", RunFacts.BranchesOff, "W02").House).Findings, f => f.Check.Id == "panel-overloaded");
    }

    [Fact]
    public void APanelOfUnknownStrengthIsNotAPass() =>
        Assert.Equal("current of all outputs of Invented supply in the kit", Group("").MissingOf(Check, "P1"));

    [Fact]
    public void AKindOfUnknownCurrentIsNotAPass() =>
        Assert.Equal("starting current of Roller in the kit", Group("9").SayOf("Roller", CoveringKindFacts.StartingCurrent, "").MissingOf(Check, "P1"));

    private static TestJob Ungrouped(string gives) =>
        Group(gives).Forget("W01", UnitFacts.Group).Forget("W02", UnitFacts.Group).Forget("W03", UnitFacts.Group);

    private static TestJob Group(string gives)
    {
        var job = new TestJob().WithPanel().SayOf("Invented supply", PanelTypeFacts.TotalCurrent, gives);
        foreach (var (tag, output) in new[] { ("W01", "1"), ("W02", "2"), ("W03", "3") })
            job.Window(tag).Say(tag, UnitFacts.Group, "South").Say(tag, RunFacts.Panel, "P1").Say(tag, RunFacts.Output, output);
        return job;
    }

    // The examples have a kit of their own, so that the pages of docs/checks together show no set of values.
    private static TestJob Own() => Group("5").SayOf("Roller", CoveringKindFacts.StartingCurrent, "1.3");

    [Fact]
    public void TheWorkingTellsWhatMovesTogether() =>
        Assert.Equal("moves together group South, units 3, peak 3 A, all together 2.999 A", Group("2.999").FaultOf(Check, "P1").Worked);

    [Fact]
    public void OneUnitAloneMayBeTooMuch()
    {
        var found = Ungrouped("0.999").FaultOf(Check, "P1");
        Assert.Equal("W01 on P1 draws 1 A when it starts; the panel gives 0.999 A.", found.Message);
        Assert.Equal("Land it on a panel that gives more, or ask the maker.", found.Mend);
        Assert.StartsWith("Spread them over two panels", Group("2.999").FaultOf(Check, "P1").Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void APanelThatFeedsNothingIsNotJudged() => Assert.Empty(Check.Run(new TestJob().WithPanel().House));

    [Fact]
    public void APanelOfUnknownTypeIsNotAPass() => Assert.Equal("type", Group("3").SayOf("P1", PanelFacts.Type, "").MissingOf(Check, "P1"));
}
