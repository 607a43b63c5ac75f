using System.Globalization;
using System.Text.RegularExpressions;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using TrimOut.Core.Checks;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;
using TrimOut.Papers.Templates;
using TrimOut.Papers.Writing;
using TrimOut.Testing;

namespace TrimOut.Papers.Tests.Templates;

/// <summary>The words of findings in other languages: each has a file <c>findings.LANGUAGE.txt</c>, held here to everything that the program says.</summary>
public partial class FindingsWordsTests
{
    public static TheoryData<string> Languages => [.. ShippedWords.Languages];

    [Fact]
    public void GermanAndSpanishAreAmongTheLanguages()
    {
        Assert.Contains("de", ShippedWords.Languages);
        Assert.Contains("es", ShippedWords.Languages);
    }

    [Theory]
    [MemberData(nameof(Languages))]
    public void EveryMessageHasItsWordsWithTheSamePlaces(string language)
    {
        var words = ShippedWords.Of(language).Instead;
        Assert.True(OurWords.Messages.Count > 200);
        Assert.All(OurWords.Messages, m => Assert.Contains(m, words));
        Assert.All(OurWords.Messages, m => Assert.Equal(PlacesOf(m), PlacesOf(words[m])));
    }

    [Theory]
    [MemberData(nameof(Languages))]
    public void EveryTitleSeverityStepUnitLabelAndChoiceHasItsWordsAndNothingElseHas(string language)
    {
        var words = ShippedWords.Of(language).Instead;
        (string Named, string Alone)[] named = [.. OurWords.Labels, .. OurWords.Choices];
        Assert.True(named.Length > 250);
        Assert.All(OurWords.Names, n => Assert.Contains(n, words));
        Assert.DoesNotContain(named, n => !words.ContainsKey(n.Named) && !words.ContainsKey(n.Alone));
        Assert.Empty(words.Keys.Except(OurWords.Messages).Except(OurWords.Names).Except(named.SelectMany(n => new[] { n.Named, n.Alone })));
    }

    [Fact]
    public void NoPhraseIsWordedBothAmongFindingsAndAmongPapers()
    {
        Assert.Equal(ShippedWords.Languages, ShippedWords.PaperLanguages);
        Assert.All(ShippedWords.Languages, l => Assert.Empty(ShippedWords.OfPapersIn(l).Instead.Keys.Intersect(ShippedWords.Of(l).Instead.Keys)));
    }

    public static TheoryData<string> Samples => [.. SampleJobs.Names];

    public static IEnumerable<object[]> SamplesByLanguage => from l in ShippedWords.Languages from s in SampleJobs.Names select new object[] { l, s };

