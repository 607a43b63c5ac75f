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

    private static TestJob Noted() => Jobs.Roughed().Say("W01", WindowFacts.InTheWay, "none");
}
