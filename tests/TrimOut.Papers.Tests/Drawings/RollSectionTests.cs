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
        var job = new TestJob().Window("W01").Say("W01", WindowFacts.RoughHeight, "60").Say("W01", WindowFacts.Depth, "4 1/2")
            .Say("W01", WindowFacts.Mount, "inside");
        foreach (var part in job.House.Items.Values.Where(i => FactTable.IsKit(i.Kind) && SheetValues.NotHeldIn(i).Any()).ToList())
            job.Do(KitCheck.All(job.House, part));
        Assert.DoesNotContain("?", Described(), StringComparison.Ordinal);
        job.SayOf("Roller", CoveringKindFacts.Tube, "1 3/4");
        Assert.Contains("tube 1 3/4\"\u00A0?", Described(), StringComparison.Ordinal);
        Assert.Matches("full roll [^,]*\u00A0\\?, set back", Described());
        Assert.EndsWith("depth of the opening 4 1/2\"", Described(), StringComparison.Ordinal);

        string Described() => RollSection.Describe(RollSection.Alike(job.House.Windows[0]).Single()).Plain(Words.English);
    }

    /// <summary>A roll on the wall hangs in the room, above the head of the opening; one in the reveal hangs behind the wall, below it.</summary>
    [Theory]
    [InlineData("inside", null, null)]
    [InlineData("inside", "4 1/2", null)]
    [InlineData("outside", null, null)]
    [InlineData("outside", "4 1/2", "3")]
    [InlineData("outside", null, "0")]
    [InlineData("outside", null, "40")]
    public void ARollIsDrawnOnTheSideOfTheWallOnWhichItHangs(string mount, string? depth, string? above)
    {
        var job = new TestJob().Window("W01").Say("W01", WindowFacts.RoughHeight, "60");
        Assert.Empty(RollSection.Alike(job.House.Windows[0]));
        job.Say("W01", WindowFacts.Mount, mount);
        if (depth is not null)
            job.Say("W01", WindowFacts.Depth, depth);
        if (above is not null)
            job.Say("W01", WindowFacts.HeadAbove, above);
        var alike = RollSection.Alike(job.House.Windows[0]).Single();
        var svg = XDocument.Parse(RollSection.Of(alike, Words.English).Render("x")).Root!;
        var roll = svg.Elements(Ns + "circle").Single(c => (string?)c.Attribute("data-part") == "full-roll");
        var (left, right, top) = (Of(roll, "cx") - Of(roll, "r"), Of(roll, "cx") + Of(roll, "r"), Of(roll, "cy") - Of(roll, "r"));
        var wall = svg.Elements(Ns + "line").First(l => Of(l, "x1") == Of(l, "x2") && Of(l, "stroke-width") > 2);
        var head = svg.Elements(Ns + "line").First(l => Of(l, "y1") == Of(l, "y2") && Of(l, "stroke-width") > 2);
        Assert.Equal(Of(wall, "x1"), Math.Min(Of(head, "x1"), Of(head, "x2")));
        Assert.True(mount == "outside" ? right <= Of(wall, "x1") + 0.01 : left >= Of(wall, "x1") - 0.01);
        if (mount == "inside")
            Assert.True(top >= Of(head, "y1") - 0.01);
        var words = svg.Elements(Ns + "text").Select(t => t.Value).ToList();
        if (above is not null)
        {
            // To scale beside the roll, whose thickness is that of a spiral: the area of its cut is that of tube and fabric together.
            var kind = alike[0].Kind!;
            double Inches(Fact<TrimOut.Core.Units.Length> fact) => kind[fact] is { } length ? (double)length.Millimetres / 25.4 : 0;
            var area = Math.PI / 4 * Math.Pow(Inches(CoveringKindFacts.Tube), 2)
                + Inches(CoveringKindFacts.FabricThickness) * (60 + Inches(CoveringKindFacts.ExtraFabric));
            var thick = Math.Sqrt(area * 4 / Math.PI);
            Assert.Equal(double.Parse(above, CultureInfo.InvariantCulture) / thick, (Of(head, "y1") - top) / (right - left), 0.1);
            Assert.Contains($"{above}\"", words);
        }
        Assert.Equal(above is not null, words.Exists(t => t.Contains("head above", StringComparison.Ordinal)));
        Assert.Equal(depth is not null && mount == "inside", words.Exists(t => t.Contains("depth of the opening", StringComparison.Ordinal)));
        Assert.All(svg.Elements(Ns + "text"), t => Assert.DoesNotContain("…", t.Value, StringComparison.Ordinal));
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
