using System.Text.RegularExpressions;
using AngleSharp.Html.Parser;
using TrimOut.Core.Checks;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;
using TrimOut.Core.Units;
using TrimOut.Papers.Templates;
using TrimOut.Papers.Writing;
using TrimOut.Testing;

namespace TrimOut.Papers.Tests.Templates;

public class WordsTests
{
    private static readonly PaperData[] Houses =
        [FinishedHouse.Data(), FinishedHouse.Data(FinishedHouse.Build(DisplayUnits.Millimetres).Scribe.Log), FinishedHouse.Data(new TestJob().Scribe.Log),
            .. SampleJobs.Names.Select(SampleJobs.Data)];

    public static TheoryData<string> Papers => [.. PaperList.All.Select(p => p.Id)];

    [Theory]
    [MemberData(nameof(Papers))]
    public void EveryHeadingColumnSentenceAndListItemIsInTheWordingOfTheTemplate(string id)
    {
        foreach (var data in Houses)
        {
            var page = Marked(PaperList.Find(id)!, data);
            var tags = data.House.Units.Select(u => u.Tag).ToHashSet();
            Assert.All(page.QuerySelectorAll("p, li").Where(e => e.QuerySelector("svg") is null), e => Assert.Matches("[⟦⟧]", e.TextContent));
            Assert.All(page.QuerySelectorAll("th").Where(e => !tags.Contains(e.TextContent)),
                e => Assert.StartsWith("⟦", e.TextContent, StringComparison.Ordinal));
        }
    }

    [Fact]
    public void TheGermanBinderTranslatesEveryPhraseAndNoOther()
    {
        var asked = new SortedSet<string>(StringComparer.Ordinal);
        string Ask(string phrase)
        {
            asked.Add(phrase);
            return phrase;
        }
        foreach (var data in Houses.Append(FinishedHouse.Data(SparseHouse())))
            Assert.NotEmpty(Binder.Paper.Places(data, new Words(Ask, "x-asked"), new SortedDictionary<string, string>()).ToList());
        foreach (var saves in (long[])[0, 1, 4])
        {
            var head = Binder.Paper.WithHead("# A\n\nB\n", Houses[0] with { InDoubt = saves }, new Words(Ask, "x-asked"));
            Assert.StartsWith("# A\n\n**", head, StringComparison.Ordinal);
        }
        asked.UnionWith(["1 stop", "{0} stops", "1 caution", "{0} cautions", "1 punch item", "{0} punch items",
            "1 check that could not be made yet", "{0} checks that could not be made yet"]);
        // What stands only where a day is to come, or a reading was taken.
        asked.UnionWith(["planned for {0}", "Second, apart", "Second, to frame"]);
        Binder.Paper.WithHead("# A\n", FinishedHouse.Data(SparseHouse()), new Words(Ask, "x-asked"));
        asked.Add(Binder.Paper.Title);
        var sparse = SparseHouse().House;
        Assert.Equal("leg of W01", Inline.NameOf(sparse, sparse.Runs.SelectMany(r => r.Legs).Single().Item).Plain(new Words(Ask, "x-asked")));
        asked.UnionWith(KitWords.All);
        var named = OurWords.Labels.Concat(OurWords.Choices).Select(n => n.Named).ToHashSet();
        // A word that the language tells apart by its fact is asked for with it first.
        Assert.DoesNotContain(asked, p => !IsGerman(p) && !OurWords.Choices.Any(c => c.Alone == p && IsGerman(c.Named))
            && !named.Contains(p) && !MarksOnJackets.Contains(p) && !OurWords.SameUnits.Contains(p));
        Assert.Empty(German.Phrases.Except(asked));
    }

    [Fact]
    public void TheGermanBinderIsAsApprovedAndIsSaidToBeGerman()
    {
        var paper = Binder.Paper.Write(Houses[1], German);
        Approved.Match(paper.Markdown, "finished-mm-binder.de.md");
        Assert.Contains("<html lang=\"de\">", paper.ToHtml(), StringComparison.Ordinal);
        Assert.Equal("Hausmappe: Test house", paper.Title);
        var page = new HtmlParser().ParseDocument(paper.ToHtml());
        Assert.All(page.QuerySelectorAll("a[href^='#']"), a => Assert.NotNull(page.GetElementById(Uri.UnescapeDataString(a.GetAttribute("href")![1..]))));
    }

