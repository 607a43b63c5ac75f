using System.Collections.Immutable;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Phases;
using TrimOut.Core.Plans.Hours;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Plans.Hours;

public class PhaseHoursTests
{
    private static readonly string[] Hung =
        ["brackets-fixed", "centre-support-clear", "lead-in-front", "clicked-in", "cords-safe", "moves-free"];

    [Fact]
    public void WhereNothingIsKnownNothingIsSaid()
    {
        var hours = Of(new TestJob().Window("W01"), Phase.Hang);
        Assert.Equal((null, HoursFrom.Nothing, null, false), (hours.Counted, hours.From, hours.PerUnit, hours.IsOver));
    }

    // Six marks a minute from each other are five minutes a unit, and between the two units there is one more: eleven minutes.
    [Fact]
    public void TypedHoursGoBeforeThoseOfVisitsAndTheseBeforeMarks()
    {
        var job = Hang("W02", Hang("W01", new TestJob().Window("W01").Window("W02")));
        Assert.Equal((11m / 60, HoursFrom.Marks), (Of(job, Phase.Hang).Counted, Of(job, Phase.Hang).From));
        foreach (var (day, worked) in new[] { ("2026-05-04", "6.5"), ("2026-05-05", "3") })
        {
            job.Do(QuickPeople.Visit(job.House, $"{day} Hang").Value);
            job.Do(SetFact.Typed(job.House, job.House.Visits.Last().Item, VisitFacts.Worked, worked));
        }
        Assert.Equal((9.5m, HoursFrom.Visits), (Of(job, Phase.Hang).Counted, Of(job, Phase.Hang).From));
        job.SayOf("", HouseFacts.HoursHang, "12");
        var hang = Of(job, Phase.Hang);
        Assert.Equal((12m, HoursFrom.Typed, 9.5m, 11m / 60), (hang.Counted, hang.From, hang.OfVisits, hang.Marked));
        Assert.Equal((true, 6m), (hang.IsOver, hang.PerUnit));
    }

    [Fact]
    public void AUnitThatIsNotThroughCountsForNothingYet()
    {
        var job = Hang("W01", new TestJob().Window("W01").Window("W02")).SayOf("", HouseFacts.HoursHang, "3");
        var hang = Of(job, Phase.Hang);
        Assert.Equal((1, 2, false, 3m), (hang.Through, hang.Units, hang.IsOver, hang.PerUnit));
    }

    /// <summary>What was hung and is hung once more took its hours all the same, and the house still says what the next one takes.</summary>
    [Fact]
    public void AUnitThatIsReplacedLaterWasThrough()
    {
        var job = Hang("W02", Hang("W01", new TestJob().Window("W01").Window("W02"))).SayOf("", HouseFacts.HoursHang, "12");
        job.Do(j => RecordService.Of(j.House, j.Unit("W01").Item, new ServiceSaid(ServiceKind.Replaced, new DateOnly(2027, 3, 2))));
        var hang = Of(job, Phase.Hang);
        Assert.Equal((2, 2, true, 6m), (hang.Through, hang.Units, hang.IsOver, hang.PerUnit));
    }

    /// <summary>A unit on a battery has no cable to pull.</summary>
    [Fact]
    public void AUnitThatDoesNotGoThroughAPhaseIsNotCountedThere()
    {
        var job = new TestJob().Window("W01").Window("W02").Say("W02", UnitFacts.Power, "battery");
        Assert.Equal((1, 2), (Of(job, Phase.RoughIn).Units, Of(job, Phase.Hang).Units));
    }

    // Of 2, 3 and 10 hours a unit the middle is 3; of 2 and 3 it is 2.5.
    [Theory]
    [InlineData(new[] { 10.0, 2.0, 3.0 }, 3.0, 2.0, 10.0)]
    [InlineData(new[] { 2.0, 3.0 }, 2.5, 2.0, 3.0)]
    [InlineData(new[] { 4.0 }, 4.0, 4.0, 4.0)]
    public void TheRateIsTheMiddleOfTheHouses(double[] perUnit, double median, double least, double most)
    {
        var rate = Assert.Single(HourRate.Of(perUnit.Select(h => House(typed: (decimal)h * 10, through: 10, units: 10))));
        Assert.Equal(((decimal)median, (decimal)least, (decimal)most, perUnit.Length, 0), (rate.Median, rate.Least, rate.Most, rate.Houses, rate.ByMarks));
    }

