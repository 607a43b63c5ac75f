using System.Collections.Concurrent;
using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using TrimOut.Core.History;
using TrimOut.Papers;
using TrimOut.Papers.Templates;
using TrimOut.Papers.Tests;
using TrimOut.Printing;
using TrimOut.Testing;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Outline;
using UglyToad.PdfPig.Outline.Destinations;

namespace TrimOut.Tests.Printing;

/// <summary>Papers of the samples as PDF, read back with PdfPig.</summary>
public class PrintedPapersTests
{
    private static readonly DateOnly Day = new(2026, 9, 30);

    /// <summary>What a line of text at the foot of a page takes, in points: below a heading must be more than that.</summary>
    private const double Foot = 52;

    [ChromiumFact]
    public void EverySheetNamesHousePaperDayAndPageOfPages() => EachOfRidgeHouse((written, pdf) =>
    {
        var named = pdf.GetPages().Where(p => TextOf(p.GetWords()) is var text && text.Contains(written.Title, StringComparison.Ordinal)
            && text.Contains("2026-09-30", StringComparison.Ordinal) && text.Contains($"{p.Number} / {pdf.NumberOfPages}", StringComparison.Ordinal));
        // A sheet of labels is printed to its edges, and so is the one that tells whether they will meet.
        Assert.Equal(pdf.NumberOfPages - written.Drawings.Values.Count(d => d.StartsWith("<svg", StringComparison.Ordinal)
            && d[..d.IndexOf('>', StringComparison.Ordinal)].Contains("data-part", StringComparison.Ordinal)), named.Count());
    });

    [ChromiumFact]
    public void NoHeadingStandsAtTheFootOfASheetWithoutWhatItHeads() => EachOfRidgeHouse((written, pdf) =>
    {
        Assert.True(pdf.TryGetBookmarks(out var bookmarks));
        var headings = bookmarks.GetNodes().OfType<DocumentBookmarkNode>().ToList();
        var bodies = Regex.Split(written.Markdown, "^#{1,3} .*$", RegexOptions.Multiline).Skip(1).Select(b => b.Trim()).ToList();
        Assert.Equal(bodies.Count, headings.Count);
        foreach (var (heading, body) in headings.Zip(bodies))
        {
            var top = heading.Destination.Coordinates.Top ?? throw new InvalidOperationException("A bookmark leads to no place.");
            var lines = pdf.GetPage(heading.PageNumber).GetWords().Where(w => w.BoundingBox.Bottom > Foot && w.BoundingBox.Top < top)
                .GroupBy(w => Math.Round(w.BoundingBox.Bottom / 4)).Count();
            // Its own line, and one below it; two where a sentence leads to more.
            Assert.True(lines >= (body.Contains("\n\n", StringComparison.Ordinal) ? 3 : 2),
                $"{written.Title}: \"{heading.Title}\" stands at the foot of page {heading.PageNumber}.");
        }
    });

    [ChromiumFact]
    public void NothingIsWiderThanTheColumnOfText() => EachOfRidgeHouse((written, pdf) =>
    {
        const double margin = 16 / 25.4 * 72;
        foreach (var page in pdf.GetPages())
        {
            var words = page.GetWords().ToList();
            if (TextOf(words).Contains(written.Title, StringComparison.Ordinal))
                Assert.All(words, w => Assert.InRange(w.BoundingBox.Right, margin, page.Width - margin + 2));
        }
    });

    [ChromiumFact]
    public void TheContentsNameThePageOnWhichEachSectionBegins()
    {
        foreach (var size in Enum.GetValues<SheetSize>())
        {
            var written = Binder.Paper.Write(Data("ridge-house"));
            var bytes = Printed(written, size);
            using var pdf = PdfDocument.Open(bytes);
            var contents = pdf.GetPage(1).GetWords().Select(w => w.Text).ToList();
            var pages = SectionPages.Of(bytes);
            var sections = Regex.Matches(written.Markdown, @"^- \[(?<name>[^\]]+)\]\(#", RegexOptions.Multiline).Select(m => m.Groups["name"].Value).ToList();
            Assert.True(sections.Count > 15);
            Assert.True(pages[sections[^1]] > 5);
            Assert.All(sections, s => Assert.Contains(
                $" {s} {pages[s].ToString(CultureInfo.InvariantCulture)} ", $" {string.Join(' ', contents)} ", StringComparison.Ordinal));
        }
    }

