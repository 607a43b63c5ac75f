using System.Collections.Immutable;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Phases;

/// <summary>Open and close limits, presets.</summary>
internal static class LimitsSteps
{
    private static readonly Message APreset = new("a preset that moves it");

    public static readonly ImmutableArray<Step> All =
    [
        new("open-limit", Phase.Limits, ItemKind.Unit, "Open limit set and seen",
            "Bar clear of the glass.",
            [UnitFacts.OpenGap]),
        new("close-limit", Phase.Limits, ItemKind.Unit, "Close limit set and seen",
            "The bar just touches the sill: no slack, no bow.",
            [UnitFacts.CloseGap]),
        new("level-with-neighbours", Phase.Limits, ItemKind.Unit, "Level with its neighbors",
            "Open and closed, seen from across the room.",
            []),
        new("preset-stored", Phase.Limits, ItemKind.Unit, "Preset stored",
            "Hold until the cue; move away and call it back. Where no preset moves it, mark it not needed.",
            [])
        {
            AlsoSince = 2,
            AlsoMissing = subject => subject.House.Look(Lookups.PresetsByUnit, subject.Id).Count > 0 ? null : APreset.With(),
        },
    ];
}
