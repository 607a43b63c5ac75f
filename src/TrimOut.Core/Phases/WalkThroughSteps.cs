using System.Collections.Immutable;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;

namespace TrimOut.Core.Phases;

/// <summary>Framing open.</summary>
internal static class WalkThroughSteps
{
    public static readonly ImmutableArray<Step> All =
    [
        new("opening-seen", Phase.WalkThrough, ItemKind.Unit, "Opening recorded",
            "Read the rough opening with a tape; note what it takes to reach its head.",
            [WindowFacts.Room, WindowFacts.Facing, WindowFacts.Reach, WindowFacts.Mount, WindowFacts.RoughWidth, WindowFacts.RoughHeight,
                WindowFacts.Escape])
        {
            Later = ImmutableDictionary<Fact, int>.Empty.Add(WindowFacts.Escape, 2),
        },
        new("covering-planned", Phase.WalkThrough, ItemKind.Unit, "Kind, lead side and power decided",
            "Stand inside the room, face the window: left and right are as you see them.",
            [UnitFacts.Kind, UnitFacts.LeadSide, UnitFacts.Power]),
        new("socket-seen", Phase.WalkThrough, ItemKind.Unit, "Outlet for the plug-in supply",
            "Look for the outlet that its cord reaches. A new one is for the licensed electrician, while the wall is open.",
            [UnitFacts.Socket])
        {
            Applies = unit => unit.Power == PowerSource.PlugIn,
            Since = 2,
        },
        new("entry-marked", Phase.WalkThrough, ItemKind.Unit, "Entry marked on the framing",
            "Mark where the cable leaves the wall: clear of the end bracket, on the lead side.",
            [UnitFacts.EntrySide, UnitFacts.EntryFromJamb, UnitFacts.EntryBack, UnitFacts.EntryBelowHead])
        {
            Applies = unit => unit.OnPanel,
        },
        new("openings-counted", Phase.WalkThrough, ItemKind.House, "Openings counted",
            "Last of all: count them on the schedule or from outside. Each is a window here, with a covering or left out.",
            [HouseFacts.Openings])
        {
            Since = 2,
        },
        new("paint-asked", Phase.WalkThrough, ItemKind.House, "Age of the paint noted",
            "Old paint may hold lead: who may drill or sand it, and how, is for the local rules to say.",
            [HouseFacts.OldestPaint])
        {
            Since = 2,
        },
    ];
}
