using TrimOut.Core.Checks.Clearance;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Clearance;

public class ScrewUnderCentreSupportTests
{
    private static readonly ScrewUnderCentreSupport Check = new();

    public static Example Finds => new(() => Screw("10"), j => j.Say("W01", UnitFacts.MiddleScrew, "30\""));

    public static Example Passes => new(() => Screw("10"), j => j.Say("W01", UnitFacts.MiddleScrew, "32\""));

    // The generic wood blind has a support 2 in wide from 60 in on, and end brackets of 1 1/2 in: made 60 in wide, the support takes 29 to 31 in.
    [Theory]
    [InlineData("31")]
    [InlineData("29")]
    [InlineData("1 1/2")]
    [InlineData("58 1/2")]
    public void AtTheEdgeOfABracketIsFine(string at) => Screw(at).Fine(Check, "W01");

    [Theory]
    [InlineData("30 63/64", "The middle screw is 30 63/64\" from the left; the center support takes 29\" to 31\".")]
    [InlineData("30", "The middle screw is 30\" from the left; the center support takes 29\" to 31\".")]
    [InlineData("1 31/64", "The middle screw is 1 31/64\" from the left; an end bracket takes 1 1/2\" at each end of 60\".")]
    [InlineData("58 9/16", "The middle screw is 58 9/16\" from the left; an end bracket takes 1 1/2\" at each end of 60\".")]
    public void UnderABracketIsAStop(string at, string message) => Assert.Equal(message, Screw(at).Fault(Check, "W01").Message);

    // Off centre by 2 in on the sheet: clear of a support that takes 1 in to each side.
    [Fact]
    public void AsTheSheetHasItIsFine() => Screw("30").Forget("W01", UnitFacts.MiddleScrew).Fine(Check, "W01");

    [Fact]
    public void ASheetThatPutsItUnderItsOwnSupportIsFound() =>
        Assert.Contains("is 30 1/2\" from the left", Screw("30").Forget("W01", UnitFacts.MiddleScrew).SayOf("Wood blind", CoveringKindFacts.MiddleScrew, "1/2")
            .Fault(Check, "W01").Message, StringComparison.Ordinal);

    [Fact]
    public void ANarrowBlindHasNoSupport() => Screw("29 63/64").Say("W01", WindowFacts.RoughWidth, "59 63/64").Fine(Check, "W01");

    [Fact]
    public void AKindWithoutSuchAScrewIsLeftAlone() =>
        Screw("30").Say("W01", UnitFacts.Kind, "Roller").Forget("W01", UnitFacts.MiddleScrew).Silent(Check, "W01");

    [Fact]
    public void AnUnknownBracketIsNotAPass() =>
        Screw("30").SayOf("Wood blind", CoveringKindFacts.CentreBracket, "").Lacks(Check, "W01", "center bracket of Wood blind in the kit");

    [Fact]
    public void AnUnknownWidthIsNotAPass() => Screw("30").Forget("W01", WindowFacts.RoughWidth).Lacks(Check, "W01", "rough width");

    // Nothing comes off the width, so that it is made as wide as the opening.
    private static TestJob Screw(string at) => Jobs.Walked().Say("W01", UnitFacts.Kind, "Wood blind").Say("W01", WindowFacts.RoughWidth, "60")
        .SayOf("Wood blind", CoveringKindFacts.DeductionInside, "0").Say("W01", UnitFacts.MiddleScrew, at);

    /// <summary>Of 60 1/2" comes 1/2": it is made 60" wide, whoever takes it off, and an end bracket begins 58 1/2" from its left end.</summary>
    [Theory]
    [InlineData("opening", "")]
    [InlineData("opening", "60 1/2")]
    [InlineData("made", "")]
    [InlineData("made", "60")]
    public void TheBracketsAreThoseOfTheUnitAsItIsMade(string ordered, string order)
    {
        var job = Screw("58 1/2").Say("W01", WindowFacts.RoughWidth, "60 1/2").SayOf("Wood blind", CoveringKindFacts.DeductionInside, "1/2")
            .SayOf("Wood blind", CoveringKindFacts.OrderedInside, ordered);
        if (order.Length > 0)
            job.Say("W01", UnitFacts.OrderWidth, order);
        job.Fine(Check, "W01");
        job.Say("W01", UnitFacts.MiddleScrew, "58 9/16");
        Assert.Equal("The middle screw is 58 9/16\" from the left; an end bracket takes 1 1/2\" at each end of 60\".", job.Fault(Check, "W01").Message);
    }

    /// <summary>
    /// 60" wide, less up to 1/2" at each side: the support begins from 28 1/2" to 29" on, and the right bracket from 57 1/2" to 58 1/2". What is planned beside
    /// the support stays there.
    /// </summary>
    [Theory]
    [InlineData("32", true)]
    [InlineData("28 1/2", true)]
    [InlineData("28 9/16", false)]
    [InlineData("57 1/2", true)]
    [InlineData("57 9/16", false)]
    [InlineData("", true)]
    public void WhatComesOffTheWidthIsAskedForWhereItMakesADifference(string at, bool fine)
    {
        var job = Screw("32").SayOf("Wood blind", CoveringKindFacts.DeductionInside, "");
        job = at.Length > 0 ? job.Say("W01", UnitFacts.MiddleScrew, at) : job.Forget("W01", UnitFacts.MiddleScrew);
        if (fine)
            job.Fine(Check, "W01");
        else
            job.Lacks(Check, "W01", "deduction, inside of Wood blind in the kit");
    }

