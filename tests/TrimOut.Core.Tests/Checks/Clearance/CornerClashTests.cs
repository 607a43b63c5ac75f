using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Clearance;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Clearance;

public class CornerClashTests
{
    private static readonly CornerClash Check = new();

    public static Example Finds => new(() => Bay("3", "3", "135"), j => j.Say("W01", WindowFacts.CornerAngle, "90"));

    public static Example Passes => new(() => Bay("3", "3", "90"), j => j.Say("W01", WindowFacts.CornerAngle, "135"));

    // A square corner, outside mounts with a 3 in fascia and 1 in of overlap: each must end 3 in from the corner, so each opening begins 4 in from it.
    [Fact]
    public void HeadsThatJustTouchAreFine() => Assert.IsType<Outcome.Fine>(Bay("4", "4", "90").Of(Check, "W01"));

    [Fact]
    public void ASixtyFourthNearerIsAStop()
    {
        var found = Bay("3 63/64", "3 63/64", "90").FaultOf(Check, "W01");
        Assert.Equal("W01 ends 2 63/64\" from the corner and stands out 3\", W02 ends 2 63/64\" from it and stands out 3\": " +
            "at 90 degrees they run into each other.", found.Message);
        Assert.Contains(("alike, each would need", "3 in"), found.Working!.Inputs);
    }

    [Fact]
    public void AWindowOnAnotherFloorIsAtNoCornerOfIt()
    {
        var job = Bay("4", "4", "90").Room("Hall").Room("Loft").Say("W01", WindowFacts.Room, "Hall").Say("W02", WindowFacts.Room, "Loft");
        job.SayOf("Hall", RoomFacts.Floor, "Main");
        Assert.EndsWith("and that is in Loft.", job.FaultOf(Check, "W01").Message, StringComparison.Ordinal);
        Assert.EndsWith("and that is in Loft.", job.SayOf("Loft", RoomFacts.Floor, "main").FaultOf(Check, "W01").Message, StringComparison.Ordinal);
        Assert.Equal("W01 is said to meet W02 at a corner, and that is on another floor.",
            job.SayOf("Loft", RoomFacts.Floor, "Upper").FaultOf(Check, "W01").Message);
    }

    [Fact]
    public void AWindowInAnotherRoomIsAtNoCornerOfIt()
    {
        var job = Bay("4", "4", "90").Room("Hall").Room("Loft").Say("W01", WindowFacts.Room, "Hall").Say("W02", WindowFacts.Room, "Hall");
        Assert.IsType<Outcome.Fine>(job.Of(Check, "W01"));
        Assert.Equal("W01 in Hall is said to meet W02 at a corner, and that is in Loft.",
            job.Say("W02", WindowFacts.Room, "Loft").FaultOf(Check, "W01").Message);
    }

    [Fact]
    public void AtACornerOfTwoRoomsTheUnitsStillRunIntoEachOther()
    {
        var job = Bay("3", "3", "90").Room("Hall").Room("Loft").Say("W01", WindowFacts.Room, "Hall").Say("W02", WindowFacts.Room, "Loft");
        Assert.Equal(2, Check.Run(job.House).Count(r => r.Outcome is Outcome.Found));
    }

    [Fact]
    public void TwoWindowsAreNotEachAtTheRightOfTheOther()
    {
        var job = Bay("4", "4", "90").Say("W02", WindowFacts.MeetsRight, "W01");
        Assert.Equal("W01 and W02 are each said to meet the other at its right: one of them is at the left.", job.FaultOf(Check, "W01").Message);
        Assert.Equal("W02 and W01 are each said to meet the other at its right: one of them is at the left.", job.FaultOf(Check, "W02").Message);
    }

    [Fact]
    public void OneWindowIsAtTheRightOfOneOnly()
    {
        var job = Jobs.Measured("W03", Bay("4", "4", "90")).Room("Hall");
        foreach (var tag in (string[])["W01", "W02", "W03"])
            job.Say(tag, WindowFacts.Room, "Hall");
        Assert.IsType<Outcome.Fine>(job.Of(Check, "W01"));
        Assert.Equal("W01 and W03 are both said to meet W02 at their right: it has one left end.",
            job.Say("W03", WindowFacts.MeetsRight, "W02").FaultOf(Check, "W01").Message);
    }

    [Fact]
    public void OneOfTheTwoMayMakeRoomForBoth() => Assert.IsType<Outcome.Fine>(Bay("1", "4", "90").Of(Check, "W01"));

    // 3 in / tan(67.5 degrees) is 1.2426 in: with the overlap of 1 in the openings must begin 2.2426 in from the corner.
    [Theory]
    [InlineData("2 1/4", true)]
    [InlineData("2 15/64", false)]
    public void AnEightSidedBayNeedsLess(string toCorner, bool fine) => Assert.Equal(fine, Bay(toCorner, toCorner, "135").Of(Check, "W01") is Outcome.Fine);

    [Fact]
    public void AUnitThatPassesTheCornerIsAStop() => Assert.Equal("W02 ends 1/2\" past the corner.", Bay("4", "1/2", "135").FaultOf(Check, "W01").Message);

    [Fact]
    public void ACornerThatPointsIntoTheRoomIsNoTrouble() => Assert.IsType<Outcome.Fine>(Bay("1", "1", "225").Of(Check, "W01"));

    // A 3 in fascia at a setback of 1 1/2 in is inside a reveal of 5 in, and stands 1 in out of one of 2 in.
    [Fact]
    public void WhatIsInsideItsRevealIsInNobodysWay()
    {
        var job = Bay("0", "0", "90").Say("W01", WindowFacts.Mount, "inside").Say("W02", WindowFacts.Mount, "inside");
        Assert.IsType<Outcome.Fine>(job.Of(Check, "W01"));
        job.Say("W01", WindowFacts.Depth, "2 1/2").Say("W02", WindowFacts.Depth, "2 1/2");
        Assert.Contains("stands out 1/2\"", job.FaultOf(Check, "W01").Message, StringComparison.Ordinal);
    }

