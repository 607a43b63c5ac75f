using System.Diagnostics;
using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace TrimOut.Papers.Tests;

/// <summary>How many sheets the owner's book takes, printed by a browser. The counts stand in docs/papers.md.</summary>
public partial class PageCountTests
{
    private const int OwnersPartAtMost = 8;
    private const int BookAtMost = 16;

    [ChromiumFact]
    public void TheBookOfCanalHouseTakesAsManyPagesAsTheDocsSay()
    {
        var docs = File.ReadAllText(Path.Combine(SampleJobs.Root, "docs", "papers.md"));
        var book = Binder.Paper.Write(SampleJobs.Data("canal-house"));
        // The second part begins on a page of its own, so what stands before it takes the same pages without it.
        var owners = new WrittenPaper(book.Id, book.Title, book.Language, book.Markdown[..book.Markdown.IndexOf("\n## Part two:", StringComparison.Ordinal)],
            book.Drawings);
        foreach (var (format, name) in new[] { ("A4", "A4"), ("letter", "Letter") })
        {
            var (part, whole) = (Pages(owners.ToHtml(), format), Pages(book.ToHtml(), format));
            // Fonts differ between machines, by a page at the most.
            var told = Counts(name).Match(docs);
            Assert.True(part <= OwnersPartAtMost && whole <= BookAtMost && told.Success
                && Math.Abs(part - Number(told, "part")) <= 1 && Math.Abs(whole - Number(told, "whole")) <= 1,
                $"On {name} the owner's part takes {part} pages and the whole book {whole}; docs/papers.md says {told.Value}.");
        }
    }

    private static Regex Counts(string paper) => new($@"\| {paper} \| (?<part>[0-9]+) \| (?<whole>[0-9]+) \|", RegexOptions.CultureInvariant);

    private static int Number(Match match, string group) => int.Parse(match.Groups[group].ValueSpan, CultureInfo.InvariantCulture);

    private static int Pages(string html, string format)
    {
        var folder = Directory.CreateTempSubdirectory("trimout-pages-");
        try
        {
            var (page, pdf) = (Path.Combine(folder.FullName, "page.html"), Path.Combine(folder.FullName, "page.pdf"));
            File.WriteAllText(page, html.Replace("@page {", $"@page {{ size: {format};", StringComparison.Ordinal));
            string[] options =
            [
                "--headless", "--no-sandbox", "--disable-gpu", $"--user-data-dir={Path.Combine(folder.FullName, "profile")}", "--no-pdf-header-footer",
                $"--print-to-pdf={pdf}", new Uri(page).AbsoluteUri,
            ];
            using var browser = Process.Start(new ProcessStartInfo(ChromiumFactAttribute.Browser!, options) { RedirectStandardError = true })!;
            browser.BeginErrorReadLine();
            Assert.True(browser.WaitForExit(TimeSpan.FromMinutes(1)), "The browser printed nothing within a minute.");
            // ISO 32000-1, 7.7.3: the page tree says at its root how many pages there are.
            return PageTree().Matches(Encoding.Latin1.GetString(File.ReadAllBytes(pdf)))
                .Max(m => Number(m, "count"));
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    [GeneratedRegex(@"/Type\s*/Pages\s*/Count (?<count>[0-9]+)")]
    private static partial Regex PageTree();
}