    [Theory]
    [MemberData(nameof(SamplesByLanguage))]
    public void NoWordOfOursStaysEnglishInTheFindingsOfASampleHouse(string language, string sample)
    {
        var data = SampleJobs.Data(sample);
        var words = PaperTemplate.In(Binder.Paper, language).Value.Words;
        var same = ShippedWords.Of(language).Instead.Where(w => w.Key == w.Value).Select(w => w.Key).ToHashSet();
        // What is worded is set in brackets; what is left once that and everything typed is taken out would be English for good.
        var reader = words.ReaderOf(data.House) with { Words = p => words.Of(p) is var word && word != p || same.Contains(p) ? Bracketed(word) : p };
        var editions = data.House.Items.Values.Where(i => FactTable.IsKit(i.Kind)).SelectMany(i => SheetValues.Of(i.Kind)
            .Select(f => SheetMark.OlderEdition(i, f)).Append(i.Latest(AboutSheet.Of(i.Kind, AboutSheet.Edition))?.Stored)).OfType<string>().Distinct();
        var typed = Typed(data.House).Concat(SampleJobs.Serials(sample)).Concat(editions).ToList();
        var said = data.Report.Findings.SelectMany(f => new[] { f.Found.Message, f.Found.Mend }).Concat(data.Report.Missing.Select(m => m.NotChecked.Missing))
            .ToList();
        Assert.NotEmpty(said);
        Assert.All(said, s => Assert.Matches("^(mm|m|V|A|W|s|x|AWG|C[LM][A-Z0-9]*|PLTC|[^A-Za-z])*$", Without(typed, Worded().Replace(s.For(reader), " "))));
        Assert.All(data.Report.Findings.Select(f => f.Subject).Concat(data.Report.Missing.Select(m => m.Subject)),
            i => Assert.Matches("^[^A-Za-z]*$", Without(typed, Worded().Replace(data.House.NameOf(i, reader.Words), " "))));
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void TheGermanBinderOfASampleHouseHasEveryFindingWithItsFiguresInGermanStyle(string sample)
    {
        var data = SampleJobs.Data(sample);
        var reader = German.ReaderOf(data.House);
        var table = OpenFindings(data);
        var open = data.Report.Findings.Where(f => f.Open).ToList();
        Assert.Equal(open.Select(f => (f.Found.Message.For(reader), f.Found.Mend.For(reader))), table.Select(r => (r[2].TrimEnd('?', '\u00A0'), r[3])));
        Assert.All(open.Zip(table), f => Assert.Equal(
            Figure().Matches(f.First.Found.Message.In(data.House)).Select(m => m.Value.Replace('.', ',')).Order(StringComparer.Ordinal),
            Figure().Matches(f.Second[2]).Select(m => m.Value).Order(StringComparer.Ordinal)));
        Assert.All(table, r => Assert.DoesNotMatch(@"\d\.\d", r[2] + r[3]));
    }

    [Fact]
    public void FiguresHaveADecimalCommaAndFractionsOfAnInchStayAsTheyAre()
    {
        var house = new TestJob().House;
        string Say(Arg figure, DisplayUnits units = DisplayUnits.Inches) => Shown.With(figure).For(German.ReaderOf(house) with { Units = units });
        Assert.Equal("11,5 V", Say(new Voltage(11.5m)));
        Assert.Equal("0,125 A", Say(new Current(0.125m)));
        Assert.Equal("35 3/8\"", Say(Length.FromInches(35, 3, 8)));
        Assert.Equal("899 mm", Say(Length.FromInches(35, 3, 8), DisplayUnits.Millimetres));
        Assert.Equal("1 1/2\"", Say(Arg.About(Length.FromInches(1, 1, 2))));
        Assert.Equal("62,5 Fuß", Say(Arg.Limit(Length.FromFeet(62.5m))));
        Assert.Equal("0,57 Ohm", Say(Arg.Loop(new Resistance(0.57m))));
        Assert.Equal("12,50 °C", Say(Arg.Number(12.5m, "C", 2)));
        Assert.Equal("1,5 mm²", Say(Arg.Value(CableTypeFacts.Conductor, ConductorSize.Read("1.5 mm2").Value)));
        Assert.Equal("16 AWG", Say(Arg.Value(CableTypeFacts.Conductor, ConductorSize.Read("16 AWG").Value)));
        Assert.Equal("11.5 V", Shown.With(new Voltage(11.5m)).In(house));
    }

    [Fact]
    public void HostileTextInAFindingStaysAsTypedAndIsNotWorded()
    {
        const string Damage = "<b>Roller</b> | {0} *Output* 1.5 left";
        var job = FinishedHouse.Build().SayOf("Kitchen", RoomFacts.Name, "leg of {0} | right").Say("W01", UnitFacts.Damage, Damage);
        var data = PaperData.Of(job.Scribe.Log, FinishedHouse.Day);
        var cells = OpenFindings(data);
        Assert.Contains($"Schaden bei der Lieferung: {Damage}.", cells.Select(r => r[2]));
        Assert.All(cells, r => Assert.Equal(4, r.Length));
        var remote = Shown.With(Arg.Name(job.House.Rooms.First())).For(German.ReaderOf(job.House));
        Assert.Equal("leg of {0} | right", remote);
    }

    [Fact]
    public void WhatTheProgramPutsIntoANameIsWordedAndWhatWasTypedIsNot()
    {
        var job = new TestJob().Window("left").Add(ItemKind.Panel, "Hub");
        job.Do(AddItems.Leg(job.Run("left"))).Do(AddItems.Window(job.House, "W02", null));
        job.Do(new Draft("No tag").PutStored(job.House.Windows[^1].Id, WindowFacts.Tag.Name, null));
        string Name(Item item) => Shown.With(Arg.Name(item)).For(German.ReaderOf(job.House));
        Assert.Equal("Abschnitt von left", Name(job.Run("left").Legs[0].Item));
        Assert.Equal("(ohne Kennung)", Name(job.House.Windows[^1].Units[0].Item));
        Assert.Equal("Hub", Name(job.House.Panels[0].Item));
        Assert.Equal("Rollo", Name(job.Unit("left").Kind!.Item));
        Assert.Equal("Sonnenrollo", Name(job.SayOf("Roller", CoveringKindFacts.Name, "Sonnenrollo").Unit("left").Kind!.Item));
        Assert.Equal("leg of left", job.House.NameOf(job.Run("left").Legs[0].Item));
    }

    [Fact]
    public void ALabelWithTwoMeaningsIsWordedByItsSubject()
    {
        var reader = German.ReaderOf(new TestJob().House);
        Assert.Equal(("Maßeinheiten", "Anlagen, höchstens"), (Label(HouseFacts.Units), Label(RemoteTypeFacts.Units)));
        Assert.Equal(("Tiefe der Laibung", "Tiefe"), (Label(WindowFacts.Depth), Label(HeadCoverFacts.Depth)));
        string Label(Fact fact) => Shown.With(Arg.Label(fact)).For(reader);
    }

    [Fact]
    public void ATemplateTakesInTheWordsOfItsLanguageAndItsOwnLinesGoFirst()
    {
        Assert.Equal(("Stopp", "Rollo", true), Of("language = de"));
        Assert.Equal(("Stopp", "Rollo", true), Of("language = de-AT"));
        Assert.Equal(("Stopp", "Rouleau", false), Of("language = de-CH\ndecimals = point\nRoller = Rouleau"));
        Assert.Equal(("Stop", "Persienne", true), Of("language = x-none\nRoller = Persienne\ndecimals = comma"));
        Assert.Equal(("Stop", "Roller", false), Of("Unit = Blind"));
        Assert.Equal("Line 3: decimals are parted by a comma or by a point. Write: decimals = comma.", Template("decimals = 2").Reason);
        static (string, string, bool) Of(string lines) =>
            Template(lines).Value.Words is var words ? (words.Of("Stop"), words.Of("Roller"), words.DecimalComma) : default;
        static Core.Result<PaperTemplate> Template(string lines) => PaperTemplate.Read(Binder.Paper, $"{{{{open_items}}}}\n```words\n{lines}\n```\n");
    }

    [Fact]
    public void InALanguageWithoutWordsAFindingStandsInEnglishWithItsFigures()
    {
        var data = SampleJobs.Data(SampleJobs.Names[0]);
        var template = PaperTemplate.Read(Binder.Paper, "## Open items\n\n{{open_items}}\n```words\nlanguage = x-none\n```\n").Value;
        Assert.Equal(Section(Binder.Paper.Write(data).Markdown), Section(Binder.Paper.Write(data, template).Markdown));
        static string Section(string markdown) =>
            Regex.Match(markdown, @"## Open items\n\n(.*?)(?:\n## |\z)", RegexOptions.Singleline).Groups[1].Value.TrimEnd();
    }

    [Fact]
    public void BracesThatAreNoPlaceDoNoHarmInATemplatesWords()
    {
        var template = PaperTemplate.Read(Binder.Paper, "{{open_items}}\n```words\nIt came with: {0}. = Came {so with {0} {x} }.\n```\n").Value;
        var sentence = new Message("It came with: {0}.").With(Arg.Typed("{0}"));
        Assert.Equal("Came {so with {0} {x} }.", sentence.For(template.Words.ReaderOf(House.Empty)));
    }

    private static readonly Message Shown = new("{0}");

    private static Words German { get; } = PaperTemplate.In(Binder.Paper, "de").Value.Words;

    private static List<string[]> OpenFindings(PaperData data)
    {
        var paper = Binder.Paper.Write(data, PaperTemplate.In(Binder.Paper, "de").Value);
        var heading = new HtmlParser().ParseDocument(paper.ToHtml()).QuerySelectorAll("h2").Single(h => h.TextContent == "Befunde");
        var after = heading.NextElementSibling!;
        var table = after.LocalName == "table" ? after : after.QuerySelector("table");
        return [.. (table?.QuerySelectorAll("tbody tr") ?? Enumerable.Empty<IElement>())
            .Select(r => r.Children.Select(c => c.TextContent).ToArray())];
    }

    /// <summary>Everything that was typed into a house, the longest first.</summary>
    internal static List<string> Typed(House house) =>
        [.. house.Items.Values.SelectMany(i => i.Fields.SelectMany(f => i.Latest(f.Key) is { } head ? new[] { head.Stored, head.By } : []))
            .Concat(house.Units.Select(u => u.Tag)).OfType<string>().SelectMany(t => t.Split(", ").Prepend(t))
            .Where(t => t.Any(char.IsLetter) && !KebabCaseWords.Contains(t)).Distinct()
            .OrderByDescending(t => t.Length)];

    private static readonly HashSet<string> KebabCaseWords = [.. OurWords.Choices.Select(c => c.Alone.Replace(' ', '-'))];

    internal static string Without(List<string> typed, string text) => typed.Aggregate(text, (left, t) => t.Length > 1
        ? left.Replace(t, " ", StringComparison.Ordinal) : Regex.Replace(left, $@"(?<!\w){Regex.Escape(t)}(?!\w)", " "));

    private static string Bracketed(string phrase) => "⟦" + Place().Replace(phrase, m => $"⟧{m.Value}⟦") + "⟧";

    private static IEnumerable<int> PlacesOf(string phrase) =>
        Place().Matches(phrase).Select(m => int.Parse(m.ValueSpan[1..^1], CultureInfo.InvariantCulture)).Order();

    [GeneratedRegex(@"\{[0-9]\}")]
    private static partial Regex Place();

    [GeneratedRegex("⟦[^⟧]*⟧")]
    private static partial Regex Worded();

    [GeneratedRegex(@"\d+(?:[.,/]\d+)*")]
    private static partial Regex Figure();
}
