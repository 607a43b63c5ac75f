using System.Globalization;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Plans.Visits;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Plans.Visits;

public class VisitPlanTests
{
    private static TestJob With(string visit, TestJob? job = null)
    {
        job ??= new TestJob().Window("W01").Window("W02");
        return job.Do(QuickPeople.Visit(job.House, visit).Value);
    }

    private static TestJob House(TestJob job, Fact fact, string typed) => job.Do(SetFact.Typed(job.House, job.House.Job, fact, typed));

    private static IEnumerable<OpenPhase> Before(TestJob job) => VisitPlan.Before(job.House.Visits.Single(), VisitPlan.Open(job.House));

    [Fact]
    public void WhatIsOpenInThePhasesBeforeAVisitMustBeReady()
    {
        var job = With("2026-05-04 Rough-in");
        Assert.Equal([Phase.WalkThrough], Before(job).Select(b => b.Phase));
        Assert.Subset(Before(job).First().Who.ToHashSet(), new HashSet<string> { "W01", "W02" });
    }

    [Fact]
    public void OfAVisitOfNoPhaseOrThatIsDoneNothingIsAsked()
    {
        var job = With("2026-05-04 Coffee");
        Assert.Empty(Before(job));
        job = With("2026-05-04 Hang upstairs");
        job.Do(Deliver.Done(job.House.Visits.Single()));
        Assert.Empty(Before(job));
    }

    /// <summary>June 1 less 21 days is May 11.</summary>
    [Fact]
    public void TheOrderMustGoOutSoManyDaysBeforeTheFirstVisitToHang()
    {
        var job = House(House(With("2026-06-08 Hang downstairs", With("2026-06-01 Hang upstairs")), HouseFacts.OrderLead, "21"),
            HouseFacts.HandoverOn, "2026-05-20");
        Assert.Equal((new DateOnly(2026, 5, 11), new DateOnly(2026, 6, 1)), VisitPlan.Order(job.House) is { } due ? (due.By, due.Needed) : default);
        Assert.Equal(["W01", "W02"], VisitPlan.Order(job.House)!.Units.AsEnumerable());
        job.Say("W01", UnitFacts.OrderedOn, "2026-05-01");
        Assert.Equal(["W02"], VisitPlan.Order(job.House)!.Units.AsEnumerable());
        job.Say("W02", UnitFacts.OrderedOn, "2026-05-01");
        Assert.Null(VisitPlan.Order(job.House));
    }

    [Fact]
    public void WithoutSuchAVisitItIsTheHandoverAndWithoutALeadNothingIsSaid()
    {
        var job = House(new TestJob().Window("W01"), HouseFacts.HandoverOn, "2026-09-01");
        Assert.Null(VisitPlan.Order(job.House));
        House(job, HouseFacts.OrderLead, "31");
        Assert.Equal(new DateOnly(2026, 8, 1), VisitPlan.Order(job.House)!.By);
    }

    [Theory]
    [InlineData("2026-05-04 08:30 Hang upstairs", "Hang upstairs", "08:30", "")]
    [InlineData("2026-05-04 08:30-12:00 Hang upstairs", "Hang upstairs", "08:30", "3.5")]
    [InlineData("2026-05-04 Hang 08:30", "Hang", "08:30", "")]
    public void ATimeBehindTheDayIsTheTimeOfTheVisit(string line, string what, string from, string lasts)
    {
        var visit = With(line).House.Visits.Single();
        Assert.Equal((what, from, lasts), (visit.Show(VisitFacts.What), visit.Show(VisitFacts.From), visit.Show(VisitFacts.Lasts)));
    }

    private static MayBeDone? Asked(TestJob job, string today) =>
        VisitPlan.IsItDone(job.House.Visits.Single(), VisitPlan.Open(job.House), DateOnly.ParseExact(today, "yyyy-MM-dd"));

    [Theory]
    [InlineData("2026-05-03", false)]
    [InlineData("2026-05-04", false)]
    [InlineData("2026-05-05", true)]
    public void AVisitWhoseDayIsPastIsAskedWhetherItIsDone(string today, bool asked) =>
        Assert.Equal(asked ? MayBeDone.DayIsPast : null, Asked(With("2026-05-04 Hang upstairs"), today));

    [Fact]
    public void AVisitIsAskedWhetherItIsDoneOnceEveryStepOfItsPhaseIsMarked()
    {
        var job = With("2026-05-04 Walk-through");
        Assert.Null(Asked(job, "2026-05-01"));
        foreach (var walker in Progress.Walkers(job.House).ToList())
        {
            foreach (var step in StepList.Of(Phase.WalkThrough, walker).ToList())
                job.Do(MarkStep.NotNeeded(Progress.Walkers(job.House).Single(w => w.Id == walker.Id), step, "seen by the builder"));
        }
        Assert.Equal(MayBeDone.StepsAreMarked, Asked(job, "2026-05-01"));
        // Whoever comes after the house was accepted comes for something else, such as the yearly visit.
        House(job, HouseFacts.AcceptedOn, "2026-05-03");
        Assert.Null(Asked(job, "2026-05-01"));
        House(job, HouseFacts.AcceptedOn, "");
        job.Do(Deliver.Done(job.House.Visits.Single()));
        Assert.Null(Asked(job, "2026-06-01"));
    }

