using TrimOut.Core.Checks.Measures;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Measures;

public class WidthsSpreadTests
{
    private static readonly WidthsSpread Check = new();

    public static Example Finds => new(() => Jobs.Measured(), j => j.Say("W01", WindowFacts.WidthMiddle, "36 1/2\""));

    public static Example Passes => new(() => Jobs.Measured(), j => j.Say("W01", WindowFacts.WidthMiddle, "36 1/4\""));

    // The limit of a new house is 1/4 in: common practice, no published source.
    [Fact]
    public void ASpreadOfTheLimitIsFine() => Jobs.Measured().Say("W01", WindowFacts.WidthMiddle, "36 1/4").Fine(Check, "W01");

    [Fact]
    public void ALittleMoreIsACaution() =>
        Assert.Equal("The widths go from 36\" to 36 5/16\": 5/16\" apart, where 1/4\" is the limit.",
            Jobs.Measured().Say("W01", WindowFacts.WidthMiddle, "36 5/16").Fault(Check, "W01").Message);

    [Theory]
    [InlineData("width-top")]
    [InlineData("width-middle")]
    [InlineData("width-bottom")]
    public void ItLeadsToTheMeasureThatIsOffTheOthers(string name)
    {
        var fact = FactTable.Find(Core.Houses.ItemKind.Window, name)!;
        foreach (var off in (string[])["35 1/2", "36 1/2"])
            Assert.Equal(name, Jobs.Measured().Say("W01", fact, off).Fault(Check, "W01").Mends.Field);
    }

    [Fact]
    public void ACrewMaySetItsOwnLimit() =>
        Jobs.Measured().Say("W01", WindowFacts.WidthMiddle, "36 1/4").SayOf("", HouseFacts.SpreadLimit, "1/8").Fault(Check, "W01");

    [Fact]
    public void AMeasureThatIsMissingIsNotAPass() => Jobs.Measured().Forget("W01", WindowFacts.WidthMiddle).Lacks(Check, "W01", "width, middle");

    [Fact]
    public void AHouseWithoutALimitIsNotAPass() =>
        Jobs.Measured().SayOf("", HouseFacts.SpreadLimit, "").Lacks(Check, "W01", "3 measures may differ by of the house");

    [Fact]
    public void AnOutsideMountHidesAsMuchAsItOverlaps()
    {
        var job = Jobs.Measured().Say("W01", WindowFacts.WidthMiddle, "36 5/16").Say("W01", WindowFacts.Mount, "outside");
        job.Lacks(Check, "W01", "overlap each side");
        job.Say("W01", WindowFacts.OverlapEachSide, "5/16").Fine(Check, "W01");
        job.Say("W01", WindowFacts.WidthMiddle, "36 3/8").Fault(Check, "W01");
    }

    [Fact]
    public void WhereNoneIsFartherOffItLeadsToTheFirst() => Assert.Equal("width-top", Jobs.Measured().Say("W01", WindowFacts.WidthMiddle, "35 1/2")
        .Say("W01", WindowFacts.WidthBottom, "36 1/2").Fault(Check, "W01").Mends.Field);

    [Fact]
    public void InsideAnOutsideMountHidesItAndOutsideAWiderUnit()
    {
        var job = Jobs.Measured().Say("W01", WindowFacts.WidthMiddle, "37");
        Assert.EndsWith("an outside mount hides it.", job.Fault(Check, "W01").Mend, StringComparison.Ordinal);
        Assert.EndsWith("let the unit reach farther past the opening.", job.Say("W01", WindowFacts.Mount, "outside")
            .Say("W01", WindowFacts.OverlapEachSide, "1/2").Fault(Check, "W01").Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void TheWorkingTellsBothEnds() => Assert.Equal("largest 36 5/16\", smallest 36\", spread 5/16\", limit 1/4\"",
        Jobs.Measured().Say("W01", WindowFacts.WidthMiddle, "36 5/16").Fault(Check, "W01").Worked);
}
