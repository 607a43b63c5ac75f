using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Screens.Frames;

namespace TrimOut.Screens.JobSheet;

/// <summary>What is said beside a list of a window that was left out.</summary>
internal static class LeftOutCard
{
    public static void Draw(Area area, Window window)
    {
        var x = area.Put(0, 0, window.Tag, Tone.Strong);
        area.PutFit(x, 0, area.Width - x, $"  {window.Room?.FullName ?? "no room yet"}", Tone.Text);
        var because = window.Item.Get(WindowFacts.NotCoveredBecause);
        var y = area.PutWrapped(0, 2, 6, because is null ? "Left out, and nobody said why." : $"Left out: {because}",
            because is null ? Tone.Caution : Tone.Text);
        area.PutWrapped(0, y + 1, 3, "b brings it back with all it had, Enter opens it.", Tone.Dim);
    }
}
