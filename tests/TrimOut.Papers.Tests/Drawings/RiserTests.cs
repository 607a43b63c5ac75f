using System.Globalization;
using System.Xml.Linq;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Papers.Drawings;
using TrimOut.Papers.Templates;
using TrimOut.Papers.Writing;
using TrimOut.Testing;

namespace TrimOut.Papers.Tests.Drawings;

public class RiserTests
{
    private static readonly XNamespace Ns = "http://www.w3.org/2000/svg";

    /// <summary>The lines of two panels that lie on each other or cross below the floors read as one: below the floors each goes alone.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(7)]
    public void BelowTheFloorsNoLineMeetsThatOfAnotherPanel(int panels)
    {
        var lines = Drawn(panels).Elements(Ns + "polyline").Select(Points).ToList();
        Assert.Equal(2 * panels, lines.Count);
        var below = lines.Select(l => l.Take(3).ToList()).DistinctBy(l => string.Join(' ', l)).ToList();
        Assert.Equal(panels, below.Count);
        for (var a = 0; a < below.Count; a++)
        {
            for (var b = a + 1; b < below.Count; b++)
                Assert.False(Legs(below[a]).Any(x => Legs(below[b]).Any(y => Meet(x, y))), $"Panels {a + 1} and {b + 1}.");
        }
    }

    [Fact]
    public void OfMorePanelsThanStandThereEachBoxNamesItsOwn()
    {
        var svg = Drawn(8);
        Assert.Empty(svg.Elements(Ns + "polyline"));
        var wide = Of(svg, "viewBox", 2);
        Assert.All(svg.Elements(Ns + "rect"), r => Assert.True(Of(r, "x") + Of(r, "width") <= wide));
        Assert.All(Enumerable.Range(1, 8), p => Assert.Contains(svg.Elements(Ns + "text"), t => t.Value.StartsWith($"P{p} ", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("en")]
    [InlineData("de")]
    [InlineData("es")]
    public void NothingOfASampleIsCut(string language)
    {
        var words = language == "en" ? Words.English : PaperTemplate.In(Binder.Paper, language).Value.Words;
        foreach (var house in SampleJobs.Names.Select(n => SampleJobs.Data(n).House))
            Assert.All(Riser.Sheets(house), s => Assert.DoesNotContain("…", Riser.Of(house, s, words).Render("x"), StringComparison.Ordinal));
    }

    /// <summary>Two floors, each with a run of every panel.</summary>
    private static XElement Drawn(int panels)
    {
        var job = new TestJob();
        for (var at = 1; at <= panels; at++)
        {
            job.Add(ItemKind.Panel, $"P{at}");
            foreach (var floor in new[] { "Main", "Upper" })
                job.Room($"{floor} room", floor).Window($"{floor[0]}{at}", $"{floor} room").Say($"{floor[0]}{at}", RunFacts.Panel, $"P{at}");
        }
        return XDocument.Parse(Riser.Of(job.House, Riser.Sheets(job.House).Single(), Words.English).Render("x")).Root!;
    }

    private static List<(double X, double Y)> Points(XElement line) =>
        [.. line.Attribute("points")!.Value.Split(' ').Select(p => p.Split(',').Select(n => double.Parse(n, CultureInfo.InvariantCulture)).ToArray())
            .Select(p => (p[0], p[1]))];

    /// <summary>The legs of a line from the panel up to where it rises to the floors.</summary>
    private static IEnumerable<(double Left, double Top, double Right, double Bottom)> Legs(List<(double X, double Y)> line) => line.Zip(line.Skip(1))
        .Select(l => (Math.Min(l.First.X, l.Second.X), Math.Min(l.First.Y, l.Second.Y), Math.Max(l.First.X, l.Second.X), Math.Max(l.First.Y, l.Second.Y)));

    private static bool Meet((double Left, double Top, double Right, double Bottom) a, (double Left, double Top, double Right, double Bottom) b) =>
        a.Left <= b.Right && b.Left <= a.Right && a.Top <= b.Bottom && b.Top <= a.Bottom;

    private static double Of(XElement shape, string name, int at = 0) =>
        double.Parse(shape.Attribute(name)!.Value.Split(' ')[at], CultureInfo.InvariantCulture);
}
