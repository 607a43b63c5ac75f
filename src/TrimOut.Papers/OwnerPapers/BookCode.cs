using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Papers.Drawings;
using TrimOut.Papers.Labels;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.Inline;

namespace TrimOut.Papers.OwnerPapers;

/// <summary>
/// A code that leads to a section of the owner's binder: to its web address where the house has one, else it says in words in which file and section to look.
/// No address is made up.
/// </summary>
internal static class BookCode
{
    private const double Side = 120;
    private static readonly Inline Scan = Ours("Code to scan: the place in the owner's binder, as above");

    // ISO/IEC 18004: a reader needs four light fields around a code.
    private const int QuietBorder = 4;

    /// <summary>Says where to look, and draws the code.</summary>
    /// <param name="to">The paper.</param>
    /// <param name="data">What it is written from.</param>
    /// <param name="section">The section's heading in English.</param>
    public static void Write(MarkdownWriter to, PaperData data, string section)
    {
        var file = data.FilesOf.Length == 0 ? $"{Binder.Paper.Id}.html" : $"{data.FilesOf}-{Binder.Paper.Id}.html";
        var where = Ours($"{NameOf(data.House, data.House.Job)}: owner's binder, section \"{Ours(section)}\", file {file}");
        to.Say(where);
        var book = new JobItself(data.House).Shown(HouseFacts.BookAt);
        if (book is not null)
            to.Say($"On the web: {book}");
        if (QrCode.Of(AddressOf(book?.Plain(to.Words), to.Words.Of(section)) ?? where.Plain(to.Words)) is { } code)
            to.Draw("code", Scan, words => Drawing(code, words));
    }

    /// <summary>The web address of a section; null where the book has none.</summary>
    private static string? AddressOf(string? typed, string section) =>
        Uri.TryCreate(typed?.Trim(), UriKind.Absolute, out var book)
            && (book.Scheme == Uri.UriSchemeHttps || book.Scheme == Uri.UriSchemeHttp)
            ? $"{book.GetLeftPart(UriPartial.Query)}#{Uri.EscapeDataString(Anchor.Of(section))}"
            : null;

    private static Svg Drawing(QrCode code, Words words)
    {
        var field = Side / (code.Side + 2 * QuietBorder);
        return new Svg(2 * Side, Side).Fields(QuietBorder * field, QuietBorder * field, field, code)
            .Legend(Side + 4, Side / 2 - Svg.LegendLine, Scan.Plain(words));
    }
}
