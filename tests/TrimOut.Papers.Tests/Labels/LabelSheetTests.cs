using System.Xml.Linq;
using TrimOut.Core.Facts;
using TrimOut.Core.Plans.Photos;
using TrimOut.Papers.Labels;
using TrimOut.Papers.Templates;
using TrimOut.Papers.Writing;

namespace TrimOut.Papers.Tests.Labels;

/// <summary>Codes are read back by ZXing from the shapes of the drawing itself, as a phone would from paper.</summary>
public class LabelSheetTests
{
    [Fact]
    public void EveryLabelOfASheetIsReadBack()
    {
        var data = FinishedHouse.Data();
        var mark = HouseMark.Of(data.Log);
        var codes = LabelSheet.Paper.Write(data).Drawings.Values.SelectMany(Codes).ToList();
        Assert.Equal(["W01;window;P1-W01", "W01;panel;P1-W01", "W02A;window;P1-W02A", "W02A;panel;P1-W02A", "W02B;window;P1-W02B", "W02B;panel;P1-W02B"],
            codes.Select(c => c.Replace($";~{mark}", "", StringComparison.Ordinal)));
        Assert.All(codes, c => Assert.EndsWith($";~{mark}", c, StringComparison.Ordinal));
    }

    /// <summary>A sentence that is cut tells nobody what to do with the print.</summary>
    [Theory]
    [InlineData("de")]
    [InlineData("es")]
    public void NothingThatTheTestPrintSaysIsCut(string language)
    {
        var instead = ShippedWords.OfPapersIn(language).Instead;
        var words = new Words(p => instead.GetValueOrDefault(p, p), language);
        foreach (var grid in (LabelGrid[])[LabelGrid.Plain(letter: true), LabelGrid.Plain(letter: false), LabelGrid.Read("7x3,a4").Value])
        {
            var drawn = LabelSheetDrawing.Test(grid, words).Render("x");
            Assert.Contains(instead["Test print, on plain paper, at 100 %: no fitting to the page."], drawn, StringComparison.Ordinal);
            Assert.DoesNotContain("…", drawn, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("é 窓 🪟")]
    [InlineData("0123456789012345678901234567890123456789")]
    [InlineData("A|B;C")]
    public void ALabelOfAnyLettersIsReadBack(string label)
    {
        var job = FinishedHouse.Build();
        job.Say("W01", RunFacts.LabelAtWindow, label);
        Assert.Equal($"W01;window;{label};~{HouseMark.Of(job.Scribe.Log)}",
            LabelSheet.Paper.Write(FinishedHouse.Data(job.Scribe.Log)).Drawings.Values.SelectMany(Codes).First());
    }

    [Fact]
    public void BothEndsOfEveryRunAreInTheTableForThePrinter()
    {
        var data = FinishedHouse.Data();
        var rows = CsvTableTests.Read(LabelSheet.Paper.Csv!(data));
        Assert.Equal(["unit", "room", "end", "label", "panel", "output", "cable", "code", "wrong"], rows[0]);
        Assert.Equal(["W01", "Kitchen", "window", "P1-W01", "P1", "1", "16/2", $"W01;window;P1-W01;~{HouseMark.Of(data.Log)}", ""], rows[1]);
        Assert.Equal(1 + 2 * 3, rows.Count);
    }

    [Fact]
    public void ACodeIsOnePathAndALabelTooLongForAnyCodeSaysSo()
    {
        var job = FinishedHouse.Build();
        var sheet = XDocument.Parse(LabelSheet.Paper.Write(FinishedHouse.Data(job.Scribe.Log)).Drawings.Values.Last());
        Assert.Equal(6, sheet.Descendants().Count(e => e.Name.LocalName == "path"));
        // A label holds so many letters as a reader sees them, and one of those may be made of dozens of signs.
        job.Say("W01", RunFacts.LabelAtWindow, string.Concat(Enumerable.Repeat("a" + new string('\u0301', 50), 25)));
        sheet = XDocument.Parse(LabelSheet.Paper.Write(FinishedHouse.Data(job.Scribe.Log)).Drawings.Values.Last());
        Assert.Equal(5, sheet.Descendants().Count(e => e.Name.LocalName == "path"));
        Assert.Contains(sheet.Descendants(), e => e.Value == "too long for a code");
    }

    private static IEnumerable<string> Codes(string svg) => XDocument.Parse(svg).Descendants()
        .Where(e => e.Name.LocalName == "path")
        .Select(e => CodeReader.Read(e.Attribute("d")!.Value));
}
