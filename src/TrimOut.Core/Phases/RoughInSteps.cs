using System.Collections.Immutable;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Phases;

/// <summary>Cable pulled, labelled and tested.</summary>
internal static class RoughInSteps
{
    private static readonly Message Legs = new("legs with their lengths");
    private static readonly Message OfEachLeg = new("{0} of each leg");

    public static readonly ImmutableArray<Step> All =
    [
        new("route-chosen", Phase.RoughIn, ItemKind.Unit, "Route and cable chosen",
            "One unbroken cable from the window to the panel: note each leg and what is around it.",
            [RunFacts.Cable])
        {
            Applies = unit => unit.OnPanel,
            AlsoMissing = subject => subject is Unit { Run.LegsLength: not null } ? null : Legs.With(),
            LaterMissing = subject => subject is Unit { Run: { } run } && run.Legs.Any(l => l.Place is null) ? OfEachLeg.With(Arg.Label(LegFacts.Place)) : null,
            LaterMissingSince = 4,
        },
        new("air-asked", Phase.RoughIn, ItemKind.Unit, "Moving air asked about",
            "Say of each leg across whether air of the building moves around it. Ask whoever plans the air: a return hardly shows at framing.",
            [])
        {
            Applies = unit => unit.OnPanel,
            Since = 2,
            AlsoMissing = subject => subject is Unit { Run: { } run } ? MovingAir.MissingOf(run) : Legs.With(),
        },
        new("kept-from-mains", Phase.RoughIn, ItemKind.Unit, "Kept clear of mains",
            "Note the nearest it comes to mains wiring. The code in force governs; ask the electrician where it is tight.",
            [RunFacts.MainsDistance, RunFacts.MainsSheathed])
        {
            Applies = unit => unit.OnPanel,
        },
        new("holes-guarded", Phase.RoughIn, ItemKind.Unit, "Holes protected",
            "Look before you drill: pipes and mains. A hole near the edge gets a nail plate; structural limits are the builder's to say.",
            [RunFacts.HoleEdge, RunFacts.HoleTo, RunFacts.NailPlates])
        {
            Applies = unit => unit.OnPanel,
            Later = ImmutableDictionary<Fact, int>.Empty.Add(RunFacts.HoleTo, 2),
        },
        new("drilling-guarded", Phase.RoughIn, ItemKind.House, "Eye and dust protection for drilling",
            "Eye protection for everybody near; dust caught where it is made; nobody drills overhead alone.",
            [HouseFacts.DrillGuard])
        {
            Since = 2,
        },
        new("cable-pulled", Phase.RoughIn, ItemKind.Unit, "Cable pulled, tails left",
            "Tail at the window: at least half of its width, better the whole.",
            [RunFacts.TailAtWindow, RunFacts.TailAtPanel, RunFacts.OnePiece])
        {
            Applies = unit => unit.OnPanel,
            Later = ImmutableDictionary<Fact, int>.Empty.Add(RunFacts.OnePiece, 2),
        },
        new("both-ends-labelled", Phase.RoughIn, ItemKind.Unit, "Both ends labeled",
            "The same words at both ends, and in this file.",
            [RunFacts.LabelAtWindow, RunFacts.LabelAtPanel])
        {
            Applies = unit => unit.OnPanel,
        },
        new("wall-photographed", Phase.RoughIn, ItemKind.Unit, "Open wall photographed",
            "One picture that shows the way of the cable before the wall closes.",
            [RunFacts.Photo])
        {
            Applies = unit => unit.OnPanel,
        },
        new("spares-noted", Phase.RoughIn, ItemKind.Unit, "Spare cables noted",
            "A second cable costs little while the wall is open; write 0 where there is none.",
            [RunFacts.SpareCables])
        {
            Applies = unit => unit.OnPanel,
            Since = 2,
        },
        new("fire-stops-seen", Phase.RoughIn, ItemKind.Unit, "Fire barriers sealed and seen",
            "Say of each leg whether it goes through a fire barrier. Who may seal the hole, and with what, is for the local code to say; " +
                "see it before the wall closes.",
            [])
        {
            Applies = unit => unit.OnPanel,
            Since = 2,
            AlsoMissing = subject => subject is Unit { Run: { } run } ? FireBarriers.MissingOf(run) : Legs.With(),
        },
        new("tested-first", Phase.RoughIn, ItemKind.Unit, "First test",
            "Short the window end, read the loop. Take the short off and read again: it must read open. The loop sees no short near the window. " +
                "Then both conductors to bare metal of the building, never to an outlet or a board: open too.",
            [RunFacts.FirstLoop, RunFacts.FirstApart, RunFacts.FirstToFrame])
        {
            Applies = unit => unit.OnPanel,
            Later = ImmutableDictionary<Fact, int>.Empty.Add(RunFacts.FirstApart, 2).Add(RunFacts.FirstToFrame, 2),
        },
    ];
}
