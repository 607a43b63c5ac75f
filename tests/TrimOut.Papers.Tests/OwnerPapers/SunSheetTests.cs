using System.Xml.Linq;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Sun;
using TrimOut.Papers.Templates;
using TrimOut.Testing;

namespace TrimOut.Papers.Tests.OwnerPapers;

public class SunSheetTests
{
    private static readonly Paper Sheet = PaperList.Find("sun-sheet")!;
    private static readonly SunYear Denver = SunYear.Of(new Place(39.74, -104.99), HouseZone.Find("America/Denver")!);

    [Fact]
    public void EachSideHasItsTimesToCloseAndOpenMonthByMonth()
    {
        var table = Sheet.Page(Data(Job())).TableUnder("When to close and open");
        Assert.Equal(12, table.Count);
        var (east, south) = (FacadeYear.Of(Denver, new Facade(90)), FacadeYear.Of(Denver, new Facade(180, 15)));
        Assert.All(table.Index(), row => Assert.Equal([Shown(east.Months[row.Index]), Shown(south.Months[row.Index])], row.Item.Skip(1)));
    }

    [Fact]
    public void ASideThatTheSunNeverReachesStaysOpen() =>
        Assert.All(Sheet.Page(Data(Job().Say("W03", WindowFacts.Horizon, "80"))).TableUnder("When to close and open"), r => Assert.Equal("stays open", r[2]));

    /// <summary>A box of the drawing is as wide as its hours: 12 of its units are an hour.</summary>
    [Fact]
    public void TheChartHasTheDirectSunOfEachMonthAtItsHours()
    {
        var paper = Sheet.Write(Data(Job()));
        Assert.Equal(2, paper.Drawings.Count);
        var gray = XDocument.Parse(paper.Drawings.First().Value).Descendants()
            .Where(e => e.Name.LocalName == "rect" && (string?)e.Attribute("fill") == "#e8e8e8")
            .Select(e => (From: Minutes(e, "x") - 36 * 2.5, Long: Minutes(e, "width"))).ToList();
        var direct = FacadeYear.Of(Denver, new Facade(90)).Months.SelectMany(m => m.Direct).ToList();
        Assert.Equal(direct.Count, gray.Count);
        Assert.All(direct.Zip(gray), pair =>
        {
            Assert.Equal(pair.First.From, pair.Second.From, 1.0);
            Assert.Equal(pair.First.To - pair.First.From, pair.Second.Long, 1.0);
        });

        static double Minutes(XElement box, string name) => (double)box.Attribute(name)! * 2.5;
    }

    /// <summary>Denver lies west: with the sign of the east it is in Asia, where it is day while Denver sleeps.</summary>
    [Theory]
    [InlineData("sun-sheet")]
    [InlineData("binder")]
    public void WhatIsOpenAboutThePlaceIsSaidBeforeTheTimes(string paper)
    {
        var says = "Put right first where the house stands.";
        var inAsia = Data(Job().SayOf("Test house", HouseFacts.Longitude, "104.99"));
        Assert.Contains(says, PaperList.Find(paper)!.Page(inAsia).Body!.TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain(says, PaperList.Find(paper)!.Page(Data(Job())).Body!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void AHouseThatDoesNotSayWhereItStandsIsToldWhatToTypeAndWhere()
    {
        var job = new TestJob().Window("W01").Say("W01", WindowFacts.Facing, "E");
        var text = Sheet.Write(Data(job)).Markdown;
        Assert.Contains("Still to type: Latitude, Longitude, Time zone.", text, StringComparison.Ordinal);
        Assert.Contains("key 0", text, StringComparison.Ordinal);
        Assert.DoesNotContain("| January", text, StringComparison.Ordinal);
        job.SayOf("", HouseFacts.Latitude, "39.74");
        Assert.Contains("Still to type: Longitude, Time zone.", Sheet.Write(Data(job)).Markdown, StringComparison.Ordinal);
    }

    [Fact]
    public void TheBookHasTheTimesAndSaysWhereTheChartsStandOnceThereAreAny()
    {
        var book = Binder.Paper.Write(Data(Job())).Markdown;
        Assert.Contains("stand on the sun sheet", book, StringComparison.Ordinal);
        Assert.All(Sheet.Write(Data(Job())).Markdown.Split('\n').Where(l => l.StartsWith("| June |", StringComparison.Ordinal)).Take(1),
            june => Assert.Contains(june, book, StringComparison.Ordinal));
        Assert.DoesNotContain("sun sheet", Binder.Paper.Write(Data(new TestJob().Window("W01"))).Markdown, StringComparison.Ordinal);
    }

    [Fact]
    public void WindowsWithoutADirectionAreNamed() =>
        Assert.Contains("nobody noted where they look out to: W04.", Sheet.Write(Data(Job().Window("W04"))).Markdown, StringComparison.Ordinal);

    [Fact]
    public void WhatStandsBeforeASideIsSaidAndSidesOfOneDirectionAreTold()
    {
        var job = Job().Window("W04").Say("W04", WindowFacts.Facing, "S").Say("W04", WindowFacts.RoughHeight, "60").Say("W04", WindowFacts.OverhangDepth, "36");
        var text = Sheet.Write(Data(job)).Markdown;
        Assert.Contains("Horizon: 15 degrees above level.", text, StringComparison.Ordinal);
        Assert.Contains("Overhang: stands out 36\"", text, StringComparison.Ordinal);
        Assert.Contains("### Side S, 1", text, StringComparison.Ordinal);
        Assert.Contains("### Side S, 2", text, StringComparison.Ordinal);
    }

    [Fact]
    public void TimersStandBesideTheMonthsTheyRunIn()
    {
        var job = Job().Add(ItemKind.Remote, "R1");
        job.Do(AddItems.Preset(job.House.Remotes[0], "Sun")).SayOf("Sun", PresetFacts.Position, "0", job.Unit("W01").Id)
            .SayOf("Sun", PresetFacts.RunsAt, "6:30 am").SayOf("Sun", PresetFacts.RunsFrom, "may").SayOf("Sun", PresetFacts.RunsTo, "aug");
        Assert.Equal(["Sun", "R1", "06:30", "May – August", "W01", "–"], Sheet.Page(Data(job)).TableUnder("What the timers do").Single());
    }

    [Theory]
    [InlineData("de", "Januar", "bleibt offen")]
    [InlineData("es", "enero", "queda abierta")]
    public void ItHasOtherLanguages(string language, string january, string open)
    {
        var text = Sheet.Write(Data(Job().Say("W03", WindowFacts.Horizon, "80")), PaperTemplate.In(Sheet, language).Value).Markdown;
        Assert.Contains(january, text, StringComparison.Ordinal);
        Assert.Contains(open, text, StringComparison.Ordinal);
    }

    private static PaperData Data(TestJob job) => PaperData.Of(job.Scribe.Log, FinishedHouse.Day);

    private static TestJob Job() => new TestJob().SayOf("", HouseFacts.Latitude, "39.74").SayOf("", HouseFacts.Longitude, "-104.99")
        .SayOf("", HouseFacts.TimeZone, "denver")
        .Window("W01").Say("W01", WindowFacts.Facing, "E").Window("W02").Say("W02", WindowFacts.Facing, "90")
        .Window("W03").Say("W03", WindowFacts.Facing, "S").Say("W03", WindowFacts.Horizon, "15");

    private static string Shown(FacadeMonth month) =>
        month.Closed.IsEmpty ? "stays open" : string.Join(", ", month.Closed.Select(c => $"{c.FromShown}–{c.ToShown}"));
}
