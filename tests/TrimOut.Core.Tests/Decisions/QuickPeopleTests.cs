using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Decisions;

public class QuickPeopleTests
{
    private readonly TestJob _job = new();

    [Theory]
    [InlineData("Ash Example, crew, 555 0101")]
    [InlineData("Ash Example, 555 0101, crew")]
    public void ALineAddsAContactWithPartAndNumberInAnyOrder(string line)
    {
        _job.Do(QuickPeople.Contact(_job.House, line));
        var ash = _job.House.Contacts.Single();
        Assert.Equal(("Ash Example", ContactPart.Crew, "555 0101"), (ash.Name, ash.Part, ash.Telephone));
    }

    [Theory]
    [InlineData("")]
    [InlineData("Ash, plumber")]
    [InlineData("Ash, 55")]
    public void ALineThatIsNotUnderstoodIsRefused(string line) => Assert.False(QuickPeople.Contact(_job.House, line).Ok);

    [Theory]
    [InlineData("Ash, crew, electrician", "crew and electrician both stand for ")]
    [InlineData("Ash, 555 0101, 555 0102", "555 0101 and 555 0102 both stand for ")]
    public void AContactThatHasTwoPartsOrNumbersIsAskedWhich(string line, string why) =>
        Assert.StartsWith(why, QuickPeople.Contact(_job.House, line).Reason, StringComparison.Ordinal);

    [Theory]
    [InlineData("2026-09-07 2026-09-08 Hang", "2026-09-07 and 2026-09-08 both stand for ")]
    [InlineData("2026-09-07 8:30 9:30 Hang", "08:30 and 09:30 both stand for ")]
    [InlineData("2026-09-07 8:30 Hang 9:30", "08:30 and 09:30 both stand for ")]
    [InlineData("2026-09-07 Hang 8:30 9:30", "08:30 and 09:30 both stand for ")]
    public void AVisitThatHasTwoDaysOrTimesIsAskedWhich(string line, string why) =>
        Assert.StartsWith(why, QuickPeople.Visit(_job.House, line).Reason, StringComparison.Ordinal);

    [Theory]
    [InlineData("2026-12-03 Pull cable 13:00", "Pull cable", "13:00", Phase.RoughIn)]
    [InlineData("2026-12-03 Framing 7:30-9:00 walk", "Framing walk", "07:30", Phase.WalkThrough)]
    [InlineData("2026-12-03 Electrician at 10:00", "Electrician at", "10:00", Phase.Power)]
    [InlineData("2026-12-03 Hang unit 4:3", "Hang unit 4:3", "", Phase.Hang)]
    [InlineData("2026-12-03 Delivery of boxes", "Delivery of boxes", "", Phase.Receive)]
    public void AnHourMayStandAnywhereAndAVisitHasThePhaseThatItIsCalledBy(string line, string what, string from, Phase phase)
    {
        _job.Do(QuickPeople.Visit(_job.House, line));
        var visit = _job.House.Visits.Single();
        Assert.Equal((what, from, phase), (visit.Name, visit.Show(VisitFacts.From), visit.Item.Get(VisitFacts.Phase)));
    }

    [Theory]
    [InlineData("2026-12-03 14:00-9:00 Limits")]
    [InlineData("2026-12-03 25:00 Hang")]
    [InlineData("2026-12-03 Hang 7:61")]
    public void AnHourThatCannotBeIsNoPartOfTheName(string line) =>
        Assert.EndsWith("such as 8:00-14:00.", QuickPeople.Visit(_job.House, line).Reason, StringComparison.Ordinal);

    [Fact]
    public void EachWhoIsExpectedMayHaveAnAtOfTheirOwn()
    {
        _job.Do(QuickPeople.Contact(_job.House, "Ash Example, crew")).Do(QuickPeople.Contact(_job.House, "Bo Example, crew"));
        _job.Do(QuickPeople.Visit(_job.House, "2026-09-07 Hang @Ash @Bo", addUnknown: true));
        Assert.Equal(["Ash Example", "Bo Example"], _job.House.Visits.Single().Expected.Select(c => c.Name));
    }

