using TrimOut.Core.Checks;
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
        Assert.Equal("Plus and minus are changed over at the window end.", Jobs.Walked().Say("W01", RunFacts.Polarity, "swapped").Fault(Check, "W01").Message);

    [Fact]
    public void ANegativeReadingSaysItWhateverWasWritten() =>
        Assert.Equal("Open-circuit volts read -12.1 V: the two wires are changed over.",
            Jobs.Walked().Say("W01", RunFacts.Polarity, "right").Say("W01", RunFacts.OpenVolts, "-12.1").Fault(Check, "W01").Message);

    // A meter may be off by 0.5 % and 0.02 V: a dead run that reads -0.02 V says nothing of its wires.
    [Theory]
    [InlineData("-0.02", true)]
    [InlineData("-0.03", false)]
    public void AReadingWithinTheMetersErrorOfNothingIsNoMinusSign(string volts, bool fine) => Assert.Equal(fine,
        Jobs.Walked().Say("W01", RunFacts.Polarity, "right").Say("W01", RunFacts.OpenVolts, volts).Judge(Check, "W01") is Outcome.Fine);

    [Fact]
    public void APolarityThatNobodyReadIsNotAPass() => Jobs.Walked().Lacks(Check, "W01", "polarity");

    [Fact]
    public void WhatWasReadIsTold()
    {
        var job = Jobs.Walked().Say("W01", RunFacts.Polarity, "right").Say("W01", RunFacts.OpenVolts, "12.1");
        var read = Assert.IsType<Outcome.Fine>(job.Judge(Check, "W01")).Working!.Inputs;
        Assert.Contains(("open-circuit volts", "12.1 V"), read);
        Assert.Contains(("loaded volts", "not read"), read);
    }
}
