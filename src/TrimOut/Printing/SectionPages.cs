using UglyToad.PdfPig;
using UglyToad.PdfPig.Outline;

namespace TrimOut.Printing;

/// <summary>Reads out of a PDF on which page each heading is, by its bookmarks. ISO 32000-1, 12.3.3.</summary>
internal static class SectionPages
{
    /// <summary>The page of each heading; the first where several have one name. Empty for a PDF without bookmarks.</summary>
    public static IReadOnlyDictionary<string, int> Of(byte[] pdf)
    {
        using var document = PdfDocument.Open(pdf);
        var pages = new Dictionary<string, int>();
        if (document.TryGetBookmarks(out var bookmarks))
        {
            foreach (var heading in bookmarks.GetNodes().OfType<DocumentBookmarkNode>())
                pages.TryAdd(heading.Title, heading.PageNumber);
        }
        return pages;
    }
}
