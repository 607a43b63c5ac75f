using TrimOut.Core.Facts;
using TrimOut.Papers.CrewPapers;

namespace TrimOut.Papers.Tests.CrewPapers;

public class TestRecordTests
{
    /// <summary>Whichever of several readings was taken, whoever took it stands beside it.</summary>
    [Fact]
    public void WhoTookAReadingStandsBesideItWhicheverItIs()
    {
        var job = FinishedHouse.Build();
        job.Say("W01", RunFacts.FirstToFrame, "open").Say("W01", RunFacts.LoadedVolts, "");
        var page = TestRecord.Paper.Page(FinishedHouse.Data(job.Scribe.Log));
        var apart = page.TableUnder("Far end open").Single(r => r[0] == "W01");
        Assert.Equal("open", apart[2]);
        Assert.Contains("2026", apart[3], StringComparison.Ordinal);
        var volts = page.TableUnder("Power tests").Single(r => r[0] == "W01");
        Assert.Equal("______", volts[6]);
        Assert.Contains("2026", volts[8], StringComparison.Ordinal);
    }
}
