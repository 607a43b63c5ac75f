using System.Collections.Immutable;

namespace TrimOut.Core.Plans.Parts;

/// <summary>Everything that a house takes, counted from what is known of it; each line says what it was counted from.</summary>
public static class HouseParts
{
    /// <summary>The parts list of a house, by group and in the order of the kit.</summary>
    /// <param name="house">The house.</param>
    /// <param name="steps">How much work the cut plan for the boxes may take; where that is not enough the line says so.</param>
    public static ImmutableArray<PartLine> Of(Houses.House house, long steps = Cutting.CutPlanner.UsualSteps) =>
        [.. CoveringParts.Of(house), .. CableParts.Of(house, steps), .. SupplyParts.Of(house), .. ControlParts.Of(house), .. SmallParts.Of(house)];

    /// <summary>A count and what is counted.</summary>
    internal static string Many(int count, string one, string? many = null) => $"{Units.NumberText.Plain(count)} {(count == 1 ? one : many ?? one + "s")}";

    /// <summary>Names with commas, the first few of them.</summary>
    internal static string Names(IEnumerable<string> names)
    {
        const int Most = 8;
        var all = names.ToList();
        return string.Join(", ", all.Take(Most)) + (all.Count > Most ? $" and {all.Count - Most} more" : "");
    }
}
