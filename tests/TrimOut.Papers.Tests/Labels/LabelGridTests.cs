using System.Globalization;
using System.Xml.Linq;
using TrimOut.Core.Units;
using TrimOut.Papers.Labels;
using TrimOut.Papers.Writing;

namespace TrimOut.Papers.Tests.Labels;

/// <summary>Places are read back out of the drawing, in millimetres, and held to what the margins say.</summary>
public class LabelGridTests
{
    public static TheoryData<int> Common => [.. Enumerable.Range(0, LabelGrid.Common.Length)];

    [Theory]
    [MemberData(nameof(Common))]
    public void TheLabelsOfACommonSheetLieWhereItsMarginsSay(int at)
    {
        var grid = LabelGrid.Common[at];
        var labels = Labels(grid);
        Assert.Equal(grid.OnASheet, labels.Count);
        Near(grid.Left, labels[0].X);
        Near(grid.Top, labels[0].Y);
        Near(grid.SheetWide - grid.Right, labels[^1].X + labels[^1].Wide);
        Near(grid.SheetHigh - grid.Bottom, labels[^1].Y + labels[^1].High);
        Near(grid.Across, labels[1].X - labels[0].X - labels[0].Wide);
        Near(labels[grid.Columns].Y - labels[0].Y - labels[0].High, (double)grid.Down.Millimetres);
    }

    // Letter is 8 1/2 x 11 in (ANSI/ASME Y14.1), A4 210 x 297 mm (ISO 216): three labels beside each other with 3/16 in at the sides and 1/8 in between
    // are 2 5/8 in wide; ten below each other with 1/2 in above and below are 1 in high.
    [Fact]
    public void LabelsShareWhatMarginsAndGapsLeave()
    {
        var letter = LabelGrid.Read("10x3").Value;
        Assert.Equal((2.625m, 1m), (letter.Wide.Inches, letter.High.Inches));
        var a4 = LabelGrid.Read("8x3,a4").Value;
        Assert.Equal((70m, 37.125m), (a4.Wide.Millimetres, a4.High.Millimetres));
    }

    [Fact]
    public void AnythingOfASheetCanBeSet()
    {
        var grid = LabelGrid.Read("6 x 2, letter, top=1/2\", bottom=20, left=8.5, right=7.5, across=3, down=1").Value;
        Assert.Equal((true, 6, 2), (grid.IsLetter, grid.Rows, grid.Columns));
        Assert.Equal([12.7m, 20m, 8.5m, 7.5m, 3m, 1m],
            new[] { grid.Top, grid.Bottom, grid.Left, grid.Right, grid.Across, grid.Down }.Select(l => l.Millimetres));
        var labels = Labels(grid);
        Near(grid.Left, labels[0].X);
        Near(grid.Down, labels[2].Y - labels[0].Y - labels[0].High);
    }

    [Theory]
    [InlineData("", "is no sheet of labels")]
    [InlineData("ten by three", "is no sheet of labels")]
    [InlineData("0x3", "is no sheet of labels")]
    [InlineData("31x1", "is no sheet of labels")]
    [InlineData("10x3,wide", "is nothing that a sheet of labels has")]
    [InlineData("10x3,edge=5", "A sheet of labels has no edge")]
    [InlineData("10x3,top=five", "top: \"five\" is no length")]
    [InlineData("30x3,a4", "too small to read")]
    [InlineData("2x2,left=250", "too small to read")]
    public void ASheetThatIsNoneIsRefusedWithTheReason(string typed, string reason) =>
        Assert.Contains(reason, LabelGrid.Read(typed).Reason, StringComparison.Ordinal);

    [Fact]
    public void TheTestPrintHasARulerAlongEachEdgeInItsTrueSize()
    {
        var grid = LabelGrid.Read("10x3").Value;
        var sheet = XDocument.Parse(LabelSheetDrawing.Test(grid, Words.English).Render("x")).Root!;
        Assert.Equal("215.9mm", sheet.Attribute("width")!.Value);
        var figures = sheet.Elements().Where(e => e.Name.LocalName == "text").Select(e => (e.Value, X: N(e, "x"), Y: N(e, "y"))).ToList();
        Assert.Contains(figures, f => f.Value == "20" && Math.Abs(f.X / LabelSheetDrawing.PerMillimetre - 200) < 1);
        Assert.Contains(figures, f => f.Value == "27" && Math.Abs(f.Y / LabelSheetDrawing.PerMillimetre - 270) < 1.5);
        Assert.Contains(figures, f => f.Value == "8\"" && Math.Abs(f.X / LabelSheetDrawing.PerMillimetre - 8 * 25.4) < 1);
        Assert.Contains(figures, f => f.Value == "10\"" && Math.Abs(f.Y / LabelSheetDrawing.PerMillimetre - 254) < 1.5);
    }

    [Fact]
    public void NoLabelOfACommonSheetIsCutShortAndEachEndHasItsOwn()
    {
        foreach (var grid in LabelGrid.Common)
        {
            foreach (var data in SampleJobs.Names.Select(SampleJobs.Data))
            {
                var ends = CableEnd.AllOf(data).ToList();
                var texts = ends.Chunk(grid.OnASheet).SelectMany(s => XDocument.Parse(LabelSheetDrawing.Of(s, grid, Words.English).Render("x")).Descendants())
                    .Where(e => e.Name.LocalName == "text").Select(e => e.Value).ToList();
                Assert.All(ends, e => Assert.Equal(!e.IsWrong || ends.Exists(o => o.Label == e.Label && !o.IsWrong), texts.Contains(e.Label)));
                Assert.Equal(ends.Count(e => e.IsWrong), texts.Count(t => t == "No label: to be put right first"));
                Assert.Equal(ends.Count, texts.Count(t => t.EndsWith(", at the window", StringComparison.Ordinal)
                    || t.EndsWith(", at the panel", StringComparison.Ordinal)));
            }
        }
    }

    private static void Near(Length expected, double millimetres) => Near(millimetres, (double)expected.Millimetres);

    /// <summary>To a twentieth of a millimetre.</summary>
    private static void Near(double one, double other) => Assert.True(Math.Abs(one - other) < 0.05, $"{one} is not {other}");

    private static List<(double X, double Y, double Wide, double High)> Labels(LabelGrid grid) =>
        [.. XDocument.Parse(LabelSheetDrawing.Test(grid, Words.English).Render("x")).Descendants().Where(e => (string?)e.Attribute("data-part") == "label")
            .Select(e => (Millimetres(e, "x"), Millimetres(e, "y"), Millimetres(e, "width"), Millimetres(e, "height")))];

    private static double Millimetres(XElement element, string attribute) => N(element, attribute) / LabelSheetDrawing.PerMillimetre;

    private static double N(XElement element, string attribute) => double.Parse(element.Attribute(attribute)!.Value, CultureInfo.InvariantCulture);
}
