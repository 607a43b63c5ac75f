using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Cables;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Cables;

public class SecondLoopDiffersTests
{
    private static readonly SecondLoopDiffers Check = new();

    public static Example Finds => new(() => Jobs.Roughed(), j => j.Say("W01", RunFacts.SecondLoop, "open"));

    public static Example Passes => new(() => Jobs.Roughed(), j => j.Say("W01", RunFacts.SecondLoop, "0.6"));

    // Each reading of a meter of hundredths may be off by 0.5 % and 2 1/2 steps, and by 1.25 % for its temperature: 0.0425 ohm of 1 ohm.
    [Theory]
    [InlineData("1.0865")]
    [InlineData("0.917")]
    public void ADifferenceWithinTheToleranceIsFine(string second) => Read("1", second).Fine(Check, "W01");

    [Theory]
    [InlineData("1.087", "A joint or a crushed conductor adds resistance")]
    [InlineData("0.916", "The two conductors touch on the way")]
    [InlineData("open", "A conductor is cut")]
    public void ALargerOneIsAStopWithItsReading(string second, string reading) =>
        Assert.Contains(reading, Read("1", second).Fault(Check, "W01").Message, StringComparison.Ordinal);

    // 10 % and 0.1 ohm where nobody said what the meter's last digit is: common practice, no published source.
    [Theory]
    [InlineData("1.2", true)]
    [InlineData("1.201", false)]
    public void WithoutAWordOfTheMeterTheBandIsWide(string second, bool fine) => Assert.Equal(fine, Jobs.Walked()
        .SayOf("Test house", HouseFacts.MeterStep, "").Say("W01", RunFacts.FirstLoop, "1").Say("W01", RunFacts.SecondLoop, second).Judge(Check, "W01")
            is Outcome.Fine);

    [Fact]
    public void AFirstTestThatWasOpenCantBeTrusted() =>
        Assert.Contains("the first can't be trusted", Read("open", "1").Fault(Check, "W01").Message, StringComparison.Ordinal);

    [Fact]
    public void WithoutASecondTestNothingIsProved() => Jobs.Roughed().Lacks(Check, "W01", "second test, loop");

    [Fact]
    public void BothOpenAreNoDifference()
    {
        var working = Assert.IsType<Outcome.Fine>(Read("open", "open").Judge(Check, "W01")).Working!;
        Assert.Contains(("at 20 C without leads", "open"), working.Inputs);
        Assert.Contains(("tolerance", "none"), working.Inputs);
    }

    // 0.0425 ohm of each reading of 1 ohm.
    [Fact]
    public void WhatWasReadAndItsToleranceAreTold()
    {
        var working = Assert.IsType<Outcome.Fine>(Read("1", "1").Judge(Check, "W01")).Working!;
        Assert.Contains(("at 20 C without leads", "1 ohm"), working.Inputs);
        Assert.Contains(("tolerance", "0.085 ohm"), working.Inputs);
    }

    [Theory]
    [InlineData(null, null, null)]
    [InlineData("0.2", null, "cable taken as 20 C, leads 0.2 ohm")]
    [InlineData(null, "35", "cable at 35 C, leads taken off")]
    [InlineData("0.2", "35", "cable at 35 C, leads 0.2 ohm")]
    public void WhatItIsReckonedWithIsSaidWhereSomethingWasSaid(string? leads, string? celsius, string? said)
    {
        var job = Jobs.Walked();
        if (leads is not null)
            job.SayOf("Test house", HouseFacts.MeterLeads, leads);
        if (celsius is not null)
            job.SayOf("Test house", HouseFacts.CableAtTest, celsius);
        var message = job.Say("W01", RunFacts.FirstLoop, "1").Say("W01", RunFacts.SecondLoop, "3").Fault(Check, "W01").Message;
        Assert.Equal(said is not null, message.Contains("cable ", StringComparison.Ordinal) && message.Contains("leads ", StringComparison.Ordinal));
        Assert.Contains(said ?? "", message, StringComparison.Ordinal);
    }

    private static TestJob Read(string first, string second) => Jobs.Walked().Say("W01", RunFacts.FirstLoop, first).Say("W01", RunFacts.SecondLoop, second);

    /// <summary>Once it hangs the panel feeds it, and it may be kept off its output instead.</summary>
    [Fact]
    public void WhatIsToBeDoneDependsOnWhetherItHangs()
    {
        var before = Read("1", "2").Fault(Check, "W01").Mend;
        var after = Read("1", "2").Mark("W01", "brackets-fixed").Fault(Check, "W01").Mend;
        Assert.EndsWith("before the house is finished.", before, StringComparison.Ordinal);
        Assert.EndsWith("or keep the unit off its output.", after, StringComparison.Ordinal);
    }

    /// <summary>Only one of two that were open is a cut: the band of two readings would be none.</summary>
    [Theory]
    [InlineData("open", "1")]
    [InlineData("1", "open")]
    public void OneOpenReadingIsNeverWithinABand(string first, string second) => Read(first, second).Fault(Check, "W01");

    // 69 ft of 16/2 read 0.57 ohm: the first one is that of another cable.
    [Fact]
    public void AFirstReadingThatDoesNotFitTheLengthIsBlamedAndNotTheSecondThatDoes()
    {
        var found = Assert.IsType<Outcome.Found>(Jobs.Roughed().Say("W01", RunFacts.FirstLoop, "1.9").Say("W01", RunFacts.SecondLoop, "0.57")
            .Judge(Check, "W01"));
        Assert.Equal(RunFacts.FirstLoop.Name, found.Mends.Field);
        found = Assert.IsType<Outcome.Found>(Jobs.Roughed().Say("W01", RunFacts.FirstLoop, "0.57").Say("W01", RunFacts.SecondLoop, "1.9")
            .Judge(Check, "W01"));
        Assert.Equal(RunFacts.SecondLoop.Name, found.Mends.Field);
    }
}
