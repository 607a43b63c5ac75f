using AngleSharp.Dom;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Papers.Tests.CrewPapers;

/// <summary>What the plan says of a visit, and how often.</summary>
public class WorkPlanTests
{
    [Fact]
    public void AVisitStandsOnceInThePlanAndOnceForEachWhoIsExpected() =>
        Assert.Equal(["Day by day", "For each person"], Plan("2026-10-05 08:30-12:00 Hang, upstairs @Ash").QuerySelectorAll("table")
            .Where(t => t.TextContent.Contains("Hang, upstairs", StringComparison.Ordinal)).Select(SectionOf));

    [Fact]
    public void WhatWasNotedOfAVisitThatNobodyIsNamedForIsNotLost() =>
        Assert.Contains("Bring the tall ladder", Plan("2026-10-05 Hang, upstairs").TableUnder("Day by day").Single());

    [Fact]
    public void WhatSpeaksAgainstTheDayOfAVisitIsSaid()
    {
        var job = new TestJob().Window("W01");
        job.Do(QuickPeople.Visit(job.House, "2027-02-18 Power")).Do(j => QuickPeople.Visit(j.House, "2027-02-22 Hang"));
        Assert.Contains("Hang, a phase before it, is planned for 2027-02-22.",
            PaperList.Find("work-plan")!.Page(FinishedHouse.Data(job.Scribe.Log)).Body!.TextContent, StringComparison.Ordinal);
    }

    private static AngleSharp.Html.Dom.IHtmlDocument Plan(string visit)
    {
        var job = new TestJob().Window("W01");
        job.Do(QuickPeople.Visit(job.House, visit, addUnknown: true).Value);
        job.Do(SetFact.Typed(job.House, job.House.Visits.Single().Item, VisitFacts.Note, "Bring the tall ladder"));
        return PaperList.Find("work-plan")!.Page(FinishedHouse.Data(job.Scribe.Log));
    }

    private static string SectionOf(IElement at)
    {
        while (at.TagName != "H2")
            at = at.PreviousElementSibling!;
        return at.TextContent;
    }
}
