using TrimOut.Core.Plans.Cutting;
using TrimOut.Core.Units;
using TrimOut.Screens.Frames;

namespace TrimOut.Screens.Drawings;

/// <summary>A box of cable as a bar: each cut to scale with its run, and what is left.</summary>
internal static class BoxDrawing
{
    public static void Draw(Area line, BoxCuts box, DisplayUnits units, Glyphs glyphs)
    {
        const int label = 22;
        line.PutFit(0, 0, label - 1, $"{box.Box.Id}{(box.ToBuy ? " (buy)" : "")} {box.Box.Length.ShowRounded(units, LengthScale.Run)}", Tone.Strong);
        var cells = line.Width - label - 1;
        var all = (decimal)box.Box.Length.Nanometres;
        foreach (var cut in box.Cuts)
        {
            var (from, to) = (At(cut.From), At(cut.To));
            for (var x = from; x < to; x++)
                line.Put(label + x, 0, glyphs.Fabric, Tone.Drawing);
            line.Put(label + from, 0, glyphs.Down, Tone.Strong);
            line.PutFit(label + from + 1, 0, Math.Max(0, Math.Min(to - from - 1, TextWidth.Of(cut.Piece.Id))), cut.Piece.Id, Tone.Text);
        }
        var end = box.Cuts.IsEmpty ? 0 : At(box.Cuts[^1].To);
        for (var x = end; x < cells; x++)
            line.Put(label + x, 0, glyphs.Nothing, Tone.Dim);
        line.Put(label + end, 0, glyphs.Down, Tone.Strong);

        int At(Length mark) => (int)Math.Round(mark.Nanometres / all * cells);
    }
}
