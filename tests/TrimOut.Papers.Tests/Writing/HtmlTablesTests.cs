using AngleSharp.Html.Parser;

namespace TrimOut.Papers.Tests.Writing;

public class HtmlTablesTests
{
    /// <summary>
    /// A path of 24 letters stayed whole, and left the column beside it the width of a word; a kind of covering of 12 was parted on the German order sheet.
    /// </summary>
    [Theory]
    [InlineData("W01", true)]
    [InlineData("2026-09-30", true)]
    [InlineData("1482 / 1482 / 1483 mm", true)]
    [InlineData("47 3/4\" x 59 1/2\"", true)]
    [InlineData("Wabenplissee", true)]
    [InlineData("Holzjalousie", true)]
    [InlineData("Holzjalousien", false)]
    [InlineData("photos/r.jpg", false)]
    [InlineData("photos/rough-in/W01A.jpg", false)]
    [InlineData("Coiled behind the plate", false)]
    public void OnlyTagsFiguresAndDaysStayOnOneLine(string entry, bool whole)
    {
        var page = new HtmlParser().ParseDocument(new WrittenPaper("paper", "A", "en", $"# A\n\n| Unit | Entry |\n|---|---|\n| W01 | {entry} |\n",
            new Dictionary<string, string>()).ToHtml());
        Assert.Equal(whole, page.QuerySelector("td")!.ClassList.Contains("k"));
    }

    [Fact]
    public void NoLineEndPartsInchesFromTheirFraction()
    {
        const string Positions = "34 3/8\" to 35 7/16\", 1/2 & 36";
        var cell = new HtmlParser().ParseDocument(new WrittenPaper("paper", "A", "en", $"# A\n\n| Unit | Entry |\n|---|---|\n| W01 | {Positions} |\n",
            new Dictionary<string, string>()).ToHtml()).QuerySelector("td")!;
        Assert.Equal(["34 3/8\"", "35 7/16\""], cell.QuerySelectorAll("span.f").Select(f => f.TextContent));
        Assert.Equal(Positions, cell.TextContent);
    }

    [Fact]
    public void WhereNoHeadingStandsAboveThereIsNoCaption() =>
        Assert.DoesNotContain("<caption>", new WrittenPaper("paper", "A", "en", "| Unit | Entry |\n|---|---|\n| W01 | 1 |\n",
            new Dictionary<string, string>()).ToHtml(), StringComparison.Ordinal);
}
