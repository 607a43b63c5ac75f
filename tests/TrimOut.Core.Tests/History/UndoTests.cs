using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Rough;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Phases;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.History;

public class UndoTests
{
    [Fact]
    public void UndoAndRedoTakeAValueBackAndForth()
    {
        var job = new TestJob().Window("W01").Say("W01", UnitFacts.LeadSide, "r");
        Assert.IsType<Outcome.Found>(job.Judge(new LeadAwayFromMotor(), "W01"));
        Assert.True(job.Scribe.Undo().Ok);
        Assert.IsType<Outcome.NotChecked>(job.Judge(new LeadAwayFromMotor(), "W01"));
        Assert.True(job.Scribe.Redo().Ok);
        Assert.IsType<Outcome.Found>(job.Judge(new LeadAwayFromMotor(), "W01"));
        Assert.Equal(Phase.WalkThrough, Progress.Current(job.Unit("W01")));
        var again = HouseLog.Of(job.Scribe.Log.Changes.Select(c => ChangeJson.Read(ChangeJson.Write(c)).Value).Reverse()).Value;
        Assert.Equal(job.House.Items.Values.Select(i => i.Id).Order(), again.House.Items.Values.Select(i => i.Id).Order());
    }
}
