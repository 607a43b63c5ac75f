using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Panels;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Panels;

public class UnitsPastOutputsTests
{
    private static readonly UnitsPastOutputs Check = new();

    public static Example Finds => new(Own, j => j.Window("W11"));

    public static Example Passes => new(Own, j => j.Say("W05", UnitFacts.Power, "battery"));

    // Ten outputs on a panel; the eleventh unit asks for a second panel: common practice, no published source.
    [Fact]
    public void TenUnitsOnOnePanelAreFine() => Assert.IsType<Outcome.Fine>(Units(10).WithPanel().Of(Check, "Test house"));

    [Fact]
    public void TheEleventhAsksForASecondPanel() =>
        Assert.Equal("11 units need an output; 1 panel has 10.", Units(11).WithPanel().FaultOf(Check, "Test house").Message);

    [Fact]
    public void EighteenUnitsAskForTwo()
    {
        var job = Units(18).WithPanel();
        Assert.IsType<Outcome.Found>(job.Of(Check, "Test house"));
        Assert.IsType<Outcome.Fine>(job.WithPanel("P2").Of(Check, "Test house"));
    }

    [Fact]
    public void ABatteryUnitNeedsNoOutput() =>
        Assert.IsType<Outcome.Fine>(Units(11).WithPanel().Say("W11", UnitFacts.Power, "battery").Of(Check, "Test house"));

    [Fact]
    public void AHouseWithoutAPanelIsNotAPass() =>
        Assert.Equal("a panel; 2 units need outputs", Units(2).MissingOf(Check, "Test house"));

    [Fact]
    public void APanelOfUnknownTypeIsNotAPass() =>
        Assert.Equal("type", Units(2).WithPanel().SayOf("P1", PanelFacts.Type, "").MissingOf(Check, "Test house"));

    [Fact]
    public void WhatIsPastAllPanelsIsSaidWithHowMuchIsMissing()
    {
        var found = Units(22).WithPanel().WithPanel("P2").FaultOf(Check, "Test house");
        Assert.Equal("22 units need an output; 2 panels have 20.", found.Message);
        Assert.StartsWith("Add a panel for 2 more", found.Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void AnOutputThatFeedsTwoHasTwoPlaces() =>
        Assert.IsType<Outcome.Fine>(Units(20).WithPanel().SayOf("Invented supply", PanelTypeFacts.UnitsPerOutput, "2").Of(Check, "Test house"));

    [Fact]
    public void OneUnitIsOneUnit() => Assert.Equal("a panel; 1 unit needs an output", Units(1).MissingOf(Check, "Test house"));

    [Fact]
    public void AHouseWithoutUnitsSaysNothing() => Assert.Empty(Check.Run(new TestJob().WithPanel().House));

    private static TestJob Units(int count) => Enumerable.Range(1, count).Aggregate(new TestJob(), (job, n) => job.Window($"W{n:00}"));

    // The examples have a kit of their own, so that the pages of docs/checks together show no set of values.
    private static TestJob Own() => Units(5).WithPanel().SayOf("Invented supply", PanelTypeFacts.Outputs, "5");

    [Fact]
    public void TheWorkingTellsUnitsAndPlaces() => Assert.Equal("units 11, panels 1, places 10", Units(11).WithPanel().FaultOf(Check, "Test house").Worked);

    [Fact]
    public void ASheetThatDoesNotSayHowManyIsNotAPass()
    {
        Assert.Equal("outputs of Invented supply in the kit",
            Units(2).WithPanel().SayOf("Invented supply", PanelTypeFacts.Outputs, "").MissingOf(Check, "Test house"));
        Assert.Equal("units per output of Invented supply in the kit",
            Units(2).WithPanel().SayOf("Invented supply", PanelTypeFacts.UnitsPerOutput, "").MissingOf(Check, "Test house"));
    }
}
