using TrimOut.Core.Checks.Orders;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Orders;

public class OrderPastOpeningTests
{
    private static readonly OrderPastOpening Check = new();

    public static Example Finds => new(() => Jobs.Ordered(), j => j.Say("W01", UnitFacts.OrderWidth, "36 1/8\""));

    public static Example Passes => new(() => Jobs.Ordered(), j => j.Say("W01", UnitFacts.OrderWidth, "35 7/8\""));

    [Fact]
    public void TheSmallestWidthIsFine() => Jobs.Ordered().Fine(Check, "W01");

    [Fact]
    public void ALittleWiderIsAStop() =>
        Assert.Equal("The order width is 36 1/64\"; the smallest width is 36\".", Jobs.Ordered().Say("W01", UnitFacts.OrderWidth, "36 1/64")
            .Fault(Check, "W01").Message);

    /// <summary>A box that is here is made: nobody calls the maker before it is cut.</summary>
    [Fact]
    public void OnceItsBoxIsHereItIsHeldToTheOpening()
    {
        var job = Jobs.Ordered().Say("W01", UnitFacts.OrderedOn, "2026-03-02").Say("W01", UnitFacts.OrderWidth, "36 1/8");
        Assert.StartsWith("Call the maker today", job.Fault(Check, "W01").Mend, StringComparison.Ordinal);
        Assert.StartsWith("It is made: hold it to the opening", job.Say("W01", UnitFacts.BoxLabel, "W01").Fault(Check, "W01").Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void TheNarrowestPlaceCounts() => Assert.Contains(("smallest width", "35 7/8\""),
        Jobs.Ordered().Say("W01", WindowFacts.WidthMiddle, "35 7/8").Fault(Check, "W01").Working!.Inputs);

    [Fact]
    public void AnOutsideMountMayBeWider() =>
        Jobs.Ordered().Say("W01", WindowFacts.Mount, "outside").Say("W01", UnitFacts.OrderWidth, "40").Silent(Check, "W01");

    [Fact]
    public void OfSeveralUnitsEachKeepsToItsPart()
    {
        var job = Jobs.Ordered();
        job.Do(AddItems.Unit(job.House, job.House.FindTag("W01")!.Id)).Say("W01A", UnitFacts.PartWidth, "18").Say("W01A", UnitFacts.OrderWidth, "18")
            .Fine(Check, "W01A");
        Assert.Contains("its part of the opening is 18", job.Say("W01A", UnitFacts.OrderWidth, "18 1/8").Fault(Check, "W01A").Message,
            StringComparison.Ordinal);
    }

    [Fact]
    public void AnUnmeasuredOpeningIsNotAPass() => Jobs.Walked().Say("W01", UnitFacts.OrderWidth, "36").Lacks(Check, "W01", "width, top");

    [Fact]
    public void AMadeWidthThatIsAsWideAsItsOpeningHasNothingTakenOff()
    {
        var job = Jobs.Ordered().SayOf("Roller", CoveringKindFacts.OrderedInside, "made");
        var found = job.Fault(Check, "W01");
        Assert.Equal("The order width is 36\" and the smallest width 36\"; it is made as ordered, and 1/4\" must come off.", found.Message);
        Assert.Equal("Order 35 3/4\".", found.Mend);
        job.Say("W01", UnitFacts.OrderWidth, "35 3/4").Fine(Check, "W01");
    }

    [Fact]
    public void OfSeveralUnitsAnUnknownPartIsNotAPass()
    {
        var job = Jobs.Ordered();
        job.Do(AddItems.Unit(job.House, job.House.FindTag("W01")!.Id)).Say("W01A", UnitFacts.OrderWidth, "18").Lacks(Check, "W01A", "part of the opening");
        job.Say("W01A", UnitFacts.PartWidth, "17 7/8");
        Assert.Contains(("part of the opening", "17 7/8\""), job.Fault(Check, "W01A").Working!.Inputs);
    }

    // The generic roller is made 1/4 in narrower than its opening of 36 in: what is ordered that wide goes in either way, and what is wider only by one.
    [Fact]
    public void WhatTheSheetLeavesOpenIsAskedForOnlyWhereItCounts()
    {
        var job = Jobs.Ordered().SayOf("Roller", CoveringKindFacts.OrderedInside, "");
        job.Lacks(Check, "W01", "ordered width, inside of Roller in the kit");
        job.Say("W01", UnitFacts.OrderWidth, "35 3/4").Fine(Check, "W01");
        job.Say("W01", UnitFacts.OrderWidth, "35 25/32").Lacks(Check, "W01", "ordered width, inside of Roller in the kit");
        job.Forget("W01", WindowFacts.Mount).Lacks(Check, "W01", "mount");
        Jobs.Ordered().SayOf("Roller", CoveringKindFacts.DeductionInside, "").Fine(Check, "W01");
        job = Jobs.Ordered().SayOf("Roller", CoveringKindFacts.OrderedInside, "");
        job.Do(AddItems.Unit(job.House, job.House.FindTag("W01")!.Id)).Say("W01A", UnitFacts.PartWidth, "18").Say("W01A", UnitFacts.OrderWidth, "18")
            .Fine(Check, "W01A");
    }

    // 35 15/16 in at the narrowest: in steps of 1/8 in that is 35 7/8; of unknown steps, as it is, less 1/4 in where the made width is ordered.
    [Theory]
    [InlineData("1/8", "opening", "Order 35 7/8\".")]
    [InlineData("", "opening", "Order 35 15/16\".")]
    [InlineData("", "made", "Order 35 11/16\".")]
    public void TheMendIsWhatGoesIn(string step, string ordered, string mend) => Assert.Equal(mend,
        Jobs.Ordered().Say("W01", WindowFacts.WidthBottom, "35 15/16").SayOf("Roller", CoveringKindFacts.RoundTo, step)
            .SayOf("Roller", CoveringKindFacts.OrderedInside, ordered).Fault(Check, "W01").Mend);

    [Fact]
    public void OnceOrderedTheMakerIsCalledUntilItHangs()
    {
        var job = Jobs.Ordered().Say("W01", UnitFacts.OrderWidth, "36 1/8").Say("W01", UnitFacts.OrderedOn, "2026-03-02");
        Assert.StartsWith("Call the maker today", job.Fault(Check, "W01").Mend, StringComparison.Ordinal);
        Assert.StartsWith("It hangs:", job.Mark("W01", "clicked-in").Fault(Check, "W01").Mend, StringComparison.Ordinal);
    }
}
