using System.Collections.Immutable;
using TrimOut.Core.Phases;

namespace TrimOut.Core.Plans.Hours;

/// <summary>What a unit took in a phase, over several houses, in hours.</summary>
/// <param name="Phase">The phase.</param>
/// <param name="Median">The middle one of the houses; of an even number the mean of the two in the middle.</param>
/// <param name="Least">That of the fastest house.</param>
/// <param name="Most">That of the slowest one.</param>
/// <param name="Houses">Of how many houses; never 0.</param>
/// <param name="ByMarks">How many houses say no more than their marks: left out where others say their hours, else all of them.</param>
public sealed record HourRate(Phase Phase, decimal Median, decimal Least, decimal Most, int Houses, int ByMarks)
{
    /// <summary>Whether it is from marks alone: then a unit took at least so much in each of the houses, and the slowest one is not known.</summary>
    public bool IsAtLeast { get; private init; }

    /// <summary>
    /// The rates of houses that are through a phase and have hours for it, phase by phase; a phase of which no house says any is left out. Hours of some visits
    /// alone say nothing of a whole phase: a house counts by the others. What marks show is no more than the least: it is never mixed with hours that somebody
    /// typed, and counts only where no house has any of those.
    /// </summary>
    /// <param name="houses">The hours of each house; a house counts once, whatever its size.</param>
    public static ImmutableArray<HourRate> Of(IEnumerable<ImmutableArray<PhaseHours>> houses) =>
    [
        .. houses.SelectMany(h => h).Where(p => p is { IsOver: true, IsOfSomeVisits: false, PerUnit: not null })
            .GroupBy(p => p.Phase).OrderBy(g => g.Key).Select(g =>
        {
            var typed = g.Where(p => !p.IsAtLeast).ToList();
            var rates = (typed.Count > 0 ? typed : [.. g]).Select(p => p.PerUnit!.Value).Order().ToList();
            return new HourRate(g.Key, (rates[(rates.Count - 1) / 2] + rates[rates.Count / 2]) / 2, rates[0], rates[^1], rates.Count, g.Count() - typed.Count)
            {
                IsAtLeast = typed.Count == 0,
            };
        }),
    ];
}

/// <summary>What a phase of a house is likely to take, by what others took, in hours.</summary>
/// <param name="Rate">What a unit took there.</param>
/// <param name="Units">How many units go through the phase here.</param>
public sealed record HourEstimate(HourRate Rate, int Units)
{
    /// <summary>By the middle one of the houses.</summary>
    public decimal Hours => Rate.Median * Units;

    /// <summary>As in the fastest one.</summary>
    public decimal Least => Rate.Least * Units;

    /// <summary>As in the slowest one.</summary>
    public decimal Most => Rate.Most * Units;

    /// <summary>The estimates of a house, phase by phase; a phase without a rate is left out, and so is one that no unit goes through.</summary>
    /// <param name="house">The hours of the house.</param>
    /// <param name="rates">What a unit took elsewhere.</param>
    public static ImmutableArray<HourEstimate> Of(ImmutableArray<PhaseHours> house, IEnumerable<HourRate> rates) =>
        [.. from rate in rates from phase in house where phase.Phase == rate.Phase && phase.Units > 0 select new HourEstimate(rate, phase.Units)];
}
