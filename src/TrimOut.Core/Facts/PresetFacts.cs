using TrimOut.Core.Houses;
using TrimOut.Core.Phases;

namespace TrimOut.Core.Facts;

/// <summary>What is known about a preset of a remote.</summary>
public static class PresetFacts
{
    private static readonly Declare Of = new(ItemKind.Preset);

    public static readonly Fact<string> Name = Of.Text("name", "Preset", "What it is for, such as Evening.", Phase.Limits, 40);
    public static readonly Fact<int> Position = Of.PercentPer("position", "Position", "How far that unit is open: 0 is closed, 100 is open.", Phase.Limits);
    public static readonly Fact<TimeOnly> RunsAt = Of.Clock("runs-at", "Runs at",
        "When a timer calls it by itself, by the clocks of the house; blank where only a key calls it.", Phase.Limits);
    public static readonly Fact<Month> RunsFrom = Of.Choice<Month>("runs-from", "First month",
        "The first month in which its timer calls it; blank for all year.", Phase.Limits);
    public static readonly Fact<Month> RunsTo = Of.Choice<Month>("runs-to", "Last month",
        "The last month in which its timer calls it; blank for all year.", Phase.Limits);

    internal static readonly Fact[] All = [Name, Position, RunsAt, RunsFrom, RunsTo];
}
