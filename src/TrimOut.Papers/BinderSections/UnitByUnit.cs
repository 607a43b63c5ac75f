using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Plans.Photos;
using TrimOut.Papers.Drawings;
using TrimOut.Papers.Photos;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.Inline;
using static TrimOut.Papers.Writing.MarkdownWriter;

namespace TrimOut.Papers.BinderSections;

/// <summary>Each window drawn with its units, side by side; then pictures by their paths, and notes.</summary>
internal static class UnitByUnit
{
    public static Section Section { get; } = new("unit_by_unit", "Window by window", Write);

    private static void Write(MarkdownWriter to, PaperData data)
    {
        var windows = data.House.Windows.Where(w => !w.LeftOut).ToList();
        if (windows.Count == 0)
        {
            to.Say("No windows yet.");
            return;
        }
        to.Say(WindowElevation.Marks);
        to.Say(Beside([.. windows.Select(w => to.Drawing(w.Tag, WindowElevation.Describe(w), words => WindowElevation.InBook(w, words)))]));
        PhotoPages.Write(to, data, windows.SelectMany(HousePhotos.Of).Select(p => (p.Of, (Inline)p.Of, p.Path)));
        var notes = windows.SelectMany(w => Of(w, WindowFacts.Note, UnitFacts.Note, RunFacts.Note)).ToList();
        if (notes.Count > 0)
            to.Heading(3, "Notes").Table(["Of", "Notes"], notes.Select(n => Row(n.Of, n.Said)));
    }

    /// <summary>What was typed of a window, of each of its units and of their cables.</summary>
    private static IEnumerable<(string Of, Inline Said)> Of(Window window, Fact ofWindow, Fact ofUnit, Fact ofRun)
    {
        if (window.Shown(ofWindow) is { } said)
            yield return (window.Tag, said);
        foreach (var unit in window.Units)
        {
            if (new[] { unit.Show(ofUnit), unit.Run?.Show(ofRun) }.JoinOrDash("; ") is var all && all != Dash)
                yield return (unit.Tag, all);
        }
    }
}
