using TrimOut.Core.Plans.Cutting;
using TrimOut.Core.Units;
using TrimOut.Screens.Frames;

namespace TrimOut.Screens.Drawings;

/// <summary>A box of cable as a bar: each cut to scale with its run, and what is left.</summary>
internal static class BoxDrawing
{
    /// <summary>Cable that a run takes off the box.</summary>
    public static readonly Sign Cut = new(g => g.Fabric, "in the picture of a box: cable that a run takes, with its tag where there is room");

    /// <summary>Cable that stays in the box.</summary>
    public static readonly Sign Left = new(g => g.Nothing, "in the picture of a box: cable that is left");

    /// <summary>Cells that the longest name of some boxes takes, up to half of a line.</summary>
    public static int NameCells(IEnumerable<BoxCuts> boxes, DisplayUnits units, int line) =>
        Math.Min(line / 2, boxes.Select(b => TextWidth.Of(Name(b)) + 1 + TextWidth.Of(Size(b, units))).DefaultIfEmpty().Max() + 1);

    /// <summary>Draws a box on one line.</summary>
    public static void Draw(Area line, BoxCuts box, DisplayUnits units, Glyphs glyphs, int nameCells)
    {
        var size = Size(box, units);
        var name = TextWidth.Fit(Name(box), nameCells - 2 - TextWidth.Of(size));
        line.Put(0, 0, $"{name} {size}", Tone.Strong);
        var cells = line.Width - nameCells - 1;
        var all = (decimal)box.Box.Length.Nanometres;
        foreach (var cut in box.Cuts)
        {
            var (from, to) = (At(cut.From), At(cut.To));
            for (var x = from; x < to; x++)
                line.Put(nameCells + x, 0, Cut.Drawn(glyphs), Tone.Drawing);
            line.Put(nameCells + from, 0, glyphs.Down, Tone.Strong);
            if (TextWidth.Of(cut.Piece.Id) < to - from)
                line.Put(nameCells + from + 1, 0, cut.Piece.Id, Tone.Text);
        }
        var end = box.Cuts.IsEmpty ? 0 : At(box.Cuts[^1].To);
        for (var x = end; x < cells; x++)
            line.Put(nameCells + x, 0, Left.Drawn(glyphs), Tone.Dim);
        line.Put(nameCells + end, 0, glyphs.Down, Tone.Strong);

        int At(Length mark) => (int)Math.Round(mark.Nanometres / all * cells);
    }

    /// <summary>The name of a box, and whether it is still to be bought.</summary>
    public static string Name(BoxCuts box) => $"{box.Box.Id}{(box.ToBuy ? " (buy)" : "")}";

    private static string Size(BoxCuts box, DisplayUnits units) => box.Box.Length.ShowRounded(units, LengthScale.Run);
}
