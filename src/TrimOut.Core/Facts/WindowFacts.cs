using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;

namespace TrimOut.Core.Facts;

/// <summary>What is known about a window: the opening, not what hangs in it.</summary>
public static class WindowFacts
{
    private const decimal Most = 30 * 12;
    private static readonly Declare Of = new(ItemKind.Window);

    public static readonly Fact<string> Tag = Of.Text("tag", "Tag", "Its short name on plans and labels, unique in the house.", Phase.WalkThrough, 12);
    public static readonly Fact<ItemRef> Room = Of.Item(ItemKind.Room, "room", "Room", "The room it is seen from.", Phase.WalkThrough);
    public static readonly Fact<YesNo> Covered = Of.Choice<YesNo>("covered", "Covering wanted", "No leaves it out on purpose.", Phase.WalkThrough);
    public static readonly Fact<string> NotCoveredBecause = Of.Evidence("not-covered-because", "Left out because",
        "The reason, so that nobody asks again.", Phase.WalkThrough);
    public static readonly Fact<Azimuth> Facing = Of.Direction("facing", "Facing", "Where it looks out to.", Phase.WalkThrough);
    public static readonly Fact<Reach> Reach = Of.Choice<Reach>("reach", "Reached from", "What it takes to work at its head.", Phase.WalkThrough);
    public static readonly Fact<Mount> Mount = Of.Choice<Mount>("mount", "Mount", "Inside the opening, or outside on the face.", Phase.WalkThrough);
    public static readonly Fact<Length> RoughWidth = Of.Opening("rough-width", "Rough width", "Width at framing.", Phase.WalkThrough, 4, Most);
    public static readonly Fact<Length> RoughHeight = Of.Opening("rough-height", "Rough height", "Height at framing.", Phase.WalkThrough, 4, Most);

    public static readonly Fact<Answer> Escape = Of.Choice<Answer>("escape", "Escape window",
        "Whether it counts as a way out in a fire. The local code and its authority say which windows do; what is not known yet stays listed.",
        Phase.WalkThrough);

