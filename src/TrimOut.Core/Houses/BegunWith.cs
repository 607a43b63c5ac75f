using System.Collections.Immutable;
using TrimOut.Core.Facts;

namespace TrimOut.Core.Houses;

/// <summary>Figures that the program puts into a new house, so that it can work anything out: nobody typed them, and whoever shows them says so.</summary>
public static class BegunWith
{
    // Every change has a stamp larger than all that were seen before it, so only the change that began the house has this one.
    private const long First = 1;

    /// <summary>What of a house they are.</summary>
    public static ImmutableArray<Fact> Facts { get; } =
    [
        HouseFacts.Dwelling, HouseFacts.MeterStep, HouseFacts.CableAllowance, HouseFacts.ConductorTemperature, HouseFacts.PanelTail,
        HouseFacts.SpreadLimit, HouseFacts.SquareLimit, HouseFacts.PassLimit,
    ];

    /// <summary>Whether a detail of the house still is what the program began with.</summary>
    /// <param name="job">The house itself.</param>
    /// <param name="fact">The detail.</param>
    public static bool Is(Item job, Fact fact) => job.Kind == ItemKind.House && Facts.Contains(fact) && job.Latest(fact) is { Stored: not null, Stamp: First };
}
