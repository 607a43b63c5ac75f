using System.Collections.Immutable;

namespace TrimOut.Core.Sun;

/// <summary>The way of the sun at a place on the day of each month that stands for it.</summary>
public sealed class SunYear
{
    private SunYear(ImmutableArray<SunDay> days) => Days = days;

    /// <summary>One day for each month, from January.</summary>
    public ImmutableArray<SunDay> Days { get; }

    /// <summary>The year of a place.</summary>
    public static SunYear Of(Place place, HouseZone zone) =>
        new([.. Enumerable.Range(1, 12).Select(m => SunDay.Of(place, zone, new DateOnly(SunRules.Year, m, SunRules.Day)))]);
}
