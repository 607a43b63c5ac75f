using System.Collections.Immutable;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;

namespace TrimOut.Core.Phases;

/// <summary>Mains by a licensed electrician; then landing, splicing, reading.</summary>
internal static class PowerSteps
{
    public static readonly ImmutableArray<Step> All =
    [
        new("panel-hung", Phase.Power, ItemKind.Panel, "Panel hung",
            "Where it can be reached and opened, with air around it.",
            [PanelFacts.Type, PanelFacts.Location]),
        new("mains-connected", Phase.Power, ItemKind.Panel, "Connected to mains by a licensed electrician",
            "Mains work is for a licensed electrician only. Write down who did it and the license.",
            [PanelFacts.Board, PanelFacts.Breaker, PanelFacts.BreakerRating, PanelFacts.ConnectedBy, PanelFacts.Licence, PanelFacts.ConnectedOn])
        {
            Later = ImmutableDictionary<Fact, int>.Empty.Add(PanelFacts.Board, 2).Add(PanelFacts.BreakerRating, 2),
        },
        new("off-before-joints", Phase.Power, ItemKind.Panel, "Off before the joints",
            "Switch it off, see with a meter that its low-voltage outputs are dead, keep it off. The mains side is for the licensed electrician only.",
            [PanelFacts.OffSeen, PanelFacts.OffBy])
        {
            Since = 2,
        },
        new("landed", Phase.Power, ItemKind.Unit, "Landed on its output",
            "Panel off. Plus to plus, minus to minus; label in view.",
            [RunFacts.Panel, RunFacts.Output])
        {
            Applies = unit => unit.OnPanel,
        },
        new("spliced", Phase.Power, ItemKind.Unit, "Spliced with the power off",
            "Panel off. Plus to plus, minus to minus; pull on each joint.",
            [])
        {
            Applies = unit => unit.OnPanel,
        },
        new("volts-read", Phase.Power, ItemKind.Unit, "Volts and polarity read",
            "At the window end: open, then while the unit moves.",
            [RunFacts.OpenVolts, RunFacts.LoadedVolts, RunFacts.Polarity])
        {
            Applies = unit => unit.OnPanel,
        },
        new("output-proved", Phase.Power, ItemKind.Unit, "Its output proved",
            "Pull the low-voltage plug of this output alone: this window must go dead, and no other.",
            [RunFacts.WentDead])
        {
            Applies = unit => unit.OnPanel,
            Since = 2,
        },
    ];
}
