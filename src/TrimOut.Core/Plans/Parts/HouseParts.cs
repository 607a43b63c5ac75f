using System.Collections.Immutable;
using TrimOut.Core.Plans.Cutting;

namespace TrimOut.Core.Plans.Parts;

/// <summary>Everything that a house takes, counted from what is known of it; each line says what it was counted from.</summary>
public static class HouseParts
{
    /// <summary>The parts list of a house, by group and in the order of the kit.</summary>
    public static ImmutableArray<PartLine> Of(Houses.House house) => Of(house, CutPlans.Of(house));

    /// <summary>The parts list of a house whose cut plans are there already.</summary>
    /// <param name="house">The house.</param>
    /// <param name="cuts">The plans, which say how many boxes are to be bought; a plan that may be off says so in its line.</param>
    public static ImmutableArray<PartLine> Of(Houses.House house, IEnumerable<PlannedCable> cuts)
    {
        PartLine[] taken =
            [.. CoveringParts.Of(house), .. CableParts.Of(house, cuts), .. SupplyParts.Of(house), .. ControlParts.Of(house), .. SmallParts.Of(house)];
        return [.. taken, .. SpareParts.Of(house, taken)];
    }
}
