using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Evidence;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Evidence;

public class LatitudeOffZoneTests
{
    private static readonly LatitudeOffZone Check = new();

    public static Example Finds => new(() => At("America/Denver", "39.74"), j => j.SayOf("", HouseFacts.Latitude, "-39.74"));

    public static Example Passes => new(() => At("America/Denver", "-39.74"), j => j.SayOf("", HouseFacts.Latitude, "39.74"));

    // Denver stands at 39 deg 44 min 21 s north (tz database, zone1970.tab: +394421-1045903).
    [Fact]
    public void ALatitudeWithTheOtherSignIsAskedAbout() => Assert.Equal(
        "Latitude -39.7 degrees is 79.5 degrees from the place that America/Denver is named after; with the other sign it is 0.0 degrees.",
        At("America/Denver", "-39.74").FaultOf(Check, "Test house").Message);

    // By zone1970.tab Lima stands at 12 deg 3 min south, Sydney at 33 deg 52 min, Santiago at 33 deg 27 min, and Nairobi at 1 deg 17 min, where the
    // sign is of no matter.
    [Theory]
    [InlineData("America/Denver", "39.74", true)]
    [InlineData("America/New_York", "25.8", true)]
    [InlineData("Australia/Sydney", "-33.9", true)]
    [InlineData("Australia/Sydney", "33.9", false)]
    [InlineData("America/Lima", "-12", true)]
    [InlineData("America/Lima", "12", false)]
    [InlineData("America/Santiago", "-18.5", true)]
    [InlineData("Africa/Nairobi", "1.28", true)]
    [InlineData("America/Denver", "-5.2", true)]
    [InlineData("America/Denver", "-5.3", false)]
    public void WhatGoesWithThePlaceOfItsZoneIsFine(string zone, string latitude, bool fine) =>
        Assert.Equal(fine, At(zone, latitude).Of(Check, "Test house") is Outcome.Fine);

    [Fact]
    public void AZoneThatIsNamedAfterNoPlaceSaysNothing() => Assert.Empty(Check.Run(At("UTC", "-80").House));

    [Fact]
    public void SoFarFromItsPlaceNoHouseGoesByItsClocks() => Assert.Equal(
        "Latitude -20.0 degrees is 59.7 degrees from the place that America/Denver is named after.",
        At("America/Denver", "-20").FaultOf(Check, "Test house").Message);

    // Berlin stands at 52 deg 30 min north, 13 deg 22 min east (zone1970.tab: +5230+01322), Lisbon at 38 deg 43 min north, 9 deg 8 min west.
    [Theory]
    [InlineData("Europe/Berlin", "13.4", "52.5", "13.4 degrees and longitude 52.5")]
    [InlineData("Europe/Lisbon", "-9.1", "38.7", "-9.1 degrees and longitude 38.7")]
    public void LatitudeAndLongitudeExchangedAreAskedAbout(string zone, string latitude, string longitude, string said) => Assert.StartsWith(
        $"Latitude {said} degrees are near the place that {zone} is named after only the other way round.",
        At(zone, latitude).SayOf("", HouseFacts.Longitude, longitude).FaultOf(Check, "Test house").Message, StringComparison.Ordinal);

    [Fact]
    public void OneWithoutTheOtherIsNotCheckedAndNeitherIsNothing()
    {
        Assert.Equal("time zone of the house", new TestJob().SayOf("", HouseFacts.Latitude, "39.74").MissingOf(Check, "Test house"));
        Assert.Equal("latitude of the house", new TestJob().SayOf("", HouseFacts.TimeZone, "America/Denver").MissingOf(Check, "Test house"));
        Assert.Empty(Check.Run(new TestJob().House));
    }

    private static TestJob At(string zone, string latitude) =>
        new TestJob().SayOf("", HouseFacts.TimeZone, zone).SayOf("", HouseFacts.Latitude, latitude);
}
