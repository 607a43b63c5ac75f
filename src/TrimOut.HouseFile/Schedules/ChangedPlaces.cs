namespace TrimOut.HouseFile.Schedules;

/// <summary>What tells one window from another: room, rough width, rough height and lead side; null where nothing is said.</summary>
internal readonly record struct WindowLook(string? Room, string? Width, string? Height, string? Lead)
{
    /// <summary>Whether it has the size of another in the same room.</summary>
    public bool IsLike(WindowLook other) =>
        Width is not null && Height is not null && (Room, Width, Height) == (other.Room, other.Width, other.Height);
}

/// <summary>
/// Windows that have changed places in a schedule: one is there what another one was here, and that one is another or gone too. An office that swaps two
/// tags, or puts a window in and counts on from there, sends such a schedule; what was recorded here by a tag is then of another opening.
/// </summary>
internal static class ChangedPlaces
{
    /// <summary>Their tags, in the order of the schedule.</summary>
    /// <param name="windows">Each window that is on both sides: its tag, what it is here, and what the schedule says.</param>
    /// <param name="gone">What windows that the schedule no longer has are here.</param>
    public static IReadOnlyCollection<string> Of(
        IReadOnlyCollection<(string Tag, WindowLook Here, WindowLook There)> windows, IReadOnlyCollection<WindowLook> gone)
    {
        var others = windows.Where(w => w.Here != w.There).ToList();
        var moved = new HashSet<string>();
        foreach (var window in others)
        {
            var from = others.FindAll(o => o.Tag != window.Tag && IsWhatWas(window, o.Here));
            if (from.Count > 0 || gone.Any(g => IsWhatWas(window, g)))
                moved.UnionWith(from.Select(o => o.Tag).Append(window.Tag));
        }
        return [.. others.Select(w => w.Tag).Where(moved.Contains)];
    }

    /// <summary>Whether a window is there what another one was here; of two of one size in one room the lead side tells.</summary>
    private static bool IsWhatWas((string Tag, WindowLook Here, WindowLook There) window, WindowLook other) =>
        window.There.IsLike(other) && (!window.Here.IsLike(other) || (window.There.Lead == other.Lead && window.Here.Lead != other.Lead));
}