    [Fact]
    public void OneWordWithTwoMeaningsIsTranslatedByItsFact()
    {
        var page = new HtmlParser().ParseDocument(Binder.Paper.Write(Houses[0], German).ToHtml());
        Assert.Contains("richtig", page.QuerySelectorAll("td").Select(c => c.TextContent));
        Assert.Contains("rechts", page.QuerySelectorAll("td").Select(c => c.TextContent));
        Assert.DoesNotContain("right", page.QuerySelectorAll("td").Select(c => c.TextContent));
    }

    [Fact]
    public void AShippedTemplateThatIsNotThereIsRefusedWithTheListOfThoseThatAre()
    {
        Assert.Equal("There is no template binder.xx. There are: binder.de.", ShippedTemplates.Text("binder.xx").Reason);
        Assert.Equal(["binder.de"], ShippedTemplates.Names);
    }

    [Fact]
    public void NoWordOfOursStaysEnglishInTheGermanBinder()
    {
        var job = FinishedHouse.Build(DisplayUnits.Millimetres);
        var typed = HostileTextEverywhereTests.With(job.Scribe.Log, [.. HostileTextEverywhereTests.TextFields(job.House)], HostileTextEverywhereTests.Token);
        // What is worded is set in brackets, what was typed is a token: whatever else is left of a cell, a line or a heading would be English for good.
        var page = Page(Binder.Paper, FinishedHouse.Data(typed), new Words(p => IsGerman(p) ? Bracketed(p) : p, "de"));
        var lines = page.QuerySelectorAll("p, li, th, td, h3").Where(e => e.QuerySelector("svg") is null).Select(e => e.TextContent).ToList();
        Assert.True(lines.Count > 250);
        Assert.All(lines, line => Assert.Matches("^(mm|ohm|V|A|m|s|x|P1|lead-away-from-motor|[^A-Za-z])*$", Left(line)));
    }

    private static string Bracketed(string phrase) => "⟦" + Regex.Replace(phrase, @"(\{[0-9]\})", "⟧$1⟦") + "⟧";

    private static string Left(string line) => Regex.Replace(Regex.Replace(line, "⟦[^⟧]*⟧", " "), "zz[0-9]{3}zz[AB]?|Test crew", " ");

    private static PaperTemplate German { get; } = PaperTemplate.Read(Binder.Paper, ShippedTemplates.Text("binder.de").Value).Value;

    /// <summary>
    /// A house in which little is known: a window with neither room nor size, a room without a floor, a leg without a length, a panel without a type.
    /// </summary>
    private static HouseLog SparseHouse()
    {
        var job = new TestJob().Room("Shed");
        job.Do(AddItems.Window(job.House, "W01", null)).Do(AddItems.Window(job.House, "W02", job.House.Rooms[0].Id));
        job.Do(AddItems.Leg(job.Run("W01"))).Add(ItemKind.Panel, "P1").SayOf("P1", PanelFacts.Type, "");
        return job.Say("W01", UnitFacts.OpenGap, "1").Scribe.Log;
    }

    private static bool IsGerman(string phrase) => German.Phrases.Contains(phrase) || ShippedWords.Of("de").Instead.ContainsKey(phrase);

    private static readonly HashSet<string> MarksOnJackets = [.. CableTypeFacts.Listing.Options(House.Empty).Select(o => o.Shown)];

    private static AngleSharp.Html.Dom.IHtmlDocument Marked(Paper paper, PaperData data) => Page(paper, data, new Words(p => $"⟦{p}⟧", "x-marked"));

    private static AngleSharp.Html.Dom.IHtmlDocument Page(Paper paper, PaperData data, Words words)
    {
        var drawings = new SortedDictionary<string, string>();
        var markdown = string.Join("\n", paper.Places(data, words, drawings).Select(p => p.Value));
        return new HtmlParser().ParseDocument(new WrittenPaper(paper.Id, "", "en", markdown, drawings).ToHtml());
    }
}
