using System.Collections.Immutable;
using TrimOut.Core.Plans.Hours;
using TrimOut.HouseFile;

namespace TrimOut.Desks;

/// <summary>The hours of other houses, to estimate one by.</summary>
internal static class HoursElsewhere
{
    /// <summary>The hours of each house; one that can't be read is passed over, and so is a copy of the house that asks or of one before it.</summary>
    /// <param name="where">The house that asks.</param>
    /// <param name="houses">House files.</param>
    /// <param name="stop">Stops between two houses.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static IReadOnlyList<ImmutableArray<PhaseHours>> Of(string where, IEnumerable<string> houses, CancellationToken stop)
    {
        var read = new List<ImmutableArray<PhaseHours>>();
        foreach (var house in houses.Select(h => (Path: h, Begun: HouseOnDisk.HouseOf(h))).Where(h => h.Begun is not null).DistinctBy(h => h.Begun)
            .Where(h => h.Begun != HouseOnDisk.HouseOf(where)))
        {
            stop.ThrowIfCancellationRequested();
            try
            {
                read.Add(PhaseHours.Of(HouseSource.Read(house.Path, goOn: false, aloud: false).Log));
            }
            catch (Exception failed) when (ExitCode.Of(failed) is not null)
            {
                // It says nothing to estimate by; whoever opens it hears why.
            }
        }
        return read;
    }
}
