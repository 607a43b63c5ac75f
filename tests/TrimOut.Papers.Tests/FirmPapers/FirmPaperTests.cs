using TrimOut.Core.Checks;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Plans.Firm;
using TrimOut.Papers.FirmPapers;
using TrimOut.Testing;

namespace TrimOut.Papers.Tests.FirmPapers;

/// <summary>Papers over houses: who is where in a week, and what two houses take together.</summary>
public partial class FirmPaperTests
{
    private static readonly DateOnly Monday = new(2026, 5, 4);

    internal static FirmData Data(params TestJob[] jobs) => new(Monday, [.. jobs.Select(j => HouseSummary.Of(j.Scribe.Log, CheckReport.Of(j.House)))],
        [.. jobs.Select(j => j.Scribe.Log)], ["bad"]);

    /// <summary>A house with two runs of so many feet by 16/2, of which a new box has so many.</summary>
    internal static TestJob Job(string name, string feet, params string[] visits)
    {
        var job = new TestJob().Window("W01");
        job.Do(SetFact.Typed(job.House, job.House.Job, HouseFacts.Name, name)).Say("W01", RunFacts.Cable, "16/2").Say("W01", RunFacts.TailAtWindow, "0")
            .Say("W01", RunFacts.TailAtPanel, "0").Legs("W01", ($"{feet} ft", CablePlace.InWall))
            .Do(SetFact.Typed(job.House, job.House.Job, HouseFacts.CableAllowance, "0"))
            .Do(j => SetFact.Typed(j.House, j.Run("W01").Cable!.Item, CableTypeFacts.BoxLength, "100 ft"));
        foreach (var who in visits.SelectMany(v => v.Split('@').Skip(1)).Select(w => w.Trim()).Distinct())
            job.Do(QuickPeople.Contact(job.House, who).Value);
        foreach (var visit in visits)
            job.Do(QuickPeople.Visit(job.House, visit).Value);
        return job;
    }

    [Fact]
    public void AWeekHasEachPersonsHousesByDayAndEndsWithTheSeventhDay()
    {
        var text = FirmPaper.All[0].Write(Data(Job("Elm Street 12", "40", "2026-05-05 08:30-12:00 Hang @Ash", "2026-05-11 Handover @Ash"),
            Job("Oak Lane 3", "40", "2026-05-04 Rough-in @Ash @Birch", "2026-05-10 Delivery")), null).Value.Markdown;
        var ash = text[text.IndexOf("### Ash", StringComparison.Ordinal)..text.IndexOf("### Birch", StringComparison.Ordinal)];
        Assert.Matches(@"(?s)2026-05-04 .*Oak Lane 3 .*Birch.*2026-05-05 .*08:30 .*3\.5 .*Elm Street 12", ash);
        Assert.DoesNotContain("2026-05-11", text);
        Assert.Matches(@"(?s)### Nobody is named yet.*2026-05-10 .*Oak Lane 3 .*Delivery", text);
        Assert.Contains("could not be opened: bad", text);
    }

    /// <summary>12:00 ends when 12:00 begins; 11:30 is within 08:30 to 12:00. A visit of no hour, or on another day, stands against none.</summary>
    [Theory]
    [InlineData("2026-05-05 11:30 Rough-in", "**At the same time:** Oak Lane 3 11:30")]
    [InlineData("2026-05-05 08:30 Rough-in", "**At the same time:** Oak Lane 3 08:30")]
    [InlineData("2026-05-05 12:00 Rough-in", "Oak Lane 3 12:00")]
    [InlineData("2026-05-05 Rough-in", "Oak Lane 3")]
    [InlineData("2026-05-06 11:30 Rough-in", "–")]
    public void WhoIsInTwoHousesOnOneDayIsSaidAtTheRow(string other, string also)
    {
        var text = FirmPaper.All[0].Write(Data(Job("Elm Street 12", "40", "2026-05-05 08:30-12:00 Hang @Ash"), Job("Oak Lane 3", "40", other + " @ASH")), null)
            .Value.Markdown;
        Assert.Equal(also, Visits(text).Single(v => v[4] == "Elm Street 12")[6]);
    }

    [Fact]
    public void TwoVisitsOfOneHouseAtTheSameTimeAreSaidAtTheRow()
    {
        var job = Job("Elm Street 12", "40", "2026-05-05 08:30-12:00 Hang @Ash", "2026-05-05 11:30 Delivery @Ash", "2026-05-05 13:00 Pair @Ash");
        Assert.Equal(["**At the same time:** Elm Street 12 11:30", "**At the same time:** Elm Street 12 08:30", "–"],
            Visits(FirmPaper.All[0].Write(Data(job), null).Value.Markdown).Select(v => v[6]));
    }

