using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Phases;
using TrimOut.Core.Plans.Deliveries;
using TrimOut.Core.Plans.Firm;
using TrimOut.Core.Tests.Decisions;
using TrimOut.Core.Tests.Plans.InService;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Plans.Firm;

/// <summary>What is shown of a house among many is what the house itself says on that day, though it was worked out on no day.</summary>
public class HouseSummaryTests
{
    private static HouseSummary Of(TestJob job) => HouseSummary.Of(job.Scribe.Log, job.Report);

    /// <summary>March 20 less 10 days is March 10.</summary>
    [Theory]
    [InlineData("2026-03-03", "")]
    [InlineData("2026-03-04", "Order 2026-03-10")]
    [InlineData("2026-03-11", "Order 2026-03-10")]
    [InlineData("2026-03-14", "Order 2026-03-10, Visit 2026-03-20")]
    public void WhatIsDueInAWeekIsSevenDaysWithToday(string today, string due)
    {
        var job = new TestJob().Window("W01");
        job.Do(QuickPeople.Visit(job.House, "2026-03-20 Hang").Value).Do(SetFact.Typed(job.House, job.House.Job, HouseFacts.OrderLead, "10"));
        Assert.Equal(due, string.Join(", ", Of(job).Due(DateOnly.Parse(today, null), 7).Where(d => d.Kind is DueKind.Visit or DueKind.Order)
            .Select(d => $"{d.Kind} {d.On:yyyy-MM-dd}")));
    }

    [Theory]
    [InlineData("2028-07-01", 0)]
    [InlineData("2028-07-02", 1)]
    [InlineData("2028-09-30", 1)]
    [InlineData("2028-10-01", 0)]
    public void TheEndOfAWarrantyIsListedFromNinetyDaysBefore(string today, int listed)
    {
        var job = ServedHouse.Of().SayOf("Test house", HouseFacts.WarrantyTerm, "two years").SayOf("Test house", HouseFacts.WarrantyFrom, "2026-10-01");
        Assert.Equal(listed, Of(job).WarrantiesEnding(DateOnly.Parse(today, null)).Count(d => d.Kind == DueKind.CrewWarranty));
    }

    [Theory]
    [InlineData("2026-05-03")]
    [InlineData("2026-05-04")]
    public void WhoWaitsForThePaintIsAsTheHouseSaysOnThatDay(string day)
    {
        var job = new TestJob().Window("W01").Window("W02").SayOf("Test house", HouseFacts.PaintedOn, "2026-05-04");
        foreach (var step in StepList.All.Where(s => s.Phase < Phase.CloseIn && StepList.Of(s.Phase, job.Unit("W01")).Contains(s)))
            job.Do(MarkStep.NotNeeded(job.Unit("W01"), step, "test"));
        var today = DateOnly.Parse(day, null);
        var head = HouseHead.Of(job.House, StepList.Shipped, today);
        Assert.Equal(today.Day < 4, head.Waiting.Any(w => w.For == WaitsFor.Paint));
        Assert.Equal(head.Waiting.Select(w => (w.For, w.Units)), Of(job).HeadOn(today).Waiting.Select(w => (w.For, w.Units)));
    }

    [Fact]
    public void ABoxThatWasExpectedYesterdayDidNotArriveAndOneOfTodayIsStillExpected()
    {
        var job = new TestJob().Window("W01").Window("W02").Say("W01", UnitFacts.OrderedOn, "2026-03-01").Say("W02", UnitFacts.OrderedOn, "2026-03-01")
            .Say("W01", UnitFacts.ExpectedOn, "2026-03-30").Say("W02", UnitFacts.ExpectedOn, "2026-03-31");
        Assert.Equal(["W01"], Of(job).NotArrived(new DateOnly(2026, 3, 31)).Select(b => b.Tag));
        Assert.Equal(2, Of(job).Boxes.Length);
    }

    [Theory]
    [InlineData("ridge-house")]
    [InlineData("canal-house")]
    [InlineData("orchard-cottage")]
    public void TheFiguresOfASampleAreThoseOfItsJobSheet(string name)
    {
        var log = SampleHouse.Open(name, TimeProvider.System).Log;
        var house = log.House;
        var report = Core.Checks.CheckReport.Of(house);
        var summary = HouseSummary.Of(log, report);
        Assert.Equal(report.OpenStops.Count(), summary.Stops);
        Assert.Equal(house.Units.Length, summary.Units);
        Assert.Equal(PhaseNames.All.Select(p => Progress.Of(house, p)), summary.Phases.Select(p => p.Sum()));
    }

    private static string Due(TestJob job, string today) => string.Join("; ", Of(job).Due(DateOnly.Parse(today, null), 7)
        .Where(d => d.Kind is not DueKind.Visit).Select(d => $"{d.On:yyyy-MM-dd} {d.InWords}".Trim()));

    [Fact]
    public void WhatIsToBeOrderedAgainIsDueAtOnce()
    {
        var job = new TestJob().Window("W01").Say("W01", UnitFacts.OrderedOn, "2026-03-01").Say("W01", UnitFacts.Arrival, "not arrived");
        Assert.Equal("order again W01: did not arrive, or came wrong", Due(job, "2026-03-31"));
        Assert.Equal("", Due(job.Say("W01", UnitFacts.ReorderedOn, "2026-03-02"), "2026-03-31"));
    }

