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
        Assert.Equal("not yet", rows[1][1]);
        Assert.StartsWith("nobody: ", rows[1][3], StringComparison.Ordinal);
        Assert.Equal("–", rows[1][4]);
    }

    /// <summary>A name stands for a whole sheet only where the whole sheet was read.</summary>
    [Fact]
    public void NobodyStandsForValuesThatWereNotCheckedOrForAnotherEdition()
    {
        var job = new TestJob().Window("W01");
        job.SayOf("Roller", AboutSheet.Of(ItemKind.CoveringKind, AboutSheet.Edition), "A");
        job.Do(KitCheck.All(job.House, job.House.Units[0].Kind!.Item)).SayOf("Roller", CoveringKindFacts.Widest, "97")
            .SayOf("Roller", AboutSheet.Of(ItemKind.CoveringKind, AboutSheet.HeldBy), "Bo");
        string[] Row() => [.. PartsList.Paper.Page(FinishedHouse.Data(job.Scribe.Log)).TableUnder("Makers' sheets").Single()];
        Assert.Matches("^Test crew; 1 of [0-9]+ not checked\u00A0\\?$", Row()[3]);
        job.SayOf("Roller", AboutSheet.Of(ItemKind.CoveringKind, AboutSheet.Edition), "B");
        Assert.Matches("^nobody: ([0-9]+) of \\1 not checked\u00A0\\?$", Row()[3]);
        Assert.Equal("–", Row()[4]);
    }
}
