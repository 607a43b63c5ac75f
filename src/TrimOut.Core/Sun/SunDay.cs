using System.Collections.Immutable;

namespace TrimOut.Core.Sun;

/// <summary>From one moment to another, in seconds since the beginning of 1970, UTC.</summary>
/// <param name="From">The first moment.</param>
/// <param name="To">The last one.</param>
public readonly record struct SunSpan(double From, double To)
{
    /// <summary>How long it is.</summary>
    public double Minutes => (To - From) / 60;
}

/// <summary>The way of the sun through one day of the clocks of a place, from midnight to midnight: 23 or 25 hours where clocks change.</summary>
public sealed class SunDay
{
    private const double SampleSeconds = 300;
    private const double Close = 0.5;

    private readonly Place _place;
    private readonly ImmutableArray<(double At, SunPosition Sun)> _samples;

    private SunDay(Place place, HouseZone zone, DateOnly day, ImmutableArray<(double At, SunPosition Sun)> samples) =>
        (_place, Zone, Day, _samples) = (place, zone, day, samples);

    /// <summary>The day.</summary>
    public DateOnly Day { get; }

    /// <summary>The clocks of the place.</summary>
    public HouseZone Zone { get; }

    /// <summary>When the sun is up by the tables: its upper edge above a level horizon. Empty in polar night, all the day in polar day.</summary>
    public ImmutableArray<SunSpan> Up => field.IsDefault ? field = Spans(s => s.TrueAltitude > SolarPosition.OnHorizon) : field;

    /// <summary>The day's way.</summary>
    public static SunDay Of(Place place, HouseZone zone, DateOnly day)
    {
        var (from, to) = (zone.StartOf(day), zone.StartOf(day.AddDays(1)));
        var samples = ImmutableArray.CreateBuilder<(double, SunPosition)>();
        for (var at = from; at < to; at += SampleSeconds)
            samples.Add((at, SolarPosition.At(at, place)));
        samples.Add((to, SolarPosition.At(to, place)));
        return new SunDay(place, zone, day, samples.ToImmutable());
    }

    /// <summary>Where the sun stands at a moment, in seconds since the beginning of 1970, UTC.</summary>
    public SunPosition At(double unixSeconds) => SolarPosition.At(unixSeconds, _place);

    /// <summary>
    /// When something holds of the sun: sampled every five minutes, each end found to half a second. What lasts less than a sample may be missed.
    /// </summary>
    public ImmutableArray<SunSpan> Spans(Func<SunPosition, bool> holds)
    {
        var spans = ImmutableArray.CreateBuilder<SunSpan>();
        var (before, from) = (false, _samples[0].At);
        for (var i = 0; i < _samples.Length; i++)
        {
            var now = holds(_samples[i].Sun);
            if (now && !before)
                from = i == 0 ? _samples[0].At : Edge(holds, _samples[i - 1].At, _samples[i].At, false);
            if (!now && before)
                spans.Add(new SunSpan(from, Edge(holds, _samples[i - 1].At, _samples[i].At, true)));
            before = now;
        }
        if (before)
            spans.Add(new SunSpan(from, _samples[^1].At));
        return spans.ToImmutable();
    }

    /// <summary>Where it begins or ceases to hold, by halving.</summary>
    private double Edge(Func<SunPosition, bool> holds, double low, double high, bool heldAtLow)
    {
        while (high - low > Close)
        {
            var middle = (low + high) / 2;
            if (holds(SolarPosition.At(middle, _place)) == heldAtLow)
                low = middle;
            else
                high = middle;
        }
        return (low + high) / 2;
    }
}
