using TrimOut.Core.Units;

namespace TrimOut.Core.Tests.Units;

public class AzimuthTests
{
    [Theory]
    [InlineData("SW", 225)]
    [InlineData("ssw", 202.5)]
    [InlineData("0", 0)]
    [InlineData("360", 0)]
    [InlineData("12 deg", 12)]
    [InlineData("south-west", 225)]
    [InlineData("North North East", 22.5)]
    public void ReadsPointsAndDegrees(string typed, double degrees) => Assert.Equal((decimal)degrees, Azimuth.Read(typed).Value.Degrees);

    [Theory]
    [InlineData("361")]
    [InlineData("-1")]
    [InlineData("up")]
    [InlineData("north corner")]
    [InlineData("northnorth")]
    public void RefusesWhatIsNoDirection(string typed) => Assert.False(Azimuth.Read(typed).Ok);

    [Fact]
    public void EveryPointReadsBack() =>
        Assert.All(Enumerable.Range(0, 16), n => Assert.Equal(n * 22.5m, Azimuth.Read(new Azimuth(n * 22.5m).ToString()).Value.Degrees));

    [Theory]
    [InlineData(11.24, "N")]
    [InlineData(11.25, "NNE")]
    [InlineData(348.75, "N")]
    public void TheNearestPointIsNamed(double degrees, string point) => Assert.Equal(point, new Azimuth((decimal)degrees).Point);
}
