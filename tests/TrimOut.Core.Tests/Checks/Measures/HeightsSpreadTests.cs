using TrimOut.Core.Checks.Measures;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Measures;

public class HeightsSpreadTests
{
    private static readonly HeightsSpread Check = new();

    public static Example Finds => new(() => Jobs.Measured(), j => j.Say("W01", WindowFacts.HeightMiddle, "60 1/2\""));

    public static Example Passes => new(() => Jobs.Measured(), j => j.Say("W01", WindowFacts.HeightMiddle, "60 1/4\""));

    // The limit of a new house is 1/4 in: common practice, no published source.
    [Fact]
    public void ASpreadOfTheLimitIsFine() => Jobs.Measured().Say("W01", WindowFacts.HeightMiddle, "60 1/4").Fine(Check, "W01");

    [Fact]
    public void ALittleMoreIsACaution() =>
        Assert.Equal("The heights go from 60\" to 60 5/16\": 5/16\" apart, where 1/4\" is the limit.",
            Jobs.Measured().Say("W01", WindowFacts.HeightMiddle, "60 5/16").Fault(Check, "W01").Message);

    [Fact]
    public void ACrewMaySetItsOwnLimit() =>
        Jobs.Measured().Say("W01", WindowFacts.HeightMiddle, "60 1/4").SayOf("", HouseFacts.SpreadLimit, "1/8").Fault(Check, "W01");

    [Fact]
    public void AMeasureThatIsMissingIsNotAPass() => Jobs.Measured().Forget("W01", WindowFacts.HeightMiddle).Lacks(Check, "W01", "height, middle");

    [Fact]
    public void AHouseWithoutALimitIsNotAPass() =>
        Jobs.Measured().SayOf("", HouseFacts.SpreadLimit, "").Lacks(Check, "W01", "3 measures may differ by of the house");

    [Fact]
    public void AnOutsideMountHidesAsMuchAsItStartsAboveTheOpening()
    {
        var job = Jobs.Measured().Say("W01", WindowFacts.HeightMiddle, "60 5/16").Say("W01", WindowFacts.Mount, "outside");
        job.Lacks(Check, "W01", "head above");
        job.Say("W01", WindowFacts.OverlapEachSide, "2").Say("W01", WindowFacts.HeadAbove, "5/16").Fine(Check, "W01");
        job.Say("W01", WindowFacts.HeightMiddle, "60 3/8").Fault(Check, "W01");
    }

    [Theory]
    [InlineData("height-left")]
    [InlineData("height-middle")]
    [InlineData("height-right")]
    public void ItLeadsToTheMeasureThatIsOffTheOthersOrThatIsMissing(string name)
    {
        var fact = FactTable.Find(Core.Houses.ItemKind.Window, name)!;
        foreach (var off in (string[])["59 1/2", "60 1/2"])
            Assert.Equal(name, Jobs.Measured().Say("W01", fact, off).Fault(Check, "W01").Mends.Field);
        Jobs.Measured().Forget("W01", fact).Lacks(Check, "W01", name.Replace("-", ", ", System.StringComparison.Ordinal));
    }
}
