using System.Collections.Immutable;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Phases;

/// <summary>Units to hub and remotes.</summary>
internal static class PairSteps
{
    private static readonly Message ARemote = new("a remote that moves it");

    public static readonly ImmutableArray<Step> All =
    [
        new("hub-paired", Phase.Pair, ItemKind.Unit, "Paired with the hub",
            "Hold the button until the cue, then give it its name.",
            [UnitFacts.Hub, UnitFacts.HubName]),
        new("remotes-paired", Phase.Pair, ItemKind.Unit, "Paired with its remotes",
            "Every remote that should move it.",
            [])
        {
            AlsoMissing = subject => subject is Unit unit && unit.Remotes.Any() ? null : ARemote.With(),
        },
        new("moved-by-all", Phase.Pair, ItemKind.Unit, "Moved from every remote",
            "Move it from the hub and from each remote, one after the other.",
            []),
    ];
}
