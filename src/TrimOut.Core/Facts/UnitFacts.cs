using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;

namespace TrimOut.Core.Facts;

/// <summary>What is known about one covering.</summary>
public static class UnitFacts
{
    private static readonly Declare Of = new(ItemKind.Unit);

    public static readonly Fact<int> Position = Of.Count("position", "Position",
        "Its place from the left where a window has several.", Phase.WalkThrough, 1, 9);
    public static readonly Fact<ItemRef> Kind = Of.Item(ItemKind.CoveringKind, "kind", "Kind",
        "Roller, cellular, wood blind, or another kind of the kit.", Phase.WalkThrough);
    public static readonly Fact<Side> LeadSide = Of.Choice<Side>("lead-side", "Lead side",
        "The side the cable reaches the unit, seen from inside the room facing the window.", Phase.WalkThrough);
    public static readonly Fact<PowerSource> Power = Of.Choice<PowerSource>("power", "Power", "Panel output, plug-in supply or battery.", Phase.WalkThrough);
    public static readonly Fact<SocketNear> Socket = Of.Choice<SocketNear>("socket", "Outlet",
        "Plug-in supply: whether its cord reaches an outlet out of sight and out of a child's reach.", Phase.WalkThrough);
    public static readonly Fact<Side> EntrySide = Of.Choice<Side>("entry-side", "Entry side",
        "The side where the cable leaves the wall or frame.", Phase.WalkThrough);
    public static readonly Fact<Length> EntryFromJamb = Of.Opening("entry-from-jamb", "Entry from jamb",
        "Distance of the entry from the side of the opening.", Phase.WalkThrough, 0, 120);
    public static readonly Fact<Length> EntryBack = Of.Opening("entry-back", "Entry setback",
        "Distance of the entry back from the room face.", Phase.WalkThrough, 0, 48);
    public static readonly Fact<Length> EntryBelowHead = Of.Opening("entry-below-head", "Entry below head",
        "Distance of the entry below the head of the opening.", Phase.WalkThrough, 0, 120);
    public static readonly Fact<string> Group = Of.Text("group", "Group", "Units with the same group move together.", Phase.WalkThrough, 40);

    public static readonly Fact<Length> EntryAsBuilt = Of.Reading("entry-as-built", "Entry as built",
        "Distance of the entry from the side of the opening, as found after drywall.", Phase.CloseIn, 0, 120);

    public static readonly Fact<Length> PartWidth = Of.Opening("part-width", "Part of the opening",
        "Width of this unit's part where a window has several.", Phase.Measure, 4, 360);

    public static readonly Fact<string> Fabric = Of.Text("fabric", "Fabric", "Name of the fabric or slat.", Phase.Order, 60);
    public static readonly Fact<string> Colour = Of.Text("colour", "Color", "Its color.", Phase.Order, 40);
    public static readonly Fact<Opacity> Opacity = Of.Choice<Opacity>("opacity", "Opacity", "Sheer, light filtering or blackout.", Phase.Order);
    public static readonly Fact<ItemRef> HeadCover = Of.Item(ItemKind.HeadCover, "head-cover", "Head cover",
        "What hides the roll: fascia, valance or none.", Phase.Order);
    public static readonly Fact<Length> OrderWidth = Of.Opening("order-width", "Order width",
        "Ordered width: what is worked out is offered.", Phase.Order, 4, 360);
    public static readonly Fact<Length> OrderHeight = Of.Opening("order-height", "Order height",
        "Ordered height: what is worked out is offered.", Phase.Order, 4, 360);
    public static readonly Fact<DateOnly> OrderedOn = Of.Date("ordered-on", "Ordered on", "The day the order was placed.", Phase.Order);
    public static readonly Fact<string> Acknowledgement = Of.Evidence("acknowledgement", "Acknowledgement",
        "The maker's number for the order.", Phase.Order, 60);

