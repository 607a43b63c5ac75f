using TrimOut.Core.Checks.Boxes;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Boxes;

public class BoxLateTests
{
    private static readonly BoxLate Check = new();

    public static Example Finds => new(() => Hung("2026-09-07"), j => j.Say("W01", UnitFacts.ExpectedOn, "2026-09-08"));

    public static Example Passes => new(() => Hung("2026-09-07"), j => j.Say("W01", UnitFacts.ExpectedOn, "2026-09-07"));

    [Fact]
    public void ABoxThatComesOnTheDayOfTheVisitIsFine() => Hung("2026-09-07").Say("W01", UnitFacts.ExpectedOn, "2026-09-07").Fine(Check, "W01");

    [Fact]
    public void ABoxThatComesADayAfterTheVisitIsLate() => Assert.Equal("Its box is expected on 2026-09-08; Hang upstairs is on 2026-09-07.",
        Hung("2026-09-07").Say("W01", UnitFacts.ExpectedOn, "2026-09-08").Fault(Check, "W01").Message);

    [Fact]
    public void TheFirstPlannedVisitCountsAndNoneThatIsCalledOff()
    {
        var job = Hung("2026-09-07").Say("W01", UnitFacts.ExpectedOn, "2026-09-20");
        job.Do(QuickPeople.Visit(job.House, "2026-10-01 Hang the rest"));
        Assert.Contains("Hang upstairs", job.Fault(Check, "W01").Message, StringComparison.Ordinal);
        job.Do(Deliver.CallOff(job.House.Visits.First())).Fine(Check, "W01");
    }

    [Fact]
    public void WithoutAVisitTheHandoverCounts()
    {
        var job = Jobs.Walked().Say("W01", UnitFacts.ExpectedOn, "2026-10-02").SayOf("Test house", HouseFacts.HandoverOn, "2026-10-01");
        Assert.Equal("Its box is expected on 2026-10-02; handover is on 2026-10-01.", job.Fault(Check, "W01").Message);
        job.SayOf("Test house", HouseFacts.HandoverOn, "2026-10-02").Fine(Check, "W01");
    }

    /// <summary>October 12 less ten days is October 2.</summary>
    [Fact]
    public void BeforeTheHandoverThereIsToBeTimeToFitIt()
    {
        var job = Jobs.Walked().Say("W01", UnitFacts.ExpectedOn, "2026-10-02").SayOf("Test house", HouseFacts.HandoverOn, "2026-10-12")
            .SayOf("Test house", HouseFacts.FittingDays, "10");
        job.Fine(Check, "W01");
        job.SayOf("Test house", HouseFacts.FittingDays, "11");
        Assert.Equal("Its box is expected on 2026-10-02; to be fitted before handover it must be here on 2026-10-01.", job.Fault(Check, "W01").Message);
    }

    [Fact]
    public void WithNoDayToCompareItIsNotAPass() => Jobs.Walked().Say("W01", UnitFacts.ExpectedOn, "2026-10-02").Lacks(Check, "W01", "handover of the house");

    [Fact]
    public void ABoxThatDidNotComeIsFoundUntilItIsReorderedAndThenJudgedByItsNewDay()
    {
        var job = Hung("2026-09-07").Say("W01", UnitFacts.Arrival, "not arrived");
        Assert.Equal("Its box did not arrive, and nobody reordered it.", job.Fault(Check, "W01").Message);
        job.Say("W01", UnitFacts.ReorderedOn, "2026-08-01").Say("W01", UnitFacts.ExpectedOn, "2026-09-09");
        Assert.Contains("2026-09-09", job.Fault(Check, "W01").Message, StringComparison.Ordinal);
    }

    [Fact]
    public void ABoxThatIsHereIsFineWhateverWasExpected() =>
        Hung("2026-09-07").Say("W01", UnitFacts.ExpectedOn, "2026-09-30").Say("W01", UnitFacts.BoxLabel, "W01").Fine(Check, "W01");

    [Fact]
    public void NothingIsSaidOfABoxOfWhichNobodySaidWhenItComes() => Assert.IsType<Core.Checks.Outcome.DoesNotApply>(Jobs.Walked().Judge(Check, "W01"));

    private static TestJob Hung(string day) => Jobs.Walked().Do(j => QuickPeople.Visit(j.House, $"{day} Hang upstairs"));

    [Fact]
    public void ABoxThatCameWrongAndWasOrderedAgainIsNotHereUntilSomethingIsWrittenOfTheNewOne()
    {
        var job = Hung("2026-09-07").Say("W01", UnitFacts.BoxLabel, "W01").Say("W01", UnitFacts.Damage, "dented tube");
        job.Fine(Check, "W01");
        job.Say("W01", UnitFacts.ReorderedOn, "2026-09-01");
        Assert.Equal("It was ordered again on 2026-09-01, and nobody has written on which day it is expected now.", job.Fault(Check, "W01").Message);
        job.Say("W01", UnitFacts.ExpectedOn, "2026-09-20");
        Assert.Equal("Its box is expected on 2026-09-20; Hang upstairs is on 2026-09-07.", job.Fault(Check, "W01").Message);
        job.Say("W01", UnitFacts.Damage, "none").Fine(Check, "W01");
    }

    [Fact]
    public void ABoxThatDidNotComeAndWhoseLabelIsWrittenContradictsItself()
    {
        var job = Hung("2026-09-07").Say("W01", UnitFacts.BoxLabel, "W01").Say("W01", UnitFacts.Arrival, "not-arrived");
        Assert.Equal("Its box is said not to have arrived, and its label, its size or its serial is written.", job.Fault(Check, "W01").Message);
        job.Say("W01", UnitFacts.Arrival, "arrived").Fine(Check, "W01");
    }
}
