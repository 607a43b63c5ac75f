using TrimOut.Core.Decisions;
using TrimOut.Core.Plans.Visits;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Plans.Visits;

/// <summary>One person at two visits at one time; a stretch of time is half open, as in any calendar (RFC 5545, DTEND is not in the event).</summary>
public class TwoAtOnceTests
{
    [Theory]
    [InlineData("2026-05-05 08:30-12:00 Hang @Ash", "2026-05-05 11:59 Pair @Ash", true)]
    [InlineData("2026-05-05 08:30-12:00 Hang @Ash", "2026-05-05 12:00 Pair @Ash", false)]
    [InlineData("2026-05-05 08:30-12:00 Hang @Ash", "2026-05-05 08:00-08:31 Pair @Ash", true)]
    [InlineData("2026-05-05 08:30 Hang @Ash", "2026-05-05 08:30 Pair @Ash", true)]
    [InlineData("2026-05-05 08:30 Hang @Ash", "2026-05-05 08:45 Pair @Ash", false)]
    [InlineData("2026-05-05 08:30-12:00 Hang @Ash", "2026-05-05 11:00 Pair @Bo", false)]
    [InlineData("2026-05-05 08:30-12:00 Hang @Ash", "2026-05-06 11:00 Pair @Ash", false)]
    [InlineData("2026-05-05 Hang @Ash", "2026-05-05 11:00 Pair @Ash", false)]
    public void IsSaidWhereNobodyCanBeAtBothFromBeginningToEnd(string one, string other, bool twice)
    {
        var job = new TestJob();
        foreach (var visit in new[] { other, one })
            job.Do(QuickPeople.Visit(job.House, visit, null, addUnknown: true).Value);
        Assert.Equal(twice ? ["Ash"] : [], TwoAtOnce.Of(job.House).Select(t => t.Who.Name));
        Assert.All(job.House.Visits, v => Assert.Equal(twice, TwoAtOnce.ByVisit(job.House).Contains(v.Id)));
    }

    [Fact]
    public void AVisitThatTookPlaceStandsAgainstNone()
    {
        var job = new TestJob();
        foreach (var visit in new[] { "2026-05-05 08:30-12:00 Hang @Ash", "2026-05-05 11:00 Pair @Ash" })
            job.Do(QuickPeople.Visit(job.House, visit, null, addUnknown: true).Value);
        job.Do(Deliver.Done(job.House.Visits.First(), new DateOnly(2026, 5, 5)));
        Assert.Empty(TwoAtOnce.Of(job.House));
    }
}
