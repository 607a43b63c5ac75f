using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Rough;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Papers.Tests.CrewPapers;

/// <summary>The pull sheet asks for a tail that the checks are content with, and for no more.</summary>
public class TailAtLeastTests
{
    [Fact]
    public void ATailAsLongAsThePullSheetAsksForStopsNothingAndAnInchLessDoes()
    {
        var job = FinishedHouse.Build();
        var rows = PaperList.Find("pull-sheet")!.Page(FinishedHouse.Data(job.Scribe.Log)).TableUnder("Ends and first test");
        Assert.Equal(3, rows.Count);
        foreach (var row in rows)
            job.Say(row[0], RunFacts.TailAtWindow, row[3]).Say(row[0], RunFacts.TailFound, row[3]);
        Assert.Empty(Stops(job));
        // By hand: W02B comes out 1 in from the right jamb of 91 in, under a motor at the other end of its half; its sheet uses 6 in behind the unit.
        job.Say("W02B", RunFacts.TailAtWindow, "51").Say("W02B", RunFacts.TailFound, "51");
        Assert.Equal(["W02B"], Stops(job));
    }

    private static List<string> Stops(TestJob job) =>
        [.. CheckReport.Of(job.House, [new TailShortOfMotor(), new TailUnderHalfWidth()]).OpenStops
            .Select(f => job.House.NameOf(f.Subject, s => s)).Distinct()];
}
