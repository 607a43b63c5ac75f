using TrimOut.Core.Checks;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;
using TrimOut.Core.Phases;
using TrimOut.Papers.TradePapers;

namespace TrimOut.Papers.Tests.TradePapers;

public class ReceivingListTests
{
    [Fact]
    public void WhatIsWrittenInByPenStandsInTheOrderInWhichTheWalkAsksForIt()
    {
        var asked = StepList.All.Where(s => s.Phase == Phase.Receive && s.Subject == ItemKind.Unit).SelectMany(s => s.Evidence).ToList();
        Assert.NotEmpty(asked);
        Assert.Equal(asked, ReceivingList.WrittenIn);
        var data = SampleJobs.Data("canal-house");
        var page = ReceivingList.Paper.Page(data);
        Assert.Equal(asked.Select(f => f.Label), page.QuerySelectorAll("h2").Single(h => h.TextContent == "Boxes")
            .ParentElement!.QuerySelectorAll("table").First(t => t.QuerySelector("th")!.TextContent == "Unit").QuerySelectorAll("th")
            .Select(h => h.TextContent).SkipWhile(h => h != UnitFacts.BoxLabel.Label).Take(asked.Count));
        Assert.Equal(Progress.Walkers(data.House).OfType<Unit>().Select(u => u.Tag), page.TableUnder("Boxes").Select(r => r[0]));
    }

    /// <summary>The maker made the box by the order, whatever was typed over it since.</summary>
    [Theory]
    [InlineData("receiving-list")]
    [InlineData("hang-sheet")]
    public void TheOrderedSizeIsThatOfTheOrder(string id)
    {
        var job = FinishedHouse.Build();
        var ordered = Size();
        Assert.DoesNotContain("typed over", ordered, StringComparison.Ordinal);
        job.Say("W01", UnitFacts.OrderWidth, "20\"");
        Assert.Equal($"{ordered}; typed over since: 20\" x 60 1/2\"", Size());

        string Size() => PaperList.Find(id)!.Page(FinishedHouse.Data(job.Scribe.Log)).QuerySelectorAll("td").Select(c => c.TextContent)
            .First(c => c.StartsWith("45 3/8\" x 60 1/2\"", StringComparison.Ordinal)).Replace(UncheckedValues.Mark, "", StringComparison.Ordinal);
    }

    [Fact]
    public void ABoxThatDidNotArriveWasNotSeenAndADamagedOneTheMakerMayPutRight()
    {
        var job = FinishedHouse.Build().Say("W03", UnitFacts.Damage, "dent").Say("W01", UnitFacts.Arrival, "not arrived");
        foreach (var written in ReceivingList.WrittenIn.Where(f => job.Unit("W01").Item.Latest(f)?.Stored is not null).ToList())
            job.Say("W01", written, "");
        var page = ReceivingList.Paper.Page(new PaperData(job.Scribe.Log, FinishedHouse.Day, CheckReport.Of(job.House)));
        Assert.Equal(["did not arrive", "☒"], page.TableUnder("Boxes").Where(r => r[0] is "W01" or "W03").Select(r => r[^1]));
        Assert.Equal([("W01", "yes"), ("W03", "yes, or what the maker puts right")],
            page.TableUnder("Not here, and to reorder").Select(r => (r[0], r[^1])));
    }

    /// <summary>Whoever holds a tape to the unit knows whether it is to be narrower than what was ordered.</summary>
    [Fact]
    public void BesideTheOrderedSizeStandsWhatItsWidthIs()
    {
        var page = ReceivingList.Paper.Page(SampleJobs.Data("orchard-cottage"));
        var heads = page.QuerySelectorAll("table").First(t => t.QuerySelector("th")!.TextContent == "Unit").QuerySelectorAll("thead th")
            .Select(h => h.TextContent).ToList();
        Assert.Equal(["Ordered size", "Width is"], heads.Skip(2).Take(2));
        Assert.All(page.TableUnder("Boxes"), r => Assert.Equal(r[0] == "W08" ? "made" : "opening", r[3]));
    }
}
