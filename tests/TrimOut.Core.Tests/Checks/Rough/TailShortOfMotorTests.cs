using TrimOut.Core.Checks.Rough;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Figures;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Rough;

public class TailShortOfMotorTests
{
    private static readonly TailShortOfMotor Check = new();

    public static Example Finds => new(() => Jobs.Roughed(), j => j.Say("W01", RunFacts.TailAtWindow, "7\""));

    public static Example Passes => new(() => Jobs.Roughed(), j => j.Say("W01", RunFacts.TailAtWindow, "8\""));

    // From the left: 1 along, 1 up, 6 behind.
    [Fact]
    public void ATailThatJustReachesIsFine() => Jobs.Roughed().Say("W01", RunFacts.TailAtWindow, "8").Fine(Check, "W01");

    [Fact]
    public void ATailThatFallsShortIsAStop() =>
        Assert.Equal("The tail is 7 63/64\"; the way to the motor on the left is 8\".", Jobs.Roughed().Say("W01", RunFacts.TailAtWindow, "7 63/64")
            .Fault(Check, "W01").Message);

    // The entry is on the left, 1 in from the jamb; the motor of this kind is always on the right: 36 - 1 along, 1 up, 6 behind.
    [Fact]
    public void TheFigureGoesToTheMotorAsTheCheckDoes()
    {
        var job = Jobs.Roughed().SayOf("Roller", CoveringKindFacts.MotorEnd, "right").Say("W01", RunFacts.TailAtWindow, "42");
        job.Fine(Check, "W01");
        Assert.Equal("42\"\u00A0?", UnitFigures.Of(job.Unit("W01")).Single(f => f.Name == "Tail that reaches the motor").Value);
    }

    // From the right: 36 - 1 along, 1 up, 6 behind.
    [Fact]
    public void FromTheOtherSideTheWholeHeadIsInTheWay()
    {
        Jobs.Roughed().Say("W01", UnitFacts.EntrySide, "right").Say("W01", RunFacts.TailAtWindow, "42").Fine(Check, "W01");
        var found = Jobs.Roughed().Say("W01", UnitFacts.EntrySide, "right").Fault(Check, "W01");
        Assert.Equal("The tail is 36\"; the way to the motor on the left is 42\".", found.Message);
        Assert.Contains(("along the head", "35\""), found.Working!.Inputs);
    }

    [Fact]
    public void AKindOrderedEitherWayHasItsMotorAtTheLeadSide() =>
        Jobs.Roughed().SayOf("Roller", CoveringKindFacts.MotorEnd, "either").Say("W01", UnitFacts.LeadSide, "right").Fault(Check, "W01");

    // Two parts of 18 in, the second one's motor 18 in from the left jamb, its cable out of that jamb: 18 - 1 along, 1 up, 6 behind.
    [Fact]
    public void OfASecondUnitTheWayIsReckonedFromTheOpening()
    {
        var job = Jobs.Roughed();
        job.Do(AddItems.Unit(job.House, job.House.FindTag("W01")!.Id)).Say("W01B", UnitFacts.Kind, "Roller").Say("W01B", UnitFacts.LeadSide, "left")
            .Say("W01B", UnitFacts.EntrySide, "left").Say("W01B", UnitFacts.EntryFromJamb, "1").Say("W01B", UnitFacts.EntryBelowHead, "1")
            .Say("W01B", RunFacts.TailAtWindow, "24").Fine(Check, "W01B");
        Assert.Equal("The tail is 23 15/16\"; the way to the motor on the left is 24\".",
            job.Say("W01B", RunFacts.TailAtWindow, "23 15/16").Fault(Check, "W01B").Message);
    }

    /// <summary>Outside the unit hangs above the opening and begins beside it: the way is so much longer, up and along.</summary>
    [Fact]
    public void ToAnOutsideMountItIsUpAboveTheOpeningAndOnToItsEnd()
    {
        var job = Jobs.Roughed();
        var inside = job.Unit("W01").WayToMotor!.Value;
        job.Say("W01", WindowFacts.Mount, "outside").Say("W01", WindowFacts.OverlapEachSide, "6").Say("W01", WindowFacts.HeadAbove, "9");
        Assert.Equal(inside + Core.Units.Length.FromInches(6 + 9), job.Unit("W01").WayToMotor);
    }

    [Fact]
    public void AnUnknownMotorEndIsNotAPass() =>
        Jobs.Roughed().SayOf("Roller", CoveringKindFacts.MotorEnd, "").Lacks(Check, "W01", "motor end of Roller in the kit");

    [Fact]
    public void WhatIsPulledIsWhatIsMissing()
    {
        var job = Jobs.Roughed().Say("W01", RunFacts.TailAtWindow, "5");
        Assert.Equal("Pull 31\" more to the window now: that makes the whole width. 13\" more is the least.", job.Fault(Check, "W01").Mend);
        Assert.StartsWith("Look for slack behind the drywall first", job.Mark("W01", "cable-found").Fault(Check, "W01").Mend,
            System.StringComparison.Ordinal);
    }
}