    public static readonly Fact<Length> WidthTop = Of.Reading("width-top", "Width, top", "Finished width at the top.", Phase.Measure, 4, Most);
    public static readonly Fact<Length> WidthMiddle = Of.Reading("width-middle", "Width, middle", "Finished width at the middle.", Phase.Measure, 4, Most);
    public static readonly Fact<Length> WidthBottom = Of.Reading("width-bottom", "Width, bottom", "Finished width at the bottom.", Phase.Measure, 4, Most);
    public static readonly Fact<Length> HeightLeft = Of.Reading("height-left", "Height, left", "Finished height at the left.", Phase.Measure, 4, Most);
    public static readonly Fact<Length> HeightMiddle = Of.Reading("height-middle", "Height, middle", "Finished height at the middle.", Phase.Measure, 4, Most);
    public static readonly Fact<Length> HeightRight = Of.Reading("height-right", "Height, right", "Finished height at the right.", Phase.Measure, 4, Most);
    public static readonly Fact<Length> DiagonalDown = Of.Reading("diagonal-down", "Diagonal, top left",
        "Top left to bottom right.", Phase.Measure, 4, 2 * Most);
    public static readonly Fact<Length> DiagonalUp = Of.Reading("diagonal-up", "Diagonal, bottom left",
        "Bottom left to top right.", Phase.Measure, 4, 2 * Most);
    public static readonly Fact<Length> Depth = Of.Reading("depth", "Depth",
        "Flat depth of the opening, from the room face to the glass or frame, or to the first thing in the way.", Phase.Measure, 0, 48);
    public static readonly Fact<DepthTo> DepthTo = Of.Choice<DepthTo>("depth-to", "Depth read to",
        "Glass, or the first thing in the way: what stands out is then not taken off again.", Phase.Measure);
    public static readonly Fact<Length> WidthAgain = Of.Reading("width-again", "Width, 2nd measure",
        "Smallest width, measured again by itself.", Phase.Measure, 4, Most);
    public static readonly Fact<Length> HeightAgain = Of.Reading("height-again", "Height, 2nd measure",
        "Largest height, measured again by itself.", Phase.Measure, 4, Most);
    public static readonly Fact<string> InTheWay = Of.Text("in-the-way", "Obstructions", "Handle, crank, tile, alarm contact; or none.", Phase.Measure);
    public static readonly Fact<Length> InTheWayDepth = Of.Opening("in-the-way-depth", "Sticks out by",
        "How far that stands out into the room from the glass side of the depth.", Phase.Measure, 0, 24);
    public static readonly Fact<Length> OverlapEachSide = Of.Opening("overlap-each-side", "Overlap each side",
        "Outside mount: how far the unit passes the opening on each side.", Phase.Measure, 0, 24);
    public static readonly Fact<Length> HeadAbove = Of.Opening("head-above", "Head above",
        "Outside mount: how far above the opening the unit starts.", Phase.Measure, 0, 48);
    public static readonly Fact<Length> GlassBelowHead = Of.Reading("glass-below-head", "Glass below head",
        "How far below the head of the opening the glass begins.", Phase.Measure, 0, 48);
    public static readonly Fact<Length> ClearHeight = Of.Opening("clear-height", "Clear height wanted",
        "For a door or a way through: the height that stays clear under the raised unit.", Phase.Measure, 12, Most);
    public static readonly Fact<Length> WallAbove = Of.Reading("wall-above", "Wall above",
        "Outside mount: flat wall from the opening up to the ceiling, a beam or a molding.", Phase.Measure, 0, 120);
    public static readonly Fact<ItemRef> MeetsRight = Of.Item(ItemKind.Window, "meets-right", "Meets at right",
        "The window whose covering meets this one's at a corner on the right.", Phase.Measure);
    public static readonly Fact<decimal> CornerAngle = Of.Number("corner-angle", "Corner angle, right",
        "Degrees between the two walls inside the room: 90 in a square corner, 135 in an eight-sided bay, 180 on a straight wall.", Phase.Measure, 90, 270);
    public static readonly Fact<Length> ToCornerRight = Of.Reading("to-corner-right", "To corner, right",
        "Along the wall from the right edge of the opening to the corner.", Phase.Measure, 0, 120);
    public static readonly Fact<Length> ToCornerLeft = Of.Reading("to-corner-left", "To corner, left",
        "Along the wall from the left edge of the opening to the corner.", Phase.Measure, 0, 120);
    public static readonly Fact<Length> OverhangDepth = Of.Opening("overhang-depth", "Overhang stands out",
        "How far a roof, balcony or awning above it stands out from the glass.", null, 0, Most);
    public static readonly Fact<Length> OverhangAbove = Of.Opening("overhang-above", "Overhang above head",
        "How high the edge of that overhang is above the head of the window.", null, 0, Most);
    public static readonly Fact<decimal> Horizon = Of.Number("horizon", "Horizon",
        "How high houses, trees or a ridge opposite reach, in degrees above level.", null, 0, 80);
    public static readonly Fact<int> PlaceInRoom = Of.Count("order", "Order in room",
        "Its place among the windows of its room on the walk, from 1.", null, 1, 999);
    public static readonly Fact<string> Photo = Of.Text("photo", "Photo", "Path of a picture; | between several.", null, 240);
    public static readonly Fact<string> Note = Of.Text("note", "Note", "Anything the next person should know.", null, Declare.Note);

    internal static readonly Fact[] All =
    [
        Tag, Room, Covered, NotCoveredBecause, Facing, Reach, Mount, RoughWidth, RoughHeight, Escape,
        WidthTop, WidthMiddle, WidthBottom, HeightLeft, HeightMiddle, HeightRight, DiagonalDown, DiagonalUp, Depth, DepthTo,
        WidthAgain, HeightAgain, InTheWay, InTheWayDepth, OverlapEachSide, HeadAbove,
        GlassBelowHead, ClearHeight, WallAbove, MeetsRight, CornerAngle, ToCornerRight, ToCornerLeft, OverhangDepth, OverhangAbove, Horizon,
        PlaceInRoom, Photo, Note,
    ];
}
