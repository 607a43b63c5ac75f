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

    [Fact]
    public void SeveralChangesAreTakenBackAsOneAndComeBackAsOne()
    {
        var job = new TestJob().Window("W01").Say("W01", UnitFacts.LeadSide, "r").Say("W01", UnitFacts.BoxLabel, "W01").Say("W01", UnitFacts.Serial, "77");
        var changes = job.Scribe.Log.Changes.Count;
        Assert.True(job.Scribe.Undo([job.Scribe.Log.Changes[^2], job.Scribe.Log.Changes[^3]]).Ok);
        Assert.Equal(changes + 1, job.Scribe.Log.Changes.Count);
        Assert.All([UnitFacts.LeadSide, UnitFacts.BoxLabel, (Fact)UnitFacts.Serial], f => Assert.Equal("", f.ShowOf(job.Unit("W01").Item, job.House)));
        Assert.True(job.Scribe.Redo().Ok);
        Assert.Equal(["W01", "77"], new Fact[] { UnitFacts.BoxLabel, UnitFacts.Serial }.Select(f => f.ShowOf(job.Unit("W01").Item, job.House)));
        Assert.True(job.Scribe.Undo().Ok);
        Assert.Equal("", job.Unit("W01").Show(UnitFacts.Serial));
        Assert.Equal("W01", job.Unit("W01").Show(UnitFacts.BoxLabel));
    }

    [Fact]
    public void AnUndoLeavesTheItemsThatItIsNotAboutAsTheyAre()
    {
        var job = new TestJob().Window("W01").Window("W02").Say("W01", UnitFacts.LeadSide, "r").Say("W02", UnitFacts.LeadSide, "l");
        var before = job.House;
        Assert.True(job.Scribe.Undo().Ok);
        var others = job.House.Items.Values.Where(i => !ReferenceEquals(i, before.Items[i.Place])).Select(i => i.Id);
        Assert.Equal([job.Unit("W02").Id], others);
        Assert.Null(job.Unit("W02").Item.Get(UnitFacts.LeadSide));
    }
}
