using TrimOut.Core.Checks.Clearance;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Clearance;

public class StackInTheWayTests
{
    private static readonly StackInTheWay Check = new();

    public static Example Finds => new(() => Door("50"), j => j.Say("W01", WindowFacts.ClearHeight, "56\""));

    public static Example Passes => new(() => Door("50"), j => j.Say("W01", WindowFacts.ClearHeight, "55\""));

    // 60 in high, ordered 50 in: the generic cellular stack is 4 1/2 in and leaves 55 1/2 in.
    [Fact]
    public void JustEnoughIsFine() => Door("55 1/2").Fine(Check, "W01");

    [Fact]
    public void ALittleMoreIsACaution() =>
        Assert.Equal("Raised, it leaves 55 1/2\" clear; 55 9/16\" are wanted.", Door("55 9/16").Fault(Check, "W01").Message);

    [Fact]
    public void WhatStaysAboveTheOpeningTakesNothing() =>
        Door("60").Say("W01", WindowFacts.Mount, "outside").Say("W01", WindowFacts.HeadAbove, "5").Fine(Check, "W01");

    [Fact]
    public void WhereNobodyWalksNothingIsAsked() => Door("55").Forget("W01", WindowFacts.ClearHeight).Silent(Check, "W01");

    [Fact]
    public void AnUnknownStackIsNotAPass() =>
        Door("55").SayOf("Cellular", CoveringKindFacts.StackFixed, "").Lacks(Check, "W01", "stack, fixed part of Cellular in the kit");

    private static TestJob Door(string clear) =>
        Jobs.Measured().Say("W01", UnitFacts.Kind, "Cellular").Say("W01", UnitFacts.OrderHeight, "50").Say("W01", WindowFacts.ClearHeight, clear);

    // The generic roller: tube 1 1/2 in, fabric 0.5 mm, 50 in and 12 in more of it: sqrt(38.1^2 + 4 x 0.5 x 1574.8 / pi) + 1 mm = 50.57 mm, 1.991 in.
    [Fact]
    public void ARollHangsAsFarDownAsItIsThick()
    {
        Door("58").Say("W01", UnitFacts.Kind, "Roller").Fine(Check, "W01");
        Assert.Equal("Raised, it leaves 58\" clear; 58 1/16\" are wanted.", Door("58 1/16").Say("W01", UnitFacts.Kind, "Roller").Fault(Check, "W01").Message);
    }

    [Fact]
    public void OutsideARollMayHangOverTheDoorWhenItStartsHighEnough() => Door("60").Say("W01", UnitFacts.Kind, "Roller")
        .Say("W01", WindowFacts.Mount, "outside").Say("W01", WindowFacts.HeadAbove, "2").Fine(Check, "W01");

    [Fact]
    public void AnUnknownTubeIsNotAPass() =>
        Door("55").Say("W01", UnitFacts.Kind, "Roller").SayOf("Roller", CoveringKindFacts.Tube, "").Lacks(Check, "W01", "tube of Roller in the kit");

    [Fact]
    public void TheMendIsThatOfTheMoment()
    {
        var job = Door("56");
        Assert.StartsWith("Mount it outside and higher", job.Fault(Check, "W01").Mend, StringComparison.Ordinal);
        Assert.StartsWith("Ask the maker today", job.Say("W01", UnitFacts.OrderedOn, "2026-03-02").Fault(Check, "W01").Mend, StringComparison.Ordinal);
        Assert.StartsWith("It hangs:", job.Mark("W01", "clicked-in").Fault(Check, "W01").Mend, StringComparison.Ordinal);
    }

    // A stack of 4 1/2 in leaves 55 1/2 in of the rough 60; of 59 1/2 in at the lowest place, measured, it leaves 55.
    [Fact]
    public void TheLowestPlaceCountsOverTheRoughHeight()
    {
        var job = Jobs.Walked().Say("W01", UnitFacts.Kind, "Cellular").Say("W01", UnitFacts.OrderHeight, "50");
        job.Say("W01", WindowFacts.ClearHeight, "55 1/2").Fine(Check, "W01");
        Assert.Equal("Raised, it leaves 55\" clear; 55 1/2\" are wanted.",
            Door("55 1/2").Say("W01", WindowFacts.HeightMiddle, "59 1/2").Fault(Check, "W01").Message);
    }

    // The roll is that of 1.991 in above.
    [Theory]
    [InlineData("Cellular", "fixed part, share of the drop, stack", "55.5 in")]
    [InlineData("Roller", "tube, fabric, roll", "58.01 in")]
    public void TheWorkingTellsAStackOrARoll(string kind, string figures, string clear)
    {
        var inputs = Door("59").Say("W01", UnitFacts.Kind, kind).Fault(Check, "W01").Working!.Inputs;
        Assert.Equal($"drop, {figures}, starts above the opening, height of the opening, clear, wanted", string.Join(", ", inputs.Select(i => i.Name)));
        Assert.Contains(("clear", clear), inputs);
    }
}
