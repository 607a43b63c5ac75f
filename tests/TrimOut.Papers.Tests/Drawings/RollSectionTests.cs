using System.Globalization;
using System.Xml.Linq;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;
using TrimOut.Papers.Drawings;
using TrimOut.Papers.Writing;
using TrimOut.Testing;

namespace TrimOut.Papers.Tests.Drawings;

/// <summary>What a section is lettered with, read back out of the drawing.</summary>
public class RollSectionTests
{
    private static readonly XNamespace Ns = "http://www.w3.org/2000/svg";

    public static TheoryData<string> Samples => [.. SampleJobs.Names];

    [Theory]
    [MemberData(nameof(Samples))]
    public void TheTagsAboveASectionStandClearOfTheWall(string sample)
    {
        var sections = SampleJobs.Data(sample).House.Windows.SelectMany(RollSection.Alike).ToList();
        Assert.NotEmpty(sections);
        Assert.All(sections, TagsStandClear);
    }

    /// <summary>The tube is of a sheet that nobody checked, the depth was measured: the mark stands behind the one and not behind the other.</summary>
    [Fact]
    public void InWordsTheMarkStandsBehindTheValueThatNobodyChecked()
    {
        var job = new TestJob().Window("W01").Say("W01", WindowFacts.RoughHeight, "60").Say("W01", WindowFacts.Depth, "4 1/2");
        foreach (var part in job.House.Items.Values.Where(i => FactTable.IsKit(i.Kind) && SheetValues.NotHeldIn(i).Any()).ToList())
            job.Do(KitCheck.All(job.House, part));
        Assert.DoesNotContain("?", Described(), StringComparison.Ordinal);
        job.SayOf("Roller", CoveringKindFacts.Tube, "1 3/4");
        Assert.Contains("tube 1 3/4\"\u00A0?", Described(), StringComparison.Ordinal);
        Assert.Matches("full roll [^,]*\u00A0\\?, set back", Described());
        Assert.EndsWith("depth of the opening 4 1/2\"", Described(), StringComparison.Ordinal);

        string Described() => RollSection.Describe(RollSection.Alike(job.House.Windows[0]).Single()).Plain(Words.English);
    }

    private static void TagsStandClear(IReadOnlyList<Unit> alike)
    {
        var svg = XDocument.Parse(RollSection.Of(alike, Words.English).Render("x")).Root!;
        var tags = string.Join(", ", alike.Select(u => u.Tag));
        var title = Assert.Single(svg.Elements(Ns + "text"), t => t.Value == tags);
        var (from, size) = (Of(title, "x"), Of(title, "font-size"));
        var (top, to) = (Of(title, "y") - size, from + Svg.WidthOf(tags, size, bold: true));
        var walls = svg.Elements(Ns + "line").Where(l => Of(l, "x1") == Of(l, "x2") && Of(l, "stroke-width") > 2).ToList();
        Assert.NotEmpty(walls);
        Assert.All(walls, w => Assert.False(
            Of(w, "x1") >= from && Of(w, "x1") <= to && Math.Min(Of(w, "y1"), Of(w, "y2")) <= Of(title, "y") && Math.Max(Of(w, "y1"), Of(w, "y2")) >= top,
            $"The wall goes through {tags}."));
    }

    private static double Of(XElement shape, string name) => double.Parse(shape.Attribute(name)!.Value, CultureInfo.InvariantCulture);
}
