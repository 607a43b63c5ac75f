using TrimOut.Core.Facts;
using TrimOut.Core.Sun;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Sun;

public class FacadeYearTests
{
    private static readonly SunYear Denver = SunYear.Of(new Place(39.7392, -104.9903), HouseZone.Find("America/Denver")!);
    private static readonly SunYear Sydney = SunYear.Of(new Place(-33.87, 151.21), HouseZone.Find("Australia/Sydney")!);
    private static readonly SunYear Tromso = SunYear.Of(new Place(69.65, 18.96), HouseZone.Find("Europe/Oslo")!);

    // On June 15 a sundial is half a minute behind the clock's even time, and Denver lies on the meridian of its zone: noon is at 1 pm of daylight time.
    [Fact]
    public void AnEastFacadeLosesTheSunAtNoonWhenAWestFacadeGetsIt()
    {
        Assert.Equal(13 * 60, FacadeYear.Of(Denver, new Facade(90)).Months[5].Direct[^1].To, 2.0);
        Assert.Equal(13 * 60, FacadeYear.Of(Denver, new Facade(270)).Months[5].Direct[0].From, 2.0);
    }

    // In winter noon is at 12 of standard time: clocks are seen to change between the months. On February 15 a sundial is 14 minutes behind.
    [Fact]
    public void ClocksAreThoseOfTheMonth() => Assert.Equal(12 * 60 + 14, FacadeYear.Of(Denver, new Facade(90)).Months[1].Direct[^1].To, 2.0);

    [Fact]
    public void ANorthFacadeHasTheSunInTheMorningAndInTheEveningOfSummerOnly()
    {
        var north = FacadeYear.Of(Denver, new Facade(0));
        Assert.Equal(2, north.Months[5].Direct.Length);
        Assert.Empty(north.Months[11].Direct);
        Assert.Null(north.Months[11].Straightest);
        Assert.Empty(north.Months[11].Closed);
    }

    // At noon on December 15 the sun stands 90 - 39.74 - 23.3 = 27 degrees high: straight before a south wall that is its angle of incidence.
    [Fact]
    public void ASouthFacadeHasTheLowSunOfWinterMostStraightOn()
    {
        var south = FacadeYear.Of(Denver, new Facade(180));
        Assert.Equal(27, south.Months[11].Straightest!.Value, 0.3);
        Assert.Equal(73.6, south.Months[5].Straightest!.Value, 0.5);
        Assert.True(south.Months[11].GlareMinutes > 5 * 60);
        Assert.Equal(0, south.Months[5].GlareMinutes);
        Assert.True(south.Months[11].HeatMinutes > south.Months[5].HeatMinutes);
    }

    [Fact]
    public void SouthOfTheEquatorTheNorthFacadeHasTheNoonSun()
    {
        var north = FacadeYear.Of(Sydney, new Facade(0)).Months[5];
        Assert.True(Assert.Single(north.Direct) is { From: < 8 * 60, To: > 16 * 60 });
        Assert.Empty(FacadeYear.Of(Sydney, new Facade(180)).Months[5].Direct);
    }

    [Fact]
    public void InPolarDayTheSunIsOnANorthFacadeAcrossMidnight()
    {
        var june = FacadeYear.Of(Tromso, new Facade(0)).Months[5];
        Assert.Equal(new ClockSpan(0, ClockSpan.Day), Assert.Single(june.Up));
        Assert.Equal(0, june.Closed[0].From);
        Assert.Equal(ClockSpan.Day, june.Closed[^1].To);
        Assert.Equal("24:00", june.Closed[^1].ToShown);
    }

    [Fact]
    public void InPolarNightNothingIsClosed()
    {
        var december = FacadeYear.Of(Tromso, new Facade(180)).Months[11];
        Assert.Empty(december.Up);
        Assert.Empty(december.Closed);
        Assert.Equal(SunOnGlass.Night, FacadeYear.Of(Tromso, new Facade(180)).At(12, 720));
    }

    [Fact]
    public void TimesToProgramAreWholeStepsAroundTheSun()
    {
        foreach (var facing in new double[] { 0, 45, 90, 135, 180, 225, 270, 315 })
        {
            foreach (var month in FacadeYear.Of(Denver, new Facade(facing)).Months)
            {
                foreach (var closed in month.Closed)
                {
                    Assert.Equal((0, 0), (closed.From % SunRules.Step, closed.To % SunRules.Step));
                    Assert.True(closed.To - closed.From >= SunRules.ClosesFor);
                    Assert.Contains(month.Direct, d => d.From - SunRules.Step <= closed.From && closed.To <= d.To + SunRules.Step);
                }
            }
        }
    }

    [Fact]
    public void AnOverhangKeepsTheHighSunOfSummerOffAndLetsTheLowSunOfWinterIn()
    {
        var under = FacadeYear.Of(Denver, new Facade(180, 0, new Overhang(1, 0.2, 1.5)));
        var open = FacadeYear.Of(Denver, new Facade(180));
        Assert.True(under.Months[5].DirectMinutes < open.Months[5].DirectMinutes / 3);
        Assert.Equal(open.Months[11].DirectMinutes, under.Months[11].DirectMinutes);
    }

    [Fact]
    public void AHorizonTakesMorningAndEveningAway()
    {
        var behind = FacadeYear.Of(Denver, new Facade(90, 20)).Months[2].Direct[0];
        var open = FacadeYear.Of(Denver, new Facade(90)).Months[2].Direct[0];
        Assert.True(behind.From > open.From + 60);
        Assert.Equal(open.To, behind.To);
    }

    // Direct sun that glances off along the glass, or is gone soon, closes nothing.
    [Fact]
    public void AGlancingSunClosesNothing()
    {
        Assert.False(SunRules.Closes(new SunPosition(75.1, 75.1, 180), new Facade(180)));
        Assert.True(SunRules.Closes(new SunPosition(74.9, 74.9, 180), new Facade(180)));
        Assert.True(SunRules.Glares(new SunPosition(29.9, 29.9, 180), new Facade(180)));
        Assert.False(SunRules.Glares(new SunPosition(30, 30, 180), new Facade(180)));
        Assert.False(SunRules.Glares(new SunPosition(1, 1, 241), new Facade(180)));
    }

    [Fact]
    public void AHouseSaysWhatIsMissingForItsSun()
    {
        var job = new TestJob().Window("W01").Say("W01", WindowFacts.Facing, "E").Window("W02").Say("W02", WindowFacts.Facing, "90").Window("W03");
        Assert.Equal(["latitude", "longitude", "time-zone"], HouseSun.Missing(job.House).Select(f => f.Name));
        Assert.Null(HouseSun.Of(job.House));
        job.SayOf("", HouseFacts.Latitude, "39.74").SayOf("", HouseFacts.Longitude, "-105").SayOf("", HouseFacts.TimeZone, "denver");
        Assert.Empty(HouseSun.Missing(job.House));
        var (facade, windows) = Assert.Single(HouseSun.Facades(job.House));
        Assert.Equal(["W01", "W02"], windows.Select(w => w.Tag));
        var sun = HouseSun.Of(job.House)!;
        Assert.Same(sun.Of(facade), sun.Of(facade));
    }
}
