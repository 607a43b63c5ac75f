using System.Globalization;

namespace TrimOut.Core.Sun;

/// <summary>From one time of the clock to another, in minutes after midnight; 1440 is the end of the day.</summary>
/// <param name="From">The first.</param>
/// <param name="To">The last.</param>
public readonly record struct ClockSpan(int From, int To)
{
    /// <summary>Minutes of a day.</summary>
    public const int Day = 24 * 60;

    /// <summary>Its beginning as a clock shows it, such as 07:05.</summary>
    public string FromShown => Shown(From);

    /// <summary>Its end as a clock shows it; 24:00 is the end of the day.</summary>
    public string ToShown => Shown(To);

    /// <summary>Minutes after midnight as a clock shows them.</summary>
    public static string Shown(int minutes) => string.Create(CultureInfo.InvariantCulture, $"{minutes / 60:00}:{minutes % 60:00}");

    /// <summary>The same for a person: <c>07:05-11:40</c>.</summary>
    public override string ToString() => $"{FromShown}-{ToShown}";

    /// <summary>A stretch by the clocks of a place, to the minute; what ends with the day ends at 24:00.</summary>
    internal static ClockSpan Of(SunSpan span, HouseZone zone) => Of(span, zone, 1);

    /// <summary>The same to whole steps: the beginning rounded to earlier, the end to later.</summary>
    internal static ClockSpan Of(SunSpan span, HouseZone zone, int step)
    {
        var (from, to) = (zone.MinutesAt(span.From), zone.MinutesAt(span.To));
        if (to <= from)
            to = Day;
        return step == 1 ? new ClockSpan((int)Math.Round(from), (int)Math.Round(to))
            : new ClockSpan((int)Math.Floor(from / step) * step, Math.Min(Day, (int)Math.Ceiling(to / step) * step));
    }
}