    [Theory]
    [InlineData("+1 (555) 010-0101 x12", true)]
    [InlineData("112", true)]
    [InlineData("12", false)]
    [InlineData("555 0101 Ash", false)]
    [InlineData("0123456789012345678901", false)]
    public void ATelephoneNumberHasDigitsAndWhatStandsBetweenThem(string typed, bool fine) =>
        Assert.Equal(fine, ContactFacts.Telephone.ReadTyped(typed, _job.House).Ok);

    [Fact]
    public void ALineAddsAVisitWithItsDayItsPhaseAndWhoIsExpected()
    {
        _job.Do(QuickPeople.Contact(_job.House, "Ash Example, crew")).Do(QuickPeople.Contact(_job.House, "Bo Example, electrician"));
        _job.Do(QuickPeople.Visit(_job.House, "2026-09-07 Hang upstairs @ash, Bo Example"));
        var visit = _job.House.Visits.Single();
        Assert.Equal((new DateOnly(2026, 9, 7), "Hang upstairs", Phase.Hang, VisitState.Planned), (visit.On, visit.Name, visit.Phase, visit.State));
        Assert.Equal(["Ash Example", "Bo Example"], visit.Expected.Select(c => c.Name));
    }

    [Fact]
    public void APhaseIsKnownByItsNameAsItIsShown()
    {
        foreach (var phase in PhaseNames.All)
        {
            var job = new TestJob();
            job.Do(QuickPeople.Visit(job.House, $"2026-09-07 {phase.Full()} upstairs"));
            Assert.Equal(phase, job.House.Visits.Single().Phase);
        }
    }

    [Theory]
    [InlineData("2026-09-07", "Say what is done")]
    [InlineData("2026-13-07 Hang", "is no date")]
    [InlineData("Hang @Cy", "There is no contact Cy")]
    public void AVisitThatIsNotUnderstoodIsRefusedWithTheReason(string line, string why)
    {
        _job.Do(QuickPeople.Contact(_job.House, "Ash Example, crew"));
        Assert.Contains(why, QuickPeople.Visit(_job.House, line).Reason, StringComparison.Ordinal);
    }

    /// <summary>A day in the line of a visit is taken or refused, and never becomes a part of what is done: that visit would have no day, unsaid.</summary>
    [Theory]
    [InlineData("fri Hang upstairs", "Today is a Friday: type today, or +7")]
    [InlineData("Friday Hang", "Today is a Friday")]
    [InlineData("mar 14 Hang", "is no date")]
    [InlineData("14 mar Hang", "is no date")]
    public void ADayThatCannotBeTakenIsRefused(string line, string why) =>
        Assert.Contains(why, QuickPeople.Visit(_job.House, line, new DateOnly(2026, 11, 27)).Reason, StringComparison.Ordinal);

    [Theory]
    [InlineData("sat Hang", "2026-11-28", "Hang")]
    [InlineData("+3 Hang upstairs", "2026-11-30", "Hang upstairs")]
    [InlineData("14 mar 2026 Hang", "2026-03-14", "Hang")]
    [InlineData("mar 14 26 Hang", "2026-03-14", "Hang")]
    [InlineData("March blinds arrive", null, "March blinds arrive")]
    [InlineData("Satin rollers looked at", null, "Satin rollers looked at")]
    [InlineData("Look again in 3 days", null, "Look again in 3 days")]
    public void ADayOfSeveralWordsIsTaken(string line, string? on, string what)
    {
        _job.Do(QuickPeople.Visit(_job.House, line, new DateOnly(2026, 11, 27)));
        var visit = _job.House.Visits.Single();
        Assert.Equal((on is null ? null : DateOnly.Parse(on, System.Globalization.CultureInfo.InvariantCulture), what), (visit.On, visit.Name));
    }

    [Fact]
    public void VisitsStandByTheirDayAndThoseWithoutOneLast()
    {
        foreach (var line in (string[])["Look again", "2026-09-09 Pair", "2026-09-07 Hang"])
            _job.Do(QuickPeople.Visit(_job.House, line));
        Assert.Equal(["Hang", "Pair", "Look again"], _job.House.Visits.Select(v => v.Name));
    }

