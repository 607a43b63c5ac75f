using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Decisions;

public class LeaveOutTests
{
    private readonly TestJob _job = new TestJob().Window("W01");

    [Fact]
    public void AWindowThatIsTakenInAgainSaysNoReasonAndTheHistoryDoes()
    {
        _job.Do(LeaveOut.Window(_job.House.FindTag("W01")!, "owner unsure")).Do(LeaveOut.TakeIn(_job.House.FindTag("W01")!));
        Assert.Equal(("yes", ""), Said());
        Assert.Contains("it was left out: owner unsure", _job.Scribe.Log.Changes[^1].What, StringComparison.Ordinal);
    }

    [Fact]
    public void SoItDoesWhereTheDetailIsTyped()
    {
        _job.Do(LeaveOut.Window(_job.House.FindTag("W01")!, "owner unsure")).SayOf("W01", WindowFacts.Covered, "yes");
        Assert.Equal(("yes", ""), Said());
    }

    [Fact]
    public void AReasonOfAWindowThatStaysOutStays()
    {
        _job.SayOf("W01", WindowFacts.NotCoveredBecause, "owner unsure").SayOf("W01", WindowFacts.Covered, "no");
        Assert.Equal(("no", "owner unsure"), Said());
    }

    private (string, string) Said() => (_job.House.FindTag("W01")!.Show(WindowFacts.Covered), _job.House.FindTag("W01")!.Show(WindowFacts.NotCoveredBecause));
}
