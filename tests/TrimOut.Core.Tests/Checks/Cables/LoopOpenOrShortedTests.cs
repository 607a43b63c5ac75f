using TrimOut.Core.Checks.Cables;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Cables;

public class LoopOpenOrShortedTests
{
    private static readonly LoopOpenOrShorted Check = new();

    public static Example Finds => new(() => Jobs.Roughed(), j => j.Say("W01", RunFacts.FirstLoop, "open"));

    public static Example Passes => new(() => Jobs.Roughed(), j => j.Say("W01", RunFacts.FirstLoop, "0.57"));

    // 50 m of 1 mm2 solid have 1.81 ohm at 20 C (IEC 60228); 10 % and 0.1 ohm less are 1.529 ohm.
    [Fact]
    public void JustAboveThatIsNoPlainShort() => Read("1.529").Fine(Check, "W01");

    [Fact]
    public void AMilliohmLessIsAStop() => Assert.Equal(
        "The loop reads 1.528 ohm, as 42.2 m of 16/2 do; the run is 50 m: it is shorted on the way, this is another cable, or the legs are wrong.",
        Read("1.528").Fault(Check, "W01").Message);

    [Fact]
    public void AnOpenLoopIsAStopThatSaysWhatToDoWhileTheWallIsOpenAndAfter()
    {
        var job = Read("open");
        Assert.Contains("while the wall is open", job.Fault(Check, "W01").Mend, StringComparison.Ordinal);
        Assert.Contains("before the house is finished", job.Mark("W01", "cable-found").Fault(Check, "W01").Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void AMeterOfTenthsMakesNoShortOfItsTenths() =>
        Read("1.81").SayOf("Test house", HouseFacts.MeterStep, "0.1").Say("W01", RunFacts.FirstLoop, "1.51").Fine(Check, "W01");

    [Fact]
    public void ACableThatWasNotReadIsNotAPass() => Read("1.81").Forget("W01", RunFacts.FirstLoop).Lacks(Check, "W01", "first test, loop");

    [Fact]
    public void ARunOfUnknownLengthIsNotAPass() => Read("1.81").Forget("W01", RunFacts.TailAtPanel).Lacks(Check, "W01", "tail at panel");

    private static TestJob Read(string ohms) => Jobs.Walked("W01", Jobs.Metric())
        .SayOf("16/2", CableTypeFacts.Conductor, "1 mm2").SayOf("16/2", CableTypeFacts.Stranding, "solid").Say("W01", RunFacts.Cable, "16/2")
        .Legs("W01", ("48 m", CablePlace.InWall))
        .Say("W01", RunFacts.TailAtWindow, "1000 mm").Say("W01", RunFacts.TailAtPanel, "1000 mm").Say("W01", RunFacts.FirstLoop, ohms);

    [Fact]
    public void TheWorkingTellsWhatWasExpected()
    {
        var worked = Read("1.528").Fault(Check, "W01").Working!.Inputs;
        Assert.Contains(("length, one way", "50 m"), worked);
        Assert.Contains(("expected", "1.81 ohm"), worked);
        Assert.Contains(("read", "1.528 ohm"), worked);
    }

    [Fact]
    public void ACableOfUnknownMakeIsNotAPass()
    {
        Read("1.81").SayOf("16/2", CableTypeFacts.Stranding, "").Lacks(Check, "W01", "stranding of 16/2 in the kit");
        Read("1.81").SayOf("16/2", CableTypeFacts.Conductor, "").Lacks(Check, "W01", "conductor of 16/2 in the kit");
        Read("1.81").Forget("W01", RunFacts.Cable).Lacks(Check, "W01", "cable");
    }
}
