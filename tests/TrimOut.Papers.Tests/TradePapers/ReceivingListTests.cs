using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
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