    /// <summary>Rows of several lines, as many as three sheets take: the first word of each is on the sheet of its last.</summary>
    [ChromiumFact]
    public void ARowOfATableIsOnOneSheet()
    {
        var rows = new StringBuilder("# Rows\n\n## All\n\n| Unit | What |\n|---|---|\n");
        for (var row = 100; row < 160; row++)
        {
            var between = string.Concat(Enumerable.Repeat("words that go on and on ", row % 37));
            rows.Append(CultureInfo.InvariantCulture, $"| {row} | first{row} {between} last{row} |\n");
        }
        var written = new WrittenPaper("binder", "Rows", "en", rows.ToString(), new Dictionary<string, string>()) { Day = Day };
        using var pdf = PdfDocument.Open(Printed(written, SheetSize.A4));
        Assert.True(pdf.NumberOfPages > 2);
        var sheets = pdf.GetPages().Select(p => TextOf(p.GetWords())).ToList();
        Assert.All(Enumerable.Range(100, 60), row => Assert.Single(sheets,
            s => s.Contains($"first{row}", StringComparison.Ordinal) && s.Contains($"last{row}", StringComparison.Ordinal)));
        Assert.All(sheets, s => Assert.Contains("Unit What", s, StringComparison.Ordinal));
    }

    /// <summary>Half a day, half a license or a figure without its unit at the end of a line is read as another one.</summary>
    [ChromiumFact]
    public void NoDayNoNumberAndNoFigureWithItsUnitIsPartedAtTheEndOfALine()
    {
        EachOfRidgeHouse((written, pdf) => Holds(written, pdf));
        foreach (var paper in new[] { "binder", "card", "parts-list", "test-record", "work-plan" })
        {
            var written = PaperList.Find(paper)!.Write(Data("canal-house"));
            using var pdf = PdfDocument.Open(Printed(written, SheetSize.Letter));
            Holds(written, pdf);
        }
        foreach (var (id, language) in new[] { ("pull-sheet", "de"), ("test-record", "es") })
        {
            var paper = PaperList.Find(id)!;
            var written = paper.Write(Data("ridge-house"), PaperTemplate.In(paper, language).Value);
            using var pdf = PdfDocument.Open(Printed(written, SheetSize.Letter));
            Holds(written, pdf);
        }

        static void Holds(WrittenPaper written, PdfDocument pdf)
        {
            foreach (var words in pdf.GetPages().Select(p => p.GetWords().ToList()))
            {
                Assert.All(words, w => Assert.False(Regex.IsMatch(w.Text, "[0-9]-$|^[A-Z]-$"), $"{written.Title}: {w.Text}"));
                Assert.All(words.Zip(words.Skip(1)), pair => Assert.False(
                    Regex.IsMatch(pair.First.Text, "^[0-9.,]+$") && Regex.IsMatch(pair.Second.Text, "^(mm|m|ft|Fuß|pies|A|V|W|ohm)$")
                    && pair.First.BoundingBox.Bottom - pair.Second.BoundingBox.Bottom > 5, $"{written.Title}: {pair.First.Text} | {pair.Second.Text}"));
            }
        }
    }

