namespace TrimOut.Screens.Frames;

/// <summary>Which rows of a long list are seen: whole pages, so that a move inside a page changes two rows only.</summary>
internal static class Paging
{
    public static int Top(int selected, int height) => height <= 0 ? 0 : Math.Max(0, selected) / height * height;

    /// <summary>Where a move leads, kept inside the list.</summary>
    public static int Move(int selected, int by, int count) => count == 0 ? 0 : Math.Clamp(selected + by, 0, count - 1);
}
