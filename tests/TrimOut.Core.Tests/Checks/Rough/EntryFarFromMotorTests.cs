using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Rough;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Rough;

/// <summary>How far the entry may be from the motor: common practice, no published source.</summary>
public class EntryFarFromMotorTests
{
    private static readonly EntryFarFromMotor Check = new();

    public static Example Finds => new(() => Jobs.Walked(), j => j.Say("W01", UnitFacts.EntryBelowHead, "20"));

    public static Example Passes => new(() => Jobs.Walked(), j => j.Say("W01", UnitFacts.EntryBelowHead, "3"));

    [Theory]
    [InlineData("entry-from-jamb", "12", "12 1/16", "The cable leaves the wall 12 1/16\" along the head from the left end of the unit, where its motor is.")]
    [InlineData("entry-below-head", "8", "8 1/16", "The cable leaves the wall 8 1/16\" below the head.")]
    public void OnTheLimitIsFineAndPastItIsACaution(string fact, string most, string past, string message)
    {
        var of = FactTable.Find(Core.Houses.ItemKind.Unit, fact)!;
        Jobs.Walked().Say("W01", of, most).Fine(Check, "W01");
        Assert.Equal(message, Jobs.Walked().Say("W01", of, past).Fault(Check, "W01").Message);
    }

    [Fact]
    public void AnEntryOnTheMotorSideThatIsFartherThanTheMiddleIsFound() =>
        Assert.Contains("34\" along the head from the left end", Jobs.Walked().Say("W01", UnitFacts.EntryFromJamb, "34").Fault(Check, "W01").Message,
            StringComparison.Ordinal);

    [Fact]
    public void FarAlongAndFarDownAreTwoFindings() => Assert.Equal(2, Check.Run(
        Jobs.Walked().Say("W01", UnitFacts.EntryFromJamb, "20").Say("W01", UnitFacts.EntryBelowHead, "20").House).Count(r => r.Outcome is Outcome.Found));

    [Fact]
    public void AnEntryOnTheOtherSideIsToldByItsOwnCheck() => Jobs.Walked().Say("W01", UnitFacts.EntrySide, "right").Fine(Check, "W01");

    [Fact]
    public void AnOutsideMountIsHeldToItToo() =>
        Jobs.Walked().Say("W01", WindowFacts.Mount, "outside").Say("W01", UnitFacts.EntryBelowHead, "20").Fault(Check, "W01");

    [Fact]
    public void ACableThatGoesBehindItsNeighbourIsHeldAgainstTheWayOnly()
    {
        var job = Jobs.Walked().Say("W01", WindowFacts.RoughWidth, "72").Do(j => AddItems.Unit(j.House, j.House.FindTag("W01")!.Id));
        job.Say("W01B", UnitFacts.LeadSide, "left").Say("W01B", UnitFacts.EntrySide, "left").Say("W01B", UnitFacts.EntryFromJamb, "2")
            .Say("W01B", UnitFacts.EntryBelowHead, "1").Fine(Check, "W01B");
    }

