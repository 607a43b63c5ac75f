using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using AngleSharp.Html.Parser;
using Markdig;
using Markdig.Extensions.Tables;
using Markdig.Syntax;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;
using TrimOut.Testing;

namespace TrimOut.Papers.Tests;

public class BinderTests
{
    private static readonly MarkdownPipeline Tables = new MarkdownPipelineBuilder().UsePipeTables().Build();

    private static HouseLog Finished { get; } = FinishedHouse.Build().Scribe.Log;

    [Fact]
    public void TheSameHouseAndDayGiveTheSameBytes()
    {
        var again = FinishedHouse.Build().Scribe.Log;
        Assert.Equal(Written(Finished), Written(again));
        Assert.Equal(Binder.Html(Finished, FinishedHouse.Day), Binder.Html(again, FinishedHouse.Day));
        Assert.DoesNotContain('\r', Binder.Html(again, FinishedHouse.Day));
        Assert.Contains("2026-10-01", Binder.Markdown(Finished, FinishedHouse.Day.AddDays(1)), StringComparison.Ordinal);
    }

    [Fact]
    public void EveryRowOfEveryTableHasACellPerColumn()
    {
        var tables = Markdown.Parse(Written(Finished), Tables).Descendants<Table>().ToList();
        Assert.True(tables.Count > 15);
        Assert.All(tables, t =>
        {
            var rows = t.Cast<TableRow>().ToList();
            Assert.True(rows.Count > 1);
            Assert.All(rows, r => Assert.Equal(rows[0].Count, r.Count));
            Assert.All(rows.SelectMany(r => r).Cast<TableCell>(), c => Assert.NotEmpty(c.Descendants<Markdig.Syntax.Inlines.LiteralInline>()));
        });
    }