    /// <summary>The cells of the rows of visits; what is due has fewer.</summary>
    private static IEnumerable<string[]> Visits(string text) => text.Split('\n').Where(l => Row().IsMatch(l))
        .Select(l => l.Split('|', StringSplitOptions.TrimEntries)).Where(c => c.Length > 9);

    /// <summary>Two runs of 50 ft fill one box of 100 ft; each house by itself would buy a box.</summary>
    [Fact]
    public void TwoHousesThatNeedHalfABoxEachBuyOneTogether()
    {
        var houses = Data(Job("Elm Street 12", "50"), Job("Oak Lane 3", "50"));
        var plan = Assert.Single(FirmCuts.Of(houses.Houses), c => c.Plan is not null);
        Assert.Equal((1, true), (plan.Plan!.Value.Value.ToBuy.Found, plan.Plan!.Value.Value.ToBuy.Proven));
        Assert.All(houses.Houses, h => Assert.Equal(1, Assert.Single(FirmCuts.Of([h]), c => c.Plan is not null).Plan!.Value.Value.ToBuy.Found));
        var text = FirmPaper.All[1].Write(houses, null).Value.Markdown;
        Assert.Contains("(1 to buy): no plan needs fewer.", text);
        Assert.Matches(@"(?s)new 1.*Elm Street 12.*Oak Lane 3", text);
    }

    [Theory]
    [InlineData("de", "Wochenplan", "Abruf für mehrere Häuser")]
    [InlineData("es", "Plan de la semana", "Pedido para varias casas")]
    public void BothAreWrittenInGermanAndSpanish(string language, string week, string callOff)
    {
        var data = Data(Job("Elm Street 12", "50"));
        Assert.StartsWith($"# {week}: ", FirmPaper.All[0].Write(data, language).Value.Markdown);
        Assert.StartsWith($"# {callOff}: ", FirmPaper.All[1].Write(data, language).Value.Markdown);
        Assert.False(FirmPaper.All[0].Write(data, "xx").Ok);
    }

    private static string CallOff(params TestJob[] jobs) => FirmPaper.All[1].Write(Data(jobs), null).Value.Markdown;

    /// <summary>Two of three are open.</summary>
    [Fact]
    public void UnitsThatAreOrderedAreNotToBeOrderedAgain()
    {
        var job = Job("Elm Street 12", "50").Window("W02").Window("W03").Say("W01", UnitFacts.OrderedOn, "2026-03-01");
        Assert.Matches(@"\| Roller +\| 2 +\|", CallOff(job));
    }

    [Fact]
    public void CableThatWasOrderedIsOnItsWayAndIsNotBoughtAgain()
    {
        var elm = Job("Elm Street 12", "50");
        Assert.Contains("(1 to buy)", CallOff(elm));
        elm.SayOf("Elm Street 12", HouseFacts.RoughInPartsOn, "2026-03-02");
        Assert.Matches(@"ordered on 2026-03-02 \(Elm Street 12\)", CallOff(elm));
        Assert.DoesNotContain("(1 to buy)", CallOff(elm));
        // The other half of that box serves the house that ordered none yet.
        var both = CallOff(elm, Job("Oak Lane 3", "50"));
        Assert.DoesNotContain("to buy)", both);
        Assert.DoesNotContain("new 1", both);
    }

    [Fact]
    public void ALineOfWhichNobodyNotedAnOrderDaySaysSoOnce()
    {
        var job = Job("Elm Street 12", "50");
        var text = CallOff(job);
        Assert.Single(System.Text.RegularExpressions.Regex.Matches(text, "No order day noted"));
        Assert.Matches(@"No order day noted, so it counts as not ordered: Elm Street 12 \(.*Rough-in", text);
    }

    [Fact]
    public void WhatIsToBeOrderedAgainStandsOnBothPapers()
    {
        var job = Job("Elm Street 12", "50").Say("W01", UnitFacts.OrderedOn, "2026-03-01").Say("W01", UnitFacts.Arrival, "not arrived");
        Assert.Matches(@"(?s)## To be ordered again.*W01 +\| Elm Street 12 +\| did not arrive", CallOff(job));
        Assert.Matches(@"at once +\| Elm Street 12 +\| To be ordered again: did not arrive, or came wrong +\| W01",
            FirmPaper.All[0].Write(Data(job), null).Value.Markdown);
    }

