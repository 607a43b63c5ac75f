using TrimOut.Core.Houses;
using TrimOut.Core.Phases;

namespace TrimOut.Core.Facts;

/// <summary>What is known about a preset of a remote.</summary>
public static class PresetFacts
{
    private static readonly Declare Of = new(ItemKind.Preset);

    public static readonly Fact<string> Name = Of.Text("name", "Preset", "What it is for, such as Evening.", Phase.Limits, 40);
    public static readonly Fact<int> Position = Of.PercentPer("position", "Position", "How far that unit is open: 0 is closed, 100 is open.", Phase.Limits);

    internal static readonly Fact[] All = [Name, Position];
}
