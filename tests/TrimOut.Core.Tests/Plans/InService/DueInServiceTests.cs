using TrimOut.Core.Facts;
using TrimOut.Core.Plans.InService;
using TrimOut.Core.Tests.Decisions;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Plans.InService;

/// <summary>Ninety days before a warranty ends, thirty before a yearly visit: common practice, no published source.</summary>
public class DueInServiceTests
{
    [Theory]
    [InlineData("2028-07-02", true, "The crew's warranty ends on 2028-09-30 (days left: 90).")]
    [InlineData("2028-07-01", false, "The crew's warranty ends on 2028-09-30 (days left: 91).")]
    [InlineData("2028-09-30", true, "The crew's warranty ends on 2028-09-30 (days left: 0).")]
    [InlineData("2028-10-01", false, "The crew's warranty ended on 2028-09-30.")]
    public void TheEndOfTheCrewsWarrantyIsPressingFromNinetyDaysBefore(string today, bool pressing, string says)
    {
        var job = ServedHouse.Of().SayOf("Test house", HouseFacts.WarrantyTerm, "two years").SayOf("Test house", HouseFacts.WarrantyFrom, "2026-10-01");
        var due = Assert.Single(DueInService.Of(job.House, DateOnly.Parse(today, null)),
            d => d.Say.In(job.House).StartsWith("The crew", StringComparison.Ordinal));
        Assert.Equal((pressing, says), (due.Pressing, due.Say.In(job.House)));
    }

    [Fact]
    public void TheMakersWarrantyIsReckonedByKindFromTheDayOfAcceptanceWhereNoOtherIsNoted()
    {
        var job = ServedHouse.Of().SayOf("Roller", CoveringKindFacts.WarrantyTerm, "5 years on the motor");
        Assert.Equal("The maker's warranty of Roller ends on 2031-09-30 (days left: 30).",
            DueInService.Of(job.House, new DateOnly(2031, 8, 31)).Last().Say.In(job.House));
    }

    [Fact]
    public void ATermThatCanNotBeReadIsSaidAndNeverGuessed()
    {
        var job = ServedHouse.Of().SayOf("Test house", HouseFacts.WarrantyTerm, "as long as the law says");
        Assert.Contains(DueInService.Of(job.House, new DateOnly(2026, 11, 1)), d => !d.Pressing && d.Say.In(job.House).StartsWith(
            "When the crew's warranty ends can't be read from \"as long as the law says\"", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("5 years", 60)]
    [InlineData("two years", 24)]
    [InlineData("18 months", 18)]
    [InlineData("2-year", 24)]
    [InlineData("zwei Jahre", 24)]
    [InlineData("2 Jahre", 24)]
    [InlineData("dos años", 24)]
    [InlineData("6 meses", 6)]
    [InlineData("1 año", 12)]
    [InlineData("a year", 12)]
    [InlineData("5 years on motors, 2 years on fabric", null)]
    [InlineData("1.5 years", null)]
    [InlineData("for years", null)]
    [InlineData("0 years", null)]
    [InlineData("9999 years", null)]
    [InlineData("lifetime", null)]
    [InlineData("Five years from delivery", null)]
    public void ATermIsReadInYearsOrMonths(string typed, int? months) => Assert.Equal(months, WarrantyTerm.Months(typed));

    [Theory]
    [InlineData("2027-08-31", null)]
    [InlineData("2027-09-01", "The yearly visit is due on 2027-10-01.")]
    [InlineData("2027-10-02", "The yearly visit was due on 2027-10-01.")]
    public void AYearAfterTheHouseWasAcceptedAVisitIsDue(string today, string? says) => Assert.Equal(says,
        ServedHouse.Of() is var job ? DueInService.Of(job.House, DateOnly.Parse(today, null)).FirstOrDefault()?.Say.In(job.House) : null);

    [Fact]
    public void AVisitThatTookPlaceMovesTheNextOne()
    {
        var job = ServedHouse.Of().Serve("yearly visit 2027-09-15", new DateOnly(2027, 10, 2));
        Assert.Empty(DueInService.Of(job.House, new DateOnly(2027, 10, 2)));
        Assert.Equal("The yearly visit is due on 2028-09-15.", DueInService.Of(job.House, new DateOnly(2028, 9, 15)).Single().Say.In(job.House));
    }

    [Fact]
    public void AHouseThatIsNotAcceptedOwesNoVisit() => Assert.Empty(DueInService.Of(Jobs.Roughed().House, new DateOnly(2040, 1, 1)));

    [Fact]
    public void WhatIsAskedAgainWaitsUntilItIsDone()
    {
        var job = ServedHouse.Of().Serve("Hall replaced");
        Assert.Equal("Hall replaced 2027-03-02, to be done again: Paired with its remotes, Moved from every remote, Preset stored.",
            DueInService.Of(job.House, new DateOnly(2027, 3, 3)).First().Say.In(job.House));
    }

    /// <summary>Signed on 2026-10-01, so due a year later: a visit that is written with a day to come was not made.</summary>
    [Fact]
    public void AVisitOfADayToComeSilencesNoneThatIsDueAndIsFound()
    {
        var job = ServedHouse.Of().Serve("yearly visit 2099-01-01", new DateOnly(2099, 1, 1));
        Assert.Contains(DueInService.Of(job.House, new DateOnly(2027, 10, 2)), d => d.Say.In(job.House) == "The yearly visit was due on 2027-10-01.");
        Assert.Contains(job.Report.Findings, f => f.Check.Id == "dates-run-backwards" && job.Report.Said(f).Contains("2099-01-01", StringComparison.Ordinal));
    }
}
