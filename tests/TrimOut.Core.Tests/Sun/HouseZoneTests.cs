using TrimOut.Core.Sun;

namespace TrimOut.Core.Tests.Sun;

public class HouseZoneTests
{
    // Mountain time: seven hours behind UTC, six from the second Sunday of March to the first of November (15 U.S.C. 260a).
    [Theory]
    [InlineData(3, 8, "01:59", 7)]
    [InlineData(3, 8, "03:00", 6)]
    [InlineData(7, 4, "12:00", 6)]
    [InlineData(11, 1, "00:59", 6)]
    [InlineData(11, 1, "02:00", 7)]
    public void ClocksGoByTheDatabase(int month, int day, string clock, double behind)
    {
        var at = TimeOnly.Parse(clock, System.Globalization.CultureInfo.InvariantCulture);
        var utc = new DateTimeOffset(2026, month, day, at.Hour, at.Minute, 0, TimeSpan.Zero).ToUnixTimeSeconds();
        Assert.Equal(utc + behind * 3600, Denver.At(new DateOnly(2026, month, day), at));
        Assert.Equal(at.ToTimeSpan().TotalMinutes, Denver.MinutesAt(utc + behind * 3600));
    }

    [Fact]
    public void ATimeThatClocksSkipIsAnHourLater() => Assert.Equal(210, Denver.MinutesAt(Denver.At(new DateOnly(2026, 3, 8), new TimeOnly(2, 30))));

    [Fact]
    public void SouthOfTheEquatorClocksChangeTheOtherWay()
    {
        var sydney = HouseZone.Find("Australia/Sydney")!;
        Assert.Equal(11 * 60, sydney.MinutesAt(new DateTimeOffset(2026, 1, 15, 0, 0, 0, TimeSpan.Zero).ToUnixTimeSeconds()));
        Assert.Equal(10 * 60, sydney.MinutesAt(new DateTimeOffset(2026, 7, 15, 0, 0, 0, TimeSpan.Zero).ToUnixTimeSeconds()));
    }

    [Theory]
    [InlineData("America/Denver", "America/Denver")]
    [InlineData(" america/new york ", "America/New_York")]
    [InlineData("denver", "America/Denver")]
    [InlineData("Los Angeles", "America/Los_Angeles")]
    [InlineData("utc", "UTC")]
    public void AZoneIsReadByItsNameOrItsPlace(string typed, string id) => Assert.Equal(id, HouseZone.Read(typed).Value);

    [Theory]
    [InlineData("America/Denvr", "America/Denver")]
    [InlineData("Berln", "Europe/Berlin")]
    [InlineData("Vegas", "Type a continent and a city")]
    [InlineData("MST", "Type a continent and a city")]
    [InlineData("Argentina", "America/Argentina/Buenos_Aires")]
    [InlineData("", "Nothing was typed")]
    public void AnUnknownOneIsRefusedWithNamesThatAreNear(string typed, string says)
    {
        var read = HouseZone.Read(typed);
        Assert.False(read.Ok);
        Assert.Contains(says, read.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void LettersThatStandForAClockWithoutDaylightSavingAreNoZone() => Assert.Null(HouseZone.Find("MST"));

    private static HouseZone Denver => HouseZone.Find("America/Denver")!;
}