    /// <summary>Tables that begin ever lower on a sheet: a row alone below the head, or alone on the next sheet, is overlooked.</summary>
    [ChromiumFact]
    public void NoRowOfATableIsAloneOnASheet()
    {
        var text = new StringBuilder("# Rows\n");
        for (var table = 10; table < 90; table++)
        {
            text.Append(CultureInfo.InvariantCulture, $"\n## Table {table}\n");
            for (var line = 0; line <= table % 4; line++)
                text.Append("\nWhat stands before it.\n");
            text.Append("\n| Unit | What | When |\n|---|---|---|\n");
            for (var row = 10; row < 27 + table % 5; row++)
                text.Append(CultureInfo.InvariantCulture, $"| t{table}r{row} | what | when |\n");
        }
        var written = new WrittenPaper("order-sheet", "Rows", "en", text.ToString(), new Dictionary<string, string>()) { Day = Day };
        using var pdf = PdfDocument.Open(Printed(written, SheetSize.Letter));
        var parted = 0;
        foreach (var sheet in pdf.GetPages())
        {
            foreach (var rows in sheet.GetWords().Where(w => Regex.IsMatch(w.Text, "^t[0-9]{2}r[0-9]{2}$")).GroupBy(w => w.Text[..3]))
            {
                Assert.True(rows.Count() > 1, $"{rows.First().Text} is alone on sheet {sheet.Number}.");
                parted += rows.Count() < 17 ? 1 : 0;
            }
        }
        Assert.True(parted > 10);
    }

    /// <summary>A heading with a sentence goes to the next sheet only with what it heads, and that is not the table of the next section.</summary>
    [ChromiumFact]
    public void ASectionOfOneSentenceDoesNotGoWithTheTableOfTheNext()
    {
        var text = new StringBuilder("# Sections\n\n## First\n");
        for (var line = 0; line < 22; line++)
            text.Append("\nA sentence.\n");
        text.Append("\n## Short\n\nNothing.\n\n## Long\n\n| Unit | What | When |\n|---|---|---|\n");
        for (var row = 0; row < 14; row++)
            text.Append(CultureInfo.InvariantCulture, $"| {row} | what | when |\n");
        using var pdf = PdfDocument.Open(Printed(
            new WrittenPaper("order-sheet", "Sections", "en", text.ToString(), new Dictionary<string, string>()) { Day = Day }, SheetSize.Letter));
        Assert.Contains("Short Nothing.", TextOf(pdf.GetPage(1).GetWords()), StringComparison.Ordinal);
        Assert.Contains("Long Unit", TextOf(pdf.GetPage(2).GetWords()), StringComparison.Ordinal);
    }

    /// <summary>
    /// In the legend of a window's drawing each of its units has a line with its lead, and each section has an outer circle: a window and the sections
    /// of its units are on one sheet.
    /// </summary>
    [ChromiumFact]
    public void OnTheHangSheetAWindowAndTheSectionsOfItsUnitsAreOnOneSheet()
    {
        foreach (var (data, size) in SamplesAndSizes())
        {
            var units = data.House.Windows.Where(w => !w.LeftOut).SelectMany(w => w.Units).ToList();
            var sections = Sections(data);
            using var pdf = PdfDocument.Open(Printed(PaperList.Find("hang-sheet")!.Write(data), size));
            var before = 0;
            foreach (var words in pdf.GetPages().Select(p => TextOf(p.GetWords())))
            {
                var here = units.Skip(before).Take(Leads(words)).ToList();
                Assert.Equal(here.Count(u => sections.Contains(u.Tag)), Regex.Count(words, @"\bOuter circle"));
                before += here.Count;
            }
            Assert.Equal(units.Count, before);
        }
    }

    /// <summary>On the measure form the drawing of a window is on the sheet of its blanks.</summary>
    [ChromiumFact]
    public void OnTheMeasureFormAWindowIsDrawnOnTheSheetWhereItIsWrittenIn()
    {
        foreach (var (data, size) in SamplesAndSizes())
        {
            var windows = data.House.Windows.Where(w => !w.LeftOut).ToList();
            using var pdf = PdfDocument.Open(Printed(PaperList.Find("measure-form")!.Write(data), size));
            var before = 0;
            foreach (var words in pdf.GetPages().Select(p => TextOf(p.GetWords())))
            {
                // Only the head of the table has the word in front of the tag.
                var written = windows.Where(w => Regex.IsMatch(words, $"\\bWindow {Regex.Escape(w.Tag)} Top or left")).ToList();
                Assert.Equal(written.Sum(w => w.Units.Length), Leads(words));
                before += written.Count;
            }
            Assert.Equal(windows.Count, before);
        }
    }

