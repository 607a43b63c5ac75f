using TrimOut.Core.Checks;
using TrimOut.Core.Facts;
using TrimOut.Papers.CrewPapers;

namespace TrimOut.Papers.Tests.CrewPapers;

public class TestRecordTests
{
    /// <summary>Whoever powers a 12 V motor from 24 V by this paper burns it: of a kind that fits no panel, and of a run that does not fit its own.</summary>
    [Fact]
    public void AMotorOfOtherVoltsThanItsPanelIsAStopAtItsHead()
    {
        Assert.Contains("is made for 12 V", Head(SampleJobs.Data("ridge-house")), StringComparison.Ordinal);
        var job = FinishedHouse.Build().SayOf("Roller", CoveringKindFacts.MotorVolts, "12").SayOf("Cellular", CoveringKindFacts.MotorVolts, "12");
        Assert.DoesNotContain("P1 gives", Head(Data()), StringComparison.Ordinal);
        job.SayOf("Cellular", CoveringKindFacts.MotorVolts, "24");
        Assert.Contains(" for 24 V; P1 gives 12 V", Head(Data()), StringComparison.Ordinal);

        PaperData Data() => new(job.Scribe.Log, FinishedHouse.Day, CheckReport.Of(job.House));
        string Head(PaperData data) => TestRecord.Paper.Write(data).Markdown.Split("\n## ")[0];
    }

    /// <summary>What the meter shows has its leads in it, and the figure that it is held against too: else a good cable is taken for a bad joint.</summary>
    [Fact]
    public void TheLeadsOfTheMeterAreInWhatItShouldRead()
    {
        var job = new Testing.TestJob().Window("W01");
        job.Legs("W01", ("100 ft", CablePlace.InWall)).Say("W01", RunFacts.Cable, "16/2").Say("W01", RunFacts.TailAtWindow, "36\"")
            .Say("W01", RunFacts.TailAtPanel, "36\"");
        var without = Expects();
        job.SayOf("", HouseFacts.MeterLeads, "0.1");
        Assert.Equal(without + 0.1m, Expects());

        decimal Expects() => decimal.Parse(TestRecord.Paper.Page(FinishedHouse.Data(job.Scribe.Log)).TableUnder("Loop tests").Single()[3].Split(' ')[0],
            System.Globalization.CultureInfo.InvariantCulture);
    }

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
