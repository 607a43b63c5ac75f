using TrimOut.Screens.Drawings;
using TrimOut.Screens.Frames;
using TrimOut.Screens.HousePicker;

namespace TrimOut.Screens.Shell;

/// <summary>The half of a wide screen that a screen itself leaves empty: the house at a glance stands there.</summary>
internal static class FreeHalf
{
    /// <summary>Fewer lines show no more than a few of the phases.</summary>
    private const int LeastLines = 14;

    /// <summary>More lines than this are a card of the screen's own.</summary>
    private const int Few = 5;

    /// <summary>Draws the house beside what stands there, or what a beginner needs where there is no house yet; nothing where there is no room.</summary>
    /// <param name="body">What the screen was drawn on.</param>
    /// <param name="context">What is seen.</param>
    public static void Draw(Area body, ScreenContext context)
    {
        if (Wide.Beside(body) is not { } half)
            return;
        if (Enumerable.Range(0, half.Height).Count(y => !IsBlank(half, y)) > Few)
            return;
        var free = Free(half);
        if (free.Height < LeastLines)
            return;
        if (context.House.Windows.IsEmpty)
            FirstTime.Draw(free, 0);
        else
            HouseCard.Draw(free, context);
    }

    /// <summary>The most lines one below the other that nothing stands on, a line apart from what does.</summary>
    private static Area Free(Area half)
    {
        var (from, most, begun) = (0, 0, 0);
        for (var y = 0; y <= half.Height; y++)
        {
            if (y < half.Height && IsBlank(half, y))
                continue;
            var first = begun == 0 ? 0 : begun + 1;
            var last = y == half.Height ? y : y - 1;
            if (last - first > most)
                (from, most) = (first, last - first);
            begun = y + 1;
        }
        return half.Rows(from, most);
    }

    private static bool IsBlank(Area area, int y)
    {
        foreach (var cell in area.Frame.Row(area.Y + y).Slice(area.X, area.Width))
        {
            if (cell.Text != " ")
                return false;
        }
        return true;
    }
}
