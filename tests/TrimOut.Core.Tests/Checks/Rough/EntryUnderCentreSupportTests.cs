using TrimOut.Core.Checks.Rough;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Rough;

public class EntryUnderCentreSupportTests
{
    private static readonly EntryUnderCentreSupport Check = new();

    public static Example Finds => new(() => Wide(), j => j.Say("W01", UnitFacts.EntryFromJamb, "54\""));

    public static Example Passes => new(() => Wide(), j => j.Say("W01", UnitFacts.EntryFromJamb, "2\""));

    // The generic roller needs a support 1 1/2 in wide from 108 in on: it takes 53 1/4 to 54 3/4 in.
    [Theory]
    [InlineData("53 1/4")]
    [InlineData("54 3/4")]
    public void AnEntryAtItsEdgeIsFine(string fromJamb) => Wide().Say("W01", UnitFacts.EntryFromJamb, fromJamb).Fine(Check, "W01");

    [Theory]
    [InlineData("53 17/64")]
    [InlineData("54 47/64")]
    public void AnEntryJustInsideItIsAStop(string fromJamb) =>
        Assert.Equal($"The cable leaves the wall {fromJamb}\" from the jamb; the center support takes 53 1/4\" to 54 3/4\".",
            Wide().Say("W01", UnitFacts.EntryFromJamb, fromJamb).Fault(Check, "W01").Message);

    [Fact]
    public void ANarrowUnitHasNoCentreSupport() => Wide().Say("W01", WindowFacts.RoughWidth, "107 63/64").Silent(Check, "W01");

    /// <summary>The opening is at the limit, the unit ordered for it is under it: the hang sheet and the list of parts have no support either.</summary>
    [Fact]
    public void AUnitThatIsOrderedUnderTheLimitHasNoCentreSupport()
    {
        Wide().Say("W01", UnitFacts.OrderWidth, "107 3/4").Silent(Check, "W01");
        Wide().Say("W01", UnitFacts.OrderWidth, "108").Fault(Check, "W01");
    }

    [Fact]
    public void AnUnknownEntryIsNotAPass() => Wide().Forget("W01", UnitFacts.EntryFromJamb).Lacks(Check, "W01", "entry from jamb");

    private static TestJob Wide() => Jobs.Walked().Say("W01", WindowFacts.RoughWidth, "108").Say("W01", UnitFacts.EntryFromJamb, "54");

    [Fact]
    public void ItIsAStopOnAPanelAndInsideOnly()
    {
        Wide().Say("W01", WindowFacts.Mount, "outside").Silent(Check, "W01");
        Wide().Say("W01", UnitFacts.Power, "battery").Silent(Check, "W01");
    }

    [Fact]
    public void BehindDrywallTheCableIsLedRoundTheSupport()
    {
        Assert.Equal("Move the entry to the lead side, clear of the end bracket.", Wide().Fault(Check, "W01").Mend);
        Assert.Equal("Lead the cable round the support, never under it.", Wide().Mark("W01", "cable-found").Fault(Check, "W01").Mend);
    }

    // The support begins 53 1/4 in from the jamb; the thickest cable is 1 in, half of it 1/2.
    [Theory]
    [InlineData("52 13/16", false)]
    [InlineData("52 3/4", true)]
    public void ACableOfUnknownThicknessIsAskedForOnlyWhereAThickOneWouldBeCaught(string fromJamb, bool fine)
    {
        var job = Jobs.Roughed().SayOf("16/2", CableTypeFacts.Diameter, "1").SayOf("16/2", CableTypeFacts.Diameter, "")
            .Say("W01", WindowFacts.RoughWidth, "108").Say("W01", UnitFacts.EntryFromJamb, fromJamb);
        if (fine)
            job.Fine(Check, "W01");
        else
            job.Lacks(Check, "W01", "outside diameter of 16/2 in the kit");
    }

    [Fact]
    public void TheWorkingTellsTheEntryAndTheSupport() => Assert.Equal(
        "from jamb 54\", width 108\", center support 1 1/2\", from 53 1/4\", to 54 3/4\", half the cable 0\", back 2\", below head 1\"",
        Wide().Fault(Check, "W01").Worked);

    [Fact]
    public void WhatIsNotKnownIsNamed()
    {
        Wide().SayOf("Roller", CoveringKindFacts.CentreFrom, "").Lacks(Check, "W01", "center support from of Roller in the kit");
        Wide().SayOf("Roller", CoveringKindFacts.CentreBracket, "").Lacks(Check, "W01", "center bracket of Roller in the kit");
        Wide().Forget("W01", UnitFacts.Kind).Lacks(Check, "W01", "kind");
        Wide().Forget("W01", WindowFacts.RoughWidth).Lacks(Check, "W01", "rough width");
        Wide().SayOf("Roller", CoveringKindFacts.Setback, "").Lacks(Check, "W01", "bracket setback of Roller in the kit");
    }

    [Fact]
    public void AKindThatNeverNeedsASupportAsksNothing()
    {
        var job = Wide().SayOf("Roller", CoveringKindFacts.CentreFrom, "none").SayOf("Roller", CoveringKindFacts.CentreBracket, "");
        job.Silent(Check, "W01");
        job.Forget("W01", WindowFacts.RoughWidth).Silent(Check, "W01");
        Assert.DoesNotContain(CoveringKindFacts.CentreBracket, Core.Kits.SheetValues.BlankIn(job.Unit("W01").Kind!.Item));
    }

    [Fact]
    public void FromTheRightTheFiguresCountFromTheRight() =>
        Assert.Equal("The cable leaves the wall 54 1/2\" from the jamb; the center support takes 53 1/4\" to 54 3/4\".",
            Wide().Say("W01", UnitFacts.EntrySide, "right").Say("W01", UnitFacts.EntryFromJamb, "54 1/2").Fault(Check, "W01").Message);
}
