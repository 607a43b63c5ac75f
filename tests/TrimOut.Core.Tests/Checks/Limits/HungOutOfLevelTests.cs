using TrimOut.Core.Checks.Limits;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Limits;

public class HungOutOfLevelTests
{
    private static readonly HungOutOfLevel Check = new();

    public static Example Finds => new(() => Jobs.Walked(), j => j.Say("W01", UnitFacts.OutOfLevel, "3/16\""));

    public static Example Passes => new(() => Jobs.Walked(), j => j.Say("W01", UnitFacts.OutOfLevel, "1/8\""));

    [Theory]
    [InlineData("0")]
    [InlineData("1/8")]
    public void AnEighthIsFine(string off) => Jobs.Walked().Say("W01", UnitFacts.OutOfLevel, off).Fine(Check, "W01");

    [Fact]
    public void MoreIsACaution() => Assert.Equal("One end hangs 9/64\" lower than the other; the most is 1/8\".",
        Jobs.Walked().Say("W01", UnitFacts.OutOfLevel, "9/64").Fault(Check, "W01").Message);

    [Fact]
    public void InMillimetresThreeAreTheMost()
    {
        Jobs.Walked(job: Jobs.Metric()).Say("W01", UnitFacts.OutOfLevel, "3 mm").Fine(Check, "W01");
        Assert.Equal("One end hangs 4 mm lower than the other; the most is 3 mm.",
            Jobs.Walked(job: Jobs.Metric()).Say("W01", UnitFacts.OutOfLevel, "4 mm").Fault(Check, "W01").Message);
    }

    [Fact]
    public void AUnitOnWhichNobodyLaidALevelIsNotAPass() => Jobs.Walked().Lacks(Check, "W01", "out of level");
}
