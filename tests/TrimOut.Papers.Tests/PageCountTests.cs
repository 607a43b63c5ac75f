using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using TrimOut.Papers.Templates;

namespace TrimOut.Papers.Tests;

/// <summary>How many sheets the owner's book takes, printed by a browser. The counts stand in docs/papers.md.</summary>
public partial class PageCountTests
{
    private const int OwnersPartAtMost = 8;
    private const int BookAtMost = 16;

    [ChromiumFact]
    public void TheBookOfCanalHouseTakesAsManyPagesAsTheDocsSay()
    {
        var docs = File.ReadAllText(Path.Combine(SampleJobs.Root, "docs", "papers.md"));
        var book = Binder.Paper.Write(SampleJobs.Data("canal-house"));
        // The second part begins on a page of its own, so what stands before it takes the same pages without it.
        var owners = new WrittenPaper(book.Id, book.Title, book.Language, book.Markdown[..book.Markdown.IndexOf("\n## Part two:", StringComparison.Ordinal)],
            book.Drawings)
        {
            Day = book.Day,
        };
        foreach (var size in Enum.GetValues<SheetSize>())
        {
            var (part, whole) = (Pages(owners, size), Pages(book, size));
            // Fonts differ between machines, by a page at the most.
            var told = Counts(size).Match(docs);
            Assert.True(part <= OwnersPartAtMost && whole <= BookAtMost && told.Success
                && Math.Abs(part - Number(told, "part")) <= 1 && Math.Abs(whole - Number(told, "whole")) <= 1,
                $"On {size} the owner's part takes {part} pages and the whole book {whole}; docs/papers.md says {told.Value}.");
            foreach (var language in ShippedWords.Languages)
            {
                var pages = Pages(Binder.Paper.Write(SampleJobs.Data("canal-house"), PaperTemplate.In(Binder.Paper, language).Value), size);
                Assert.True(Math.Abs(pages - Number(told, language)) <= 1,
                    $"On {size} the book in {language} takes {pages} pages; docs/papers.md says {told.Value}.");
            }
        }
    }

    /// <summary>Whoever stands at a panel has all of it on one sheet, and two sides of the house are seen beside each other.</summary>
    [ChromiumFact]
    public void EachPanelOfTheScheduleHasASheetAndTwoSidesOfTheHouseShareOne()
    {
        var data = SampleJobs.Data("canal-house");
        foreach (var size in Enum.GetValues<SheetSize>())
        {
            // What stands first, with what rests on values that nobody checked, a sheet for each of both panels, and the sign-off.
            Assert.InRange(Pages(PaperList.Find("panel-schedule")!.Write(data), size), 4, 5);
            // When to close, six sides two to a sheet of which one may stand alone below the heading, and how it is worked out.
            Assert.InRange(Pages(PaperList.Find("sun-sheet")!.Write(data), size), 4, 5);
        }
    }

    [ChromiumFact]
    public void TheCardIsOnePageAndEachPanelHasOneOnItsDoorInEveryLanguage()
    {
        var houses = SampleJobs.Names.Select(SampleJobs.Data).Append(FinishedHouse.Data()).ToList();
        var most = houses.MaxBy(d => d.House.Units.Length)!.House.Name;
        foreach (var (data, language) in houses.SelectMany(d => ShippedWords.Languages.Append("en").Select(l => (d, l))))
        {
            // Letter is the shorter sheet of both; the house with the most on it is held to the narrower one too.
            foreach (var size in data.House.Name == most ? Enum.GetValues<SheetSize>() : [SheetSize.Letter])
            {
                Assert.Equal((data.House.Name, language, 1), (data.House.Name, language, Pages(In("card"), size)));
                Assert.Equal((data.House.Name, language, Math.Max(1, data.House.Panels.Length)), (data.House.Name, language, Pages(In("panel-door"), size)));
            }

            WrittenPaper In(string id)
            {
                var paper = PaperList.Find(id)!;
                return paper.Write(data, language == "en" ? null : PaperTemplate.In(paper, language).Value);
            }
        }
    }

    private static Regex Counts(SheetSize size) => new(
        $@"\| {size} \| (?<part>[0-9]+) \| (?<whole>[0-9]+) \| (?<de>[0-9]+) \| (?<es>[0-9]+) \|", RegexOptions.CultureInvariant);

    private static int Number(Match match, string group) => int.Parse(match.Groups[group].ValueSpan, CultureInfo.InvariantCulture);

    /// <summary>ISO 32000-1, 7.7.3: the page tree says at its root how many pages there are.</summary>
    private static int Pages(WrittenPaper paper, SheetSize size) =>
        PageTree().Matches(Encoding.Latin1.GetString(Chromium.Print(paper.ToHtml(new PrintedSheets(size, new Dictionary<string, int>())))))
            .Max(m => Number(m, "count"));

    [GeneratedRegex(@"/Type\s*/Pages\s*/Count (?<count>[0-9]+)")]
    private static partial Regex PageTree();
}
