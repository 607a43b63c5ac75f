using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Panels;
using TrimOut.Core.Electrical;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Panels;

public class PanelPastClassTwoTests
{
    private static readonly PanelPastClassTwo Check = new();

    public static Example Finds => new(() => Panel("22", "3"), j => j.SayOf("Invented supply", PanelTypeFacts.OutputCurrent, "7"));

    public static Example Passes => new(() => Panel("22", "3"), j => j.SayOf("Invented supply", PanelTypeFacts.OutputCurrent, "3.5"));

    // NFPA 70-2017 chapter 9 table 11(B): 12 V 5 A, 24 V 100 / 24 A.
    [Theory]
    [InlineData("12", "5", true)]
    [InlineData("12", "5.001", false)]
    [InlineData("24", "4.166", true)]
    [InlineData("24", "4.167", false)]
    public void AnOutputKeepsToTheNameplateLimit(string supply, string gives, bool fine) =>
        Assert.Equal(fine, Panel(supply, gives).Of(Check, "P1") is Outcome.Fine);

    [Fact]
    public void TheFindingNamesBothFigures() =>
        Assert.Equal("An output of Invented supply gives 6 A at 12 V; a Class 2 supply gives 5 A at the most.", Panel("12", "6").FaultOf(Check, "P1").Message);

    [Fact]
    public void AnUnknownStrengthIsNotAPass() => Assert.IsType<Outcome.NotChecked>(Panel("12", "").Of(Check, "P1"));

    private static TestJob Panel(string supply, string gives) =>
        new TestJob().WithPanel().SayOf("Invented supply", PanelTypeFacts.Supply, supply).SayOf("Invented supply", PanelTypeFacts.OutputCurrent, gives);

    // Table 11(B): up to 20 V the nameplate has 5 x V volt-amperes, 60 at 12 V.
    [Fact]
    public void TheWorkingTellsTheNameplate() =>
        Assert.Equal("supply 12 V, per output 6 A, nameplate current 5 A, nameplate power 60 W", Panel("12", "6").FaultOf(Check, "P1").Worked);

    [Fact]
    public void WhatIsMissingIsNamed()
    {
        Assert.Equal("current per output of Invented supply in the kit", Panel("12", "").MissingOf(Check, "P1"));
        Assert.Equal("supply of Invented supply in the kit", Panel("", "5").MissingOf(Check, "P1"));
        Assert.Equal("type", Panel("12", "5").SayOf("P1", PanelFacts.Type, "").MissingOf(Check, "P1"));
    }
}
