using TrimOut.Screens.Frames;

namespace TrimOut.Screens.HousePicker;

/// <summary>What somebody reads who has no house yet.</summary>
internal static class FirstTime
{
    private static readonly (string Key, string Text)[] Lines =
    [
        ("Enter", "opens a copy of a sample job: try anything, nothing can break"),
        ("n", "begins a house of your own; there n adds windows, a line for each"),
        ("Space", "marks what is done; STOP and CAUTION say what to fix in time"),
        ("?", "shows the keys and signs of a screen; : finds an action by name"),
        ("u", "takes the latest change back; Esc goes one step back"),
        ("q", "leaves. There is nothing to save: every change is on the disk"),
    ];

    /// <summary>The lines that it takes.</summary>
    public static int Height => Lines.Length + 1;

    /// <summary>Draws it; returns the line after it.</summary>
    public static int Draw(Area area, int y)
    {
        area.Put(2, y++, "Here for the first time", Tone.Heading);
        foreach (var (key, text) in Lines)
        {
            area.Put(3, y, key, Tone.Key);
            area.PutFit(10, y++, area.Width - 11, text, Tone.Text);
        }
        return y;
    }
}
