using TrimOut.Core.Checks.Measures;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Measures;

public class StandsOutOfRevealTests
{
    private static readonly StandsOutOfReveal Check = new();

    public static Example Finds => new(() => Jobs.Measured(), j => j.Say("W01", WindowFacts.Depth, "2 3/4\""));

    public static Example Passes => new(() => Jobs.Measured(), j => j.Say("W01", WindowFacts.Depth, "3\""));

    [Fact]
    public void ACoverAsDeepAsTheRevealIsFine() => Depth("3").Fine(Check, "W01");

    [Fact]
    public void ALittleLessDepthAndItStandsOut() =>
        Assert.Equal("It needs 3\" to be flush and the opening is 2 15/16\" deep: 1/16\" stand out.", Depth("2 15/16").Fault(Check, "W01").Message);

    [Fact]
    public void WithoutACoverTheSheetsDepthForFlushCounts()
    {
        Depth("4").Say("W01", UnitFacts.HeadCover, "None").Fine(Check, "W01");
        Depth("3 63/64").Say("W01", UnitFacts.HeadCover, "None").Fault(Check, "W01");
    }

    [Fact]
    public void WhereItDoesNotFitAtAllTheOtherCheckSpeaks() => Depth("2 1/4").Silent(Check, "W01");

    [Fact]
    public void AnUnknownDepthIsNotAPass() => Depth("3").Forget("W01", WindowFacts.Depth).Lacks(Check, "W01", "depth");

    private static TestJob Depth(string depth) => Jobs.Measured().Say("W01", WindowFacts.Depth, depth);
}
