using System.Globalization;
using System.Xml.Linq;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Papers.Drawings;
using TrimOut.Papers.Writing;
using TrimOut.Testing;

namespace TrimOut.Papers.Tests.Drawings;

public class FloorPlanTests
{
    /// <summary>A room with a bay to the south and two windows on each other wall, entered in no order.</summary>
    private static readonly (string Tag, string Facing)[] Bay =
    [
        ("SW", "SW"), ("N1", "N"), ("SE", "SE"), ("E1", "E"), ("S1", "S"), ("W1", "W"), ("N2", "N"), ("E2", "E"), ("W2", "W"), ("S2", "S"),
    ];

    [Fact]
    public void WindowsLieOnTheWallThatTheyFaceInTheirOrderAlongIt()
    {
        var job = new TestJob();
        foreach (var (tag, facing) in Bay)
            job.Window(tag).Say(tag, WindowFacts.Facing, facing);
        var svg = XDocument.Parse(FloorPlan.Of(FloorPlan.Floors(job.House).Single(), Words.English).Render("x")).Root!;
        var at = svg.Elements().Where(e => e.Name.LocalName == "text" && Bay.Any(b => b.Tag == e.Value))
            .ToDictionary(e => e.Value, e => (X: Of(e, "x"), Y: Of(e, "y")));
        // North is up: as on any plan, west is left. Seen from inside, the first of two on a wall is the left one.
        Assert.Equal(["N1", "N2"], Lie("N1", "N2").OrderBy(t => at[t].X));
        Assert.Equal(["SW", "S2", "S1", "SE"], Lie("SE", "S1", "S2", "SW").OrderBy(t => at[t].X));
        Assert.Equal(["E1", "E2"], Lie("E1", "E2").OrderBy(t => at[t].Y));
        Assert.Equal(["W2", "W1"], Lie("W1", "W2").OrderBy(t => at[t].Y));
        Assert.True(at["N1"].Y < at["E1"].Y && at["E1"].Y < at["S1"].Y);
        Assert.True(at["W1"].X < at["N1"].X && at["N2"].X < at["E1"].X);

        string[] Lie(params string[] tags) => tags;
    }

    /// <summary>Dashes on the line of a wall are no dashes: it is open where a window was left out.</summary>
    [Theory]
    [InlineData("N")]
    [InlineData("E")]
    public void TheWallIsOpenBehindTheDashesOfAWindowThatWasLeftOut(string facing)
    {
        var job = new TestJob().Window("W01").Window("W02").Say("W01", WindowFacts.Facing, facing);
        job.Do(LeaveOut.Window(job.House.FindTag("W01")!, "too small"));
        var svg = XDocument.Parse(FloorPlan.Of(FloorPlan.Floors(job.House).Single(), Words.English).Render("x")).Root!.Elements().ToList();
        var dashes = Assert.Single(svg, e => e.Attribute("stroke-dasharray") is not null);
        var gap = Assert.Single(svg, e => (string?)e.Attribute("data-part") == "gap");
        Assert.True(svg.IndexOf(gap) < svg.IndexOf(dashes));
        Assert.True(svg.FindIndex(e => e.Name.LocalName == "rect") < svg.IndexOf(gap));
        Assert.Equal("#fff", (string?)gap.Attribute("fill"));
        Assert.InRange(Of(dashes, "x1"), Of(gap, "x"), Of(gap, "x") + Of(gap, "width"));
        Assert.InRange(Of(dashes, "y2"), Of(gap, "y"), Of(gap, "y") + Of(gap, "height"));
    }

    [Fact]
    public void NoTwoNamesOfASampleLieOverEachOther()
    {
        foreach (var floor in SampleJobs.Names.SelectMany(n => FloorPlan.Floors(SampleJobs.Data(n).House)))
        {
            var boxes = XDocument.Parse(FloorPlan.Of(floor, Words.English).Render("x")).Root!.Elements()
                .Where(e => e.Name.LocalName == "text").Select(Box).ToList();
            for (var a = 0; a < boxes.Count; a++)
            {
                for (var b = a + 1; b < boxes.Count; b++)
                    Assert.False(Overlap(boxes[a], boxes[b]), $"{boxes[a].Text} lies over {boxes[b].Text} on {floor.Name}.");
            }
        }
    }

    private static (string Text, double Left, double Right, double Top, double Bottom) Box(XElement text)
    {
        var size = Of(text, "font-size");
        var wide = Svg.WidthOf(text.Value, size, (string?)text.Attribute("font-weight") == "bold");
        var left = Of(text, "x") - (string?)text.Attribute("text-anchor") switch { "middle" => wide / 2, "end" => wide, _ => 0 };
        return (text.Value, left, left + wide, Of(text, "y") - size * 0.7, Of(text, "y"));
    }

    private static bool Overlap(
        (string Text, double Left, double Right, double Top, double Bottom) a,
        (string Text, double Left, double Right, double Top, double Bottom) b) =>
        a.Left < b.Right && b.Left < a.Right && a.Top < b.Bottom && b.Top < a.Bottom;

    private static double Of(XElement shape, string side) => double.Parse(shape.Attribute(side)!.Value, CultureInfo.InvariantCulture);
}
