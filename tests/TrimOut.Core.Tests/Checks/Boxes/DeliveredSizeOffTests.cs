using TrimOut.Core.Checks.Boxes;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Boxes;

public class DeliveredSizeOffTests
{
    private static readonly DeliveredSizeOff Check = new();

    public static Example Finds => new(() => Jobs.Ordered(),
        j => j.Say("W01", UnitFacts.DeliveredWidth, "36 1/8\"").Say("W01", UnitFacts.DeliveredHeight, "60\""));

    public static Example Passes => new(() => Jobs.Ordered(),
        j => j.Say("W01", UnitFacts.DeliveredWidth, "36\"").Say("W01", UnitFacts.DeliveredHeight, "60\""));

    [Theory]
    [InlineData("36 1/16", "60")]
    [InlineData("36", "59 15/16")]
    public void ASixteenthIsFine(string width, string height) => Came(width, height).Fine(Check, "W01");

    [Theory]
    [InlineData("36 1/8", "60", "delivered-width")]
    [InlineData("36", "59 7/8", "delivered-height")]
    public void MoreIsAStop(string width, string height, string field)
    {
        var found = Came(width, height).Fault(Check, "W01");
        Assert.Equal($"36\" x 60\" was ordered; {width}\" x {height}\" came.", found.Message);
        Assert.Equal(field, found.Mends.Field);
    }

    [Fact]
    public void ABoxThatNobodyMeasuredIsNotAPass() => Jobs.Ordered().Lacks(Check, "W01", "delivered width");

    // 36 in ordered of an opening; the maker takes 5/16 in off: the box says 36 in, a tape on the unit 35 11/16 in, and either is the right unit.
    [Theory]
    [InlineData("36", true)]
    [InlineData("35 11/16", true)]
    [InlineData("35 5/8", true)]
    [InlineData("35 39/64", false)]
    [InlineData("35 13/16", false)]
    public void WhatTheMakerMadeOfTheOrderIsFineToo(string width, bool fine) =>
        Assert.Equal(fine, Came(width, "60").SayOf("Roller", CoveringKindFacts.OrderedInside, "opening")
            .SayOf("Roller", CoveringKindFacts.DeductionInside, "5/16").Judge(Check, "W01") is TrimOut.Core.Checks.Outcome.Fine);

    [Fact]
    public void AUnitOrderedAsMadeComesAsWideAsItWasOrdered() => Came("35 11/16", "60").SayOf("Roller", CoveringKindFacts.OrderedInside, "made")
        .SayOf("Roller", CoveringKindFacts.DeductionInside, "5/16").Fault(Check, "W01");

    [Fact]
    public void WhereTheSheetIsSilentOfADeductionANarrowerUnitWaitsForIt()
    {
        var job = Came("35 11/16", "60").SayOf("Roller", CoveringKindFacts.OrderedInside, "opening")
            .SayOf("Roller", CoveringKindFacts.DeductionInside, "5/16");
        job.Fine(Check, "W01");
        job.SayOf("Roller", CoveringKindFacts.DeductionInside, "");
        job.Lacks(Check, "W01", "deduction, inside of Roller in the kit");
        job.Say("W01", UnitFacts.DeliveredWidth, "35").Lacks(Check, "W01", "deduction, inside of Roller in the kit");
        job.Say("W01", UnitFacts.DeliveredWidth, "34 63/64").Fault(Check, "W01");
        job.Say("W01", UnitFacts.DeliveredWidth, "36 1/8").Fault(Check, "W01");
    }

    private static TestJob Came(string width, string height) =>
        Jobs.Ordered().Say("W01", UnitFacts.DeliveredWidth, width).Say("W01", UnitFacts.DeliveredHeight, height);
}
