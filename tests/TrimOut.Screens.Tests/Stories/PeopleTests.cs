using Microsoft.Extensions.Time.Testing;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Screens.Sheets;
using TrimOut.Testing;

namespace TrimOut.Screens.Tests.Stories;

/// <summary>Contacts, visits and boxes that are awaited, all by keyboard, on a small terminal and on a large one.</summary>
public class PeopleTests
{
    public static TheoryData<int, int> Sizes => new() { { 80, 24 }, { 140, 40 } };

    private static readonly DateTimeOffset Now = new(2026, 9, 8, 9, 0, 0, TimeSpan.Zero);

    private static TerminalUser At(TestJob job, int width, int height) => new(new TestDesk(new FakeTimeProvider(Now)), job.Scribe, width, height);

    [Theory]
    [MemberData(nameof(Sizes))]
    public void SomebodyIsNotedWithANumberAndCalledAfterHandover(int width, int height)
    {
        using var user = At(new TestJob().Window("W01"), width, height);
        user.Press("P").Sees("Nobody is noted yet.").Press("n").Write("Ash Example, crew, 55").Sees("is no telephone number").Press("enter");
        user.Write("Ash Example, crew, 555 0101").Sees("Ash Example, crew, 555 0101").Press("enter").Sees("crew: Ash Example").Sees("Telephone: 555 0101");
        user.Press("enter").Sees("Call after handover").Press("down", "down", "down", "enter").Type("yes").Press("esc");
        user.Sees("Called after handover.");
        Assert.True(user.House.Contacts.Single().AfterHandover);
        user.Press("X").Sees("Remove Ash Example?").Press("X");
        Assert.Empty(user.House.Contacts);
        user.Press("u", "u");
        Assert.Single(user.House.Contacts);
    }

    [Theory]
    [MemberData(nameof(Sizes))]
    public void AVisitIsPlannedWithWhoIsExpectedAndMarkedDone(int width, int height)
    {
        using var user = At(new TestJob().Window("W01"), width, height);
        user.Press("P", "n").Type("Ash Example, crew, 555 0101").Press("n").Type("Bo Example, electrician, 555 0102");
        user.Press("N").Type("2026-09-07 Hang upstairs @Ash").Sees("IS IT DONE? Hang upstairs").Sees("555 0101").Sees("Was planned for 2026-09-07");
        user.Press("enter").Sees("Expected: Bo Example");
        var sheet = (SheetScreen)user.Shell.Screen;
        var bo = user.House.Contacts.Single(c => c.Name == "Bo Example");
        user.Press([.. Enumerable.Repeat("down", sheet.Rows.ToList().FindIndex(r => r.Key == bo.Id))]).Press("enter").Type("yes");
        user.Sees("Hang upstairs: Expected (Bo Example): yes").Press("esc");
        Assert.Equal(["Ash Example", "Bo Example"], user.House.Visits.Single().Expected.Select(c => c.Name));
        user.Press("space").Sees("done: Hang upstairs").Press("space").Press("-").Sees("called off: Hang upstairs");
        Assert.Equal(VisitState.CalledOff, user.House.Visits.Single().State);
    }

    /// <summary>Two contacts, ten visits and eleven phases are more than a small terminal has lines.</summary>
    [Fact]
    public void WhatIsToBeReadyLeavesTheVisitsInSightAndIsCounted()
    {
        var job = new TestJob().Window("W01").SayOf("", HouseFacts.HandoverOn, "2026-12-01");
        foreach (var who in new[] { "Ash Example", "Bo Example" })
            job.Do(QuickPeople.Contact(job.House, who));
        foreach (var day in Enumerable.Range(10, 10))
            job.Do(QuickPeople.Visit(job.House, $"2026-09-{day} Look at number {day} @Ash"));
        using var user = At(job, 80, 24);
        user.Press("P").Sees("number 10").Sees("number 19").Sees("To be ready by: 11 phases").Sees("more below");
        user.Press("end").Sees("number 10").Sees("number 19").Sees("Handover: ");
        user.Press("home").Sees("number 10").Sees("Ash Example");
    }

    [Theory]
    [MemberData(nameof(Sizes))]
    public void WhoIsExpectedAtTwoVisitsAtTheSameTimeIsSaid(int width, int height)
    {
        using var user = At(new TestJob().Window("W01"), width, height);
        user.Press("P", "n").Type("Ash Example, crew, 555 0101").Press("N").Type("2026-09-10 08:00-12:00 Hang @Ash").DoesNotSee("AT ONE TIME");
        user.Press("N").Type("2026-09-10 11:00 Delivery @Ash").Sees("AT ONE TIME: Hang").Sees("AT ONE TIME: Delivery").Sees("At the same time");
    }

    [Theory]
    [MemberData(nameof(Sizes))]
    public void ABoxThatIsOverdueIsSeenNotedAsNotArrivedAndReordered(int width, int height)
    {
        using var user = At(new TestJob().Window("W01").Say("W01", UnitFacts.ExpectedOn, "2026-09-07"), width, height);
        user.Press("P").Sees("expected on 2026-09-07, not here").Press("-").Sees("REORDER: did not arrive");
        user.Press("enter").Sees("Reordered on");
        Assert.Equal(UnitFacts.ReorderedOn, ((SheetScreen)user.Shell.Screen).Current!.Fact);
        user.Press("enter").Type("2026-09-08").Press("esc").Sees("reordered on 2026-09-08");
        user.Press("space").DoesNotSee("Boxes not here");
        Assert.True(user.House.Units[0].BoxIsHere);
    }
}