    [Fact]
    public void WhoWasRemovedIsNotExpectedAnyMoreAndIsWhenBroughtBack()
    {
        _job.Do(QuickPeople.Contact(_job.House, "Ash Example")).Do(j => QuickPeople.Visit(j.House, "Hang @Ash"));
        _job.Do(j => RemoveItems.Remove(j.House, j.House.Contacts.Single().Item));
        Assert.Empty(_job.House.Visits.Single().Expected);
        _job.Scribe.Undo();
        Assert.Single(_job.House.Visits.Single().Expected);
    }

    [Fact]
    public void AVisitTookPlaceOrIsStillToCome()
    {
        _job.Do(QuickPeople.Visit(_job.House, "Hang"));
        _job.Do(Deliver.Done(_job.House.Visits.Single()));
        Assert.Equal(VisitState.Done, _job.House.Visits.Single().State);
        _job.Do(Deliver.Done(_job.House.Visits.Single()));
        Assert.Equal(VisitState.Planned, _job.House.Visits.Single().State);
    }

    /// <summary>A day that has not come can't be over; the day itself can.</summary>
    [Theory]
    [InlineData("2026-11-27", true)]
    [InlineData("2026-11-28", false)]
    public void AVisitThatIsStillToComeDidNotTakePlace(string on, bool done)
    {
        var today = new DateOnly(2026, 11, 27);
        _job.Do(QuickPeople.Visit(_job.House, $"{on} Hang", today));
        var visit = _job.House.Visits.Single();
        Assert.Equal(done, Deliver.Done(visit, today).Ok);
        var typed = SetLine.Read(_job.House, "Hang\tstate\tdone", today);
        Assert.Equal(done, typed.Ok);
        if (!done)
            Assert.All(new[] { Deliver.Done(visit, today).Reason, typed.Reason }, r => Assert.StartsWith("Hang is on 2026-11-28, which is still to come", r));
    }

    [Fact]
    public void AVisitThatTookPlaceGetsNoDayToCome()
    {
        var today = new DateOnly(2026, 11, 27);
        _job.Do(QuickPeople.Visit(_job.House, "2026-11-26 Hang", today)).Do(j => Deliver.Done(j.House.Visits.Single(), today));
        Assert.Contains("took place", SetLine.Read(_job.House, "Hang\ton\t2026-11-28", today).Reason, StringComparison.Ordinal);
        Assert.True(SetLine.Read(_job.House, "Hang\ton\t2026-11-25", today).Ok);
    }

    /// <summary>Hours are of what was done; a visit of another day may have some once it took place.</summary>
    [Theory]
    [InlineData("2026-11-27", true)]
    [InlineData("2026-11-28", false)]
    public void NobodyWorkedAtAVisitThatIsStillToCome(string on, bool taken)
    {
        var today = new DateOnly(2026, 11, 27);
        _job.Do(QuickPeople.Visit(_job.House, $"{on} Hang", today));
        var typed = SetLine.Read(_job.House, "Hang\tworked\t6", today);
        Assert.Equal(taken, typed.Ok);
        if (!taken)
            Assert.StartsWith("Hang is on 2026-11-28, which is still to come", typed.Reason, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("2026-09-07 Hang @Ash, Bo, 8:00, 6 h", "\"8:00\" is no name")]
    [InlineData("2026-09-07 Hang @Ash, 6 h", "\"6 h\" is no name")]
    [InlineData("2026-09-07 Hang @Bo from 8:00", "\"Bo from 8:00\" is no name")]
    [InlineData("2026-09-07 Hang @Bo, 7.5 hours", "\"7.5 hours\" is no name")]
    [InlineData("2026-09-07 Hang @Bo, 8:00-14:00", "\"8:00-14:00\" is no name")]
    public void AnHourOrHowLongItLastsBecomesNobodysName(string line, string why) =>
        Assert.StartsWith(why, QuickPeople.Visit(_job.House, line, addUnknown: true).Reason, StringComparison.Ordinal);

    [Theory]
    [InlineData("2026-09-07 Hang @H. Example, Bo 2")]
    [InlineData("2026-09-07 Hang @Min Example")]
    public void ANameIsTakenAsItIs(string line) => Assert.True(QuickPeople.Visit(_job.House, line, addUnknown: true).Ok);
}
