using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;

namespace TrimOut.Core.Facts;

/// <summary>What is known about a home run.</summary>
public static class RunFacts
{
    private static readonly Declare Of = new(ItemKind.Run);

    public static readonly Fact<ItemRef> Cable = Of.Item(ItemKind.CableType, "cable", "Cable", "The cable it is pulled in.", Phase.RoughIn);
    public static readonly Fact<string> Bundle = Of.Text("bundle", "Bundle",
        "Runs of the same bundle are pulled together, so each comes from a box of its own.", Phase.RoughIn, 40);
    public static readonly Fact<ItemRef> BranchesOff = Of.Item(ItemKind.Run, "branches-off", "Branches off",
        "The run whose window end it goes on from, where several units share one cable. Most sheets forbid that.", Phase.RoughIn);
    public static readonly Fact<Length> MainsDistance = Of.Opening("mains-distance", "From mains",
        "The nearest it comes to mains wiring along its way.", Phase.RoughIn, 0, 1200);
    public static readonly Fact<YesNo> MainsSheathed = Of.Choice<YesNo>("mains-sheathed", "Mains sheathed",
        "Whether that mains wiring is sheathed cable or in conduit.", Phase.RoughIn);
    public static readonly Fact<Length> HoleEdge = Of.Opening("hole-edge", "Hole to edge",
        "The nearest that a bored hole comes to the edge of a stud or joist.", Phase.RoughIn, 0, 12);
    public static readonly Fact<HoleTo> HoleTo = Of.Choice<HoleTo>("hole-to", "Edge measured to",
        "Whether that distance goes to the side of the hole or to its middle.", Phase.RoughIn);
    public static readonly Fact<Length> HoleDrill = Of.Opening("hole-drill", "Width of the drill",
        "Where it goes to the middle of the hole: half of the drill comes off.", Phase.RoughIn, 0, 6);
    public static readonly Fact<YesNo> NailPlates = Of.Choice<YesNo>("nail-plates", "Nail plates", "Whether holes near an edge are plated.", Phase.RoughIn);
    public static readonly Fact<YesNo> OnePiece = Of.Choice<YesNo>("one-piece", "One piece",
        "Whether it is one piece from its box, with no joint on its way.", Phase.RoughIn);
    public static readonly Fact<Length> TailAtWindow = Of.Reading("tail-at-window", "Tail at window",
        "Cable left hanging at the window.", Phase.RoughIn, 0, 360);
    public static readonly Fact<Length> TailAtPanel = Of.Reading("tail-at-panel", "Tail at panel",
        "Cable left hanging in the mechanical room.", Phase.RoughIn, 0, 600);
    public static readonly Fact<string> LabelAtWindow = Of.Evidence("label-at-window", "Label at window",
        "What is written on the cable at the window.", Phase.RoughIn, 40);
    public static readonly Fact<string> LabelAtPanel = Of.Evidence("label-at-panel", "Label at panel",
        "What is written on the cable in the mechanical room.", Phase.RoughIn, 40);
    public static readonly Fact<string> Photo = Of.Evidence("photo", "Photo", "Path of a picture of the open wall; | between several.", Phase.RoughIn, 240);
    public static readonly Fact<int> SpareCables = Of.Count("spare-cables", "Spare cables",
        "How many more cables lie beside it, for the day on which it fails; 0 for none.", Phase.RoughIn, 0, 9);
    public static readonly Fact<string> SpareEnds = Of.Text("spare-ends", "Spare ends at", "Where both ends of the spare cables are.", Phase.RoughIn);
    public static readonly Fact<Resistance> FirstLoop = Of.Ohms("first-loop", "First test, loop",
        "Loop resistance with the far end shorted, as the meter shows it.", Phase.RoughIn);

    public static readonly Fact<Resistance> FirstApart = Of.Ohms("first-apart", "First test, far end open",
        "The same reading with the far end open: it must read open, for the two conductors are apart.", Phase.RoughIn);

    public static readonly Fact<Resistance> FirstToFrame = Of.Ohms("first-to-frame", "First test, to the frame",
        "Both conductors held together at one end, far end open, to bare metal of the building: it must read open.", Phase.RoughIn);

    public static readonly Fact<Length> TailFound = Of.Reading("tail-found", "Tail found",
        "Tail at the window as found after drywall and paint.", Phase.CloseIn, 0, 360);
    public static readonly Fact<Resistance> SecondLoop = Of.Ohms("second-loop", "Second test, loop",
        "Loop resistance after drywall, with the far end shorted as the first time, as the meter shows it.", Phase.CloseIn);
    public static readonly Fact<Resistance> SecondApart = Of.Ohms("second-apart", "2nd test, far end open",
        "With the far end open after drywall: it must read open.", Phase.CloseIn);

    public static readonly Fact<Resistance> SecondToFrame = Of.Ohms("second-to-frame", "2nd test, to the frame",
        "After drywall, both conductors held together at one end, far end open, to bare metal of the building: it must read open.", Phase.CloseIn);

    public static readonly Fact<ItemRef> Panel = Of.Item(ItemKind.Panel, "panel", "Panel", "The panel it lands on.", Phase.Power);
    public static readonly Fact<int> Output = Of.Count("output", "Output", "The output it lands on, from 1.", Phase.Power, 1, 64);
    public static readonly Fact<Voltage> OpenVolts = Of.Volts("open-volts", "Open-circuit volts",
        "At the window end, nothing connected.", Phase.Power, -60, 60, reading: true);
    public static readonly Fact<Voltage> LoadedVolts = Of.Volts("loaded-volts", "Loaded volts",
        "At the unit while it moves.", Phase.Power, -60, 60, reading: true);
    public static readonly Fact<Polarity> Polarity = Of.Choice<Polarity>("polarity", "Polarity",
        "Plus to plus, minus to minus, read at the window end.", Phase.Power, reading: true);
    public static readonly Fact<WentDead> WentDead = Of.Choice<WentDead>("went-dead", "Its output off",
        "Which window goes dead when the plug of this output alone is pulled at the panel.", Phase.Power);
    public static readonly Fact<string> Note = Of.Text("note", "Note", "Anything the next person should know.", null, Declare.Note);

    internal static readonly Fact[] All =
    [
        Cable, Bundle, BranchesOff, MainsDistance, MainsSheathed, HoleEdge, HoleTo, HoleDrill, NailPlates, OnePiece, TailAtWindow, TailAtPanel,
        LabelAtWindow, LabelAtPanel, Photo, SpareCables, SpareEnds, FirstLoop, FirstApart, FirstToFrame,
        TailFound, SecondLoop, SecondApart, SecondToFrame, Panel, Output, OpenVolts, LoadedVolts, Polarity, WentDead, Note,
    ];
}
