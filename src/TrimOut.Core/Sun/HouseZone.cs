using System.Collections.Immutable;
using NodaTime;
using NodaTime.TimeZones;

namespace TrimOut.Core.Sun;

/// <summary>The clock of a place through the year, by the time-zone database that comes with the program: daylight saving and all.</summary>
public sealed class HouseZone
{
    private const int Near = 5;

    // Fewer letters are near to nearly everything.
    private const int FewestLetters = 4;
    private const string Utc = "UTC";

    private static readonly Lazy<ImmutableArray<string>> Ids = new(() =>
        [.. DateTimeZoneProviders.Tzdb.Ids
            .Where(i => i == Utc || (i.Contains('/', StringComparison.Ordinal) && !i.StartsWith("Etc/", StringComparison.Ordinal)))]);

    private readonly DateTimeZone _zone;

    private HouseZone(DateTimeZone zone) => _zone = zone;

    /// <summary>Its name in the database, such as America/Denver.</summary>
    public string Id => _zone.Id;

    /// <summary>What its clocks are ahead of UTC by while no summer time is kept, in hours, from -12 to 14.</summary>
    public decimal StandardHours => (decimal)Math.Min(HoursIn(1), HoursIn(7));

    /// <summary>The place that it is named after, in degrees north and east, by the location table of the database; null where that has none.</summary>
    public (decimal Latitude, decimal Longitude)? Place =>
        TzdbDateTimeZoneSource.Default.Zone1970Locations?.FirstOrDefault(l => l.ZoneId == Id) is { } location
            ? ((decimal)location.Latitude, (decimal)location.Longitude) : null;

    /// <summary>The zone with that name; null when there is none.</summary>
    public static HouseZone? Find(string id) =>
        Ids.Value.Contains(id) && DateTimeZoneProviders.Tzdb.GetZoneOrNull(id) is { } zone ? new HouseZone(zone) : null;

    /// <summary>Reads the name of a zone, or the one place of it that no other zone has: <c>America/Denver</c>, <c>denver</c>.</summary>
    /// <remarks>Letters such as MST are refused: they stand for a clock that never changes, also where the clocks of the place do.</remarks>
    public static Result<string> Read(string? typed)
    {
        var text = (typed ?? "").Trim().Replace(' ', '_');
        if (text.Length == 0)
            return new Refusal("Nothing was typed. Type the zone of the house, such as America/Denver.");
        if (Ids.Value.FirstOrDefault(i => i.Equals(text, StringComparison.OrdinalIgnoreCase)) is { } exact)
            return exact;
        var places = Ids.Value.Where(i => PlaceOf(i).Equals(text, StringComparison.OrdinalIgnoreCase)).ToList();
        if (places.Count == 1)
            return places[0];
        var near = places.Count > 1 ? places : [.. NearTo(text).Take(Near)];
        return new Refusal($"\"{Short(typed!.Trim())}\" is no time zone that is known here. "
            + (near.Count > 0 ? $"Near it are: {string.Join(", ", near)}."
                : "Type a continent and a city whose clocks show the same, such as America/Denver."));
    }

    /// <summary>When a day begins, in seconds since the beginning of 1970, UTC.</summary>
    public double StartOf(DateOnly day) => Seconds(_zone.AtStartOfDay(new LocalDate(day.Year, day.Month, day.Day)).ToInstant());

    /// <summary>The moment at which its clocks show a time; where they skip it, as much later as they are set forward, and the first of two.</summary>
    public double At(DateOnly day, TimeOnly clock) => Seconds(
        _zone.AtLeniently(new LocalDateTime(day.Year, day.Month, day.Day, clock.Hour, clock.Minute, clock.Second)).ToInstant());

    /// <summary>What its clocks show at a moment, in minutes after midnight.</summary>
    public double MinutesAt(double unixSeconds) =>
        Instant.FromUnixTimeTicks((long)Math.Round(unixSeconds * NodaConstants.TicksPerSecond)).InZone(_zone).TimeOfDay.TickOfDay
            / (double)NodaConstants.TicksPerMinute;

    private double HoursIn(int month) => _zone.GetUtcOffset(Instant.FromUtc(2026, month, 15, 12, 0)).Seconds / (double)NodaConstants.SecondsPerHour;

    private static double Seconds(Instant instant) => instant.ToUnixTimeTicks() / (double)NodaConstants.TicksPerSecond;

    private static string PlaceOf(string id) => id[(id.LastIndexOf('/') + 1)..];

    /// <summary>Names that have what was typed in them, then those whose place is only a slip or two away.</summary>
    private static IEnumerable<string> NearTo(string text)
    {
        var place = PlaceOf(text).ToLowerInvariant();
        if (place.Length < FewestLetters)
            return [];
        var slips = from id in Ids.Value
                    let apart = Slips(PlaceOf(id).ToLowerInvariant(), place)
                    where apart <= Math.Max(1, place.Length / 3)
                    orderby apart
                    select id;
        return Ids.Value.Where(i => i.Contains(place, StringComparison.OrdinalIgnoreCase)).Concat(slips).Distinct();
    }

    /// <summary>How many letters have to be put in, left out or changed (Levenshtein).</summary>
    private static int Slips(string one, string other)
    {
        var row = Enumerable.Range(0, other.Length + 1).ToArray();
        for (var i = 1; i <= one.Length; i++)
        {
            var diagonal = row[0];
            row[0] = i;
            for (var j = 1; j <= other.Length; j++)
                (diagonal, row[j]) = (row[j], Math.Min(Math.Min(row[j], row[j - 1]) + 1, diagonal + (one[i - 1] == other[j - 1] ? 0 : 1)));
        }
        return row[^1];
    }

    private static string Short(string text) => text.Length <= 40 ? text : text[..40] + "...";
}