    [Fact]
    public void AWindowThatMeetsNoneHasNoCorner() => Assert.Empty(Check.Run(Bay("4", "4", "90").Say("W01", WindowFacts.MeetsRight, "").House));

    [Fact]
    public void AnUnknownAngleIsNotAPass() => Assert.Equal("corner angle, right", Missing(Bay("4", "4", "90").Forget("W01", WindowFacts.CornerAngle)));

    [Fact]
    public void AnUnknownDistanceOfTheOtherIsNotAPass() =>
        Assert.Equal("to corner, left of W02", Missing(Bay("4", "4", "90").Forget("W02", WindowFacts.ToCornerLeft)));

    [Fact]
    public void AnUnknownHeadCoverIsNotAPass() => Assert.Equal("head cover of W02", Missing(Bay("4", "4", "90").Forget("W02", UnitFacts.HeadCover)));

    private static string Missing(TestJob job) => job.MissingOf(Check, "W01");

    private static TestJob Bay(string toCornerOfFirst, string toCornerOfSecond, string angle)
    {
        var job = Jobs.Measured("W02", Jobs.Measured("W01"));
        foreach (var tag in (string[])["W01", "W02"])
            job.Say(tag, WindowFacts.Mount, "outside").Say(tag, WindowFacts.OverlapEachSide, "1");
        return job.Say("W01", WindowFacts.MeetsRight, "W02").Say("W01", WindowFacts.CornerAngle, angle).Say("W01", WindowFacts.ToCornerRight, toCornerOfFirst)
            .Say("W02", WindowFacts.ToCornerLeft, toCornerOfSecond);
    }

    // On a straight wall only the overlaps count, of 1 in each here; a head cover is not asked for.
    [Fact]
    public void OnOneWallNeighboursThatJustTouchAreFine() =>
        Assert.IsType<Outcome.Fine>(Bay("3/4", "1 1/4", "180").Forget("W01", UnitFacts.HeadCover).Of(Check, "W01"));

    [Fact]
    public void OnOneWallNeighboursThatWantOnePlaceAreAStop()
    {
        var found = Bay("3/4", "1 3/16", "180").FaultOf(Check, "W01");
        Assert.Equal("W01 and W02 hang on one wall with 1 15/16\" between their openings, and together reach 2\" over it.", found.Message);
        Assert.Equal("Take 1/16\" or more off their overlaps together, or mount one of the two inside.", found.Mend);
    }

    [Fact]
    public void OnOneWallAnUnknownDistanceIsNotAPass() =>
        Assert.Equal("to corner, left of W02", Bay("1", "1", "180").Forget("W02", WindowFacts.ToCornerLeft).MissingOf(Check, "W01"));

    [Fact]
    public void AWindowThatMeetsItselfIsASlip() => Assert.Equal("W01 is said to meet itself at a corner on the right.",
        Jobs.Walked().Say("W01", WindowFacts.MeetsRight, "W01").Fault(Check, "W01").Message);

    // The generic roller is 4 in deep without a cover, and its neighbor's fascia 3 in: alike, both would need what the deeper one does.
    [Fact]
    public void OfTwoThatStandOutUnlikeTheDeeperIsTold()
    {
        var found = Bay("3", "3", "90").Say("W02", UnitFacts.HeadCover, "None").FaultOf(Check, "W01");
        Assert.Contains("W02 ends 2\" from it and stands out 4\"", found.Message, StringComparison.Ordinal);
        Assert.Contains(("alike, each would need", "4 in"), found.Working!.Inputs);
    }

    [Fact]
    public void ACoverOfUnknownDepthIsNotAPass() =>
        Assert.Equal("depth of Fascia 3 in in the kit", Missing(Bay("4", "4", "90").SayOf("Fascia 3 in", HeadCoverFacts.Depth, "")));

    [Fact]
    public void AWindowWhoseUnitWasTakenAwayMeetsNobody()
    {
        var job = Bay("1", "1", "90");
        Assert.Empty(Check.Run(job.Do(RemoveItems.Remove(job.House, job.Unit("W01").Item)).House));
    }

    // Only the overlap of the one outside counts, 1 in; the other takes nothing, whatever is still written of its overlap.
    [Theory]
    [InlineData("W01", "W02", "1", true)]
    [InlineData("W01", "W02", "15/16", false)]
    [InlineData("W02", "W01", "1", true)]
    [InlineData("W02", "W01", "15/16", false)]
    public void OnOneWallAnInsideMountTakesNothing(string outside, string inside, string between, bool fine)
    {
        var job = Bay(between, "0", "180").Say(inside, WindowFacts.Mount, "inside");
        Assert.Equal(fine, job.Of(Check, "W01") is Outcome.Fine);
        Assert.Equal(fine, job.Forget(inside, WindowFacts.OverlapEachSide).Of(Check, "W01") is Outcome.Fine);
        Assert.Empty(Check.Run(job.Say(outside, WindowFacts.Mount, "inside").House));
    }

    [Theory]
    [InlineData("W01", "mount", "mount")]
    [InlineData("W01", "overlap-each-side", "overlap each side")]
    [InlineData("W02", "mount", "mount of W02")]
    [InlineData("W02", "overlap-each-side", "overlap each side of W02")]
    public void OnOneWallWhatIsBlankIsNamedWithItsWindow(string tag, string fact, string missing) =>
        Assert.Equal(missing, Missing(Bay("1", "1", "180").Forget(tag, FactTable.Find(ItemKind.Window, fact)!)));
}
