using System.Text.RegularExpressions;
using AngleSharp.Html.Parser;
using TrimOut.Core.Checks;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;
using TrimOut.Core.Units;
using TrimOut.Papers.FirmPapers;
using TrimOut.Papers.Labels;
using TrimOut.Papers.Photos;
using TrimOut.Papers.Templates;
using TrimOut.Papers.Tests.FirmPapers;
using TrimOut.Papers.Writing;
using TrimOut.Testing;

namespace TrimOut.Papers.Tests.Templates;

public class WordsTests
{
    private static readonly PaperData[] Houses =
        [FinishedHouse.Data(), FinishedHouse.Data(FinishedHouse.Build(DisplayUnits.Millimetres).Scribe.Log), FinishedHouse.Data(new TestJob().Scribe.Log),
            .. SampleJobs.Names.Select(SampleJobs.Data), FinishedHouse.Data(ServedHouse.Build().Scribe.Log)];

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
            Assert.All(page.QuerySelectorAll("thead th").Where(e => !tags.Contains(e.TextContent)),
                e => Assert.StartsWith("⟦", e.TextContent, StringComparison.Ordinal));
        }
    }

    public static TheoryData<string> Languages => [.. ShippedWords.PaperLanguages];

    public static IEnumerable<object[]> PapersByLanguage =>
        from l in ShippedWords.PaperLanguages from p in ShippedWords.OfPapersIn(l).Papers select new object[] { l, p };

    [Theory]
    [MemberData(nameof(Languages))]
    public void ALanguageWordsEveryPhraseOfItsPapersAndNoOther(string language)
    {
        var asked = new SortedSet<string>(StringComparer.Ordinal);
        string Ask(string phrase)
        {
            asked.Add(phrase);
            return phrase;
        }
        var words = new Words(Ask, "x-asked");
        var papers = ShippedWords.OfPapersIn(language).Papers.Select(p => PaperList.Find(p)!).ToList();
        Assert.DoesNotContain(papers, p => p is null);
        foreach (var paper in papers)
        {
            asked.UnionWith([paper.Title, .. paper.Sections.SelectMany(s => new[] { s.Title, s.Part }).OfType<string>()]);
            if (paper.HasContents)
                asked.Add(Paper.ContentsIntro);
            foreach (var data in Houses.Append(FinishedHouse.Data(SparseHouse())).Append(FinishedHouse.Data(NewOutsideHouse()))
                .Append(FinishedHouse.Data(SomewhereHouse())).Concat(WithPhotos)
                .Concat(OnLabels))
            {
                Assert.NotEmpty(paper.Places(data, words, new SortedDictionary<string, string>()).ToList());
                paper.WithHead("# A\n", data, words);
            }
            foreach (var saves in (long[])[0, 1, 4])
                Assert.StartsWith("# A\n\n**", paper.WithHead("# A\n\nB\n", Houses[0] with { InDoubt = saves }, words), StringComparison.Ordinal);
        }
        // What depends on a count, on a day to come, or on a plan that is not proven.
        asked.UnionWith(["late: {0}", "{0} more cables beside each of {1}; where their ends are: {2}.",
            "1 stop", "{0} stops", "1 caution", "{0} cautions", "1 punch item", "{0} punch items",
            "1 check that could not be made yet", "{0} checks that could not be made yet",
            "Is it done?", "{0} was planned for {1}, and nobody said that it took place.", "Every step of {0} is marked, and {1} is still planned.",
            "planned for {0}", "Second, apart", "Second, to frame", "1 thing that this paper is about is wrong:",
            "{0} things that this paper is about are wrong:", "1 box", "{0} boxes",
            "1 run waits to be cut and has no length yet: it may take more boxes.",
            "{0} runs wait to be cut and have no length yet: they may take more boxes.", "Nothing can be planned yet.",
            "Nothing of it may be cut yet.", "Less of the allowance is cut where the cable may be no longer: {0}.", "{0} {1}, not {2}",
            "Longer than its cable may be, and not among these: {0}.", "longer than its cable may be: not to be cut",
            "Not listed for where it goes, and not among these: {0}.", "not listed for where it goes: not to be cut",
            "{0} to buy; it may be possible with {1}, no fewer.", "{0} opened; it may be possible with {1}, no fewer.",
            "{0} opened ({1} to buy): no plan needs fewer.", "{0} opened: no plan needs fewer.", "They hold {0}; {1} might do.", "Nothing is left over.",
            "The longest leftover is {0}; it can't be over {1}.", "There is no plan: {0}", "too long for a code", "Section of {0}", "it is empty",
            "how much is left in it is not known", "On the web: {0}", "{0}, and 1 unit whose current is not known",
            "{0}, and {1} units whose current is not known",
            "A ? behind a figure or a sentence: it rests on a maker's sheet, and nobody checked it against that sheet yet.",
            "? rests on a maker's sheet and was not checked against it"]);
        // What a maker is told of a kit that says less or otherwise than those of the houses above, and of what became of an order.
        asked.UnionWith(["the maker", "the maker: {0} over all", "nobody: nothing comes off",
            "nobody: it is made as it is ordered", "* To be cleared up:",
            "Rests on values that nobody checked.", "Hold them against the makers' sheets first; other values may be a stop.", "Values",
            "all with this part", "nobody: {0} of {1} not checked", "{0}; {1} of {2} not checked",
            "Nothing is ordered yet.", "The unit", "ordered", "removed", "its window is left out", "off its sheet", "added, not ordered yet",
            "Width by the measures", "Height by the measures", "Nothing.", "at least {0}", "no groups", "Nothing is landed on it.",
            "The meter's leads, {0}, are in it.", "its cable lies in the wall",
            "not wanted, and landed: it is live", "Landed and not wanted, and so live: {0}.", "not wanted",
            "Ordered once, and not wanted any more: {0}. Ask about a box of theirs before it is opened or sent back.",
            "Nothing is awaited or to be reordered.",
            "Not ordered yet, and to be ordered by {0} at the latest, to be here on {1}: {2}.", "instrument not noted",
            "nothing to order", "Too late to order.", "To be here on {0} it had to be ordered by {1}: {2}. Ask the maker, or move the visit.",
            "Of no phase, so that nothing is asked for before them: {0}.", "At two visits at the same time: {0}.", "At the same time:"]);
        var sparse = SparseHouse().House;
        Assert.Equal("leg of W01", Inline.NameOf(sparse, sparse.Runs.SelectMany(r => r.Legs).Single().Item).Plain(words));
        asked.UnionWith(KitWords.All);
        foreach (var paper in FirmPaper.All)
            paper.WriteIn(FirmPaperTests.Data(FirmPaperTests.Job("A", "40", "2026-05-05 Hang @Ash", "2026-05-06 Hang")), words);
        // What is due on some day of a house.
        asked.UnionWith(["Visit that nobody said took place", "Last day to order units", "Last day to call off parts", "Boxes that did not come",
            "Boxes expected", "yearly visit", "The crew's warranty ends", "A maker's warranty ends", "What is due", "Which", "Nothing is due.", "at once",
            "Units not ordered, to be here by then; how long their order takes is not known",
            "Parts to be here by then; how long parts take is not typed", "To be ordered again: did not arrive, or came wrong", "Drywall starts",
            "Drywall starts; not ready before it", "Handover; not ready before it", "Boxes come on {0}, after they must be here",
            "Boxes come on {0}, after the visit: {1}",
            "Sun", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Telephone: {0}", "Of {0} houses, without: {1}."]);
        // What is on them where boxes came wrong, parts were ordered or not, and two files or two laptops disagree.
        asked.UnionWith(["To be ordered again", "came wrong", "did not arrive", "No order day noted, so it counts as not ordered: {0}.",
            "Put right first where the house stands.",
            "Runs that have no length yet: {0}.", "ordered on {0} ({1})", "Copies of these houses, counted once: {0}.",
            "A \u2260 behind a value: two laptops have different ones, and the last is shown. Find out which is right before you work by it."]);
        var named = OurWords.Labels.Concat(OurWords.Choices).Select(n => n.Named).ToHashSet();
        // A word that the language tells apart by its fact is asked for with it first.
        Assert.DoesNotContain(asked, p => !Has(language, p) && !OurWords.Choices.Any(c => c.Alone == p && Has(language, c.Named))
            && !OurWords.Labels.Any(l => l.Alone == p && Has(language, l.Named)) && !named.Contains(p) && !MarksOnJackets.Contains(p)
            && !OurWords.SameUnits.Contains(p));
        Assert.Empty(ShippedWords.OfPapersIn(language).Instead.Keys.Except(asked));
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

    public static TheoryData<string> SpanishPapers => [.. ShippedWords.OfPapersIn("es").Papers];

    [Theory]
    [MemberData(nameof(SpanishPapers))]
    public void ASpanishPaperIsAsApprovedAndIsSaidToBeSpanish(string id)
    {
        var paper = PaperList.Find(id)!.Write(Houses[0], PaperTemplate.In(PaperList.Find(id)!, "es").Value);
        Approved.Match(paper.Markdown, $"finished-{id}.es.md");
        Assert.Contains("<html lang=\"es\">", paper.ToHtml(), StringComparison.Ordinal);
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
    public void APaperThatALanguageDoesNotHaveIsRefusedWithTheListOfThoseThatItHas()
    {
        Assert.StartsWith("There is no parts list in \"xx\". In de there are: binder, card, panel-door, sun-sheet, work-plan,",
            PaperTemplate.In(PaperList.Find("parts-list")!, "xx").Reason,
            StringComparison.Ordinal);
        Assert.StartsWith("There is no owner's binder in \"xx\".", PaperTemplate.In(Binder.Paper, "xx").Reason, StringComparison.Ordinal);
        Assert.Contains("is no language", PaperTemplate.In(Binder.Paper, "es\n{{cover}}").Reason, StringComparison.Ordinal);
        Assert.Equal("de-AT", PaperTemplate.In(Binder.Paper, "de-AT").Value.Words.Language);
    }

    [Theory]
    [MemberData(nameof(PapersByLanguage))]
    public void NoWordOfOursStaysEnglish(string language, string id)
    {
        var job = FinishedHouse.Build(DisplayUnits.Millimetres);
        var typed = HostileTextEverywhereTests.With(job.Scribe.Log, [.. HostileTextEverywhereTests.TextFields(job.House)], HostileTextEverywhereTests.Token);
        // What is worded is set in brackets, what was typed is a token: whatever else is left of a cell, a line or a heading would be English for good.
        var page = Page(PaperList.Find(id)!, FinishedHouse.Data(typed) with { Photos = _ => Photo.Not(PhotoState.Missing) },
            new Words(p => Has(language, p) ? Bracketed(p) : p, language));
        // A legend goes on in the next line where it has no room, in the middle of a phrase.
        var lines = page.QuerySelectorAll("p, li, th, td, h3").Where(e => e.QuerySelector("svg") is null).Select(e => e.TextContent)
            .Concat(page.QuerySelectorAll("svg").Select(s => string.Join(' ', s.QuerySelectorAll("text[data-part=legend]").Select(t => t.TextContent))))
            .ToList();
        Assert.True(lines.Count > id switch { "binder" => 250, "card" or "panel-door" => 18, _ => 40 });
        // An order is printed as it was placed, before the tokens were typed; and the parts that a sheet counts are no text that a token stands for.
        var before = id is "order-sheet" or "receiving-list" ? FindingsWordsTests.Typed(job.House)
            : id == "parts-list" ? ["end brackets", "screws", "splice connectors"]
            : id == "sun-sheet" ? ["America/Denver"] : [];
        Assert.All(lines, line => Assert.Matches("^(mm|ohm|V|A|m|s|x|AWG|P1|lead-away-from-motor|binder[.]html|[^A-Za-z])*$",
            FindingsWordsTests.Without(before, Left(line))));
    }

    [Theory]
    [MemberData(nameof(Languages))]
    public void ALanguageHasEveryPaper(string language) =>
        Assert.Equal(PaperList.All.Select(p => p.Id), ShippedWords.OfPapersIn(language).Papers);

    [Theory]
    [MemberData(nameof(Languages))]
    public void AWordThatIsTheSameInEnglishIsMeantToBe(string language) =>
        Assert.Empty(ShippedWords.OfPapersIn(language).Instead.Where(w => w.Key == w.Value && w.Key.Any(char.IsLetter)).Select(w => w.Key)
            .Except(["Plus", "Name", "Panel {0}"]));

    private static string Bracketed(string phrase) => "⟦" + Regex.Replace(phrase, @"(\{[0-9]\})", "⟧$1⟦") + "⟧";

    private static string Left(string line) => Regex.Replace(Regex.Replace(line, "⟦[^⟧]*⟧", " "), "zz[0-9]{3}zz[AB]?|Test crew", " ");

    private static PaperTemplate German { get; } = PaperTemplate.In(Binder.Paper, "de").Value;

    private static PaperData[] WithPhotos { get; } =
        [.. Enum.GetValues<PhotoState>().Select(s => FinishedHouse.Data() with { Photos = _ => s == PhotoState.Read ? Small : Photo.Not(s) }),
            FinishedHouse.Data() with { Photos = _ => Small with { Jpeg = new byte[13 << 20] } },
            FinishedHouse.Data() with { Photos = _ => Small with { TakenOn = null } }];

    private static Photo Small => new(PhotoState.Read, new byte[3], 4, 3, FinishedHouse.Day);

    private static PaperData[] OnLabels { get; } =
        [.. new[] { "10x3,letter", "8x3,a4" }.Select(l => FinishedHouse.Data() with { Labels = LabelGrid.Read(l).Value })];

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

    /// <summary>A house with one window outside and cable on hand that is not cut yet.</summary>
    private static HouseLog NewOutsideHouse()
    {
        var job = new TestJob().Window("W01").Say("W01", WindowFacts.Mount, "outside").Say("W01", WindowFacts.WidthTop, "40");
        job.Legs("W01", ("40 ft", CablePlace.InWall)).Say("W01", RunFacts.Cable, "16/2").Say("W01", RunFacts.TailAtWindow, "48 in")
            .Say("W01", RunFacts.TailAtPanel, "60 in").SayOf("", HouseFacts.CableAllowance, "10").SayOf("", HouseFacts.CutLoss, "2");
        job.Window("W02").Say("W02", RunFacts.Cable, "16/2").Say("W01", UnitFacts.OrderHeight, "60");
        return job.Add(ItemKind.Box, "A").SayOf("A", BoxFacts.Cable, "16/2").SayOf("A", BoxFacts.Left, "90 ft")
            .Add(ItemKind.Box, "B").SayOf("B", BoxFacts.Cable, "16/2").SayOf("B", BoxFacts.Left, "95 ft").Scribe.Log;
    }

    /// <summary>A house of which is known where it stands, and of its only window not where it looks out to.</summary>
    private static HouseLog SomewhereHouse() => new TestJob().SayOf("", HouseFacts.Latitude, "39.74").SayOf("", HouseFacts.Longitude, "-104.99")
        .SayOf("", HouseFacts.TimeZone, "America/Denver").Window("W01").Scribe.Log;

    private static bool Has(string language, string phrase) =>
        ShippedWords.OfPapersIn(language).Instead.ContainsKey(phrase) || ShippedWords.Of(language).Instead.ContainsKey(phrase);

    private static readonly HashSet<string> MarksOnJackets = [.. CableTypeFacts.Listing.Options(House.Empty)
        .SelectMany(o => new[] { o.Shown, $"{CableTypeFacts.Listing.Label}: {o.Shown}" })];

    private static AngleSharp.Html.Dom.IHtmlDocument Marked(Paper paper, PaperData data) => Page(paper, data, new Words(p => $"⟦{p}⟧", "x-marked"));

    private static AngleSharp.Html.Dom.IHtmlDocument Page(Paper paper, PaperData data, Words words)
    {
        var drawings = new SortedDictionary<string, string>();
        var markdown = string.Join("\n", paper.Places(data, words, drawings).Select(p => p.Value));
        return new HtmlParser().ParseDocument(new WrittenPaper(paper.Id, "", "en", markdown, drawings).ToHtml());
    }
}
