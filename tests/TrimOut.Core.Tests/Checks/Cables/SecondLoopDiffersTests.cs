using TrimOut.Core.Checks.Cables;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Cables;

public class SecondLoopDiffersTests
{
    private static readonly SecondLoopDiffers Check = new();

    public static Example Finds => new(() => Jobs.Roughed(), j => j.Say("W01", RunFacts.SecondLoop, "open"));

    public static Example Passes => new(() => Jobs.Roughed(), j => j.Say("W01", RunFacts.SecondLoop, "0.6"));

    // A first reading of 1 ohm allows 10 % and 0.1 ohm: common practice, no published source.
    [Theory]
    [InlineData("1.2")]
    [InlineData("0.8")]
    public void ADifferenceWithinTheToleranceIsFine(string second) => Read("1", second).Fine(Check, "W01");

    [Theory]
    [InlineData("1.201", "A joint or a crushed conductor adds resistance")]
    [InlineData("0.799", "The two conductors touch on the way")]
    [InlineData("open", "A conductor is cut")]
    public void ALargerOneIsAStopWithItsReading(string second, string reading) =>
        Assert.Contains(reading, Read("1", second).Fault(Check, "W01").Message, StringComparison.Ordinal);

    [Fact]
    public void AFirstTestThatWasOpenCantBeTrusted() =>
        Assert.Contains("the first can't be trusted", Read("open", "1").Fault(Check, "W01").Message, StringComparison.Ordinal);

    [Fact]
    public void WithoutASecondTestNothingIsProved() => Jobs.Roughed().Lacks(Check, "W01", "second test, loop");

    private static TestJob Read(string first, string second) => Jobs.Walked().Say("W01", RunFacts.FirstLoop, first).Say("W01", RunFacts.SecondLoop, second);
}
