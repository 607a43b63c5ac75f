namespace TrimOut.Screens.Frames;

/// <summary>How far a text can be scrolled without an empty page: noted when it was drawn last, for the width and height that it had then.</summary>
internal sealed class ScrollEnd
{
    private int _most = int.MaxValue;

    /// <summary>The top line that is shown for one that was scrolled to.</summary>
    /// <param name="top">Where it was scrolled to.</param>
    /// <param name="heights">How many lines each piece of the text takes, from the last piece on backwards.</param>
    /// <param name="count">How many pieces there are.</param>
    /// <param name="height">How many lines are seen.</param>
    public int Shown(int top, IEnumerable<int> heights, int count, int height)
    {
        var (seen, used) = (0, 0);
        foreach (var lines in heights)
        {
            if (used + lines > height)
                break;
            (seen, used) = (seen + 1, used + lines);
        }
        _most = Math.Max(0, count - Math.Max(1, seen));
        return Math.Clamp(top, 0, _most);
    }

    /// <summary>So much further down or up from there.</summary>
    public int Move(int top, int by) => Math.Clamp(Math.Min(top, _most) + Math.Clamp(by, -1_000_000, 1_000_000), 0, _most);
}
