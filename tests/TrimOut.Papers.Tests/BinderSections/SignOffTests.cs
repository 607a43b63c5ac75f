using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Papers.Tests.BinderSections;

/// <summary>What the binder says of a house that was accepted.</summary>
public class SignOffTests
{
    [Fact]
    public void TheDayOfAcceptanceIsThatOfTheHandoverWhereNoOtherIsNoted()
    {
        var job = Without(FinishedHouse.Build(), HouseFacts.HandoverOn);
        Assert.Equal("2026-09-30", Handover(job));
        Assert.Equal("not yet", Handover(Without(job, HouseFacts.AcceptedOn)));
    }

    [Fact]
    public void AHouseAcceptedBeforeThePlannedDayIsHandedOverOnTheDayOfTheSignature()
    {
        var job = FinishedHouse.Build();
        job.SayOf("", HouseFacts.HandoverOn, "2027-02-28");
        Assert.Equal("2026-09-30", Handover(job));
    }

    [Fact]
    public void WhoAcceptsStandsAtTheOwnersSignature()
    {
        var job = FinishedHouse.Build();
        Assert.Equal("R. Example", Owner(job));
        Assert.NotEqual("R. Example", Owner(Without(job, HouseFacts.AcceptedBy)));
    }

    private static TestJob Without(TestJob job, Fact fact) => job.Do(SetFact.Typed(job.House, job.House.Job, fact, ""));

    private static string Handover(TestJob job) => Row(job, "Handover");

    private static string Owner(TestJob job) => Row(job, "Owner");

    private static string Row(TestJob job, string first) => PaperList.Find("binder")!.Page(FinishedHouse.Data(job.Scribe.Log)).QuerySelectorAll("tbody tr")
        .Where(r => r.Children[0].TextContent == first && (first == "Handover" || r.Children.Length == 4)).Select(r => r.Children[1].TextContent).First();
}
