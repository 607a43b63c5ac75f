using TrimOut.Core.Plans.Cutting;
using TrimOut.Core.Units;
using TrimOut.Screens.Frames;

namespace TrimOut.Screens.Drawings;

/// <summary>The cut plan of a cable run by run, as one looks it up with the run in hand: out of which box each comes, and between which marks.</summary>
internal static class CutCard
{
    private const int Tag = 10;

    private const int Figure = 10;

    /// <summary>Draws it; what has no room is counted.</summary>
    /// <param name="area">Where.</param>
    /// <param name="boxes">The boxes that are listed.</param>
    /// <param name="units">What lengths are shown in.</param>
    /// <param name="shown">The cuts of the box that is at the top of the list stand out.</param>
    public static void Draw(Area area, IReadOnlyList<BoxCuts> boxes, DisplayUnits units, BoxCuts? shown)
    {
        var cuts = boxes.SelectMany(b => b.Cuts.Select(c => (Box: b, Cut: c))).OrderBy(c => c.Cut.Piece.Id, StringComparer.OrdinalIgnoreCase).ToList();
        area.PutFit(0, 0, area.Width, "Run by run", Tone.Heading);
        area.PutFit(0, 1, Tag, "Run", Tone.Dim);
        area.PutFigure(Tag, 1, Figure, "Length", Tone.Dim);
        area.PutFigure(Tag + Figure, 1, Figure, "From mark", Tone.Dim);
        area.PutFigure(Tag + 2 * Figure, 1, Figure, "To mark", Tone.Dim);
        area.PutFit(Tag + 3 * Figure + 2, 1, area.Width - Tag - 3 * Figure - 2, "Box", Tone.Dim);
        foreach (var (line, at) in Paging.Rows(area.Rows(2, area.Height - 2), cuts.Count, 0))
        {
            var (box, cut) = cuts[at];
            var tone = box == shown ? Tone.Strong : Tone.Text;
            area.PutFit(0, 2 + line, Tag - 1, cut.Piece.Id, tone);
            area.PutFigure(Tag, 2 + line, Figure, cut.Piece.Length.ShowRounded(units, LengthScale.Run), tone);
            area.PutFigure(Tag + Figure, 2 + line, Figure, cut.From.ShowRounded(units, LengthScale.Run), tone);
            area.PutFigure(Tag + 2 * Figure, 2 + line, Figure, cut.To.ShowRounded(units, LengthScale.Run), tone);
            area.PutFit(Tag + 3 * Figure + 2, 2 + line, area.Width - Tag - 3 * Figure - 2, BoxDrawing.Name(box), tone);
        }
    }
}