    public static readonly Fact<DateOnly> ExpectedOn = Of.Date("expected-on", "Box expected on", "The day on which its box is to come.", Phase.Receive);
    public static readonly Fact<Arrival> Arrival = Of.Choice<Arrival>("arrival", "Box arrived",
        "Whether its box came when it was expected; not arrived stands under what to reorder.", Phase.Receive);
    public static readonly Fact<DateOnly> ReorderedOn = Of.Date("reordered-on", "Reordered on",
        "The day on which what did not come, or came wrong, was ordered again.", Phase.Receive);
    public static readonly Fact<string> BoxLabel = Of.Text("box-label", "Box label", "What stands on the box: its tag.", Phase.Receive, 60);
    public static readonly Fact<Length> DeliveredWidth = Of.Reading("delivered-width", "Delivered width",
        "Width on the box or of the unit.", Phase.Receive, 4, 360);
    public static readonly Fact<Length> DeliveredHeight = Of.Reading("delivered-height", "Delivered height",
        "Height on the box or of the unit.", Phase.Receive, 4, 360);
    public static readonly Fact<SizeReadFrom> SizeReadFrom = Of.Choice<SizeReadFrom>("size-read-from", "Size read from",
        "Label: as printed on its box. Unit: by tape, across the unit itself.", Phase.Receive);
    public static readonly Fact<YesNo> FinishAsOrdered = Of.Choice<YesNo>("finish-as-ordered", "Finish as ordered",
        "Whether fabric and color, as printed on the box and as seen in it, are the ordered ones.", Phase.Receive);
    public static readonly Fact<Side> LeadCameAt = Of.Choice<Side>("lead-came-at", "Lead leaves at",
        "The end at which the lead leaves the unit: held up as it will hang, seen from inside the room.", Phase.Receive);
    public static readonly Fact<string> Damage = Of.Text("damage", "Damage", "What is damaged, or none.", Phase.Receive);
    public static readonly Fact<string> Serial = Of.Text("serial", "Serial", "The serial number on the unit.", Phase.Receive, 60);

    public static readonly Fact<Length> Setback = Of.Reading("setback", "Bracket setback",
        "Distance of the brackets back from the room face.", Phase.Hang, 0, 48);

    public static readonly Fact<FixedInto> FixedInto = Of.Choice<FixedInto>("fixed-into", "Brackets fixed into",
        "What holds their screws behind the plaster; the worst of them counts.", Phase.Hang);
    public static readonly Fact<Length> OutOfLevel = Of.Reading("out-of-level", "Out of level",
        "How much lower one end hangs than the other, read with a level; 0 for level.", Phase.Hang, 0, 12);

    public static readonly Fact<Length> MiddleScrew = Of.Reading("middle-screw", "Middle screw",
        "Distance of the middle screw from the left end of the unit.", Phase.Hang, 0, 360);

    public static readonly Fact<Length> FreeCord = Of.Reading("free-cord", "Free cord",
        "The longest cord, chain or cable that hangs free within reach, in any position of the unit; 0 for none.", Phase.Hang, 0, 360, orNone: true);
    public static readonly Fact<string> CordHeldBy = Of.Text("cord-held-by", "Cord held by",
        "What holds cords and chains tight, such as a tensioner fixed to the wall; none where there is nothing to hold.", Phase.Hang);
    public static readonly Fact<string> CordConfirmedBy = Of.Somebody("cord-confirmed-by", "Cord confirmed by",
        "Who looked at it in every position, for a child's sake.", Phase.Hang);

    public static readonly Fact<ItemRef> Hub = Of.Item(ItemKind.Hub, "hub", "Hub", "The hub it is paired with.", Phase.Pair);
    public static readonly Fact<string> HubName = Of.Text("hub-name", "Name at the hub", "What the hub calls it, unique in the house.", Phase.Pair, 40);

    public static readonly Fact<Length> OpenGap = Of.Reading("open-gap", "Open: bar above glass",
        "With the open limit set: how far the bottom bar is clear of the glass.", Phase.Limits, 0, 48);
    public static readonly Fact<Length> CloseGap = Of.Reading("close-gap", "Closed: bar above sill",
        "With the close limit set: gap under the bottom bar; 0 just touches.", Phase.Limits, 0, 48);

    public static readonly Fact<string> Photo = Of.Text("photo", "Photo", "Path of a picture; | between several.", null, 240);
    public static readonly Fact<string> Note = Of.Text("note", "Note", "Anything the next person should know.", null, Declare.Note);
    public static readonly Fact<StepMark> Step = Of.Marks();

    internal static readonly Fact[] All =
    [
        Position, Kind, LeadSide, Power, Socket, EntrySide, EntryFromJamb, EntryBack, EntryBelowHead, Group, EntryAsBuilt, PartWidth,
        Fabric, Colour, Opacity, HeadCover, OrderWidth, OrderHeight, OrderedOn, Acknowledgement,
        ExpectedOn, Arrival, ReorderedOn,
        BoxLabel, DeliveredWidth, DeliveredHeight, SizeReadFrom, FinishAsOrdered, LeadCameAt, Damage, Serial, Setback, FixedInto, OutOfLevel, MiddleScrew,
        FreeCord, CordHeldBy, CordConfirmedBy, Hub, HubName, OpenGap, CloseGap, Photo, Note, Step,
    ];
}
