using TrimOut.Core.Checks.Panels;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Panels;

public class LoadedUnderLeastTests
{
    private static readonly LoadedUnderLeast Check = new();

    public static Example Finds => new(Own, j => j.Say("W01", RunFacts.LoadedVolts, "15.2"));

    public static Example Passes => new(Own, j => j.Say("W01", RunFacts.LoadedVolts, "17.1"));

    // The generic roller needs 10.2 V.
    [Fact]
    public void JustEnoughIsFine() => Jobs.Walked().Say("W01", RunFacts.LoadedVolts, "10.2").Fine(Check, "W01");

    [Fact]
    public void AHundredthLessIsAStop() => Assert.Equal("10.19 V were read while it moved; it needs 10.2 V.",
        Jobs.Walked().Say("W01", RunFacts.LoadedVolts, "10.19").Fault(Check, "W01").Message);

    [Fact]
    public void AUnitThatWasNotReadIsNotAPass() => Jobs.Walked().Lacks(Check, "W01", "loaded volts");

    [Fact]
    public void AKindThatDoesNotSayWhatItNeedsIsNotAPass() => Jobs.Walked().Say("W01", RunFacts.LoadedVolts, "11")
        .SayOf("Roller", CoveringKindFacts.LeastVolts, "").Lacks(Check, "W01", "minimum volts of Roller in the kit");

    // The examples have a kit of their own, so that the pages of docs/checks together show no set of values.
    private static TestJob Own() => Jobs.Walked().SayOf("Roller", CoveringKindFacts.LeastVolts, "16");
}
