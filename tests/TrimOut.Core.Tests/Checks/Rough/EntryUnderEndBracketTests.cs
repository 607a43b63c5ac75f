using TrimOut.Core.Checks.Rough;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Rough;

public class EntryUnderEndBracketTests
{
    private static readonly EntryUnderEndBracket Check = new();

    public static Example Finds => new(() => Jobs.Walked(), j => j.Say("W01", UnitFacts.EntryFromJamb, "1/2\""));

    public static Example Passes => new(() => Jobs.Walked(), j => j.Say("W01", UnitFacts.EntryFromJamb, "7/8\""));

    // The generic roller: 1/4 in comes off the width, so it begins 1/8 in from the jamb; bracket 3/4 in wide, from 1 1/2 in to 4 in back, 2 1/2 in down.
    /// <summary>
    /// Of an opening of 35" comes 1/2", made: the unit begins 1/4" from the jamb, and its bracket of 2" ends 2 1/4" from it. Ordered or not yet.
    /// </summary>
    [Theory]
    [InlineData("34 1/2", "2 1/8", "2 1/4")]
    [InlineData("34 1/2", "2 1/4", null)]
    [InlineData("34", "2 3/8", "2 1/2")]
    [InlineData("", "2 1/8", "2 1/4")]
    [InlineData("", "2 1/4", null)]
    public void TheBracketSitsAtTheEndOfTheUnitAndNotAtTheJamb(string ordered, string fromJamb, string? takes)
    {
        var job = Jobs.Walked().Say("W01", WindowFacts.RoughWidth, "35").SayOf("Roller", CoveringKindFacts.OrderedInside, "made")
            .SayOf("Roller", CoveringKindFacts.DeductionInside, "1/2").SayOf("Roller", CoveringKindFacts.EndBracket, "2")
            .Say("W01", UnitFacts.EntryFromJamb, fromJamb);
        if (ordered.Length > 0)
            job.Say("W01", UnitFacts.OrderWidth, ordered);
        if (takes is null)
            job.Fine(Check, "W01");
        else
            Assert.Contains($"the end bracket takes {takes}\" from the jamb", job.Fault(Check, "W01").Message, StringComparison.Ordinal);
    }

    /// <summary>A sheet that does not say what comes off leaves open whether the bracket reaches an entry beside it, and not one far from it.</summary>
    [Fact]
    public void WhatComesOffIsAskedForWhereTheBracketCouldReachTheEntry()
    {
        var job = Jobs.Walked().SayOf("Roller", CoveringKindFacts.DeductionInside, "");
        job.Say("W01", UnitFacts.EntryFromJamb, "1").Lacks(Check, "W01", "deduction, inside of Roller in the kit");
        job.Say("W01", UnitFacts.EntryFromJamb, "1 1/4").Fine(Check, "W01");
    }

    [Fact]
    public void AnEntryAtTheEdgeOfTheBracketIsFine() => Jobs.Walked().Say("W01", UnitFacts.EntryFromJamb, "7/8").Fine(Check, "W01");

    [Fact]
    public void AnEntryJustInsideTheBracketIsAStop()
    {
        var found = Jobs.Walked().Say("W01", UnitFacts.EntryFromJamb, "55/64").Fault(Check, "W01");
        Assert.Equal("The cable leaves the wall 55/64\" from the jamb and 2\" back; the end bracket takes 7/8\" from the jamb, 1 1/2\" to 4\" back.",
            found.Message);
        Assert.Contains(("end bracket", "3/4\""), found.Working!.Inputs);
    }

    [Theory]
    [InlineData("4", "1")]        // behind it
    [InlineData("1 1/2", "1")]    // in front of it
    [InlineData("2", "2 1/2")]    // below it
    public void AnEntryClearOfItsDepthOrHeightIsFine(string back, string below) =>
        Jobs.Walked().Say("W01", UnitFacts.EntryFromJamb, "0").Say("W01", UnitFacts.EntryBack, back).Say("W01", UnitFacts.EntryBelowHead, below)
            .Fine(Check, "W01");

    [Fact]
    public void TheEntryAsBuiltCountsOverThePlannedOne() => Jobs.Walked().Say("W01", UnitFacts.EntryAsBuilt, "1/2").Fault(Check, "W01");

    [Fact]
    public void OutsideMountsAreNoMatterOfTheReveal() => Jobs.Walked().Say("W01", WindowFacts.Mount, "outside").Silent(Check, "W01");

    [Fact]
    public void AnUnknownBracketIsNotAPass() =>
        Jobs.Walked().SayOf("Roller", CoveringKindFacts.EndBracket, "").Lacks(Check, "W01", "end bracket of Roller in the kit");

    [Fact]
    public void AnUnknownDepthOfTheEntryIsNotAPass() => Jobs.Walked().Forget("W01", UnitFacts.EntryBack).Lacks(Check, "W01", "entry setback");

    [Fact]
    public void TheBracketAtTheFarJambCountsToo()
    {
        Jobs.Walked().Say("W01", UnitFacts.EntryFromJamb, "35 1/8").Fine(Check, "W01");
        var found = Jobs.Walked().Say("W01", UnitFacts.EntryFromJamb, "35 3/16").Fault(Check, "W01");
        Assert.Equal("The cable leaves the wall 35 3/16\" from the jamb and 2\" back; " +
            "an end bracket takes 35 1/8\" to 36\" from that jamb, 1 1/2\" to 4\" back.",
            found.Message);
        Assert.Equal("Move the entry to 35 1/8\" from the jamb or less, or to 4\" back or more.", found.Mend);
    }

