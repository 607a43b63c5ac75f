using TrimOut.Core.Checks;
using TrimOut.Core.Facts;
using TrimOut.Papers.TradePapers;
using TrimOut.Testing;

namespace TrimOut.Papers.Tests.TradePapers;

public class PartsListTests
{
    // April 20 less 10 days is April 10.
    [Theory]
    [InlineData("10", "2026-04-10", "2026-04-10")]
    [InlineData("10", "2026-04-11", "late: 2026-04-10")]
    [InlineData(null, "2026-04-20", "–")]
    [InlineData(null, "2026-04-21", "late")]
    public void WhatIsStillToBeOrderedAfterItsLastDaySaysThatItIsLate(string? lead, string today, string said)
    {
        var job = new TestJob().Window("W01").SayOf("", HouseFacts.DrywallOn, "2026-04-20");
        if (lead is not null)
            job.SayOf("", HouseFacts.PartsLead, lead);
        var day = DateOnly.ParseExact(today, "yyyy-MM-dd", null);
        var page = PartsList.Paper.Page(new PaperData(job.Scribe.Log, day, CheckReport.Of(job.House)));
        Assert.Equal(said, page.TableUnder("Call-off by phase").Single(r => r[0] == "Rough-in")[2]);
        // A column in which nothing stands is left out.
        Assert.All(page.TableUnder("Cable"), r => Assert.Equal(said, r.Count > 5 ? r[4] : "–"));
        job.SayOf("", HouseFacts.RoughInPartsOn, "2026-03-01");
        Assert.DoesNotContain("late", PartsList.Paper.Write(new PaperData(job.Scribe.Log, day, CheckReport.Of(job.House))).Markdown,
            StringComparison.Ordinal);
    }
}
