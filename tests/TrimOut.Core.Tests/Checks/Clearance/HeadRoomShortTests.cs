using TrimOut.Core.Checks.Clearance;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Clearance;

public class HeadRoomShortTests
{
    private static readonly HeadRoomShort Check = new();

    public static Example Finds => new(() => Outside("3", "4"), j => j.Say("W01", WindowFacts.HeadAbove, "2\""));

    public static Example Passes => new(() => Outside("3", "4"), j => j.Say("W01", WindowFacts.HeadAbove, "3 1/2\""));

    // The generic roller's bracket reaches 2 1/2 in down.
    [Fact]
    public void ABracketThatEndsAtTheOpeningIsFine() => Outside("2 1/2", "2 1/2").Fine(Check, "W01");

    [Fact]
    public void ABracketOverTheOpeningIsAStop() =>
        Assert.Equal("The unit starts 2 7/16\" above the opening and its brackets reach 2 1/2\" down: 1/16\" of them hang over the opening.",
        Outside("2 7/16", "4").Fault(Check, "W01").Message);

    [Fact]
    public void AUnitInTheCeilingIsAStop() =>
        Assert.Equal("The unit starts 4 1/64\" above the opening; there are 4\" of flat wall.", Outside("4 1/64", "4").Fault(Check, "W01").Message);

    // The generic cellular shade's bracket reaches 2 in down.
    [Fact]
    public void AnotherKindHasAnotherBracket() => Outside("2", "2").Say("W01", UnitFacts.Kind, "Cellular").Fine(Check, "W01");

    [Fact]
    public void AnInsideMountNeedsNoWall() => Outside("1", "1").Say("W01", WindowFacts.Mount, "inside").Silent(Check, "W01");

    [Fact]
    public void AnUnknownWallIsNotAPass() => Outside("3", "4").Forget("W01", WindowFacts.WallAbove).Lacks(Check, "W01", "wall above");

    [Fact]
    public void AnUnknownHeadIsNotAPass() => Outside("3", "4").Forget("W01", WindowFacts.HeadAbove).Lacks(Check, "W01", "head above");

    private static TestJob Outside(string above, string wall) =>
        Jobs.Walked().Say("W01", WindowFacts.Mount, "outside").Say("W01", WindowFacts.HeadAbove, above).Say("W01", WindowFacts.WallAbove, wall);

    // Where the flat wall is at least as high as the generic roller's bracket of 2 1/2 in, the unit can start lower.
    [Theory]
    [InlineData("4 1/64", "4", "Start it 4\" above the opening or less.")]
    [InlineData("3", "2 1/2", "Start it 2 1/2\" above the opening or less.")]
    [InlineData("3", "2 7/16", "There is no room for its brackets: choose an inside mount, or ask for brackets that fix to the ceiling.")]
    public void TheMendIsOneThatTheWallHasRoomFor(string above, string wall, string mend) => Assert.Equal(mend, Outside(above, wall).Fault(Check, "W01").Mend);

    [Fact]
    public void TheWorkingTellsTheWallAsFarAsItIsKnown()
    {
        var job = Outside("2", "4");
        Assert.Contains(("wall above", "4\""), job.Fault(Check, "W01").Working!.Inputs);
        Assert.Contains(("wall above", "not known"), job.Forget("W01", WindowFacts.WallAbove).Fault(Check, "W01").Working!.Inputs);
    }
}
