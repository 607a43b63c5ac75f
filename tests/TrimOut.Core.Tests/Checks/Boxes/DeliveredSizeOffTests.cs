using TrimOut.Core.Checks;
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
        j => j.Say("W01", UnitFacts.DeliveredWidth, "36\"").Say("W01", UnitFacts.DeliveredHeight, "60\"").Say("W01", UnitFacts.SizeReadFrom, "label"));

    [Theory]
    [InlineData("36 1/16", "60")]
    [InlineData("36", "59 15/16")]
    public void ASixteenthIsFine(string width, string height) =>
        Came(width, height).Say("W01", UnitFacts.SizeReadFrom, "label").Fine(Check, "W01");

    [Theory]
    [InlineData("36 1/8", "60", "delivered-width")]
    [InlineData("36", "59 7/8", "delivered-height")]
    public void MoreIsAStop(string width, string height, string field)
    {
        var found = Came(width, height).Fault(Check, "W01");
        Assert.Equal($"36\" x 60\" was ordered; {width}\" x {height}\" came.", found.Message);
        Assert.Equal(field, found.Mends.Field);
    }

    /// <summary>What was read of the box that went back says nothing of the one that was ordered for it.</summary>
    [Fact]
    public void AfterItWasOrderedAgainTheFirstBoxIsNotHeldAgainstTheOrder()
    {
        var job = Jobs.Ordered().Say("W01", UnitFacts.DeliveredWidth, "30").Say("W01", UnitFacts.DeliveredHeight, "60");
        job.Fault(Check, "W01");
        job.Say("W01", UnitFacts.ReorderedOn, "2026-03-02").Lacks(Check, "W01", "delivered width");
        job.Say("W01", UnitFacts.DeliveredWidth, "31").Say("W01", UnitFacts.DeliveredHeight, "60").Fault(Check, "W01");
    }

    [Fact]
    public void ABoxThatNobodyMeasuredIsNotAPass() => Jobs.Ordered().Lacks(Check, "W01", "delivered width");

    // 36 in ordered of an opening; the maker takes 5/16 in off: the box says 36 in, a tape on the unit 35 11/16 in, and either is the right unit.
    [Theory]
    [InlineData("36", "label", true)]
    [InlineData("35 15/16", "label", true)]
    [InlineData("36", "unit", false)]
    [InlineData("35 15/16", "unit", false)]
    [InlineData("35 11/16", "unit", true)]
    [InlineData("35 11/16", "label", true)]
    [InlineData("35 11/16", "", true)]
    [InlineData("35 5/8", "unit", true)]
    [InlineData("35 39/64", "unit", false)]
    [InlineData("35 13/16", "unit", false)]
    public void WhatTheMakerMadeOfTheOrderIsFineToo(string width, string from, bool fine) =>
        Assert.Equal(fine, OfAnOpening(Came(width, "60"), from).Judge(Check, "W01") is Outcome.Fine);

    // A unit as wide as the opening does not go in; its label reads the same as that of the right one.
    [Fact]
    public void AWidthAsOrderedWaitsForWhatItWasReadFrom()
    {
        OfAnOpening(Came("36", "60"), "").Lacks(Check, "W01", "size read from");
        Assert.Equal("36\" was ordered, of which 35 11/16\" is made; the unit itself is 36\" wide.",
            OfAnOpening(Came("36", "60"), "unit").Fault(Check, "W01").Message);
        OfAnOpening(Came("36", "61"), "").Fault(Check, "W01");
    }

    [Fact]
    public void NobodyIsAskedWhatItWasReadFromWhereNothingComesOff()
    {
        var job = Came("36", "60").SayOf("Roller", CoveringKindFacts.OrderedInside, "made").SayOf("Roller", CoveringKindFacts.DeductionInside, "5/16");
        job.Fine(Check, "W01");
        job.SayOf("Roller", CoveringKindFacts.OrderedInside, "opening").SayOf("Roller", CoveringKindFacts.DeductionInside, "0").Fine(Check, "W01");
        // A sixteenth is what a tape may be off.
        job.SayOf("Roller", CoveringKindFacts.DeductionInside, "1/16").Fine(Check, "W01");
    }

    // A tape on a unit says nothing while nobody knows how wide it should be.
    [Fact]
    public void ATapeOnTheUnitWaitsForTheSheetAndALabelDoesNot()
    {
        var job = OfAnOpening(Came("36", "60"), "unit").SayOf("Roller", CoveringKindFacts.DeductionInside, "");
        job.Lacks(Check, "W01", "deduction, inside of Roller in the kit");
        job.Say("W01", UnitFacts.SizeReadFrom, "label").Fine(Check, "W01");
        job.Say("W01", UnitFacts.SizeReadFrom, "").Lacks(Check, "W01", "size read from");
    }

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

    private static TestJob OfAnOpening(TestJob job, string from)
    {
        job.SayOf("Roller", CoveringKindFacts.OrderedInside, "opening").SayOf("Roller", CoveringKindFacts.DeductionInside, "5/16");
        return from.Length == 0 ? job : job.Say("W01", UnitFacts.SizeReadFrom, from);
    }

    private static TestJob Came(string width, string height) =>
        Jobs.Ordered().Say("W01", UnitFacts.DeliveredWidth, width).Say("W01", UnitFacts.DeliveredHeight, height);
}