    /// <summary>A stop that there is however much comes off is one.</summary>
    [Fact]
    public void ASheetThatPutsItUnderItsOwnSupportIsFoundWhateverComesOff() => Screw("30").Forget("W01", UnitFacts.MiddleScrew)
        .SayOf("Wood blind", CoveringKindFacts.DeductionInside, "").SayOf("Wood blind", CoveringKindFacts.MiddleScrew, "1/2").Fault(Check, "W01");

    [Fact]
    public void TheMendLeavesRoomForADriverBesideTheSupport()
    {
        Assert.Equal("Set it clear of the brackets, such as 31 1/2\" from the left.", Screw("30").Fault(Check, "W01").Mend);
        Screw("31 1/2").Fine(Check, "W01");
    }

    [Fact]
    public void WhereTheCableIsThereTheOtherSideOfTheSupportIsTold() => Assert.Equal("Set it clear of the brackets, such as 28 1/2\" from the left.",
        Screw("30").Say("W01", UnitFacts.EntryFromJamb, "31 3/4").Fault(Check, "W01").Mend);

    // 60 in and 3 in of overlap on each side: the planned screw is 2 in off the middle of the unit, and not of the opening.
    [Fact]
    public void OutsideTheMiddleIsThatOfTheUnit() => Screw("30").Forget("W01", UnitFacts.MiddleScrew).Say("W01", WindowFacts.Mount, "outside")
        .Say("W01", WindowFacts.OverlapEachSide, "3").Say("W01", UnitFacts.OrderWidth, "66").Fine(Check, "W01");

    [Theory]
    [InlineData("kind", "kind")]
    [InlineData("mount", "overlap each side")]
    public void WhatThePlaceWaitsForIsNamed(string without, string missing)
    {
        var job = Screw("30");
        if (without == "mount")
            job.Say("W01", WindowFacts.Mount, "outside").Lacks(Check, "W01", missing);
        else
            job.Forget("W01", UnitFacts.Kind).Lacks(Check, "W01", missing);
        job.Forget("W01", UnitFacts.MiddleScrew).Lacks(Check, "W01", missing);
    }

    // 24 in wide, a support of 18 in takes 3 to 21 in; half an inch beside it are 21 1/2 and 2 1/2 in, where brackets of 2 1/2 in just end.
    [Theory]
    [InlineData("2 1/2", "1", "Set it clear of the brackets, such as 21 1/2\" from the left.")]
    [InlineData("2 1/2", "21 1/2", "Set it clear of the brackets, such as 2 1/2\" from the left.")]
    [InlineData("2 33/64", "1", "Set it clear of the brackets.")]
    public void NoPlaceUnderAnEndBracketIsTold(string bracket, string entry, string mend) => Assert.Equal(mend,
        Screw("12").Say("W01", WindowFacts.RoughWidth, "24").Say("W01", UnitFacts.EntryFromJamb, entry).SayOf("Wood blind", CoveringKindFacts.CentreFrom, "24")
            .SayOf("Wood blind", CoveringKindFacts.CentreBracket, "18").SayOf("Wood blind", CoveringKindFacts.EndBracket, bracket).Fault(Check, "W01").Mend);

    // A place half an inch from the cable is told. Ordered 62 in wide for 64, it begins 1 in from the jamb: its support takes 30 to 32 in, and half an inch
    // beside that are 32 1/2 and 29 1/2 in; a cable 33 1/2 in from the jamb is 32 1/2 in from its left end.
    [Theory]
    [InlineData("60", "60", "30", "32", "31 1/2")]
    [InlineData("64", "62", "31", "33 1/2", "29 1/2")]
    public void TheCableIsCountedFromTheEndOfTheUnit(string opening, string ordered, string screw, string entry, string told) =>
        Assert.Equal($"Set it clear of the brackets, such as {told}\" from the left.", Screw(screw).Say("W01", WindowFacts.RoughWidth, opening)
            .Say("W01", UnitFacts.OrderWidth, ordered).Say("W01", UnitFacts.EntryFromJamb, entry).Fault(Check, "W01").Mend);

    [Fact]
    public void UnderAKindThatNeverNeedsASupportOnlyTheEndBracketsCount() => Screw("30").SayOf("Wood blind", CoveringKindFacts.CentreFrom, "none")
        .SayOf("Wood blind", CoveringKindFacts.CentreBracket, "").Fine(Check, "W01");

    [Theory]
    [InlineData("60", "29\" to 31\"")]
    [InlineData("59", "none")]
    public void TheWorkingTellsWhatTheSupportTakes(string width, string support) =>
        Assert.Contains(("support", support), Screw("1").Say("W01", WindowFacts.RoughWidth, width).Fault(Check, "W01").Working!.Inputs);
}
