using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using AngleSharp.Dom;
using TrimOut.Papers.Writing;

namespace TrimOut.Papers.Tests;

/// <summary>What can be seen without a browser of how papers are heard, seen by weak eyes, and read on a phone.</summary>
public partial class AccessiblePagesTests
{
    /// <summary>Web Content Accessibility Guidelines 2.1, 1.4.3: the contrast of text with what is behind it.</summary>
    private const double LeastContrast = 4.5;

    private static readonly PaperData[] Houses = [FinishedHouse.Data(), .. SampleJobs.Names.Select(SampleJobs.Data)];

    public static TheoryData<string> Papers => [.. PaperList.All.Select(p => p.Id)];

    [Theory]
    [MemberData(nameof(Papers))]
    public void EveryTableSaysWhatItIsOfAndWhatEachCellIsTheHeadOf(string id)
    {
        foreach (var data in Houses)
        {
            var page = PaperList.Find(id)!.Page(data);
            foreach (var table in page.QuerySelectorAll("table"))
            {
                Assert.Equal(HeadingBefore(table).TextContent, table.QuerySelector("caption")?.TextContent);
                Assert.All(table.QuerySelectorAll("thead th"), h => Assert.Equal("col", h.GetAttribute("scope")));
                Assert.All(table.QuerySelectorAll("tbody tr"), r => Assert.Equal(["row"], r.QuerySelectorAll("th").Select(h => h.GetAttribute("scope"))));
            }
        }
    }

    [Theory]
    [MemberData(nameof(Papers))]
    public void EachCellOfAWideTableCarriesTheNameOfItsColumnForThePhone(string id)
    {
        foreach (var data in Houses)
        {
            foreach (var table in PaperList.Find(id)!.Page(data).QuerySelectorAll("table"))
            {
                var columns = table.QuerySelectorAll("thead th").Select(h => h.TextContent).ToList();
                Assert.Equal(columns.Count > 2, table.ClassList.Contains("wide"));
                Assert.All(table.QuerySelectorAll("tbody tr"), r => Assert.Equal(columns.Count > 2 ? columns : [],
                    r.Children.Select(c => c.GetAttribute("data-label")).OfType<string>()));
            }
        }
    }

    /// <summary>On a phone the heading is out of sight where its last cards are: an output without its panel is any panel's.</summary>
    [Fact]
    public void EachCardNamesTheRoomOrThePanelThatItIsOf()
    {
        foreach (var (id, level) in (ReadOnlySpan<(string, string)>)[("panel-schedule", "H3"), ("hang-sheet", "H3"), ("panel-door", "H3"), ("test-record", "")])
        {
            foreach (var table in Houses.SelectMany(d => PaperList.Find(id)!.Page(d).QuerySelectorAll("table.wide")))
            {
                var heading = HeadingBefore(table);
                Assert.All(table.QuerySelectorAll("tbody th"),
                    h => Assert.Equal(heading.TagName == level ? heading.TextContent : null, h.GetAttribute("data-of")));
            }
        }
    }

    [Theory]
    [MemberData(nameof(Papers))]
    public void LetteringOfDrawingsIsEightPointsHighOnPaper(string id)
    {
        foreach (var svg in Houses.SelectMany(d => PaperList.Find(id)!.Write(d).Drawings.Values).Select(d => XDocument.Parse(d).Root!))
        {
            // A sheet of labels fills its page to the edges, and their lettering is as large as the labels let it be.
            if (svg.Attribute("data-part") is not null)
                continue;
            // The column of text is 178 mm wide on A4, and a page at most 235 mm high: what is larger would be drawn smaller.
            var (wide, high) = (Millimetres(svg, "width"), Millimetres(svg, "height"));
            Assert.True(wide <= 178 && high <= 235, $"{wide} mm x {high} mm: {svg.Elements().First().Value}");
            var millimetresPerUnit = wide / Number(svg.Attribute("viewBox")!.Value.Split(' ')[2]);
            Assert.All(svg.Elements().Where(e => e.Name.LocalName == "text"),
                t => Assert.True(Number(t.Attribute("font-size")!.Value) * millimetresPerUnit >= 8 * 25.4 / 72, $"\"{t.Value}\" is too small."));
        }
    }

    [Fact]
    public void LettersBlanksAndLinesStandOutFromWhatIsBehindThem()
    {
        var colours = Ink().Matches(PageStyle.Css).Select(m => m.Groups["colour"].Value).Distinct().ToList();
        Assert.True(colours.Count > 3);
        Assert.All(colours, c => Assert.True(Contrast(c, "#fff") >= LeastContrast, $"{c} on white: {Contrast(c, "#fff"):0.0}"));
        // Heads of tables are grey.
        Assert.All(["#000", "#333"], c => Assert.True(Contrast(c, "#e8e8e8") >= LeastContrast));
        Assert.Equal(21, Contrast("#000", "#fff"), 0.01);
        Assert.Equal(4.54, Contrast("#767676", "#fff"), 0.01);
    }

    private static IElement HeadingBefore(IElement at)
    {
        while (at.PreviousElementSibling is { } before)
        {
            if (before.TagName is "H1" or "H2" or "H3")
                return before;
            at = before;
        }
        throw new InvalidOperationException("A table stands under no heading.");
    }

    /// <summary>Web Content Accessibility Guidelines 2.1, definitions of contrast ratio and relative luminance.</summary>
    private static double Contrast(string one, string other)
    {
        var (a, b) = (Luminance(one), Luminance(other));
        return (Math.Max(a, b) + 0.05) / (Math.Min(a, b) + 0.05);
    }

    private static double Luminance(string colour)
    {
        var digits = colour.Length == 4 ? string.Concat(colour.Skip(1).Select(d => $"{d}{d}")) : colour[1..];
        double Part(int at)
        {
            var part = int.Parse(digits.AsSpan(at, 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture) / 255.0;
            return part <= 0.04045 ? part / 12.92 : Math.Pow((part + 0.055) / 1.055, 2.4);
        }
        return 0.2126 * Part(0) + 0.7152 * Part(2) + 0.0722 * Part(4);
    }

    private static double Millimetres(XElement svg, string side) => Number(svg.Attribute(side)!.Value.Replace("mm", "", StringComparison.Ordinal));

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"(?:[{;] *color|border[a-z-]*): *[^;}]*?(?<colour>#[0-9a-f]{3,6})")]
    private static partial Regex Ink();
}
