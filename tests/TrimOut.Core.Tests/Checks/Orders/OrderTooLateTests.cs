using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Orders;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Orders;

/// <summary>A unit that is needed on June 1 and takes 21 days is to be ordered by May 11; the clock of a test job stands on March 2.</summary>
public class OrderTooLateTests
{
    private static readonly OrderTooLate Check = new();

    public static Example Finds => new(() => Begun().Say("W01", UnitFacts.OrderedOn, "2026-05-11"), j => j.Say("W01", UnitFacts.OrderedOn, "2026-05-12"));

    public static Example Passes => new(() => Begun().Say("W01", UnitFacts.OrderedOn, "2026-05-12"), j => j.Say("W01", UnitFacts.OrderedOn, "2026-05-11"));

    [Fact]
    public void WhatIsOrderedAfterTheLastDayIsFound()
    {
        Assert.IsType<Outcome.Fine>(Begun().Say("W01", UnitFacts.OrderedOn, "2026-05-11").Judge(Check, "W01"));
        var found = Begun().Say("W01", UnitFacts.OrderedOn, "2026-05-12").Fault(Check, "W01");
        Assert.Equal("It was ordered on 2026-05-12: to be here on 2026-06-01 it had to be by 2026-05-11.", found.Message);
    }

    [Fact]
    public void PaintAfterTheLastDayLeavesNoTimeToMeasure()
    {
        Assert.IsType<Outcome.Fine>(Begun().SayOf("", HouseFacts.PaintedOn, "2026-05-11").Judge(Check, "W01"));
        Assert.Equal("It must be ordered by 2026-05-11 to be here on 2026-06-01, and before painted, on 2026-05-12, nobody can measure it.",
            Begun().SayOf("", HouseFacts.PaintedOn, "2026-05-12").Fault(Check, "W01").Message);
    }

    [Fact]
    public void SoDoesAVisitToMeasureThatIsPlannedTooLate()
    {
        var job = Begun().SayOf("", HouseFacts.PaintedOn, "2026-05-01");
        job.Do(QuickPeople.Visit(job.House, "2026-05-20 Measure all").Value);
        Assert.Contains("before Measure all, on 2026-05-20", job.Fault(Check, "W01").Message, StringComparison.Ordinal);
    }

    // 91 days before June 1 is March 2, 92 days before it is March 1.
    [Fact]
    public void WhoMeasuresAfterTheLastDayHearsThatItIsNotOrdered()
    {
        Assert.IsType<Outcome.Fine>(Begun("91").Mark("W01", "in-the-way-noted").Judge(Check, "W01"));
        Assert.Equal("It was to be ordered by 2026-03-01 to be here on 2026-06-01; on 2026-03-02 it was worked on, and it is not ordered yet.",
            Begun("92").Mark("W01", "in-the-way-noted").Fault(Check, "W01").Message);
    }

    [Fact]
    public void WithoutALeadNothingIsAskedAndWithoutADayTheHandoverIs()
    {
        Assert.IsType<Outcome.DoesNotApply>(new TestJob().Window("W01").Judge(Check, "W01"));
        new TestJob().Window("W01").SayOf("", HouseFacts.OrderLead, "21").Lacks(Check, "W01", "handover of the house");
    }

    [Fact]
    public void ABoxThatIsHereOrHasADayIsJudgedByOthers()
    {
        static TestJob Late() => Begun().Say("W01", UnitFacts.OrderedOn, "2026-05-12");
        Assert.IsType<Outcome.DoesNotApply>(Late().Say("W01", UnitFacts.BoxLabel, "W01").Judge(Check, "W01"));
        Assert.IsType<Outcome.DoesNotApply>(Late().Say("W01", UnitFacts.ExpectedOn, "2026-06-03").Judge(Check, "W01"));
    }

    private static TestJob Begun(string lead = "21")
    {
        var job = new TestJob().Window("W01").SayOf("", HouseFacts.OrderLead, lead);
        return job.Do(QuickPeople.Visit(job.House, "2026-06-01 Hang").Value);
    }
}
