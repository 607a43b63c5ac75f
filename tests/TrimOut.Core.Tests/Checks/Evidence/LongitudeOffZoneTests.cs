using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Evidence;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Evidence;

public class LongitudeOffZoneTests
{
    private static readonly LongitudeOffZone Check = new();

    public static Example Finds => new(() => At("America/Denver", "-104.99"), j => j.SayOf("", HouseFacts.Longitude, "104.99"));

    public static Example Passes => new(() => At("America/Denver", "104.99"), j => j.SayOf("", HouseFacts.Longitude, "-104.99"));

    // Denver stands at 104 deg 59 min west (tz database, zone1970.tab: +394421-1045903), its clocks at UTC-7, which is noon by the sun at 105 degrees west.
    [Fact]
    public void ALongitudeWithoutItsSignIsAskedAbout()
    {
        var found = At("America/Denver", "104.99").FaultOf(Check, "Test house");
        Assert.Equal(
            "Longitude 105.0 degrees is 150.0 degrees from the place that America/Denver is named after; with the other sign it is 0.0 degrees.",
            found.Message);
    }

    // Berlin stands at 13 deg 22 min east (zone1970.tab: +5230+01322): so near to Greenwich the clocks alone do not tell.
    [Theory]
    [InlineData("Europe/Berlin", "13.4", true)]
    [InlineData("Europe/Berlin", "-13.4", false)]
    [InlineData("Europe/London", "-2.15", true)]
    [InlineData("Australia/Sydney", "151.2", true)]
    [InlineData("Australia/Sydney", "-151.2", false)]
    // Kashgar goes by the clocks of Shanghai, three hours off its sun; Suva lies on both sides of the 180th degree.
    [InlineData("Asia/Shanghai", "75.99", true)]
    [InlineData("Pacific/Fiji", "-179.9", true)]
    [InlineData("America/Los_Angeles", "-2.15", false)]
    public void WhatGoesWithTheClocksOfItsZoneIsFine(string zone, string longitude, bool fine) =>
        Assert.Equal(fine, At(zone, longitude).Of(Check, "Test house") is Outcome.Fine);

    // Clocks at UTC-8 are noon by the sun at 120 degrees west: 52.5 degrees on is 67.5 degrees west, three hours and a half.
    [Fact]
    public void TheLimitIsThreeHoursAndAHalf()
    {
        Assert.IsType<Outcome.Fine>(At("America/Los_Angeles", "-67.5").Of(Check, "Test house"));
        Assert.Equal("At longitude -67.4 degrees noon by the sun is 3.5 h off noon by the clocks of America/Los_Angeles.",
            At("America/Los_Angeles", "-67.4").FaultOf(Check, "Test house").Message);
    }

    [Fact]
    public void OneWithoutTheOtherIsNotCheckedAndNeitherIsNothing()
    {
        Assert.Equal("time zone of the house", new TestJob().SayOf("", HouseFacts.Longitude, "13.4").MissingOf(Check, "Test house"));
        Assert.Equal("longitude of the house", new TestJob().SayOf("", HouseFacts.TimeZone, "Europe/Berlin").MissingOf(Check, "Test house"));
        Assert.Empty(Check.Run(new TestJob().House));
    }

    private static TestJob At(string zone, string longitude) =>
        new TestJob().SayOf("", HouseFacts.TimeZone, zone).SayOf("", HouseFacts.Longitude, longitude);
}
