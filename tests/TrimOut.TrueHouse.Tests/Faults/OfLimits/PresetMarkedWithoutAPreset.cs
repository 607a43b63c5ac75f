using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfLimits;

/// <summary>The preset is said to be stored in every unit, and the house has no preset.</summary>
public sealed class PresetMarkedWithoutAPreset : Fault
{
    public override string Goes => "the preset is said to be stored in every unit, and the house has no preset";

    public override string Costs => "an owner who presses and waits";

    public override Stage In => Stage.Limits;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        foreach (var remote in house.Remotes)
            remote.Presets.Clear();
        return From(Stage.Limits, [.. house.Units.Select(u => u.Key)]);
    }
}
