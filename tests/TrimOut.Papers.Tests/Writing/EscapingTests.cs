using AngleSharp.Html.Parser;
using TrimOut.Core;
using TrimOut.Papers.Writing;

namespace TrimOut.Papers.Tests.Writing;

/// <summary>Held to Markdig's reading of the Markdown and to AngleSharp's reading of the page.</summary>
public class EscapingTests
{
    public static TheoryData<string> Hostile => [.. HostileText.All.Select(ShownText.Kept).Distinct()];

    [Theory]
    [MemberData(nameof(Hostile))]
    public void TypedTextReadsAsTypedInAParagraph(string typed) =>
        Assert.Equal(typed, Read(Paper().Say((Inline)typed), "p"));

    [Theory]
    [MemberData(nameof(Hostile))]
    public void TypedTextReadsAsTypedInAHeading(string typed) =>
        Assert.Equal(typed, Read(Paper().Heading(3, (Inline)typed), "h3"));

    [Theory]
    [MemberData(nameof(Hostile))]
    public void TypedTextReadsAsTypedInAList(string typed)
    {
        var markdown = Paper().List(typed, "next");
        Assert.Equal(typed, Read(markdown, "li"));
        Assert.Equal(typed, Read(Paper().Steps(typed, "next"), "li"));
    }

    [Theory]
    [MemberData(nameof(Hostile))]
    public void TypedTextReadsAsTypedInATable(string typed)
    {
        var page = Page(Paper().Table(["a", typed], [MarkdownWriter.Row(typed, "b"), MarkdownWriter.Row("c", typed)]));
        Assert.Equal(["a", typed, typed, "b", "c", typed], page.QuerySelectorAll("th, td").Select(c => c.TextContent));
        Assert.Empty(page.QuerySelectorAll("script, img, a, em, strong, code, del"));
    }

    [Fact]
    public void LineEndsAndControlCharactersCanNotLeaveTheirLine() =>
        Assert.Equal("one # two | three", Read(Paper().Say((Inline)"one\r\n# two\u2028\u0000| three\n"), "p"));

    [Fact]
    public void PlainTextStaysPlain()
    {
        foreach (var plain in new[] { "12 Sample Lane", "2-gang, left", "45 3/8\"", "photos/w01_hung.jpg", "Smith & Sons", "9:30, 50 %", "-0.5 V", "(none)" })
            Assert.Equal(plain, Escaping.Escape(plain));
    }

    private static string Read(MarkdownWriter markdown, string element) => Page(markdown).QuerySelector(element)!.TextContent;

    private static AngleSharp.Html.Dom.IHtmlDocument Page(MarkdownWriter markdown) =>
        new HtmlParser().ParseDocument(new WrittenPaper("paper", "title", "en", markdown.ToString(), new Dictionary<string, string>()).ToHtml());

    private static MarkdownWriter Paper() => new(Words.English, "paper", new SortedDictionary<string, string>());
}