    [Fact]
    public void DangerComesBeforeEverythingElse()
    {
        var part = Page(Finished).QuerySelector("h2")!;
        Assert.StartsWith("Part one:", part.TextContent, StringComparison.Ordinal);
        Assert.StartsWith("Danger first.", part.NextElementSibling!.NextElementSibling!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void TheFirstPageSaysWhichBreakerFeedsWhichRoomsAndWhomToCall()
    {
        var page = Page(Finished);
        Assert.Equal(
            ["P1", "Mechanical room, north wall", "Main board", "14, 15 A", "Kitchen, Bedroom"],
            Table(page, "All stop, or all of one panel", 0).Single().Take(5));
        var calls = Table(page, "Whom to call", 0);
        Assert.Equal(["R. Example", "555 0101", "Mornings"], calls[0].Skip(1));
        Assert.Equal(["The maker", "555 0102"], calls[1].Skip(1).Take(2));
        Assert.Equal(["Sparks Example", "______"], calls[2].Skip(1).Take(2));
        Assert.Equal(["tel:5550101", "tel:5550102"], page.QuerySelectorAll("a[href^='tel:']").Select(a => a.GetAttribute("href")));
    }

    [Fact]
    public void TheOwnerIsNeverToldToCallHimself()
    {
        var job = FinishedHouse.Build();
        job.SayOf("", HouseFacts.SiteContact, "R. Example, 555 0199").SayOf("", HouseFacts.WarrantyCall, "R. Example, 555 0199");
        var contact = job.House.Contacts.Single(c => c.AfterHandover).Item;
        job.Do(SetFact.Typed(job.House, contact, ContactFacts.Part, "owner"));
        var calls = Table(Page(job.Scribe.Log), "Whom to call", 0);
        Assert.Equal(["Crew North", "______"], calls[0].Skip(1));
        Assert.DoesNotContain(calls, c => c[1] == "R. Example" || c.Exists(t => t.Contains("0199", StringComparison.Ordinal)));
    }

    [Fact]
    public void WhoeverHasThePartIsCalledWhereNobodyWasChosenAndNoNumberNoted()
    {
        var job = FinishedHouse.Build();
        job.SayOf("R. Example", ContactFacts.AfterHandover, "").SayOf("", HouseFacts.WarrantyCall, "").SayOf("R. Example", ContactFacts.Name, "Ash Example");
        Contact("Volt Example", "electrician", "555 0102");
        Contact("Site Example", "other", "555 0198");
        Assert.Equal([("Ash Example", "555 0101"), ("Volt Example", "555 0102")], Called());

        job.SayOf("", HouseFacts.WarrantyCall, "Crew desk, 555 0150");
        Assert.Equal([("Crew desk", "555 0150"), ("Volt Example", "555 0102")], Called());
        job.SayOf("Volt Example", ContactFacts.AfterHandover, "no");
        Assert.Equal([("Crew desk", "555 0150"), ("Sparks Example", "______")], Called());
        job.SayOf("Volt Example", ContactFacts.AfterHandover, "").SayOf("", HouseFacts.Client, "Volt Example");
        Assert.Equal([("Crew desk", "555 0150"), ("Sparks Example", "______")], Called());

        void Contact(string name, string part, string number) =>
            job.Add(ItemKind.Contact, name).SayOf(name, ContactFacts.Part, part).SayOf(name, ContactFacts.Telephone, number);

        IEnumerable<(string, string)> Called() => Table(Page(job.Scribe.Log), "Whom to call", 0)
            .Where(c => !c[0].StartsWith("The maker", StringComparison.Ordinal)).Select(c => (c[1], c[2]));
    }

    [Fact]
    public void ADayThatIsStillToComeReadsAsPlanned()
    {
        var early = Binder.Markdown(Finished, new DateOnly(2026, 9, 1), FinishedHouse.Report(Finished.House));
        Assert.Contains("planned for 2026-09-30", early, StringComparison.Ordinal);
        Assert.DoesNotContain("planned for", Written(Finished), StringComparison.Ordinal);
    }

    [Fact]
    public void AHandoverThatNobodySignedStaysPlannedWhenItsDayHasGoneBy()
    {
        var draft = Binder.Paper.Write(SampleJobs.Data("canal-house")).Markdown;
        Assert.Contains("**DRAFT.** The house is not handed over yet.", draft, StringComparison.Ordinal);
        Assert.Matches(@"\| Handover +\| planned for 2026-09-11 +\|", draft);
        Assert.Matches(@"\| Handover +\| 2026-09-30 +\|", Written(Finished));
    }

    [Fact]
    public void NoTableHasAColumnOfDashes()
    {
        foreach (var data in SampleJobs.Names.Select(SampleJobs.Data).Append(FinishedHouse.Data()))
        {
            Assert.All(Binder.Paper.Page(data).QuerySelectorAll("table"), t =>
            {
                var rows = t.QuerySelectorAll("tbody tr").Select(r => r.Children.Select(c => c.TextContent).ToList()).ToList();
                Assert.All(Enumerable.Range(0, rows[0].Count), c => Assert.Contains(rows, r => r[c] != "–"));
            });
        }
    }

    [Fact]
    public void EveryOutputOfThePanelIsOnItsMap()
    {
        var outputs = Table(Page(Finished), "Panel P1", 0);
        Assert.Equal(["1", "2", "3", "4–10"], outputs.Select(r => r[0]));
        Assert.Equal(["1", "W01", "Kitchen", "P1-W01", "P1-W01", "16/2"], outputs[0]);
        Assert.Equal("free", outputs[3][1]);
    }

    [Fact]
    public void ATestNamesItsInstrumentItsPersonAndItsDay()
    {
        var test = Table(Page(Finished), "Cable tests", 0)[0];
        Assert.Equal(["W01", "0.41 ohm", "0.42 ohm", "12.3 V", "11.9 V", "right"], test.Take(6));
        var read = Page(Finished).QuerySelectorAll("p").Select(p => p.TextContent)
            .First(p => p.StartsWith("Read:", StringComparison.Ordinal));
        Assert.Contains($"({test[6].Split(", ")[0]}) Meter 7, calibrated 2026-01-09, Test crew, 2026-03-12", read, StringComparison.Ordinal);
    }

    [Fact]
    public void OfLengthsNoInstrumentIsNamed()
    {
        var read = Page(Finished).QuerySelectorAll("p").Select(p => p.TextContent).Where(p => p.StartsWith("Read:", StringComparison.Ordinal)).ToList();
        Assert.Equal(3, read.Count);
        Assert.Single(read, p => p.Contains("Meter 7", StringComparison.Ordinal));
        Assert.Equal(2, read.Count(p => p.StartsWith("Read: (1) Test crew, 2026-", StringComparison.Ordinal)));
    }

    [Fact]
    public void OfAnElectricalReadingAMissingInstrumentIsNamed()
    {
        var job = new TestJob().Window("W01").Say("W01", RunFacts.FirstLoop, "0.42");
        Assert.Contains(Page(job.Scribe.Log).QuerySelectorAll("p"), p => p.TextContent.StartsWith("Read:", StringComparison.Ordinal)
            && p.TextContent.Contains("instrument not noted, Test crew", StringComparison.Ordinal));
    }

    [Fact]
    public void OpenAndWaivedFindingsStandApart()
    {
        var page = Page(Finished);
        Assert.Contains(Table(page, "Findings", 0), r => r[0] == "W03" && r[1] == "Stop");
        Assert.DoesNotContain(Table(page, "Findings", 0), r => r[0] == "W02B" && r[2].Contains("lead", StringComparison.Ordinal));
        var waived = Assert.Single(Table(page, "Waived", 0));
        Assert.Equal(["W02B", "RE"], [waived[0], waived[2]]);
        Assert.Equal(["W02B", "Lead goes behind the fascia."], Assert.Single(Table(page, "Stays as it is", 0)).Skip(1));
        Assert.Contains("W03", Table(page, "Still to be fixed", 0).Single()[1], StringComparison.Ordinal);
    }

    private static string Written(HouseLog log) => Binder.Markdown(log, FinishedHouse.Day, FinishedHouse.Report(log.House));

    private static IHtmlDocument Page(HouseLog log) => new HtmlParser().ParseDocument(Binder.Html(log, FinishedHouse.Day, FinishedHouse.Report(log.House)));

    /// <summary>The body of the nth table behind a heading, as text.</summary>
    private static List<List<string>> Table(IHtmlDocument page, string heading, int nth)
    {
        var at = page.QuerySelectorAll("h2, h3").Single(h => h.TextContent == heading).NextElementSibling;
        for (; at is not IHtmlTableElement || nth-- > 0; at = at.NextElementSibling)
            Assert.NotNull(at);
        return [.. at.QuerySelectorAll("tbody tr").Select(r => r.Children.Select(c => c.TextContent).ToList())];
    }
}
