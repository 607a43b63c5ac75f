using TrimOut.Core.Checks.Limits;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Limits;

public class BarsNotLevelTests
{
    private static readonly BarsNotLevel Check = new();

    public static Example Finds => new(() => Set("1/4", "1/4", "0", "0"), j => j.Say("W02", UnitFacts.OpenGap, "1/2\""));

    public static Example Passes => new(() => Set("1/4", "1/4", "0", "0"), j => j.Say("W02", UnitFacts.OpenGap, "3/8\""));

    // Neighbours' bars stand within 1/8 in of each other: common practice, no published source.
    [Fact]
    public void AnEighthApartIsFine() => Set("1/4", "3/8", "0", "1/8").Fine(Check, "W02");

    [Fact]
    public void MoreIsACaution() =>
        Assert.Equal("Open, its bar stands at 7/16\" and that of W01 at 1/4\": 3/16\" apart.", Set("1/4", "7/16", "0", "0").Fault(Check, "W02").Message);

    [Fact]
    public void ClosedCountsToo() => Assert.StartsWith("Closed, its bar", Set("1/4", "1/4", "0", "1/4").Fault(Check, "W02").Message, StringComparison.Ordinal);

    [Fact]
    public void UnitsOfTwoRoomsAreNoNeighbours() => Set("1/4", "2", "0", "0").Room("Den").Say("W02", WindowFacts.Room, "Den").Silent(Check, "W02");

    [Fact]
    public void UnitsOfTwoWallsAreNoNeighbours()
    {
        var job = Set("1/4", "2", "0", "0").Say("W01", WindowFacts.Facing, "S");
        job.Fault(Check, "W02");
        job.Say("W02", WindowFacts.Facing, "W").Silent(Check, "W02");
        job.Say("W02", WindowFacts.Facing, "S").Fault(Check, "W02");
    }

    [Fact]
    public void AUnitInsideAndOneOnTheFaceOfTheWallAreNoNeighbours()
    {
        var job = Set("1/4", "2", "0", "0").Say("W01", WindowFacts.Mount, "inside").Say("W02", WindowFacts.Mount, "outside");
        job.Silent(Check, "W02");
        job.Say("W02", WindowFacts.Mount, "inside").Fault(Check, "W02");
    }

    [Fact]
    public void AnUnknownGapIsNotAPass()
    {
        Set("1/4", "1/4", "0", "0").Forget("W02", UnitFacts.OpenGap).Lacks(Check, "W02", "open: bar above glass");
        Set("1/4", "1/4", "0", "0").Forget("W01", UnitFacts.CloseGap).Lacks(Check, "W02", "Closed: bar above sill of W01");
        Set("1/4", "1/4", "0", "0").Forget("W02", UnitFacts.OpenGap).Forget("W01", UnitFacts.CloseGap)
            .Lacks(Check, "W02", "open: bar above glass; Closed: bar above sill of W01");
    }

    private static TestJob Set(string open1, string open2, string close1, string close2) => new TestJob().Window("W01").Window("W02")
        .Say("W01", UnitFacts.OpenGap, open1).Say("W02", UnitFacts.OpenGap, open2).Say("W01", UnitFacts.CloseGap, close1)
        .Say("W02", UnitFacts.CloseGap, close2);
}
