using AngleSharp.Html.Dom;
using TrimOut.Core.Facts;
using TrimOut.Papers.TradePapers;

namespace TrimOut.Papers.Tests.TradePapers;

public class PanelScheduleTests
{
    [Fact]
    public void TheMainsSideHasBoardBreakerRatingAndInputAndABlankForWhatNobodyNoted()
    {
        var mains = Tables().Single(t => t[0][0] == "Mains side").Skip(1).ToDictionary(r => r[0], r => r[1]);
        Assert.Equal(["Mechanical room, north wall", "Main board", "14", "15 A", "2 A", "______", "2 A"], new[]
        {
            "Hangs", "Board", "Breaker", "Breaker rating", "All else on that breaker", "Input volts, by its plate", "Input current at the most, by its plate",
        }.Select(k => mains[k]));
        var job = FinishedHouse.Build().SayOf("Invented supply", PanelTypeFacts.InputVolts, "100 to 240 V");
        Assert.Contains("100 to 240 V", PanelSchedule.Paper.Write(FinishedHouse.Data(job.Scribe.Log)).Markdown, StringComparison.Ordinal);
    }

    [Fact]
    public void WhatIsDoubtfulAtAPanelStandsAtTheHead() =>
        Assert.Contains("one breaker has one rating", PanelSchedule.Paper.Write(SampleJobs.Data("canal-house")).Markdown.Split("\n## ")[0],
            StringComparison.Ordinal);

    [Fact]
    public void EachOutputHasItsGaugeItsLengthAndTheVoltsAtEachCurrentByItsName()
    {
        var tables = Tables();
        var runs = tables.Single(t => t[0].Contains("Gauge"));
        Assert.Equal(["Output", "Unit", "Room", "Cable", "Gauge", "One way"], runs[0]);
        Assert.Equal(["1", "W01", "Kitchen", "16/2", "16 AWG"], runs[1][..5]);
        var loads = tables.Single(t => t[0].Contains("Moves together as"));
        Assert.Equal(["Running current", "Starting current", "Volts at the unit, at its running current", "Volts at the unit, at its starting current"],
            loads[0][3..]);
        Assert.Equal(["Bed pair, Bedside", "Bed pair, Bedside"], loads.Where(r => r[1].StartsWith("W02", StringComparison.Ordinal)).Select(r => r[2]));
        Assert.Equal(["W01", "W02A", "W02B"], loads.Skip(1).Select(r => r[1]).Order());
    }

    /// <summary>One press of a remote that moves units of no group starts them together all the same.</summary>
    [Fact]
    public void WhatOneRemoteMovesIsALoadToo()
    {
        var job = FinishedHouse.Build();
        foreach (var tag in (string[])["W02A", "W02B"])
            job.Say(tag, UnitFacts.Group, "");
        var page = PanelSchedule.Paper.Write(FinishedHouse.Data(job.Scribe.Log)).Markdown;
        Assert.Matches(@"Largest group starting at once +\| all that Bedside moves: 2 A", page);
        Assert.Matches(@"\| W02A +\| Bedside +\|", page);
    }

    [Fact]
    public void TheElectricianHasRoomToSign()
    {
        var page = PanelSchedule.Paper.Page(FinishedHouse.Data());
        Assert.Equal([["P1", "Sparks Example", "EL-0001", "2026-08-11", "______"]], page.TableUnder("Mains sign-off"));
    }

    private static List<List<string[]>> Tables() =>
        [.. PanelSchedule.Paper.Page(FinishedHouse.Data()).QuerySelectorAll("table").Cast<IHtmlTableElement>()
            .Select(t => t.Rows.Select(r => r.Cells.Select(c => c.TextContent).ToArray()).ToList())];

    [Fact]
    public void WhereAllUnitsTakeMoreThanThePanelGivesThatIsSaidBelowTheFigures()
    {
        const string Says = "All units at once take more than all outputs together give";
        Assert.DoesNotContain(Says, PanelSchedule.Paper.Write(FinishedHouse.Data()).Markdown, StringComparison.Ordinal);
        var job = FinishedHouse.Build().SayOf("Invented supply", PanelTypeFacts.TotalCurrent, "1");
        Assert.Matches(Says + ".*\u00A0\\?", PanelSchedule.Paper.Write(FinishedHouse.Data(job.Scribe.Log)).Markdown);
    }
}
