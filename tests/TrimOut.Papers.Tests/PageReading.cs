using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using AngleSharp.Html.Parser;

namespace TrimOut.Papers.Tests;

/// <summary>Reads a paper's page as a person does: the table under a heading, the sentences under it.</summary>
internal static class PageReading
{
    /// <summary>The page of a paper, by AngleSharp.</summary>
    public static IHtmlDocument Page(this Paper paper, PaperData data) => new HtmlParser().ParseDocument(paper.Write(data).ToHtml());

    /// <summary>The body of the first table behind a heading, as text.</summary>
    public static List<List<string>> TableUnder(this IHtmlDocument page, string heading)
    {
        var at = Heading(page, heading).NextElementSibling;
        while (at is not IHtmlTableElement)
        {
            Assert.NotNull(at);
            at = at.NextElementSibling;
        }
        return [.. at.QuerySelectorAll("tbody tr").Select(r => r.Children.Select(c => c.TextContent).ToList())];
    }

    /// <summary>The paragraphs between a heading and the next, as text.</summary>
    public static List<string> SaidUnder(this IHtmlDocument page, string heading)
    {
        var said = new List<string>();
        for (var at = Heading(page, heading).NextElementSibling; at is not null and not IHtmlHeadingElement; at = at.NextElementSibling)
        {
            if (at is IHtmlParagraphElement)
                said.Add(at.TextContent);
        }
        return said;
    }

    private static IElement Heading(IHtmlDocument page, string heading) => page.QuerySelectorAll("h2, h3").Single(h => h.TextContent == heading);
}