    // 1/4 in of cable: its middle must be 1/8 in past the bracket, which ends 7/8 in from the jamb.
    [Fact]
    public void HalfTheCableCountsOnceItsSheetSaysHowThickItIs()
    {
        var job = Jobs.Roughed().SayOf("16/2", CableTypeFacts.Diameter, "1/4").Say("W01", UnitFacts.EntryFromJamb, "1");
        job.Fine(Check, "W01");
        Assert.Equal("Move the entry to 1\" from the jamb or more, or to 4 1/8\" back or more.",
            job.Say("W01", UnitFacts.EntryFromJamb, "15/16").Fault(Check, "W01").Mend);
    }

    // Two parts of 18 in: the second hangs from 18 1/8 in from the left, and its bracket ends 18 7/8 in from it.
    [Fact]
    public void OfASecondUnitTheBracketsLieAlongTheOpening()
    {
        var job = Two();
        job.Say("W01B", UnitFacts.EntryFromJamb, "18 7/8").Fine(Check, "W01B");
        Assert.Equal("Move the entry to 18 7/8\" from the jamb or more, or to 4\" back or more.",
            job.Say("W01B", UnitFacts.EntryFromJamb, "18 13/16").Fault(Check, "W01B").Mend);
    }

    [Fact]
    public void UnderTheBracketOfTheUnitBesideItACableIsPinchedToo() => Two().Say("W01B", UnitFacts.EntryFromJamb, "17 1/2").Fault(Check, "W01B");

    [Fact]
    public void AnUnknownWidthIsNotAPass() => Jobs.Walked().Forget("W01", WindowFacts.RoughWidth).Lacks(Check, "W01", "rough width");

    private static TestJob Two() => Jobs.Walked().Do(j => AddItems.Unit(j.House, j.House.FindTag("W01")!.Id))
        .Say("W01B", UnitFacts.Kind, "Roller").Say("W01B", UnitFacts.LeadSide, "left").Say("W01B", UnitFacts.EntrySide, "left")
        .Say("W01B", UnitFacts.EntryBack, "2").Say("W01B", UnitFacts.EntryBelowHead, "1");

    // The bracket ends 7/8 in from the jamb; the thickest cable is 1 in, half of it 1/2.
    [Theory]
    [InlineData("1 5/16", false)]
    [InlineData("1 3/8", true)]
    public void ACableOfUnknownThicknessIsAskedForOnlyWhereAThickOneWouldBeCaught(string fromJamb, bool fine)
    {
        var job = Jobs.Roughed().SayOf("16/2", CableTypeFacts.Diameter, "1").SayOf("16/2", CableTypeFacts.Diameter, "")
            .Say("W01", UnitFacts.EntryFromJamb, fromJamb);
        if (fine)
            job.Fine(Check, "W01");
        else
            job.Lacks(Check, "W01", "outside diameter of 16/2 in the kit");
    }

    // The far bracket begins 35 1/8 in from the jamb, and half of the cable is 1/8 in.
    [Fact]
    public void BeforeTheFarBracketThereIsToBeRoomForHalfTheCable() =>
        Assert.Equal("Move the entry to 35\" from the jamb or less, or to 4 1/8\" back or more.",
            Jobs.Roughed().SayOf("16/2", CableTypeFacts.Diameter, "1/4").Say("W01", UnitFacts.EntryFromJamb, "35 1/2").Fault(Check, "W01").Mend);

    // Brackets of 20 in of a unit in an opening of 36 in reach past each other, and no place in the opening is clear of both.
    [Fact]
    public void WhereNoPlaceIsClearTheEntryGoesBehindTheBracket() => Assert.Equal("Move the entry to 4\" back or more.",
        Jobs.Walked().SayOf("Roller", CoveringKindFacts.EndBracket, "20").Say("W01", UnitFacts.EntryFromJamb, "17").Fault(Check, "W01").Mend);

    [Fact]
    public void FromTheRightItIsCountedFromTheRightJamb() =>
        Assert.Equal("The cable leaves the wall 1/2\" from the jamb and 2\" back; the end bracket takes 7/8\" from the jamb, 1 1/2\" to 4\" back.",
            Jobs.Walked().Say("W01", UnitFacts.EntrySide, "right").Say("W01", UnitFacts.EntryFromJamb, "1/2").Fault(Check, "W01").Message);

    // Hung 2 in back, where the sheet says 1 1/2, the bracket begins where the cable of no width is: clear.
    [Fact]
    public void TheSetbackAsMeasuredCountsOverTheSheets() =>
        Jobs.Walked().Say("W01", UnitFacts.EntryFromJamb, "1/2").Say("W01", UnitFacts.Setback, "2").Fine(Check, "W01");

    [Theory]
    [InlineData("entry-side", "entry side")]
    [InlineData("entry-from-jamb", "entry from jamb")]
    [InlineData("entry-below-head", "entry below head")]
    public void WhatIsNotKnownOfTheEntryIsNamed(string fact, string missing) =>
        Jobs.Walked().Forget("W01", FactTable.Find(Core.Houses.ItemKind.Unit, fact)!).Lacks(Check, "W01", missing);
}
