using TrimOut.Core.Checks.Panels;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Panels;

public class OutputOverloadedTests
{
    private static readonly OutputOverloaded Check = new();

    public static Example Finds => new(Own, j => j.SayOf("Invented supply", PanelTypeFacts.OutputCurrent, "0.6"));

    public static Example Passes => new(Own, j => j.SayOf("Invented supply", PanelTypeFacts.OutputCurrent, "1.1"));

    // The generic roller draws 1 A when it starts.
    [Fact]
    public void JustAsMuchAsItGivesIsFine() => Output("1").Fine(Check, "W01");

    [Fact]
    public void ALittleLessIsAStop() => Assert.Equal("It draws 1 A; an output of P1 gives 0.999 A.", Output("0.999").Fault(Check, "W01").Message);

    [Fact]
    public void AnOutputOfUnknownStrengthIsNotAPass() => Output("").Lacks(Check, "W01", "current per output of Invented supply in the kit");

    [Fact]
    public void WhatNoPanelOfTheHouseDrivesIsAStopBeforeItIsLanded()
    {
        var job = Jobs.Walked().WithPanel().SayOf("Invented supply", PanelTypeFacts.OutputCurrent, "0.999");
        Assert.Equal("It draws 1 A; no output of any panel gives more than 0.999 A.", job.Fault(Check, "W01").Message);
        // What the weakest panel of the house drives passes, wherever it will land: by a value that nobody checked it is listed under that value.
        job.SayOf("Invented supply", PanelTypeFacts.OutputCurrent, "1").Fine(Check, "W01");
        Assert.Contains(job.Report.UnreadOf(job.House.ItemsOf(ItemKind.PanelType).Single()), u => u.Check == Check.Info && u.Subject.Id == job.Unit("W01").Id);
    }

    [Fact]
    public void ARunThatIsOnNoPanelIsNotAPass() => Jobs.Walked().Lacks(Check, "W01", "panel");

    [Fact]
    public void TheStrongestPanelOfTheHouseIsTakenBeforeItIsLanded()
    {
        var job = Jobs.Walked().WithPanel().Add(ItemKind.PanelType, "Weak box").SayOf("Weak box", PanelTypeFacts.OutputCurrent, "0.5").WithPanel("P2")
            .SayOf("P1", PanelFacts.Type, "Invented supply").SayOf("P2", PanelFacts.Type, "Weak box");
        job.SayOf("Invented supply", PanelTypeFacts.OutputCurrent, "1");
        job.Lacks(Check, "W01", "panel");
        job.SayOf("Invented supply", PanelTypeFacts.OutputCurrent, "0.9").Fault(Check, "W01");
        job.SayOf("Invented supply", PanelTypeFacts.OutputCurrent, "").Lacks(Check, "W01", "panel");
    }

    private static TestJob Output(string gives) =>
        Jobs.Walked().WithPanel().SayOf("Invented supply", PanelTypeFacts.OutputCurrent, gives).Say("W01", RunFacts.Panel, "P1");

    // The examples have a kit of their own, so that the pages of docs/checks together show no set of values.
    private static TestJob Own() => Output("0.9").SayOf("Roller", CoveringKindFacts.RunningCurrent, "0.5")
        .SayOf("Roller", CoveringKindFacts.StartingCurrent, "0.7");

    [Fact]
    public void TheWorkingTellsBothCurrents()
    {
        Assert.Equal("draws 1 A, per output 0.999 A", Output("0.999").Fault(Check, "W01").Worked);
        Assert.Equal("draws 1 A, per output, of the strongest panel 0.999 A",
            Jobs.Walked().WithPanel().SayOf("Invented supply", PanelTypeFacts.OutputCurrent, "0.999").Fault(Check, "W01").Worked);
    }

    [Fact]
    public void AKindOfUnknownCurrentIsNotAPass()
    {
        Output("1").SayOf("Roller", CoveringKindFacts.StartingCurrent, "").Lacks(Check, "W01", "starting current of Roller in the kit");
        Output("1").Forget("W01", UnitFacts.Kind).Lacks(Check, "W01", "kind");
        Output("1").SayOf("P1", PanelFacts.Type, "").Lacks(Check, "W01", "type");
    }
}
