using Microsoft.Extensions.Time.Testing;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Testing;

namespace TrimOut.Screens.Tests.Stories;

/// <summary>A visit is planned with its time, shows what must be ready before it, and goes into a calendar; and the order that must go out is said.</summary>
public class VisitTests
{
    private static readonly FakeTimeProvider Clock = new(new DateTimeOffset(2026, 3, 5, 8, 0, 0, TimeSpan.Zero));

    [Fact]
    public void AVisitHasItsTimeAndShowsWhatMustBeReadyBeforeIt()
    {
        using var user = new TerminalUser(new TestDesk(Clock), new TestJob().Window("W01").Window("W02").Scribe);
        user.Press("P", "N").Type("2026-05-04 08:30-12:00 Rough-in upstairs @Ash").Sees("2026-05-04 08:30 for 3.5 h").Sees("Rough-in upstairs").Sees("Ash")
            .Sees("Before it, Walk-through: W01,");
    }

    [Fact]
    public void TheVisitsGoIntoACalendarOnceOneHasADay()
    {
        var desk = new TestDesk(Clock);
        using var user = new TerminalUser(desk, new TestJob().Window("W01").Scribe);
        user.Press("P", "N").Type("Hang upstairs").Press("w").Sees("No visit has a day yet.");
        Assert.Empty(desk.Written);
        user.Press("N").Type("2026-05-04 Hang downstairs").Press("w").Sees("-visits.ics");
        Assert.Equal(["calendar of 2"], desk.Written);
    }

    /// <summary>March 20 less 10 days is March 10, in five days; less 20 days it is February 28, five days ago.</summary>
    [Theory]
    [InlineData("10", "To be ordered by 2026-03-10")]
    [InlineData("20", "TOO LATE to order by 2026-02-28")]
    public void ByWhenTheOrderMustGoOutIsSaid(string days, string said)
    {
        var job = new TestJob().Window("W01");
        job.Do(QuickPeople.Visit(job.House, "2026-03-20 Hang").Value).Do(SetFact.Typed(job.House, job.House.Job, HouseFacts.OrderLead, days));
        using var user = new TerminalUser(new TestDesk(Clock), job.Scribe);
        user.Press("P").Sees(said).Sees("to be here on 2026-03-20: W01");
    }

    /// <summary>What comes after the visit that it is hung on is said at the box, at the visit and above both; so is a visit of no phase.</summary>
    [Fact]
    public void WhatCannotComeInTimeAndAVisitOfNoPhaseAreSeen()
    {
        var job = new TestJob().Window("W01").Say("W01", UnitFacts.OrderedOn, "2026-03-01").Say("W01", UnitFacts.ExpectedOn, "2026-03-25");
        job.Do(QuickPeople.Visit(job.House, "2026-03-20 Hang").Value).Do(j => QuickPeople.Visit(j.House, "2026-03-21 Painter").Value);
        using var user = new TerminalUser(new TestDesk(Clock), job.Scribe);
        user.Press("P").Sees("NOT HERE IN TIME, on 2026-03-20: W01").Sees("TOO LATE: expected on 2026-03-25").Sees("Painter, no phase");
        user.Sees("Not here by then: W01").Press("down").Sees("It has no phase").Press("down").Sees("needed on 2026-03-20");
        user.Press("down").Sees("by 2026-03-20").Press("space").Sees("That is worked out.");
    }

    [Fact]
    public void AVisitThatIsStillToComeIsNotTakenAsDone()
    {
        var job = new TestJob().Window("W01");
        job.Do(QuickPeople.Visit(job.House, "2026-03-20 Hang").Value);
        using var user = new TerminalUser(new TestDesk(Clock), job.Scribe);
        user.Press("P", "space").Sees("still to come");
        Assert.Equal(VisitState.Planned, user.House.Visits.Single().State);
    }

    [Fact]
    public void FromAWalkTheKeysOfPeopleAndOfServiceDoWhatTheyDoOnTheJobSheet()
    {
        using var user = new TerminalUser(new TestDesk(Clock), new TestJob().Window("W01").Scribe);
        user.Press("2", "P").Sees("People and dates").Press("esc").Sees("Walk: Walk-through").Press("H").Sees("In service");
    }
}