    [Fact]
    public void AHouseThatIsNotThroughOrHasNoHoursIsNoMeasure() =>
        Assert.Empty(HourRate.Of([House(typed: 20, through: 9, units: 10), House(typed: null, through: 10, units: 10), House(20, 0, 0)]));

    /// <summary>2 hours a unit were typed in one house; in another one marks show 1.2 at the least, which makes no 1.6 of the two.</summary>
    [Fact]
    public void WhatOnlyMarksSayIsCountedAndNotMixedWithWhatWasTyped() =>
        Assert.Equal((2m, 2m, 1, 1, false), HourRate.Of([House(typed: 20, through: 10, units: 10), Marked(12)]) is [var rate]
            ? (rate.Median, rate.Least, rate.Houses, rate.ByMarks, rate.IsAtLeast) : default);

    [Fact]
    public void WhereMarksAreAllThatThereIsItIsAtLeastSoMuch() =>
        Assert.Equal((1.5m, 2, 2, true), HourRate.Of([Marked(12), Marked(18)]) is [var rate]
            ? (rate.Median, rate.Houses, rate.ByMarks, rate.IsAtLeast) : default);

    private static ImmutableArray<PhaseHours> Marked(decimal hours) => House(typed: null, through: 10, units: 10, marked: hours);

    // 1 to 3 hours a unit, 2 in the middle: for 14 units 14 to 42 hours, 28 in the middle.
    [Fact]
    public void AnEstimateIsTheRateForEachUnit()
    {
        var rates = HourRate.Of([House(10, 10, 10), House(30, 10, 10)]);
        var likely = Assert.Single(HourEstimate.Of(House(null, 0, 14), rates));
        Assert.Equal((28m, 14m, 42m, 14), (likely.Hours, likely.Least, likely.Most, likely.Units));
        Assert.Empty(HourEstimate.Of(House(null, 0, 0), rates));
    }

    private static ImmutableArray<PhaseHours> House(decimal? typed, int through, int units, decimal marked = 0) =>
        [new PhaseHours(Phase.Hang, typed, null, marked, through, units)];

    private static PhaseHours Of(TestJob job, Phase phase) => PhaseHours.Of(job.Scribe.Log).Single(p => p.Phase == phase);

    private static TestJob Hang(string tag, TestJob job) => Hung.Aggregate(job, (j, step) => j.Mark(tag, step));

    [Fact]
    public void HoursOfSomeVisitsAreAtLeastAndNoRateAndThoseOfAVisitThatWasCalledOffAreNone()
    {
        var job = Hang("W01", new TestJob().Window("W01"));
        foreach (var day in new[] { "2026-05-04", "2026-05-05" })
            job.Do(QuickPeople.Visit(job.House, $"{day} Hang").Value);
        job.Do(SetFact.Typed(job.House, job.House.Visits.First().Item, VisitFacts.Worked, "4"));
        var hang = Of(job, Phase.Hang);
        Assert.Equal((4m, true, true, 1), (hang.Counted, hang.IsAtLeast, hang.IsOver, hang.VisitsWithout));
        Assert.DoesNotContain(HourRate.Of([PhaseHours.Of(job.Scribe.Log)]), r => r.Phase == Phase.Hang);
        job.Do(SetFact.Typed(job.House, job.House.Visits.Last().Item, VisitFacts.State, "called-off"));
        Assert.Equal((false, 1), (Of(job, Phase.Hang).IsAtLeast, HourRate.Of([PhaseHours.Of(job.Scribe.Log)]).Count(r => r.Phase == Phase.Hang)));
        job.Do(SetFact.Typed(job.House, job.House.Visits.First().Item, VisitFacts.State, "called-off"));
        Assert.Null(Of(job, Phase.Hang).OfVisits);
    }
}
