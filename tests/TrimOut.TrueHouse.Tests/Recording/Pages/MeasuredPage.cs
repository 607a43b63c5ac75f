using TrimOut.Core.Facts;
using TrimOut.Core.Phases;
using static TrimOut.TrueHouse.Tests.Recording.Installer;

namespace TrimOut.TrueHouse.Tests.Recording.Pages;

/// <summary>The finished openings: three widths, three heights, both diagonals, depth, what is in the way; and widths and heights once more.</summary>
internal static class MeasuredPage
{
    /// <summary>How far from head, sill and jambs a tape is held.</summary>
    private const double FromEdge = 25;

    public static void Write(Installer installer)
    {
        var (house, book, tape) = (installer.Truth, installer.Book, installer.Tape);
        foreach (var opening in house.Openings.Where(o => !o.LeftOut))
        {
            var (shape, tag) = (opening.MeasuredAs ?? opening.Finished, opening.Tag);
            double[] widths = [shape.WidthAt(shape.Height - FromEdge), shape.WidthAt(shape.Height / 2), shape.WidthAt(FromEdge)];
            double[] heights = [shape.HeightAt(FromEdge), shape.HeightAt(shape.Width / 2), shape.HeightAt(shape.Width - FromEdge)];
            book.Put(tag,
                (WindowFacts.WidthTop, tape.Read(widths[0], tag, "top")), (WindowFacts.WidthMiddle, tape.Read(widths[1], tag, "middle")),
                (WindowFacts.WidthBottom, tape.Read(widths[2], tag, "bottom")),
                (WindowFacts.HeightLeft, tape.Read(heights[0], tag, "left")), (WindowFacts.HeightMiddle, tape.Read(heights[1], tag, "centre")),
                (WindowFacts.HeightRight, tape.Read(heights[2], tag, "right")),
                (WindowFacts.DiagonalDown, tape.Read(shape.DiagonalDown, tag, "down")), (WindowFacts.DiagonalUp, tape.Read(shape.DiagonalUp, tag, "up")),
                (WindowFacts.Depth, tape.Read(opening.Depth - (opening.DepthToFirstThing ? opening.StandsOut : 0), tag, "depth")),
                (WindowFacts.DepthTo, opening.DepthToFirstThing ? "first-thing" : "glass"),
                (WindowFacts.WidthAgain, tape.Read(widths.Min(), tag, "width again")), (WindowFacts.HeightAgain, tape.Read(heights.Max(), tag, "height again")),
                (WindowFacts.InTheWay, opening.InTheWay), (WindowFacts.InTheWayDepth, opening.InTheWay == "none" ? null : tape.Exactly(opening.StandsOut)),
                (WindowFacts.GlassBelowHead, tape.Read(opening.GlassBelowHead, tag, "glass")),
                (WindowFacts.ClearHeight, opening.ClearHeight is { } clear ? tape.Exactly(clear) : null),
                (WindowFacts.ToCornerRight, opening.ToCornerRight is { } right ? tape.Read(right, tag, "corner right") : null),
                (WindowFacts.ToCornerLeft, opening.ToCornerLeft is { } left ? tape.Read(left, tag, "corner left") : null),
                (WindowFacts.MeetsRight, opening.MeetsRight), (WindowFacts.CornerAngle, opening.CornerAngle is { } angle ? Number(angle) : null));
            if (opening.Outside)
            {
                book.Put(tag, (WindowFacts.OverlapEachSide, tape.Exactly(opening.Overlap)), (WindowFacts.HeadAbove, tape.Exactly(opening.HeadAbove)),
                    (WindowFacts.WallAbove, tape.Read(opening.WallAbove, tag, "wall above")));
            }
            foreach (var unit in opening.Units.Where(u => u.PartWidth > 0))
                book.Put(unit.Key, (UnitFacts.PartWidth, tape.Exactly(unit.PartWidth)));
        }
        installer.MarkUnits(Phase.Measure);
    }
}
