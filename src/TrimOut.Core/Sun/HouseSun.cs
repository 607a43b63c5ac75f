using System.Collections.Immutable;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;

namespace TrimOut.Core.Sun;

/// <summary>The sun on the covered windows of a house.</summary>
public sealed class HouseSun
{
    private readonly Dictionary<Facade, FacadeYear> _years = [];

    private HouseSun(SunYear year, HouseZone zone) => (Year, Zone) = (year, zone);

    /// <summary>The way of the sun through the year.</summary>
    public SunYear Year { get; }

    /// <summary>The clocks of the house.</summary>
    public HouseZone Zone { get; }

    /// <summary>What has to be known of a house and is not: latitude, longitude, time zone.</summary>
    public static ImmutableArray<Fact> Missing(House house)
    {
        var missing = ImmutableArray.CreateBuilder<Fact>();
        if (house.Job.Get(HouseFacts.Latitude) is null)
            missing.Add(HouseFacts.Latitude);
        if (house.Job.Get(HouseFacts.Longitude) is null)
            missing.Add(HouseFacts.Longitude);
        if (house.Job.Get(HouseFacts.TimeZone) is null)
            missing.Add(HouseFacts.TimeZone);
        return missing.ToImmutable();
    }

    /// <summary>The sun of a house; null while something of it is missing.</summary>
    public static HouseSun? Of(House house) =>
        house.Job.Get(HouseFacts.Latitude) is { } latitude && house.Job.Get(HouseFacts.Longitude) is { } longitude
            && house.Job.Get(HouseFacts.TimeZone) is { } id && HouseZone.Find(id) is { } zone
            ? new HouseSun(SunYear.Of(new Place((double)latitude, (double)longitude), zone), zone)
            : null;

    /// <summary>
    /// The windows that get a covering, by facade, from north around by east; those of which nobody noted where they look out to are left out.
    /// </summary>
    public static ImmutableArray<(Facade Facade, ImmutableArray<Window> Windows)> Facades(House house) =>
    [
        .. from window in house.Windows
           where !window.LeftOut
           let facade = Facade.Of(window)
           where facade is not null
           group window by facade! into windows
           orderby windows.Key.Facing, windows.Key.Horizon, windows.Key.Overhang?.Depth ?? 0
           select (windows.Key, windows.ToImmutableArray()),
    ];

    /// <summary>What the sun does to a facade, worked out once.</summary>
    public FacadeYear Of(Facade facade)
    {
        if (!_years.TryGetValue(facade, out var year))
            _years.Add(facade, year = FacadeYear.Of(Year, facade));
        return year;
    }
}
