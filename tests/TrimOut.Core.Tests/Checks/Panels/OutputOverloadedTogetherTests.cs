using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Panels;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Panels;

public class OutputOverloadedTogetherTests
{
    private static readonly OutputOverloadedTogether Check = new();

    public static Example Finds => new(Own, j => j.SayOf("Invented supply", PanelTypeFacts.OutputCurrent, "1.7"));

    public static Example Passes => new(Own, j => j.SayOf("Invented supply", PanelTypeFacts.OutputCurrent, "1.9"));

    // Two units of one group on one output draw 1 A each when they start.
    [Fact]
    public void JustAsMuchAsItGivesIsFine() => Assert.IsType<Outcome.Fine>(Shared("2").Of(Check, "W01"));

    [Fact]
    public void AMilliampereMoreIsAStop() =>
        Assert.Equal("The 2 units of group South on P1 output 1 draw 2 A when they start together; an output gives 1.999 A.",
        Shared("1.999").FaultOf(Check, "W01").Message);

    // Class 2 at 12 V: 5 A on the nameplate (NFPA 70-2017 chapter 9 table 11(B)), whatever the sheet promises.
    [Fact]
    public void TheNameplateOfClassTwoHoldsToo()
    {
        var job = Shared("9").SayOf("Roller", CoveringKindFacts.StartingCurrent, "2.5");
        Assert.IsType<Outcome.Fine>(job.Of(Check, "W01"));
        Assert.EndsWith("a Class 2 supply gives 5 A at the most.", job.SayOf("Roller", CoveringKindFacts.StartingCurrent, "2.501")
            .FaultOf(Check, "W01").Message, StringComparison.Ordinal);
    }

    [Fact]
    public void APresetMovesThemTogetherToo()
    {
        var job = Shared("1.5").Forget("W01", UnitFacts.Group).Forget("W02", UnitFacts.Group);
        Assert.IsType<Outcome.Fine>(job.Of(Check, "W01"));
        job.Add(ItemKind.Remote, "R1");
        job.Do(AddItems.Preset(job.House.Remotes[0], "Evening"));
        foreach (var unit in job.House.Units)
            job.SayOf("Evening", PresetFacts.Position, "50", unit.Id);
        Assert.Contains("preset Evening of R1", job.FaultOf(Check, "W01").Message, StringComparison.Ordinal);
    }

    [Fact]
    public void AUnitThatBranchesOffCountsAtTheSameOutput() =>
        Assert.IsType<Outcome.Found>(Shared("1.999").Forget("W02", RunFacts.Panel).Forget("W02", RunFacts.Output).Say("W02", RunFacts.BranchesOff, "W01")
            .Of(Check, "W01"));

    [Fact]
    public void AnOutputWithOneUnitIsLeftToTheOtherRule() => Assert.Empty(Check.Run(Shared("1").Say("W02", RunFacts.Output, "2").House));

    [Fact]
    public void AKindOfUnknownCurrentIsNotAPass() =>
        Assert.Equal("starting current of Roller in the kit", Shared("9").SayOf("Roller", CoveringKindFacts.StartingCurrent, "").MissingOf(Check, "W01"));

    [Fact]
    public void AnOutputThatOneUnitOverloadsDoesNotWaitForTheOther()
    {
        var job = Shared("0.9").Say("W02", UnitFacts.Kind, "");
        Assert.IsType<Outcome.Found>(job.Of(Check, "W01"));
        Assert.IsType<Outcome.NotChecked>(job.SayOf("Invented supply", PanelTypeFacts.OutputCurrent, "1").Of(Check, "W01"));
    }

    [Fact]
    public void AnOutputOfUnknownStrengthIsNotAPass() =>
        Assert.Equal("current per output of Invented supply in the kit", Shared("").MissingOf(Check, "W01"));

    [Fact]
    public void WhereBothLimitsAreOneTheSheetIsNamedFirst()
    {
        var job = Shared("5").SayOf("Roller", CoveringKindFacts.StartingCurrent, "2.501");
        Assert.EndsWith("an output gives 5 A.", job.Report.Findings.First(f => f.Check.Id == "output-overloaded-together").Found.Message.In(job.House),
            StringComparison.Ordinal);
    }

    private static TestJob Shared(string gives)
    {
        var job = new TestJob().WithPanel().SayOf("Invented supply", PanelTypeFacts.OutputCurrent, gives);
        foreach (var tag in (string[])["W01", "W02"])
            job.Window(tag).Say(tag, UnitFacts.Group, "South").Say(tag, RunFacts.Panel, "P1").Say(tag, RunFacts.Output, "1");
        return job;
    }

    // The examples have a kit of their own, so that the pages of docs/checks together show no set of values.
    private static TestJob Own() => Shared("2.1").SayOf("Roller", CoveringKindFacts.StartingCurrent, "0.9");

    [Fact]
    public void TheWorkingTellsBothLimits() => Assert.Equal(
        "moves together group South, units 2, peak 2 A, per output 1.999 A, Class 2 nameplate current 5 A", Shared("1.999").FaultOf(Check, "W01").Worked);

    [Fact]
    public void OneUnitAloneMayBeTooMuch()
    {
        var job = Shared("0.999").Forget("W01", UnitFacts.Group).Forget("W02", UnitFacts.Group);
        Assert.Equal("W01 on P1 output 1 draws 1 A when it starts; an output gives 0.999 A.", job.FaultOf(Check, "W01").Message);
        job.SayOf("Invented supply", PanelTypeFacts.OutputCurrent, "9").SayOf("Roller", CoveringKindFacts.StartingCurrent, "5.001");
        Assert.Equal("W01 on P1 output 1 draws 5.001 A when it starts; a Class 2 supply gives 5 A at the most.", job.FaultOf(Check, "W01").Message);
    }

    [Fact]
    public void APanelOfUnknownTypeOrSupplyIsNotAPass()
    {
        Assert.Equal("supply of Invented supply in the kit", Shared("2").SayOf("Invented supply", PanelTypeFacts.Supply, "").MissingOf(Check, "W01"));
        Assert.Equal("type", Shared("2").SayOf("P1", PanelFacts.Type, "").MissingOf(Check, "W01"));
    }

    // The sheet gives more than Class 2 does, or less: whichever is passed first is told first, and both where both are passed.
    [Fact]
    public void TheLimitThatIsPassedFirstIsToldFirst()
    {
        string[] Told(string gives) => [.. Check.Run(Shared(gives).SayOf("Roller", CoveringKindFacts.StartingCurrent, "4").House)
            .Select(r => ((Outcome.Found)r.Outcome).Message.Message.English.Split("; ")[1])];
        Assert.Equal(["an output gives {5}.", "a Class 2 supply gives {5} at the most."], Told("4"));
        Assert.Equal(["a Class 2 supply gives {5} at the most.", "an output gives {5}."], Told("6"));
        Assert.Equal(["a Class 2 supply gives {5} at the most."], Told("8"));
    }
}
