using TrimOut.Core.Checks;
using TrimOut.Core.Houses;

namespace TrimOut.Papers;

/// <summary>What a paper is written from. The same data give the same paper, byte for byte.</summary>
/// <param name="House">The house.</param>
/// <param name="Date">The day that stands on the paper.</param>
/// <param name="Report">What the checks say of the house.</param>
public sealed record PaperData(House House, DateOnly Date, CheckReport Report)
{
    /// <summary>Leaves out what only the trade needs: meter readings, progress by phase, who marked what.</summary>
    public bool OwnerOnly { get; init; }

    /// <summary>The data of a house as it stands; the checks are run.</summary>
    public static PaperData Of(House house, DateOnly date) => new(house, date, CheckReport.Of(house));
}
