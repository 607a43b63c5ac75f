using TrimOut.Core.Checks.Cables;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Cables;

public class ConductorsNotApartTests
{
    private static readonly ConductorsNotApart Check = new();

    public static Example Finds => new(() => Jobs.Roughed(), j => j.Say("W01", RunFacts.FirstApart, "20 k"));

    public static Example Passes => new(() => Jobs.Roughed(), j => j.Say("W01", RunFacts.FirstApart, "open"));

    [Fact]
    public void OpenIsFine() => Jobs.Roughed().Say("W01", RunFacts.FirstApart, "ol").Fine(Check, "W01");

    [Fact]
    public void AMegohmIsALeak() => Assert.Equal(
        "With the far end open 1000000 ohm were read from one conductor to the other: something leaks, a bruised jacket or damp.",
        Jobs.Roughed().Say("W01", RunFacts.FirstApart, "1000 k").Fault(Check, "W01").Message);

    [Fact]
    public void AFewOhmsAreAShort() => Assert.EndsWith("they touch on the way, or the far end is not open.",
        Jobs.Roughed().Say("W01", RunFacts.FirstApart, "0.5").Fault(Check, "W01").Message, StringComparison.Ordinal);

    [Fact]
    public void TheLatestTestCounts()
    {
        var job = Jobs.Roughed().Say("W01", RunFacts.FirstApart, "open").Say("W01", RunFacts.SecondApart, "9 k");
        Assert.Equal(RunFacts.SecondApart.Name, job.Fault(Check, "W01").Mends.Field);
        job.Say("W01", RunFacts.SecondApart, "open").Fine(Check, "W01");
    }

    [Fact]
    public void AReadingThatNobodyTookIsNotAPass() => Jobs.Roughed().Lacks(Check, "W01", "first test, far end open");

    [Theory]
    [InlineData("99.9", "they touch on the way, or the far end is not open.")]
    [InlineData("100", "something leaks, a bruised jacket or damp.")]
    public void UnderAHundredOhmsItIsAShort(string ohms, string verdict) => Assert.EndsWith(verdict,
        Jobs.Roughed().Say("W01", RunFacts.FirstApart, ohms).Fault(Check, "W01").Message, StringComparison.Ordinal);

    [Fact]
    public void BehindDrywallNoCableIsPulled()
    {
        var job = Jobs.Roughed().Say("W01", RunFacts.FirstApart, "9 k");
        Assert.EndsWith("now, while the wall is open.", job.Fault(Check, "W01").Mend, StringComparison.Ordinal);
        Assert.EndsWith("before the house is finished.", job.Mark("W01", "cable-found").Fault(Check, "W01").Mend, StringComparison.Ordinal);
    }
}
