using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;
using TrimOut.Screens.Frames;

namespace TrimOut.Screens.Drawings;

/// <summary>
/// The part of a drawn opening that one unit hangs in. It keeps to its own cells, but for an entry that is not where its part is; only the outermost use the
/// wall beside the opening.
/// </summary>
/// <param name="Unit">The unit.</param>
/// <param name="From">Its first column in the opening; the first of all is 1, after the frame.</param>
/// <param name="Cells">Its columns.</param>
/// <param name="Columns">Columns of the opening, frame and all.</param>
internal readonly record struct UnitPart(Unit Unit, int From, int Cells, int Columns)
{
    private bool IsFirst => From == 1;

    private bool IsLast => From + Cells >= Columns - 1;

    /// <summary>Its first column that no line to the neighbour takes.</summary>
    private int Inner => IsFirst || Cells < 2 ? From : From + 1;

    private int Last => From + Cells - 1;

    /// <summary>Whether it hangs over the opening, on the wall, and so hides the edges that it comes to.</summary>
    private bool IsOutside => Unit.Window.Mount == Mount.Outside;

    /// <summary>The line of its head: in the opening, or over the upper edge.</summary>
    private int HeadLine => IsOutside ? 0 : 1;

    /// <summary>The first column that it covers; a left edge that it hides is one.</summary>
    private int Left => IsOutside && IsFirst ? From - 1 : From;

    /// <summary>The last column that it covers.</summary>
    private int Right => IsOutside && IsLast ? From + Cells : Last;

    /// <summary>Head, covering half way down and brackets, with a line to the neighbour on the left; folds hang all the way down at both sides.</summary>
    public void DrawCovering(Area opening, bool current, Glyphs glyphs)
    {
        var tone = current ? Tone.Strong : Tone.Drawing;
        var look = CoveringLooks.Of(Unit.Kind);
        var end = look == CoveringLook.Folds ? opening.Height - 2 : Drop(opening);
        var columns = Right - Left + 1;
        for (var x = Left; x <= Right; x++)
        {
            opening.Put(x, HeadLine, DrawingSigns.Head.Drawn(glyphs), tone);
            for (var y = HeadLine + 1; y <= end; y++)
            {
                if (look.Cell(x - Left, y - HeadLine - 1, columns, glyphs) is { Length: > 0 } cell)
                    opening.Put(x, y, cell, Tone.Drawing);
            }
            if (look != CoveringLook.Folds && end + 1 < opening.Height - 1)
                opening.Put(x, 1 + end, glyphs.Across, tone);
        }
        for (var y = 1; Inner > From && y < opening.Height - 1; y++)
            opening.Put(From, y, glyphs.Down, Tone.Drawing);
        opening.Put(IsFirst ? Left : Inner, HeadLine, DrawingSigns.Bracket.Drawn(glyphs), tone);
        opening.Put(Right, HeadLine, DrawingSigns.Bracket.Drawn(glyphs), tone);
    }

    /// <summary>Lead side, entry and tail; the tail hangs on the wall beside the opening, or between two units inside its own part.</summary>
    public void DrawCable(Area area, int left, int rows, decimal cellsPerLength, decimal cellAspect, Glyphs glyphs)
    {
        if (Unit.LeadSide is { } lead)
            area.Put(left + (lead == Side.Left ? (IsFirst ? Left : Inner) : Right), HeadLine, DrawingSigns.Lead.Drawn(glyphs), Tone.Note);
        if (Unit.EntrySide is not { } side)
            return;
        var below = (int)Math.Round((Unit.Item.Get(UnitFacts.EntryBelowHead) ?? Length.Zero).Nanometres * cellsPerLength / cellAspect);
        var onWall = side == Side.Left ? IsFirst : IsLast;
        var edge = side == Side.Left ? (IsFirst ? 0 : From) : IsLast ? Columns - 1 : Last;
        // Where it truly is, also behind the neighbour: a wrong distance is to be seen.
        var at = Unit.EntryAlong is { } along ? Math.Clamp((int)Math.Round(along.Nanometres * cellsPerLength), 0, Columns - 1) : edge;
        var astray = at < Math.Min(edge, From) || at > Math.Max(edge, Last);
        var y = Math.Clamp(below, 0, rows - 2);
        area.Put(left + at, y, DrawingSigns.Entry.Drawn(glyphs), Tone.Caution);
        if (Unit.Run?.TailAtWindow is not { } tail)
            return;
        var length = Math.Max(1, (int)Math.Round(tail.Nanometres * cellsPerLength / cellAspect));
        var hang = astray ? at : side == Side.Left ? (onWall ? -1 : Inner) : onWall ? Columns : Last;
        var outside = onWall && !astray;
        for (var down = y + 1; down <= y + length && down < (outside ? rows : rows - 1); down++)
        {
            if (outside || down > 1)
                area.Put(left + hang, down, DrawingSigns.Tail.Drawn(glyphs), Tone.Caution);
        }
    }

    /// <summary>Its tag below the covering, where there is room for all of it.</summary>
    public void DrawTag(Area opening, bool current)
    {
        var (room, cells) = (From + Cells - Inner, TextWidth.Of(Unit.Tag));
        if (opening.Height > 6 && cells <= room)
            opening.Put(Inner + (room - cells) / 2, Math.Min(opening.Height - 2, Drop(opening) + 3), Unit.Tag, current ? Tone.Strong : Tone.Drawing);
    }

    private static int Drop(Area opening) => Math.Max(1, (opening.Height - 2) / 2);
}