    [Theory]
    [InlineData("left", "W01B", "W01A", "left")]
    [InlineData("right", "W01A", "W01B", "right")]
    public void OfTwoCablesThatComeOutAtOnePlaceTheOneWhoseMotorIsFarIsFound(string side, string far, string near, string end)
    {
        var job = Beside(side, "1 15/16", "2");
        Assert.Equal($"The cable leaves the wall where that of {near} does, and the {end} end of its own unit, where the motor is, is "
            + $"{(side == "left" ? "34\"" : "34 1/16\"")} from there.", job.Fault(Check, far).Message);
        job.Fine(Check, near);
    }

    [Fact]
    public void AnEntryOnItsLimitFromItsNeighboursHasAPlaceOfItsOwn()
    {
        Beside("left", "1", "1 15/16").Fault(Check, "W01B");
        Beside("left", "1", "2").Fine(Check, "W01B");
        Beside("left", "1", "1").Say("W01B", UnitFacts.EntryBack, "3").Fine(Check, "W01B");
        Beside("left", "1", "1").Say("W01B", UnitFacts.EntryBelowHead, "2").Fine(Check, "W01B");
    }

    [Fact]
    public void AnEntryIsNotHeldAgainstThatOfANeighbourWithABattery() =>
        Beside("left", "1", "1").Say("W01A", UnitFacts.Power, "battery").Fine(Check, "W01B");

    [Fact]
    public void WhereANeighboursCableComesOutIsAskedFor() =>
        Beside("left", "1", "1").Forget("W01A", UnitFacts.EntryFromJamb).Lacks(Check, "W01B", "entry from jamb");

    /// <summary>Two units in 72 in, both with entry and motor on one side.</summary>
    private static TestJob Beside(string side, string first, string second)
    {
        var job = Jobs.Walked().Say("W01", WindowFacts.RoughWidth, "72").SayOf("Roller", CoveringKindFacts.MotorEnd, "either")
            .Do(j => AddItems.Unit(j.House, j.House.FindTag("W01")!.Id));
        foreach (var (tag, jamb) in (ReadOnlySpan<(string, string)>)[("W01A", first), ("W01B", second)])
        {
            job.Say(tag, UnitFacts.LeadSide, side).Say(tag, UnitFacts.EntrySide, side).Say(tag, UnitFacts.EntryFromJamb, jamb)
                .Say(tag, UnitFacts.EntryBack, "2").Say(tag, UnitFacts.EntryBelowHead, "1");
        }
        return job;
    }

    [Theory]
    [InlineData("entry-side", "entry side")]
    [InlineData("entry-from-jamb", "entry from jamb")]
    [InlineData("entry-below-head", "entry below head")]
    public void WhatIsNotKnownIsNotAPass(string fact, string missing) =>
        Jobs.Walked().Forget("W01", FactTable.Find(Core.Houses.ItemKind.Unit, fact)!).Lacks(Check, "W01", missing);

    [Fact]
    public void BothWaysAreNamedWhereBothAreMissing() =>
        Jobs.Walked().Forget("W01", UnitFacts.EntryFromJamb).Forget("W01", UnitFacts.EntryBelowHead)
            .Lacks(Check, "W01", "entry from jamb; entry below head");

    [Fact]
    public void ABatteryUnitHasNoEntry() => Jobs.Walked().Say("W01", UnitFacts.Power, "battery").Silent(Check, "W01");

    [Fact]
    public void BehindDrywallTheLeadIsHidden()
    {
        var job = Jobs.Walked().Say("W01", UnitFacts.EntryBelowHead, "20");
        Assert.Contains("move the entry to 8\" or less below the head", job.Fault(Check, "W01").Mend, StringComparison.Ordinal);
        Assert.Contains("lead the cable up", job.Mark("W01", "cable-found").Fault(Check, "W01").Mend, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("entry-from-jamb", "Put the figure right; if it is right, move the entry to 12\" or less from the left end", "lead the cable along")]
    [InlineData("entry-below-head", "Put the figure right; if it is right, move the entry to 8\" or less below the head", "lead the cable up")]
    public void BehindDrywallTheLeadIsHiddenAndTheCableStaysWhereItIs(string fact, string open, string closed)
    {
        var job = Jobs.Walked().Say("W01", FactTable.Find(Core.Houses.ItemKind.Unit, fact)!, "20");
        Assert.StartsWith(open, job.Fault(Check, "W01").Mend, StringComparison.Ordinal);
        Assert.StartsWith($"Put the figure right; if it is right, {closed}", job.Mark("W01", "cable-found").Fault(Check, "W01").Mend, StringComparison.Ordinal);
    }

    // The sheet's motor end counts over a lead side that stands against it, and the lead side where the sheet says nothing.
    [Theory]
    [InlineData("left", "right")]
    [InlineData("", "left")]
    public void TheMotorOfTheSheetCountsAndElseTheLeadSide(string motor, string lead) =>
        Assert.Equal("The cable leaves the wall 20\" along the head from the left end of the unit, where its motor is.",
            Jobs.Walked().SayOf("Roller", CoveringKindFacts.MotorEnd, motor).Say("W01", UnitFacts.LeadSide, lead).Say("W01", UnitFacts.EntryFromJamb, "20")
                .Fault(Check, "W01").Message);

    [Fact]
    public void WithoutAMotorEndAndALeadSideTheOneThatIsMissingIsNamed()
    {
        var job = Jobs.Walked().Forget("W01", UnitFacts.LeadSide);
        job.SayOf("Roller", CoveringKindFacts.MotorEnd, "").Lacks(Check, "W01", "lead side");
        job.Forget("W01", UnitFacts.Kind).Lacks(Check, "W01", "kind");
    }

    [Theory]
    [InlineData("entry-from-jamb", "along the head 20\", at the most 12\"")]
    [InlineData("entry-below-head", "below the head 20\", at the most 8\"")]
    public void TheWorkingTellsHowFarItIs(string fact, string worked) =>
        Assert.Equal(worked, Jobs.Walked().Say("W01", FactTable.Find(Core.Houses.ItemKind.Unit, fact)!, "20").Fault(Check, "W01").Worked);
}