    [Fact]
    public void InAHouseWithoutAUnitNothingIsDone() => Assert.Null(Asked(With("2026-05-04 Hang", new TestJob()), "2026-05-01"));

    /// <summary>September 1 less 10 days of fitting is August 22, and less 21 days of the maker August 1.</summary>
    [Fact]
    public void WhatMustBeReadyWhenIsReckonedBackFromTheHandover()
    {
        var job = House(House(House(House(new TestJob().Window("W01"), HouseFacts.HandoverOn, "2026-09-01"), HouseFacts.FittingDays, "10"),
            HouseFacts.OrderLead, "21"), HouseFacts.DrywallOn, "2026-05-01");
        Assert.Equal((new DateOnly(2026, 8, 1), new DateOnly(2026, 8, 22)), VisitPlan.Order(job.House) is { } due ? (due.By, due.Needed) : default);
        var by = VisitPlan.ReadyBy(job.House, VisitPlan.Open(job.House)).ToDictionary(d => d.Open.Phase, d => d.By);
        Assert.Equal(new DateOnly(2026, 5, 1), by[Phase.RoughIn]);
        Assert.Equal(new DateOnly(2026, 8, 1), by[Phase.Measure]);
        Assert.Equal(new DateOnly(2026, 8, 22), by[Phase.Receive]);
        Assert.Equal(new DateOnly(2026, 9, 1), by[Phase.Limits]);
        With("2026-08-25 Pair", job);
        by = VisitPlan.ReadyBy(job.House, VisitPlan.Open(job.House)).ToDictionary(d => d.Open.Phase, d => d.By);
        Assert.Equal((new DateOnly(2026, 8, 25), new DateOnly(2026, 9, 1)), (by[Phase.Power], by[Phase.Pair]));
    }

    [Fact]
    public void WithoutAnyDayNothingIsReckonedBack() =>
        Assert.Empty(VisitPlan.ReadyBy(new TestJob().Window("W01").House, VisitPlan.Open(new TestJob().Window("W01").House)));

    /// <summary>On the day itself is in time. Ordered on May 1, 21 days on is May 22.</summary>
    [Theory]
    [InlineData("2026-05-22", "2026-05-22", false)]
    [InlineData("2026-05-23", "2026-05-22", true)]
    [InlineData(null, "2026-05-22", false)]
    [InlineData(null, "2026-05-21", true)]
    public void ABoxThatComesAfterTheVisitToHangIsTooLate(string? expected, string visit, bool late)
    {
        var job = House(With($"{visit} Hang").Say("W01", UnitFacts.OrderedOn, "2026-05-01"), HouseFacts.OrderLead, "21");
        if (expected is not null)
            job.Say("W01", UnitFacts.ExpectedOn, expected);
        Assert.Equal(late ? ["W01"] : [], VisitPlan.BoxesTooLate(job.House).Select(b => b.Unit.Tag));
        Assert.Empty(VisitPlan.BoxesTooLate(job.Say("W01", UnitFacts.Arrival, "arrived").House));
    }

    /// <summary>What is not here does not come before the day on which that is seen: a day that is past is no promise.</summary>
    [Theory]
    [InlineData("2026-05-10", "2026-05-12", "2026-05-11", null)]
    [InlineData("2026-05-10", "2026-05-12", "2026-05-13", "2026-05-13")]
    [InlineData(null, "2026-05-12", "2026-05-12", null)]
    [InlineData(null, "2026-05-12", "2026-05-13", "2026-05-13")]
    public void ABoxThatIsOverdueOnTheDayOfTheVisitIsTooLateToo(string? expected, string visit, string today, string? comes)
    {
        var job = With($"{visit} Hang").Say("W01", UnitFacts.OrderedOn, "2026-05-01");
        if (expected is not null)
            job.Say("W01", UnitFacts.ExpectedOn, expected);
        Assert.Equal(comes is null ? [] : [DateOnly.Parse(comes, CultureInfo.InvariantCulture)],
            VisitPlan.BoxesTooLate(job.House, DateOnly.Parse(today, CultureInfo.InvariantCulture)).Select(b => b.Comes));
    }

    [Fact]
    public void AVisitSaysWhatItLacks()
    {
        var job = With("Painter");
        Assert.Equal([VisitFacts.On, VisitFacts.Phase, VisitFacts.Expects], VisitPlan.Lacks(job.House.Visits.Single()));
        job.Do(Deliver.Done(job.House.Visits.Single()));
        Assert.Empty(VisitPlan.Lacks(job.House.Visits.Single()));
    }
}
