using TrimOut.Core.Checks;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Papers.CrewPapers;

namespace TrimOut.Papers.Tests.CrewPapers;

public class ServiceFormTests
{
    /// <summary>A reading of today that is held against one that was wrong on the day itself sends the crew into the wall.</summary>
    [Fact]
    public void AReadingThatAStopDoubtsIsSaidToBeInDoubt()
    {
        var job = FinishedHouse.Build();
        Assert.DoesNotContain("in doubt", Loop(), StringComparison.Ordinal);
        job.Say("W01", RunFacts.SecondLoop, "9.5 ohm");
        var loop = FieldRef.To(job.Unit("W01").Run!.Item, RunFacts.SecondLoop);
        Assert.Contains(CheckReport.Of(job.House).Findings, f => f.Found.Mends == loop);
        Assert.Equal("9.5 ohm, in doubt", Loop());

        string Loop() => ServiceForm.Paper.Page(new PaperData(job.Scribe.Log, FinishedHouse.Day, CheckReport.Of(job.House)))
            .QuerySelectorAll("table").Single(t => t.QuerySelectorAll("th").Any(h => h.TextContent == "Loop then"))
            .QuerySelectorAll("tbody tr").Select(r => r.Children.Select(c => c.TextContent).ToList()).Single(r => r[0] == "W01")[1];
    }

    [Fact]
    public void WhatWasDoneInServiceStandsOnIt()
    {
        var served = ServiceForm.Paper.Page(FinishedHouse.Data(ServedHouse.Build().Scribe.Log)).TableUnder("What was done in service");
        Assert.Contains(served, r => r.Contains("replaced") && r.Contains("SN-NEW"));
        Assert.DoesNotContain("replaced", string.Join(' ', FormOf(FinishedHouse.Data())), StringComparison.Ordinal);

        static IEnumerable<string> FormOf(PaperData data) => ServiceForm.Paper.Page(data).QuerySelectorAll("td").Select(c => c.TextContent);
    }
}
