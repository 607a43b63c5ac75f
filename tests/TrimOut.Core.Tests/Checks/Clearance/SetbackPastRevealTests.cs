using TrimOut.Core.Checks.Clearance;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Clearance;

public class SetbackPastRevealTests
{
    private static readonly SetbackPastReveal Check = new();

    public static Example Finds => new(() => Jobs.Measured(), j => j.Say("W01", UnitFacts.Setback, "6\""));

    public static Example Passes => new(() => Jobs.Measured(), j => j.Say("W01", UnitFacts.Setback, "1 1/2\""));

    // The generic roller: its brackets reach 2 1/2 in back, in a reveal of 5 in.
    [Fact]
    public void ABracketThatReachesTheEndOfTheRevealWithinTheMarksOfTwoReadingsIsFine() =>
        Jobs.Measured().Say("W01", UnitFacts.Setback, "2 5/8").Fine(Check, "W01");

    [Fact]
    public void AMarkMoreIsAStop() => Assert.Equal("Set back 2 11/16\", the brackets reach 5 3/16\" back in an opening that is 5\" deep.",
        Jobs.Measured().Say("W01", UnitFacts.Setback, "2 11/16").Fault(Check, "W01").Message);

    [Fact]
    public void WhereNothingOfItIsInTheRevealItIsAStop()
    {
        var found = Jobs.Measured().Say("W01", UnitFacts.Setback, "5").Fault(Check, "W01");
        Assert.Equal("Set back 5\", the brackets reach 7 1/2\" back in an opening that is 5\" deep.", found.Message);
        Assert.Equal("Read it again; if it stays, set the brackets back 1 1/2\", as the sheet has it.", found.Mend);
    }

    [Fact]
    public void WhereTheSheetsSetbackDoesNotFitEitherLessIsTold() => Assert.Equal("Read it again; if it stays, set the brackets back 1\" or less.",
        Jobs.Measured().Say("W01", WindowFacts.Depth, "3 1/2").Say("W01", UnitFacts.Setback, "4").Fault(Check, "W01").Mend);

    [Fact]
    public void OutsideThereIsNoReveal() => Jobs.Measured().Say("W01", UnitFacts.Setback, "6").Say("W01", WindowFacts.Mount, "outside").Silent(Check, "W01");

    [Fact]
    public void AnUnknownSetbackIsNotAPass() => Jobs.Measured().Lacks(Check, "W01", "bracket setback");

    [Fact]
    public void AnUnknownDepthIsNotAPass() => Jobs.Walked().Say("W01", UnitFacts.Setback, "1").Lacks(Check, "W01", "depth");

    // Brackets that reach 2 1/2 in back fit in as much, flush with the wall, and in no less.
    [Theory]
    [InlineData("2 1/2", "Read it again; if it stays, set the brackets back 0\" or less.")]
    [InlineData("2 7/16", "Read setback and depth again; if they stay, mount it outside.")]
    public void WhereNoSetbackFitsAnOutsideMountIsTold(string depth, string mend) =>
        Assert.Equal(mend, Jobs.Measured().Say("W01", WindowFacts.Depth, depth).Say("W01", UnitFacts.Setback, "4").Fault(Check, "W01").Mend);
}
