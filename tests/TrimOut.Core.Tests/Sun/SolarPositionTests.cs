using TrimOut.Core.Sun;

namespace TrimOut.Core.Tests.Sun;

public class SolarPositionTests
{
    // Reda and Andreas, Solar Position Algorithm for Solar Radiation Applications, NREL/TP-560-34302, table A5.1.
    private const double Moment = 1_066_419_030;
    private static readonly Place Golden = new(39.742476, -105.1786);

    [Fact]
    public void TheWorkedExampleOfThePublishedAlgorithmIsMetToAThousandthOfADegree()
    {
        var sun = SolarPosition.At(Moment, Golden, new Air(820, 11), 67);
        Assert.Equal(50.11162, 90 - sun.Altitude, 0.001);
        Assert.Equal(194.34024, sun.Azimuth, 0.001);
        Assert.Equal(25.18700, Incidence.Of(sun, 180 - 10, 30), 0.001);
    }

    // That algorithm with all its terms, as the open-source library pvlib has it, read off a run: 0.005 degrees is what we say of ours.
    [Theory]
    [InlineData(1782007200, -33.87, 151.21, 32.7117, 359.1514)]
    [InlineData(1797854400, 51.508, -0.126, 15.1131, 180.3400)]
    [InlineData(1774047600, 40.7128, -74.006, 1.1081, 269.5607)]
    [InlineData(2539461600, 69.65, 18.96, 3.6556, 349.4021)]
    [InlineData(-610101000, 0, -78.5, 62.7772, 71.5122)]
    [InlineData(1768492800, 39.7392, -104.9903, 14.9361, 134.7386)]
    [InlineData(4111022700, 25.0, 67.0, 69.4651, 143.7748)]
    public void TheWholeAlgorithmHasTheSameSun(double moment, double latitude, double longitude, double altitude, double azimuth)
    {
        var sun = SolarPosition.At(moment, new Place(latitude, longitude));
        Assert.Equal(altitude, sun.Altitude, 0.005);
        Assert.Equal(0, Math.IEEERemainder(azimuth - sun.Azimuth, 360) * Math.Cos(altitude * Math.PI / 180), 0.005);
    }

    [Fact]
    public void TheSunBelowTheGroundIsNotLiftedByTheAir()
    {
        var sun = SolarPosition.At(Moment + 12 * 3600, Golden);
        Assert.True(sun.TrueAltitude < -10);
        Assert.Equal(sun.TrueAltitude, sun.Altitude);
    }

    // The sun's middle is seen on the horizon while it is 34 minutes of arc below: what tables of sunrise reckon with.
    [Fact]
    public void ASunOnTheHorizonIsLiftedByAboutHalfADegree()
    {
        for (var at = Moment; at < Moment + 86_400; at += 10)
        {
            var sun = SolarPosition.At(at, Golden);
            if (Math.Abs(sun.Altitude) < 0.02)
                Assert.Equal(34.0 / 60, sun.Altitude - sun.TrueAltitude, 0.1);
        }
    }
}
