using TrimOut.Papers;

namespace TrimOut.Printing;

/// <summary>
/// Prints papers as PDF, and names the pages in their contents: printed once, each section is looked up, and printed again with what was found.
/// </summary>
/// <param name="size">The sheets.</param>
/// <param name="print">Prints a page.</param>
internal sealed class PdfPrinter(SheetSize size, Func<string, byte[]> print)
{
    // The numbers take the room that was kept for them, so the second print moves nothing; one more is for books of a hundred pages.
    private const int MostPrints = 3;

    /// <summary>The paper as PDF.</summary>
    public byte[] Print(WrittenPaper paper)
    {
        IReadOnlyDictionary<string, int> pages = new Dictionary<string, int>();
        for (var prints = 1; ; prints++)
        {
            var pdf = print(paper.ToHtml(new PrintedSheets(size, pages)));
            if (!paper.HasContents || prints == MostPrints)
                return pdf;
            var found = SectionPages.Of(pdf);
            if (found.Count == pages.Count && found.All(f => pages.GetValueOrDefault(f.Key) == f.Value))
                return pdf;
            pages = found;
        }
    }
}