    [Fact]
    public void RunsWithoutALengthAreNotNothingToCut()
    {
        var text = CallOff(new TestJob().Window("W01").Window("W02").Say("W01", RunFacts.Cable, "16/2").Say("W02", RunFacts.Cable, "16/2"));
        Assert.Contains("Runs that have no length yet: 2.", text);
        Assert.DoesNotContain("Nothing of it waits to be cut.", text);
    }

    [System.Text.RegularExpressions.GeneratedRegex(@"^\| [A-Z][a-z][a-z] 20")]
    private static partial System.Text.RegularExpressions.Regex Row();

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    public void APaperOverAPartOfTheHousesNamesThemAndThoseThatAreLeftOut(int paper)
    {
        var data = Data(Job("Elm Street 12", "50"), Job("Oak Lane 3", "50")) with { LeftOut = ["Pine Road 1", "Ash Court 2"] };
        var text = FirmPaper.All[paper].Write(data, null).Value.Markdown;
        Assert.Contains("For these houses: Elm Street 12, Oak Lane 3.", text);
        Assert.Contains("Of 5 houses, without: Pine Road 1, Ash Court 2.", text);
        Assert.DoesNotContain("all houses", text);
    }

    [Fact]
    public void WhoIsExpectedInAHouseThatIsLeftOutIsSaidAtTheRowAllTheSame()
    {
        var elm = Job("Elm Street 12", "40", "2026-05-05 08:30-12:00 Hang @Ash");
        var oak = Job("Oak Lane 3", "40", "2026-05-05 11:30 Rough-in @Ash");
        var text = FirmPaper.All[0].Write(Data(elm) with { Elsewhere = Data(oak).Summaries }, null).Value.Markdown;
        Assert.Equal("**At the same time:** Oak Lane 3 11:30", Assert.Single(Visits(text))[6]);
    }

    /// <summary>May 5th of 2026 is a Tuesday.</summary>
    [Fact]
    public void AVisitHasItsWeekdayTheAddressTheTelephoneAndWhoIsNotReady()
    {
        var job = Job("Elm Street 12", "40", "2026-05-05 Hang @Ash").SayOf("Elm Street 12", HouseFacts.Address, "12 Elm Street")
            .SayOf("Ash", ContactFacts.Telephone, "555 0100");
        var text = FirmPaper.All[0].Write(Data(job), null).Value.Markdown;
        Assert.Contains("Telephone: 555 0100", text);
        var visit = Assert.Single(Visits(text));
        Assert.Equal(("Tue 2026-05-05", "12 Elm Street"), (visit[1], visit[5]));
        Assert.Matches("Rough-in: .*W01.*;", visit[10]);
    }

    [Fact]
    public void CableThatIsInThePlanIsNotASecondTimeAmongTheParts()
    {
        var job = Job("Elm Street 12", "50");
        Assert.DoesNotMatch(@"\| 16/2 +\| \d+ ft", CallOff(job));
        job.Do(j => SetFact.Typed(j.House, j.Run("W01").Cable!.Item, CableTypeFacts.BoxLength, ""));
        Assert.Matches(@"\| 16/2 +\| 50 ft", CallOff(job));
    }

    [Fact]
    public void DrywallTheHandoverAndABoxThatComesAfterItsVisitAreDue()
    {
        var job = Job("Elm Street 12", "40", "2026-05-20 Hang @Ash").SayOf("Elm Street 12", HouseFacts.DrywallOn, "2026-05-08")
            .SayOf("Elm Street 12", HouseFacts.HandoverOn, "2026-05-09").Say("W01", UnitFacts.OrderedOn, "2026-04-01")
            .Say("W01", UnitFacts.ExpectedOn, "2026-05-22");
        var text = FirmPaper.All[0].Write(Data(job), null).Value.Markdown;
        Assert.Matches(@"Fri 2026-05-08 +\| Elm Street 12 +\| Drywall starts; not ready before it +\| .*W01", text);
        Assert.Matches(@"Sat 2026-05-09 +\| Elm Street 12 +\| Handover; not ready before it +\| .*W01", text);
        Assert.Matches(@"Wed 2026-05-20 +\| Elm Street 12 +\| Boxes come on 2026-05-22, after the visit: Hang +\| W01", text);
    }
}
