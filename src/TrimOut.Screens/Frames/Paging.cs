using System.Globalization;

namespace TrimOut.Screens.Frames;

/// <summary>Which rows of a long list are seen: whole pages, so that a move inside a page changes two rows only.</summary>
internal static class Paging
{
    /// <summary>The lines of an area with the row that each shows. Where rows lie beyond its edge, its last line says how many.</summary>
    public static IReadOnlyList<(int Y, int At)> Rows(Area area, int count, int selected)
    {
        var goesOn = count > area.Height && area.Height > 1;
        var height = goesOn ? area.Height - 1 : area.Height;
        var top = Top(selected, height);
        var shown = Math.Clamp(count - top, 0, Math.Max(0, height));
        if (goesOn)
            area.PutFit(0, height, area.Width, " " + Beyond(top, count - top - shown, "above", "below"), Tone.Dim);
        return [.. Enumerable.Range(0, shown).Select(y => (y, top + y))];
    }

    /// <summary>The first row of the page that a row is on.</summary>
    public static int Top(int selected, int height) => height <= 0 ? 0 : Math.Max(0, selected) / height * height;

    /// <summary>How much of a list lies beyond its edges, in words; empty where all of it is seen.</summary>
    public static string Beyond(int before, int after, string wordBefore, string wordAfter) => (before, after) switch
    {
        ( <= 0, <= 0) => "",
        ( <= 0, _) => string.Create(CultureInfo.InvariantCulture, $"{after} more {wordAfter}"),
        (_, <= 0) => string.Create(CultureInfo.InvariantCulture, $"{before} more {wordBefore}"),
        _ => string.Create(CultureInfo.InvariantCulture, $"{after} more {wordAfter}, {before} {wordBefore}"),
    };

    /// <summary>Where a move leads, kept inside the list.</summary>
    public static int Move(int selected, int by, int count) => count == 0 ? 0 : Math.Clamp(selected + by, 0, count - 1);
}
