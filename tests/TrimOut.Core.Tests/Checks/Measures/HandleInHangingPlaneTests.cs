using TrimOut.Core.Checks.Measures;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Measures;

public class HandleInHangingPlaneTests
{
    private static readonly HandleInHangingPlane Check = new();

    public static Example Finds => new(() => Jobs.Measured(), j => j.Say("W01", WindowFacts.InTheWay, "crank").Say("W01", WindowFacts.InTheWayDepth, "2\""));

    public static Example Passes => new(() => Jobs.Measured(), j => j.Say("W01", WindowFacts.InTheWay, "crank").Say("W01", WindowFacts.InTheWayDepth, "1\""));

    // The generic roller takes 1 1/2 in of setback and 2 1/2 in of bracket: 4 in of a depth of 5 in.
    [Fact]
    public void AHandleOfAnInchIsFine() => Handle("1").Fine(Check, "W01");

    [Fact]
    public void ALittleMoreIsAStop() =>
        Assert.Equal("crank: it stands out 1 1/16\" in a depth of 5\", and the unit takes up 4\" from the room face: 1/16\" too much.", Handle("1 1/16")
            .Fault(Check, "W01").Message);

    [Fact]
    public void OutsideItMayStandOutAsFarAsTheRoomFace()
    {
        Handle("5").Say("W01", WindowFacts.Mount, "outside").Fine(Check, "W01");
        Handle("5 1/64").Say("W01", WindowFacts.Mount, "outside").Fault(Check, "W01");
    }

    [Fact]
    public void NothingInTheWayIsFine() => Jobs.Measured().Fine(Check, "W01");

    // The roller takes up 4 in, and the depth is 5 in.
    [Theory]
    [InlineData("1", null, null)]
    [InlineData("1 1/16", null, "3 15/16\" of a depth of 5\"")]
    [InlineData(null, "4", null)]
    [InlineData(null, "3 15/16", "3 15/16\" of a depth of 3 15/16\"")]
    public void NothingInTheWayThatWasMeasuredAllTheSameIsJudgedAsIfItWereThere(string? standsOut, string? toFirstThing, string? found)
    {
        var job = standsOut is not null ? Handle(standsOut) : Jobs.Measured().Say("W01", WindowFacts.Depth, toFirstThing!)
            .Say("W01", WindowFacts.DepthTo, "first thing");
        job.Say("W01", WindowFacts.InTheWay, "none");
        if (found is null)
            job.Fine(Check, "W01");
        else
            Assert.Equal($"Nothing is said to be in the way, and yet {found} are left free; the unit takes up 4\" from the room face.",
                job.Fault(Check, "W01").Message);
    }

    [Fact]
    public void AThingOfUnknownDepthIsNotAPass() => Jobs.Measured().Say("W01", WindowFacts.InTheWay, "crank").Lacks(Check, "W01", "sticks out by");

    [Fact]
    public void NobodyLookedIsNotAPass() => Jobs.Walked().Lacks(Check, "W01", "obstructions");

    private static TestJob Handle(string depth) => Jobs.Measured().Say("W01", WindowFacts.InTheWay, "crank").Say("W01", WindowFacts.InTheWayDepth, depth);

    [Fact]
    public void WhatADepthWasReadToIsNotTakenOffTwice()
    {
        var job = Handle("1").Say("W01", WindowFacts.Depth, "4");
        job.Fault(Check, "W01");
        job.Say("W01", WindowFacts.DepthTo, "first thing").Fine(Check, "W01");
        Assert.Contains("read the depth again", job.Say("W01", WindowFacts.Depth, "3 15/16").Fault(Check, "W01").Mend, StringComparison.Ordinal);
    }

    // Set back 2 in instead of the sheet's 1 1/2, the roller takes up 4 1/2 in of 5.
    [Fact]
    public void TheSetbackAsMeasuredCounts() => Handle("1").Say("W01", UnitFacts.Setback, "2").Fault(Check, "W01");

    [Fact]
    public void TheMendIsOneForTheMount()
    {
        var job = Handle("5 1/64");
        Assert.Equal("Change to a folding handle, set the unit back less, or mount it outside.", job.Fault(Check, "W01").Mend);
        Assert.Equal("Change to a folding handle, or bring the brackets forward.",
            job.Say("W01", WindowFacts.Mount, "outside").Fault(Check, "W01").Mend);
    }

    [Fact]
    public void TheWorkingTellsWhereBothAre() => Assert.Equal(
        "depth 5\", stands out 1 1/16\", its front from the room face 3 15/16\", rear of the unit from the room face 4\"",
        Handle("1 1/16").Fault(Check, "W01").Worked);

    [Fact]
    public void WhatIsMissingIsNamed()
    {
        Handle("1").Forget("W01", WindowFacts.Depth).Lacks(Check, "W01", "depth");
        Handle("1").Forget("W01", WindowFacts.Mount).Lacks(Check, "W01", "mount");
        Handle("1").Forget("W01", UnitFacts.Kind).Lacks(Check, "W01", "kind");
        Handle("1").SayOf("Roller", CoveringKindFacts.EndBracketBack, "").Lacks(Check, "W01", "bracket back of Roller in the kit");
        Handle("1").SayOf("Roller", CoveringKindFacts.Setback, "").Lacks(Check, "W01", "bracket setback of Roller in the kit");
    }

    [Fact]
    public void NothingThatSticksOutByNothingIsFineBeforeTheDepthIsRead() =>
        Handle("0").Say("W01", WindowFacts.InTheWay, "none").Forget("W01", WindowFacts.Depth).Fine(Check, "W01");
}
