using TrimOut.Core.Checks.Measures;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Measures;

public class MountOffMeasuresTests
{
    private static readonly MountOffMeasures Check = new();

    public static Example Finds => new(() => Jobs.Measured(), j => j.Say("W01", WindowFacts.OverlapEachSide, "2"));

    public static Example Passes => new(() => Jobs.Measured(), j => j.Say("W01", WindowFacts.OverlapEachSide, "0"));

    [Fact]
    public void AnOverlapOfAnInsideMountIsACaution()
    {
        var found = Jobs.Measured().Say("W01", WindowFacts.OverlapEachSide, "2").Fault(Check, "W01");
        Assert.Equal("It is mounted inside, and its overlap each side is 2\": only an outside mount has that.", found.Message);
    }

    [Fact]
    public void AHeadAboveTheOpeningIsOneToo() => Jobs.Measured().Say("W01", WindowFacts.HeadAbove, "3").Fault(Check, "W01");

    [Fact]
    public void NoOverlapAtAllIsFine() => Jobs.Measured().Say("W01", WindowFacts.OverlapEachSide, "0").Fine(Check, "W01");

    [Fact]
    public void AnUnknownMountIsNotAPass() =>
        Jobs.Measured().Forget("W01", WindowFacts.Mount).Say("W01", WindowFacts.OverlapEachSide, "2").Lacks(Check, "W01", "mount");

    [Fact]
    public void OnceOneOfItsUnitsHangsTheMountIsPutAsItHangs()
    {
        var job = Jobs.Measured().Do(j => AddItems.Unit(j.House, j.House.FindTag("W01")!.Id)).Say("W01", WindowFacts.OverlapEachSide, "2");
        Assert.StartsWith("Put the mount right before it is ordered", job.FaultOf(Check, "W01").Mend, StringComparison.Ordinal);
        Assert.StartsWith("Put the mount as it hangs", job.Mark("W01B", "clicked-in").FaultOf(Check, "W01").Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void BothMeasuresAreTwoFindingsAndOutsideNone()
    {
        var job = Jobs.Measured().Say("W01", WindowFacts.OverlapEachSide, "2").Say("W01", WindowFacts.HeadAbove, "3");
        Assert.Equal(2, Check.Run(job.House).Count());
        job.Say("W01", WindowFacts.Mount, "outside").Silent(Check, "W01");
    }
}
