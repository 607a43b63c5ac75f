using System.Globalization;

namespace TrimOut.Papers;

/// <summary>The sheets that a page is printed on.</summary>
/// <param name="Size">Their size.</param>
/// <param name="Pages">The page, from 1 on, on which each section begins, by its heading; empty before the first print.</param>
public sealed record PrintedSheets(SheetSize Size, IReadOnlyDictionary<string, int> Pages)
{
    // As wide as most numbers will be, so that the text does not move when they are known.
    private const string NotKnown = "00";

    internal string PageOf(string heading) => Pages.TryGetValue(heading, out var page) ? page.ToString(CultureInfo.InvariantCulture) : NotKnown;
}

/// <summary>The sizes of paper that are laid out for.</summary>
public enum SheetSize
{
    /// <summary>210 mm by 297 mm, ISO 216.</summary>
    A4,

    /// <summary>8.5 in by 11 in, ANSI/ASME Y14.1 size A.</summary>
    Letter,
}
