using TrimOut.Core.Checks.Panels;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Panels;

public class PolaritySwappedTests
{
    private static readonly PolaritySwapped Check = new();

    public static Example Finds => new(() => Jobs.Walked(), j => j.Say("W01", RunFacts.Polarity, "swapped"));

    public static Example Passes => new(() => Jobs.Walked(), j => j.Say("W01", RunFacts.Polarity, "right"));

    [Fact]
    public void RedToRedIsFine() => Jobs.Walked().Say("W01", RunFacts.Polarity, "right").Fine(Check, "W01");

    [Fact]
    public void ChangedOverIsAStop() =>
        Assert.Equal("Red and black are changed over at the window end.", Jobs.Walked().Say("W01", RunFacts.Polarity, "swapped").Fault(Check, "W01").Message);

    [Fact]
    public void ANegativeReadingSaysItWhateverWasWritten() =>
        Assert.Equal("Open-circuit volts read -12.1 V: the two wires are changed over.",
            Jobs.Walked().Say("W01", RunFacts.Polarity, "right").Say("W01", RunFacts.OpenVolts, "-12.1").Fault(Check, "W01").Message);

    [Fact]
    public void APolarityThatNobodyReadIsNotAPass() => Jobs.Walked().Lacks(Check, "W01", "polarity");
}
