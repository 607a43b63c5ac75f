using TrimOut.Core.Checks.Measures;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Measures;

public class OverlapShortTests
{
    private static readonly OverlapShort Check = new();

    public static Example Finds => new(() => Outside(), j => j.Say("W01", WindowFacts.OverlapEachSide, "1/4\""));

    public static Example Passes => new(() => Outside(), j => j.Say("W01", WindowFacts.OverlapEachSide, "1 1/2\""));

    [Fact]
    public void ThreeQuartersOfAnInchAreEnough() => Outside().Say("W01", WindowFacts.OverlapEachSide, "3/4").Fine(Check, "W01");

    [Fact]
    public void JustUnderItIsACaution()
    {
        var found = Outside().Say("W01", WindowFacts.OverlapEachSide, "11/16").Fault(Check, "W01");
        Assert.Equal("It overlaps the opening by 11/16\" each side; less than 3/4\" lets light in beside it.", found.Message);
        Assert.Equal("Overlap it by 3/4\" or more each side, where there is flat wall.", found.Mend);
    }

    [Fact]
    public void WhatTheMakerTakesOffCountsByHalfOnEachSide()
    {
        var job = Outside().SayOf("Roller", CoveringKindFacts.OrderedOutside, "opening").SayOf("Roller", CoveringKindFacts.DeductionOutside, "1/2");
        job.Say("W01", WindowFacts.OverlapEachSide, "1").Fine(Check, "W01");
        Assert.Equal("Overlap it by 1\" or more each side, where there is flat wall.",
            job.Say("W01", WindowFacts.OverlapEachSide, "15/16").Fault(Check, "W01").Mend);
    }

    [Fact]
    public void InsideThereIsNone() => Jobs.Measured().Silent(Check, "W01");

    [Theory]
    [InlineData("36", false)]
    [InlineData("36 1/64", true)]
    public void WhatIsOrderedNoWiderThanTheOpeningOverlapsNothingWhateverWasMeant(string width, bool waits)
    {
        var job = Outside().Say("W01", UnitFacts.OrderWidth, width);
        if (waits)
            job.Lacks(Check, "W01", "overlap each side");
        else
            Assert.Equal("It is to be 36\" wide, and the opening is 36\" wide: nothing of it covers the wall beside.", job.Fault(Check, "W01").Message);
    }

    [Fact]
    public void WhatTheMakerTakesOffCountsThereToo()
    {
        var job = Outside().SayOf("Roller", CoveringKindFacts.OrderedOutside, "opening").SayOf("Roller", CoveringKindFacts.DeductionOutside, "1/2");
        job.Say("W01", UnitFacts.OrderWidth, "36 1/2").Fault(Check, "W01");
        job.Say("W01", UnitFacts.OrderWidth, "36 33/64").Lacks(Check, "W01", "overlap each side");
    }

    [Fact]
    public void AnUnknownOverlapIsNotAPass() => Outside().Lacks(Check, "W01", "overlap each side");

    private static TestJob Outside() => Jobs.Measured().Say("W01", WindowFacts.Mount, "outside");

    [Fact]
    public void WhatTheMakerTakesOffIsTold() => Assert.Contains("1/4\"", Outside().SayOf("Roller", CoveringKindFacts.OrderedOutside, "opening")
        .SayOf("Roller", CoveringKindFacts.DeductionOutside, "1/2").Say("W01", WindowFacts.OverlapEachSide, "15/16").Fault(Check, "W01").Message,
        StringComparison.Ordinal);

    // Of 1/2 in over all 1/4 comes off each side, if anything does: 1 in of overlap is enough either way.
    [Fact]
    public void WhatTheSheetLeavesOpenIsAskedForOnlyWhereItCounts()
    {
        var job = Outside().SayOf("Roller", CoveringKindFacts.OrderedOutside, "").SayOf("Roller", CoveringKindFacts.DeductionOutside, "1/2");
        job.Say("W01", WindowFacts.OverlapEachSide, "1").Fine(Check, "W01");
        job.Say("W01", WindowFacts.OverlapEachSide, "15/16").Lacks(Check, "W01", "ordered width, outside of Roller in the kit");
    }

    [Fact]
    public void TheWidestPlaceIsWhatIsToBeCovered() =>
        Assert.Contains("the opening is 37\" wide", Outside().Say("W01", WindowFacts.WidthMiddle, "37").Say("W01", UnitFacts.OrderWidth, "36 1/2")
            .Fault(Check, "W01").Message, StringComparison.Ordinal);

    [Fact]
    public void TheWorkingTellsWhatComesOffEachSide()
    {
        var job = Outside().SayOf("Roller", CoveringKindFacts.OrderedOutside, "opening").SayOf("Roller", CoveringKindFacts.DeductionOutside, "1/2");
        Assert.Equal("overlap 15/16\", taken off each side 1/4\", least 3/4\"",
            job.Say("W01", WindowFacts.OverlapEachSide, "15/16").Fault(Check, "W01").Worked);
    }

    [Fact]
    public void WithoutAMountNothingIsKnownOfTheOverlap() => Outside().Forget("W01", WindowFacts.Mount).Lacks(Check, "W01", "mount");

    [Fact]
    public void AnOverlapThatIsTooLittleAndAnOrderThatIsNoWiderAreTwoFindings()
    {
        var job = Outside().Say("W01", WindowFacts.OverlapEachSide, "1/2").Say("W01", UnitFacts.OrderWidth, "36");
        Assert.Equal(["overlap-each-side", "order-width"],
            Check.Run(job.House).Select(r => ((Core.Checks.Outcome.Found)r.Outcome).Mends.Field));
    }
}
