using TrimOut.Papers.Writing;

namespace TrimOut.Papers;

/// <summary>A paper of one house on one day.</summary>
/// <param name="Id">The paper's stable name, for its file.</param>
/// <param name="Title">Its title with the house, as typed.</param>
/// <param name="Language">The language of its wording.</param>
/// <param name="Markdown">CommonMark with pipe tables, readable as plain text; its pictures are the drawings.</param>
/// <param name="Drawings">The drawings that the Markdown shows: the path beside it as it stands in a link, percent signs and all, and the SVG.</param>
public sealed record WrittenPaper(string Id, string Title, string Language, string Markdown, IReadOnlyDictionary<string, string> Drawings)
{
    /// <summary>The day that stands on it, also at the head of each printed sheet; null for none.</summary>
    public DateOnly? Day { get; init; }

    /// <summary>What its marks mean, at the foot of each printed sheet, for a sheet is taken along alone; null where it has none.</summary>
    public string? Foot { get; init; }

    /// <summary>Whether it has a list of what stands in it, which in print names the pages.</summary>
    public bool HasContents { get; init; }

    /// <summary>Whether its tables are so wide that its sheets lie on their side.</summary>
    public bool Landscape { get; init; }

    /// <summary>One HTML page that needs no other file: the drawings are inside. Made for the screen and for printing on Letter or A4.</summary>
    public string ToHtml() => HtmlPage.Of(this, null);

    /// <summary>The same page for sheets of one size, with the pages named in its contents.</summary>
    /// <param name="sheets">The sheets that it is printed on.</param>
    public string ToHtml(PrintedSheets sheets) => HtmlPage.Of(this, sheets);

    /// <summary>What the page holds, part by part, for showing it where there is no browser.</summary>
    public IReadOnlyList<PaperBlock> Blocks() => PaperBlocks.Of(Markdown);
}
