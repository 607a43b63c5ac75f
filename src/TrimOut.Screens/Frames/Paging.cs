using System.Globalization;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.Frames;

/// <summary>
/// Which rows of a long list are seen: pages, so that a move inside a page changes two rows only. They overlap, so that what comes before and after the
/// chosen row is seen with it, and the last one is full.
/// </summary>
internal static class Paging
{
    /// <summary>A list so high keeps two rows in sight beside the chosen one, where there are any.</summary>
    private const int High = 8;

    /// <summary>A lower one keeps one, if it is as high as this.</summary>
    private const int Low = 4;

    /// <summary>The lines of an area with the row that each shows. Where rows lie beyond its edge, its last line says how many.</summary>
    /// <param name="area">Where.</param>
    /// <param name="count">How many rows there are.</param>
    /// <param name="selected">The chosen row.</param>
    /// <param name="choose">The screen with another row chosen; null for a row that can't be.</param>
    public static IReadOnlyList<(int Y, int At)> Rows(Area area, int count, int selected, Func<int, IScreen?>? choose = null)
    {
        var goesOn = count > area.Height && area.Height > 1;
        var height = goesOn ? area.Height - 1 : area.Height;
        var top = Top(selected, height, count);
        var shown = Math.Clamp(count - top, 0, Math.Max(0, height));
        if (goesOn)
            area.PutFit(0, height, area.Width, " " + Beyond(top, count - top - shown, "above", "below"), Tone.Dim);
        for (var y = 0; choose is not null && y < shown; y++)
        {
            var at = top + y;
            area.PutSpot(0, y, area.Width, at == selected, () => choose(at));
        }
        return [.. Enumerable.Range(0, shown).Select(y => (y, top + y))];
    }

    /// <summary>The first row that is seen, by the page that the chosen row is on.</summary>
    /// <param name="selected">The chosen row.</param>
    /// <param name="height">How many rows are seen.</param>
    /// <param name="count">How many there are.</param>
    public static int Top(int selected, int height, int count)
    {
        if (height <= 0 || count <= height)
            return 0;
        var beside = height >= High ? 2 : height >= Low ? 1 : 0;
        var page = height - 2 * beside;
        return Math.Clamp((Math.Max(0, selected) - beside) / page * page, 0, count - height);
    }

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
