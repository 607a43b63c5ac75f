using TrimOut.Core.Checks.Cables;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Cables;

public class LoopTestLeftOutTests
{
    private static readonly LoopTestLeftOut Check = new();

    public static Example Finds => new(() => Noted(), j => j.Mark("W01", "in-the-way-noted"));

    public static Example Passes => new(() => Noted(), j => j.Mark("W01", "cable-found"));

    [Fact]
    public void WhileTheWallIsOpenThereIsTime() => Jobs.Walked().Silent(Check, "W01");

    [Fact]
    public void AWallThatIsClosedWithoutATestIsACaution() =>
        Assert.Equal("The wall is closed and the loop was never read.", Jobs.Walked().Mark("W01", "cable-found").Fault(Check, "W01").Message);

    [Fact]
    public void AWindowThatIsMeasuredWithoutTheSecondTestIsACaution()
    {
        var job = Noted().Mark("W01", "in-the-way-noted");
        Assert.Equal(RunFacts.SecondLoop.Name, job.Fault(Check, "W01").Mends.Field);
        job.Say("W01", RunFacts.SecondLoop, "0.57").Fine(Check, "W01");
    }

    [Fact]
    public void AUnitThatIsGivenToAPanelOnceItsWallIsClosedHasNoCable()
    {
        var job = Battery().Mark("W01", "in-the-way-noted").Say("W01", UnitFacts.Power, "panel");
        var found = job.Fault(Check, "W01");
        Assert.Equal("It is to be fed by a panel, its wall is closed, and nothing is written of a cable to it.", found.Message);
        Assert.Equal(UnitFacts.Power.Name, found.Mends.Field);
        job.Say("W01", UnitFacts.Power, "plug-in").Silent(Check, "W01");
    }

    [Fact]
    public void TheWallsOfARoomAreClosedTogether()
    {
        var job = Jobs.Roughed("W02", Battery()).Mark("W02", "cable-found");
        job.Silent(Check, "W01");
        Assert.StartsWith("It is to be fed by a panel", job.Say("W01", UnitFacts.Power, "panel").Fault(Check, "W01").Message, StringComparison.Ordinal);
    }

    [Fact]
    public void WhileTheWallsOfItsRoomAreOpenACableCanBePulled()
    {
        var job = Jobs.Roughed("W02", Battery()).Say("W01", UnitFacts.Power, "panel");
        job.Silent(Check, "W01");
        job.Window("W03", "Attic").Mark("W03", "cable-found").Silent(Check, "W01");
    }

    [Fact]
    public void ACableThatIsThereIsOnlyRead() => Assert.Equal("The wall is closed and the loop was never read.",
        Battery().Say("W01", UnitFacts.Power, "panel").Say("W01", RunFacts.TailAtWindow, "36\"").Mark("W01", "in-the-way-noted").Fault(Check, "W01").Message);

    private static TestJob Battery() => Jobs.Walked().Say("W01", UnitFacts.Power, "battery").Say("W01", WindowFacts.InTheWay, "none");

    private static TestJob Noted() => Jobs.Roughed().Say("W01", WindowFacts.InTheWay, "none");
}
