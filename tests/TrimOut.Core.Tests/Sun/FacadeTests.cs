using TrimOut.Core.Facts;
using TrimOut.Core.Sun;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Sun;

public class FacadeTests
{
    private static readonly SunPosition SouthAt60 = new(60, 60, 180);

    // Straight before a window the angle of incidence is the altitude; along the wall it is 90.
    [Theory]
    [InlineData(40, 180, 180, 40)]
    [InlineData(0, 225, 180, 45)]
    [InlineData(30, 90, 180, 90)]
    [InlineData(30, 0, 180, 150)]
    [InlineData(90, 0, 180, 90)]
    public void TheAngleOfIncidenceOnAWall(double altitude, double azimuth, double facing, double angle) =>
        Assert.Equal(angle, Incidence.Of(new SunPosition(altitude, altitude, azimuth), facing), 9);

    // tan 60 = 1.732: an overhang of 1 throws its shade 1.732 down.
    [Theory]
    [InlineData(1, 0, 1.732, 1)]
    [InlineData(1, 0, 3.464, 0.5)]
    [InlineData(1, 0.5, 3.464, 0.3557)]
    [InlineData(1, 2, 3, 0)]
    public void AnOverhangShadesFromTheHeadDown(double depth, double above, double height, double shaded) =>
        Assert.Equal(shaded, new Overhang(depth, above, height).Shaded(SouthAt60, 180), 0.001);

    // Seen along the wall a sun that stands to the side is higher: tan 45 / cos 60 = 2.
    [Fact]
    public void AnOverhangShadesMoreOfASunFromTheSide() => Assert.Equal(0.5, new Overhang(1, 0, 4).Shaded(new SunPosition(45, 45, 240), 180), 0.001);

    [Fact]
    public void ASunBehindTheWallOrBelowWhatStandsOppositeFallsOnNothing()
    {
        Assert.True(new Facade(180, 59).IsLit(SouthAt60));
        Assert.False(new Facade(180, 60).IsLit(SouthAt60));
        Assert.False(new Facade(0).IsLit(SouthAt60));
        Assert.False(new Facade(180).IsLit(new SunPosition(-0.1, 0, 180)));
    }

    // By Meinel the beam is 1353 x 0.7 = 947 W/m2 from straight above, and 846 at an air mass of 1.5, where the sun stands 41.8 degrees high.
    [Theory]
    [InlineData(90, 947)]
    [InlineData(41.8, 846)]
    [InlineData(0, 0)]
    [InlineData(-5, 0)]
    public void TheBeamOfAClearSky(double altitude, double watts) => Assert.Equal(watts, ClearSky.Beam(new SunPosition(altitude, altitude, 0)), 1.5);

    [Fact]
    public void OnGlassItIsLessByTheAngleAndTheShade()
    {
        var beam = ClearSky.Beam(SouthAt60);
        Assert.Equal(beam * 0.5, ClearSky.OnGlass(SouthAt60, new Facade(180)), 0.001);
        Assert.Equal(beam * 0.25, ClearSky.OnGlass(SouthAt60, new Facade(180, 0, new Overhang(1, 0, 2 * Math.Sqrt(3)))), 0.001);
        Assert.Equal(0, ClearSky.OnGlass(SouthAt60, new Facade(0)));
    }

    [Fact]
    public void AWindowsFacadeIsWhatWasNotedOfIt()
    {
        var job = new TestJob().Window("W01");
        Assert.Null(Facade.Of(job.House.FindTag("W01")!));
        job.Say("W01", WindowFacts.Facing, "SW").Say("W01", WindowFacts.Horizon, "12").Say("W01", WindowFacts.OverhangDepth, "1000 mm");
        Assert.Equal(new Facade(225, 12), Facade.Of(job.House.FindTag("W01")!));
        job.Say("W01", WindowFacts.RoughHeight, "1500 mm").Say("W01", WindowFacts.OverhangAbove, "200 mm");
        Assert.Equal(new Facade(225, 12, new Overhang(1, 0.2, 1.5)), Facade.Of(job.House.FindTag("W01")!));
    }
}
