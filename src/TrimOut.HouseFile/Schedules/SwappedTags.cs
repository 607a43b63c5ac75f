namespace TrimOut.HouseFile.Schedules;

/// <summary>What tells one window from another: rough width, rough height and lead side, as stored; null where nothing is said.</summary>
internal readonly record struct WindowLook(string? Width, string? Height, string? Lead)
{
    private bool HasSize => Width is not null && Height is not null;

    /// <summary>Whether it has the size of another, and of two of one size the lead side.</summary>
    /// <param name="other">The other.</param>
    /// <param name="bySide">Whether the lead side counts, because the sizes do not tell.</param>
    public bool Is(WindowLook other, bool bySide) => HasSize && (Width, Height) == (other.Width, other.Height) && (!bySide || Lead == other.Lead);
}

/// <summary>
/// Windows that have changed places in a schedule: each has there what another one has here. An office that swaps two tags sends such a schedule, and what
/// was recorded here of either is then of the other opening.
/// </summary>
internal static class SwappedTags
{
    /// <summary>The tags of windows that have changed places, with each other or in a ring; each with those of its ring.</summary>
    /// <param name="windows">Each window that is on both sides: its tag, what it is here, and what the schedule says.</param>
    public static IReadOnlyCollection<string> Of(IReadOnlyCollection<(string Tag, WindowLook Here, WindowLook There)> windows)
    {
        var ring = windows.Where(w => w.Here != w.There).ToList();
        while (ring.RemoveAll(w => !ring.Exists(o => ComesFrom(w, o)) || !ring.Exists(o => ComesFrom(o, w))) > 0)
        {
        }
        return [.. ring.Select(w => w.Tag)];
    }

    /// <summary>Whether a window has there what another one has here.</summary>
    private static bool ComesFrom((string Tag, WindowLook Here, WindowLook There) window, (string Tag, WindowLook Here, WindowLook There) other)
    {
        var sameSize = window.Here.Is(other.Here, bySide: false);
        return window.Tag != other.Tag && window.There.Is(other.Here, sameSize) && !(sameSize && window.Here.Lead == other.Here.Lead);
    }
}
