using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Plans.Visits;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Plans.Visits;

/// <summary>Days are counted in the calendar; which phase comes before which is common practice, no published source.</summary>
public class VisitDoubtTests
{
    private readonly TestJob _job = new TestJob().Window("W01").Window("W02");

    /// <summary>Hung on February 22, less 35 days is January 18: two days before the visit to order.</summary>
    [Theory]
    [InlineData("2027-01-18", null)]
    [InlineData("2027-01-20", "It is after 2027-01-18, the last day to order: to be here on 2027-02-22.")]
    public void AnOrderAfterTheLastDayIsSaidAtItsVisit(string on, string? says)
    {
        House(HouseFacts.OrderLead, "35");
        Visits("2027-02-22 Hang", $"{on} Order");
        Assert.Equal(says, Of("Order").FirstOrDefault());
    }

    [Fact]
    public void AVisitBeforeTheFirstOfAPhaseThatComesBeforeItIsSaid()
    {
        Visits("2027-02-18 Power", "2027-02-22 Hang", "2027-01-10 Measure", "2027-01-12 Close-in");
        Assert.Equal(["Hang, a phase before it, is planned for 2027-02-22."], Of("Power"));
        Assert.Equal(["Close-in, a phase before it, is planned for 2027-01-12."], Of("Measure"));
        Assert.Empty(Of("Hang"));
    }

    [Fact]
    public void ASecondVisitOfAnEarlierPhaseSaysNothing()
    {
        Visits("2027-02-18 Hang", "2027-02-18 Power", "2027-02-22 Hang upstairs");
        Assert.All(new[] { "Hang", "Power", "Hang upstairs" }, v => Assert.Empty(Of(v)));
    }

    /// <summary>Another phase may be begun before one is over; the handover is the end of all.</summary>
    [Fact]
    public void AnyVisitAfterTheHandoverIsSaidAtIt()
    {
        Visits("2027-02-18 Hang", "2027-02-24 Hang upstairs", "2027-02-20 Power", "2027-02-23 Handover");
        Assert.Equal(["Hang upstairs, a phase before it, is planned for 2027-02-24."], Of("Handover"));
        Assert.Empty(Of("Power"));
    }

    /// <summary>Ordered on January 10 at the first visit, and 35 days on the way: February 14.</summary>
    [Theory]
    [InlineData("2027-02-14", null)]
    [InlineData("2027-02-13", "No box can be here by then: the first one comes on 2027-02-14.")]
    public void NobodyReceivesBeforeABoxCanBeHere(string on, string? says)
    {
        House(HouseFacts.OrderLead, "35");
        Visits("2027-01-10 Order", $"{on} Receive");
        Assert.Equal(says, Of("Receive").FirstOrDefault());
    }

    /// <summary>March 1 less 14 days is February 15.</summary>
    [Theory]
    [InlineData("2027-02-15", null)]
    [InlineData("2027-02-16", "Fitting takes 14 days before the handover on 2027-03-01: begin by 2027-02-15.")]
    public void WhoeverBeginsToHangHasTheDaysThatFittingTakes(string on, string? says)
    {
        House(HouseFacts.HandoverOn, "2027-03-01");
        House(HouseFacts.FittingDays, "14");
        Visits($"{on} Hang");
        Assert.Equal(says, Of("Hang").FirstOrDefault());
        _job.Do(Deliver.Done(_job.House.Visits.Single()));
        Assert.Empty(Of("Hang"));
    }

    private void House(Fact fact, string typed) => _job.Do(SetFact.Typed(_job.House, _job.House.Job, fact, typed));

    private void Visits(params string[] lines)
    {
        foreach (var line in lines)
            _job.Do(QuickPeople.Visit(_job.House, line));
    }

    private string[] Of(string visit) => [.. VisitDoubt.Of(_job.House.Visits.Single(v => v.Name == visit)).Select(d => d.In(_job.House))];
}
