using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Papers.TradePapers;
using TrimOut.Testing;

namespace TrimOut.Papers.Tests.TradePapers;

public class SheetsInUseTests
{
    [Fact]
    public void EachPartThatIsUsedStandsOnceWithItsSheetItsEditionAndWhoCheckedIt()
    {
        var job = new TestJob().Window("W01").Window("W02").Say("W01", RunFacts.Cable, "16/2");
        foreach (var (name, said) in new[] { (AboutSheet.Sheet, "Sheet 4"), (AboutSheet.Edition, "rev C") })
            job.SayOf("Roller", AboutSheet.Of(ItemKind.CoveringKind, name), said);
        job.Do(KitCheck.All(job.House, job.House.Units[0].Kind!.Item));
        var rows = PartsList.Paper.Page(FinishedHouse.Data(job.Scribe.Log)).TableUnder("Makers' sheets");
        Assert.Equal(["Roller", "16/2"], rows.Select(r => r[0]));
        Assert.Equal(["Sheet 4", "rev C", "Test crew", job.Scribe.Log.Changes[^1].SaidAt.ToString("yyyy-MM-dd", null)], rows[0][1..]);
        Assert.Equal(["not yet", "not yet", "–", "–"], rows[1][1..]);
    }
}
