using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Controls;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Sun;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Controls;

/// <summary>East and west windows of a house in Denver, where the sun leaves an east wall between 11:50 and 13:10 by the clock through the year.</summary>
public class ScheduleOffSunTests
{
    private static readonly ScheduleOffSun Check = new();

    public static Example Finds => new(() => Timed("W01", "0", "6:00 am"), j => j.SayOf("Sun", PresetFacts.RunsAt, "4:00 pm"));

    public static Example Passes => new(() => Timed("W01", "0", "4:00 pm"), j => j.SayOf("Sun", PresetFacts.RunsAt, "6:00 am"));

    [Fact]
    public void AnEastWindowClosedInTheAfternoonIsNoted()
    {
        var found = Timed("W01", "0", "16:00").SayOf("Sun", PresetFacts.RunsFrom, "may").SayOf("Sun", PresetFacts.RunsTo, "july").FaultOf(Check, "R1");
        Assert.Matches("^Sun on R1 closes W01 at 16:00, by day, when the sun has left that glass: at 1[23]:[0-9]{2} at the latest\\.$", found.Message);
        Assert.Equal("Let Sun run before the sun comes to that side, or move W01 to another preset.", found.Mend);
    }

    [Fact]
    public void ItIsFineToTheMinuteAtWhichTheSunLeaves()
    {
        var last = Year(90).Months[5].Closed[^1].To;
        var job = Timed("W01", "0", ClockSpan.Shown(last)).SayOf("Sun", PresetFacts.RunsFrom, "june").SayOf("Sun", PresetFacts.RunsTo, "june");
        Assert.IsType<Outcome.Fine>(job.Of(Check, "R1"));
        job.SayOf("Sun", PresetFacts.RunsAt, ClockSpan.Shown(last + 1));
        Assert.Contains(ClockSpan.Shown(last) + " at the latest", job.FaultOf(Check, "R1").Message, StringComparison.Ordinal);
    }

    [Fact]
    public void WhatClosesForTheNightIsNotJudged() => Assert.IsType<Outcome.Fine>(Timed("W01", "0", "21:00").Of(Check, "R1"));

    // At 17:00 it is night in December: whoever closes all year at 17:00 may well mean the night.
    [Fact]
    public void WhatClosesByNightInWinterIsNotJudgedInSummer() => Assert.IsType<Outcome.Fine>(Timed("W01", "0", "17:00").Of(Check, "R1"));

    [Fact]
    public void AWestWindowClosedAtNoonIsFine() => Assert.IsType<Outcome.Fine>(Timed("W02", "0", "12:00").Of(Check, "R1"));

    [Fact]
    public void AnEastWindowOpenedIntoTheMorningSunIsNoted()
    {
        var found = Timed("W01", "100", "7:00").SayOf("Sun", PresetFacts.RunsFrom, "june").SayOf("Sun", PresetFacts.RunsTo, "june").FaultOf(Check, "R1");
        var glare = Year(90).Months[5].Glare[0];
        Assert.Equal($"Sun on R1 opens W01 at 07:00, while low sun shines in: from {glare.FromShown} to {glare.ToShown} in June.", found.Message);
        Assert.Equal($"Let Sun run at {glare.ToShown} or later, or move W01 to another preset.", found.Mend);
    }

    /// <summary>The time that is advised is late enough in every month, not in the one alone that is worst at the time that was typed.</summary>
    [Fact]
    public void AtTheTimeThatIsAdvisedNoMonthHasLowSun()
    {
        var job = Timed("W01", "100", "6:30");
        var advised = System.Text.RegularExpressions.Regex.Match(job.FaultOf(Check, "R1").Mend, "at ([0-9:]+) or later").Groups[1].Value;
        Assert.IsType<Outcome.Fine>(job.SayOf("Sun", PresetFacts.RunsAt, advised).Of(Check, "R1"));
    }

    [Fact]
    public void OpeningIsFineAQuarterOfAnHourBeforeTheLowSunIsGone()
    {
        var glare = Year(90).Months[5].Glare[0];
        var job = Timed("W01", "100", ClockSpan.Shown(glare.To - ScheduleOffSun.GlareLet)).SayOf("Sun", PresetFacts.RunsFrom, "june")
            .SayOf("Sun", PresetFacts.RunsTo, "june");
        Assert.IsType<Outcome.Fine>(job.Of(Check, "R1"));
        Assert.IsType<Outcome.Found>(job.SayOf("Sun", PresetFacts.RunsAt, ClockSpan.Shown(glare.To - ScheduleOffSun.GlareLet - 1)).Of(Check, "R1"));
    }

    [Fact]
    public void HalfOpenIsOpenAndLessIsClosed()
    {
        Assert.IsType<Outcome.Found>(Timed("W01", "50", "7:00").Of(Check, "R1"));
        Assert.IsType<Outcome.Fine>(Timed("W01", "49", "7:00").Of(Check, "R1"));
    }

    [Fact]
    public void MonthsGoOverTheTurnOfTheYear()
    {
        var job = Timed("W01", "0", "16:00").SayOf("Sun", PresetFacts.RunsFrom, "november").SayOf("Sun", PresetFacts.RunsTo, "february");
        Assert.Equal([Month.November, Month.December, Month.January, Month.February], job.House.Remotes[0].Presets.Single().RunsIn);
    }

    [Fact]
    public void WhatIsMissingIsNotAPass()
    {
        var job = Begun();
        job.SayOf("Sun", PresetFacts.Position, "0", job.Unit("W01").Id).SayOf("Sun", PresetFacts.RunsAt, "16:00");
        Assert.Equal("latitude of the house", job.MissingOf(Check, "R1"));
        job.SayOf("", HouseFacts.Latitude, "39.74").SayOf("", HouseFacts.Longitude, "-104.99");
        Assert.Equal("time zone of the house", job.MissingOf(Check, "R1"));
        job.SayOf("", HouseFacts.TimeZone, "America/Denver");
        Assert.Equal("Facing of W01", job.MissingOf(Check, "R1"));
    }

    [Fact]
    public void APresetThatOnlyAKeyCallsHasNoTimes() => Assert.Empty(Check.Run(Begun().House));

    private static FacadeYear Year(double facing) =>
        FacadeYear.Of(SunYear.Of(new Place(39.74, -104.99), HouseZone.Find("America/Denver")!), new Facade(facing));

    private static TestJob Begun()
    {
        var job = new TestJob().Window("W01").Window("W02").Add(ItemKind.Remote, "R1");
        return job.Do(AddItems.Preset(job.House.Remotes[0], "Sun"));
    }

    private static TestJob Timed(string unit, string position, string at)
    {
        var job = Begun().SayOf("", HouseFacts.Latitude, "39.74").SayOf("", HouseFacts.Longitude, "-104.99").SayOf("", HouseFacts.TimeZone, "America/Denver")
            .Say("W01", WindowFacts.Facing, "E").Say("W02", WindowFacts.Facing, "W");
        return job.SayOf("Sun", PresetFacts.Position, position, job.Unit(unit).Id).SayOf("Sun", PresetFacts.RunsAt, at);
    }
}