    /// <summary>A crew has one sheet in hand: what a room's units are called, where they begin and what is ticked of them is on the same one.</summary>
    [ChromiumFact]
    public void TheTablesOfARoomAreOnOneSheet()
    {
        foreach (var (data, size) in SamplesAndSizes())
        {
            EachSheet("hang-sheet", data, size, (words, sheet) => Assert.True(
                Heads(words, "Reached") == Heads(words, "begins,") && Heads(words, "Reached") == Heads(words, "Clicked"), sheet));
            EachSheet("walk-sheet", data, size, (words, sheet) => Assert.True(Heads(words, "Facing") == Heads(words, "Below"), sheet));
            // What rests on values that nobody checked stands first, by parts of the kit.
            EachSheet("measure-form", data, size, (words, sheet) => Assert.True(data.House.Windows.Count(w => w.Units.Length > 1
                && TextOf(words).Contains($"Window {w.Tag} Top or left", StringComparison.Ordinal))
                + (TextOf(words).Contains("Rests on values", StringComparison.Ordinal) ? 1 : 0) == Heads(words, "Part"), sheet));
        }
    }

    /// <summary>Whoever stands at a panel has both of its sides on one sheet, whatever stands before the first.</summary>
    [ChromiumFact]
    public void BothSidesOfAPanelAreOnOneSheetOfTheSchedule()
    {
        foreach (var (data, size) in SamplesAndSizes())
        {
            var panels = 0;
            EachSheet("panel-schedule", data, size, (words, sheet) =>
            {
                var text = TextOf(words);
                Assert.True(Regex.Count(text, "Mains side Entry") is var mains && mains == Regex.Count(text, "Low-voltage side Figure"), sheet);
                panels += mains;
            });
            Assert.Equal(data.House.Panels.Length, panels);
        }
    }

    /// <summary>Who signs for the house sees on one sheet what was noted of it, who connected the mains, and where to sign.</summary>
    [ChromiumFact]
    public void TheSignOffOfTheBookIsOnOneSheet()
    {
        foreach (var (data, size) in SamplesAndSizes())
        {
            var signed = 0;
            EachSheet("binder", data, size, (words, sheet) =>
            {
                var text = TextOf(words);
                if (!text.Contains("Every unit was shown open", StringComparison.Ordinal))
                    return;
                signed++;
                Assert.True(text.Contains("Sign-off", StringComparison.Ordinal) && text.Contains("Mains connection", StringComparison.Ordinal), sheet);
            });
            Assert.Equal(1, signed);
        }
    }

    /// <summary>What is signed stands with the cautions, before the panels: no sheet holds cautions, or a sentence, alone behind them.</summary>
    [ChromiumFact]
    public void ThePanelScheduleEndsWithAPanelAndIsSignedWhereTheCautionsStand()
    {
        foreach (var (data, size) in SamplesAndSizes())
        {
            var last = "";
            EachSheet("panel-schedule", data, size, (words, sheet) =>
            {
                last = TextOf(words);
                Assert.True(last.Contains("Mains sign-off", StringComparison.Ordinal) == last.Contains("power-limited", StringComparison.Ordinal), sheet);
            });
            Assert.Contains("Low-voltage side Figure", last, StringComparison.Ordinal);
        }
    }

    /// <summary>Whoever measures again has no sheet in hand on which the first measure stands.</summary>
    [ChromiumFact]
    public void TheSecondMeasureIsOnNoSheetOfTheFirst()
    {
        foreach (var (data, size) in SamplesAndSizes())
        {
            EachSheet("measure-form", data, size, (words, sheet) =>
                Assert.False(Heads(words, "Smallest") > 0 && Regex.IsMatch(TextOf(words), "Window [^ ]+ Top or left"), sheet));
        }
    }

