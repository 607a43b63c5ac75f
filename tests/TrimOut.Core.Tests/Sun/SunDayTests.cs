using TrimOut.Core.Sun;

namespace TrimOut.Core.Tests.Sun;

public class SunDayTests
{
    // Sunrise and sunset as the U.S. Naval Observatory and NOAA print them, to the minute; from memory.
    [Theory]
    [InlineData("America/New_York", 40.7128, -74.006, 2024, 6, 21, "05:25", "20:31")]
    [InlineData("America/New_York", 40.7128, -74.006, 2024, 12, 21, "07:17", "16:32")]
    [InlineData("Europe/London", 51.508, -0.126, 2024, 6, 21, "04:43", "21:22")]
    [InlineData("Europe/London", 51.508, -0.126, 2024, 12, 21, "08:04", "15:54")]
    [InlineData("Australia/Sydney", -33.87, 151.21, 2024, 6, 21, "07:00", "16:54")]
    [InlineData("Australia/Sydney", -33.87, 151.21, 2024, 12, 21, "05:41", "20:05")]
    [InlineData("America/Denver", 39.7392, -104.9903, 2024, 6, 21, "05:32", "20:31")]
    public void TheSunRisesAndSetsByTheTables(string zone, double latitude, double longitude, int year, int month, int day, string rise, string set)
    {
        var of = SunDay.Of(new Place(latitude, longitude), HouseZone.Find(zone)!, new DateOnly(year, month, day));
        var up = Assert.Single(of.Up);
        Assert.Equal(Minutes(rise), of.Zone.MinutesAt(up.From), 1.0);
        Assert.Equal(Minutes(set), of.Zone.MinutesAt(up.To), 1.0);
    }

    // In Tromso the sun stays up from about May 18 to July 25, and down from November 27 to January 14: the almanac's dates, from memory.
    [Theory]
    [InlineData(6, 21, 1440)]
    [InlineData(5, 19, 1440)]
    [InlineData(12, 21, 0)]
    [InlineData(11, 28, 0)]
    public void FarNorthItStaysUpOrDownAllDay(int month, int day, double minutes) =>
        Assert.Equal(minutes, Tromso(month, day).Up.Sum(s => s.Minutes));

    [Fact]
    public void ADayOfPolarNightHasNoSunAndTheDayAfterItHasALittle()
    {
        Assert.Empty(Tromso(1, 13).Up);
        Assert.InRange(Assert.Single(Tromso(1, 17).Up).Minutes, 30, 150);
    }

    [Theory]
    [InlineData(3, 8, 23)]
    [InlineData(11, 1, 25)]
    [InlineData(6, 1, 24)]
    public void ADayOnWhichClocksChangeIsAnHourShorterOrLonger(int month, int day, double hours)
    {
        var of = SunDay.Of(new Place(39.74, -105), HouseZone.Find("America/Denver")!, new DateOnly(2026, month, day));
        Assert.Equal(hours * 60, Assert.Single(of.Spans(_ => true)).Minutes);
    }

    [Fact]
    public void AnEdgeIsFoundToASecond()
    {
        var of = SunDay.Of(new Place(39.74, -105), HouseZone.Find("America/Denver")!, new DateOnly(2026, 6, 1));
        var span = of.Spans(s => s.Azimuth is > 100 and < 200)[0];
        Assert.Equal(100, of.At(span.From).Azimuth, 0.01);
        Assert.Equal(200, of.At(span.To).Azimuth, 0.02);
    }

    private static SunDay Tromso(int month, int day) => SunDay.Of(new Place(69.65, 18.96), HouseZone.Find("Europe/Oslo")!, new DateOnly(2024, month, day));

    private static double Minutes(string clock) => TimeOnly.Parse(clock, System.Globalization.CultureInfo.InvariantCulture).ToTimeSpan().TotalMinutes;
}