    [Fact]
    public void UnitsWhoseOrderTakesNobodyKnowsHowLongAreDueWhateverTheDay()
    {
        var job = new TestJob().Window("W01").SayOf("Test house", HouseFacts.HandoverOn, "2026-09-01");
        Assert.StartsWith("2026-09-01 W01 not ordered, to be here by then; how long it takes is not known", Due(job, "2026-03-02"));
        job.SayOf("Test house", HouseFacts.OrderLead, "10");
        Assert.DoesNotContain("not ordered", Due(job, "2026-03-02"));
    }

    [Fact]
    public void WithoutALeadTheDayOfPartsIsThatToHaveThemBy()
    {
        var job = Jobs.Roughed().SayOf("Test house", HouseFacts.DrywallOn, "2026-04-20");
        Assert.Contains(Of(job).Days, d => d.Kind == DueKind.PartsHere && d.On == new DateOnly(2026, 4, 20));
        job.SayOf("Test house", HouseFacts.PartsLead, "10");
        Assert.Contains(Of(job).Days, d => d.Kind == DueKind.CallOff && d.On == new DateOnly(2026, 4, 10));
        Assert.DoesNotContain(Of(job).Days, d => d.Kind == DueKind.PartsHere && d.On == new DateOnly(2026, 4, 20));
    }

    /// <summary>W02 came damaged and was ordered again; what came then is whole, as far as anybody wrote.</summary>
    [Fact]
    public void ABoxThatAnotherOneCameForIsNotAwaitedAnyMore()
    {
        var job = new TestJob().Window("W01").Window("W02").Say("W02", UnitFacts.BoxLabel, "W02").Say("W02", UnitFacts.Damage, "bar bent");
        Assert.Equal(["W02"], Of(job).NotArrived(Today).Select(b => b.Tag));
        job.Do(Deliver.Reordered(job.Unit("W02"), Today));
        Assert.Equal((false, false), (Of(job).Boxes.Single().Here, Of(job).Boxes.Single().Reorder));
        job.Do(j => Deliver.Came(j.Unit("W02")));
        Assert.Empty(Of(job).Boxes);
        Assert.Empty(AwaitedBox.Of(job.House, job.Report, Today));
        job.Say("W02", UnitFacts.Damage, "bar bent again");
        Assert.Equal(["W02"], Of(job).NotArrived(Today).Select(b => b.Tag));
        Assert.True(Assert.Single(AwaitedBox.Of(job.House, job.Report, Today)).Reorder);
    }

    [Fact]
    public void TheBoxOfAnotherUnitIsAmongThoseThatDidNotArrive()
    {
        var job = new TestJob().Window("W01").Window("W02").Say("W02", UnitFacts.BoxLabel, "W01");
        Assert.Equal(["W02"], Of(job).NotArrived(Today).Select(b => b.Tag));
    }

    [Theory]
    [InlineData("2026-04-10", true)]
    [InlineData("2026-04-11", true)]
    [InlineData("2026-04-12", false)]
    public void ABoxThatComesAfterItsVisitIsDueWhateverTheDay(string visit, bool late)
    {
        var job = new TestJob().Window("W01").Say("W01", UnitFacts.ExpectedOn, "2026-04-12");
        job.Do(QuickPeople.Visit(job.House, visit + " Hang").Value);
        Assert.Equal(late ? $"{visit} box of W01 comes after Hang: 2026-04-12" : "", string.Join("; ", Due(job, "2026-03-02").Split("; ")
            .Where(d => d.Contains("comes after", StringComparison.Ordinal))));
        Assert.Equal((late, false), (Of(job).Boxes.Single().TooLate is not null, Of(job).Boxes.Single().Ordered));
    }

    /// <summary>Drywall closes what is not through rough-in; past it only what was not ready is late.</summary>
    [Fact]
    public void DrywallAndTheHandoverAreDueWithWhatIsNotReadyBeforeThem()
    {
        var job = new TestJob().Window("W01").SayOf("Test house", HouseFacts.DrywallOn, "2026-03-04").SayOf("Test house", HouseFacts.HandoverOn, "2026-03-05");
        Assert.DoesNotContain("drywall", Due(job, "2026-02-25"));
        Assert.StartsWith("2026-03-04 drywall starts, not ready before it: ", Due(job, "2026-02-26"));
        Assert.Matches("2026-03-05 handover, not ready before it: .*W01", Due(job, "2026-02-27"));
        foreach (var step in StepList.All.Where(s => s.Phase <= Phase.RoughIn))
        {
            foreach (var who in Progress.Walkers(job.House).Where(w => StepList.Of(step.Phase, w).Contains(step)).ToList())
                job.Do(MarkStep.NotNeeded(who, step, "test"));
        }
        Assert.StartsWith("2026-03-04 drywall starts; ", Due(job, "2026-03-04"));
        Assert.DoesNotContain("drywall", Due(job, "2026-03-05"));
        job.SayOf("Test house", HouseFacts.AcceptedOn, "2026-03-05");
        Assert.DoesNotContain("handover", Due(job, "2026-03-05"));
    }

    private static readonly DateOnly Today = new(2026, 3, 31);
}