    /// <summary>W02 and W03 of the sitting room fit on a sheet; the tables of the room are on the next one, whole.</summary>
    [ChromiumFact]
    public void WindowsOfARoomShareASheetOfTheHangSheetWhereTheyFit()
    {
        var sheets = new List<string>();
        EachSheet("hang-sheet", Data("orchard-cottage"), SheetSize.Letter, (words, _) => sheets.Add(TextOf(words)));
        Assert.Equal(
            sheets.FindIndex(s => s.Contains("W02: lead", StringComparison.Ordinal)), sheets.FindIndex(s => s.Contains("W03: lead", StringComparison.Ordinal)));
    }

    /// <summary>The table of boxes may go over several sheets, what is known of the job not.</summary>
    [ChromiumFact]
    public void WhatIsKnownOfTheJobIsOnOneSheetOfTheReceivingList()
    {
        foreach (var (data, size) in SamplesAndSizes())
        {
            EachSheet("receiving-list", data, size, (words, sheet) =>
            {
                var text = TextOf(words);
                Assert.True(text.Contains("Site contact", StringComparison.Ordinal) == text.Contains("Written on", StringComparison.Ordinal), sheet);
            });
        }
    }

    private static void EachSheet(string paper, PaperData data, SheetSize size, Action<List<Word>, string> holds)
    {
        var written = PaperList.Find(paper)!.Write(data);
        using var pdf = PdfDocument.Open(Printed(written, size));
        foreach (var page in pdf.GetPages())
            holds([.. page.GetWords()], $"{written.Title}, {size}, sheet {page.Number}");
    }

    private static int Heads(List<Word> words, string word) => words.Count(w => w.Text == word);

    /// <summary>ISO 216 and ANSI/ASME Y14.1: the sheets of a paper with wide tables lie on their side.</summary>
    [ChromiumFact]
    public void TheReceivingListLiesOnItsSide()
    {
        foreach (var size in Enum.GetValues<SheetSize>())
        {
            using var pdf = PdfDocument.Open(Printed(PaperList.Find("receiving-list")!.Write(Data("orchard-cottage")), size));
            Assert.All(pdf.GetPages(), p => Assert.True(p.Width > p.Height));
        }
    }

    private static HashSet<string> Sections(PaperData data) => [.. Regex.Matches(PaperList.Find("hang-sheet")!.Write(data).Markdown,
        @"!\[Section of (?<tag>[^,]+),").Select(m => m.Groups["tag"].Value)];

    private static IEnumerable<(PaperData Data, SheetSize Size)> SamplesAndSizes() =>
        from sample in new[] { "canal-house", "orchard-cottage", "ridge-house" }
        let data = Data(sample)
        from size in Enum.GetValues<SheetSize>()
        select (data, size);

    private static void EachOfRidgeHouse(Action<WrittenPaper, PdfDocument> holds)
    {
        var data = Data("ridge-house");
        foreach (var (paper, at) in PaperList.All.Select((p, at) => (p, at)))
        {
            var written = paper.Write(data);
            using var pdf = PdfDocument.Open(Printed(written, at % 2 == 0 ? SheetSize.A4 : SheetSize.Letter));
            holds(written, pdf);
        }
    }

    /// <summary>Printed once, however many tests read it.</summary>
    private static byte[] Printed(WrittenPaper paper, SheetSize size) => Prints.GetOrAdd((paper.Id, paper.Markdown, size), _ =>
        new PdfPrinter(size, html => new Browser(ChromiumFactAttribute.Browser!, Browser.Limit).Print(html, CancellationToken.None)).Print(paper));

    private static readonly ConcurrentDictionary<(string Paper, string Markdown, SheetSize Size), byte[]> Prints = new();

    private static PaperData Data(string sample) => PaperData.Of(HouseLog.Of(File.ReadLines(
        Path.Combine(Repository.Root, "sample-jobs", sample, "history.jsonl")).Where(l => l.Length > 0).Select(l => ChangeJson.Read(l).Value)).Value, Day);

    private static int Leads(string words) => Regex.Count(words, ": lead (left|right|–), tail");

    private static string TextOf(IEnumerable<Word> words) => string.Join(' ', words.Select(w => w.Text));
}
