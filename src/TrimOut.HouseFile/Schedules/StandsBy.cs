using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Plans.Parts;
using TrimOut.Core.Plans.Visits;

namespace TrimOut.HouseFile.Schedules;

/// <summary>What was ordered or built by a detail, so that a schedule alone does not make it another: common practice, no published source.</summary>
internal static class StandsBy
{
    /// <summary>What says nothing of how a unit is made or where its cable leaves the wall.</summary>
    private static readonly Fact[] OfNeither = [WindowFacts.Tag, WindowFacts.Facing, WindowFacts.Note];

    /// <summary>What the end of a cable in the wall was made for: its side, whether it is inside the opening, that there is one, and in which room.</summary>
    private static readonly Fact[] OfCable = [UnitFacts.LeadSide, UnitFacts.Power, WindowFacts.Mount, WindowFacts.Room];

    /// <summary>Why a detail that the house has stays, and what to do where it is to be another; null where nothing stands by it yet.</summary>
    /// <param name="of">The window or unit.</param>
    /// <param name="fact">The detail.</param>
    public static string? Why(Subject of, Fact fact)
    {
        var units = of is Window window ? [.. window.Units] : of is Unit unit ? new[] { unit } : [];
        return OfNeither.Contains(fact) ? null
            : units.FirstOrDefault(VisitPlan.IsOrdered) is { } ordered
                ? $"{Ordered(ordered)}: ask the maker first, and type it where it is to be another"
            : OfCable.Contains(fact) && units.FirstOrDefault(CableInWall.IsThere) is { } cabled
                ? $"{Cabled(cabled)}: look at it with the office, and type it where it is to be another"
            : null;
    }

    /// <summary>What there is already of a window that a schedule no longer has; null where nothing is.</summary>
    /// <param name="window">The window.</param>
    public static string? WhatIsThere(Window window) => window.Units.FirstOrDefault(VisitPlan.IsOrdered) is { } ordered ? Ordered(ordered)
        : window.Units.FirstOrDefault(CableInWall.IsThere) is { } cabled ? Cabled(cabled) : null;

    private static string Ordered(Unit unit) => $"{unit.Tag} {(unit.BoxIsHere ? "is here" : "is on order")}";

    private static string Cabled(Unit unit) => $"the cable of {unit.Tag} lies in the wall";
}
