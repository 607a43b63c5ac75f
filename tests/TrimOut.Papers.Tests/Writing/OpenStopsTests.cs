using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Phases;
using TrimOut.Papers.Writing;

namespace TrimOut.Papers.Tests.Writing;

public class OpenStopsTests
{
    /// <summary>Each paper that somebody works by, and phases whose mistakes would be built by it.</summary>
    public static TheoryData<string, Phase[]> Papers => new()
    {
        { "walk-sheet", [Phase.WalkThrough] },
        { "pull-sheet", [Phase.WalkThrough, Phase.RoughIn] },
        { "test-record", [Phase.RoughIn, Phase.CloseIn, Phase.Power] },
        { "order-sheet", [Phase.WalkThrough, Phase.Measure, Phase.Order] },
        { "receiving-list", [Phase.Receive] },
        { "hang-sheet", [Phase.Measure, Phase.Receive, Phase.Hang] },
        { "panel-schedule", [Phase.Power] },
    };

    [Theory]
    [MemberData(nameof(Papers))]
    public void AStopOfItsPhasesStandsAtItsHead(string id, Phase[] phases)
    {
        var data = SampleJobs.Data("ridge-house");
        var page = PaperList.Find(id)!.Page(data);
        var head = page.QuerySelector("main")!.Children.TakeWhile(e => e.LocalName != "h2").Select(e => e.TextContent).ToList();
        var stops = data.Report.OpenStops.Where(f => phases.Contains(f.Check.Phase)).ToList();
        Assert.NotEmpty(stops);
        Assert.All(stops, stop => Assert.Contains(head, text =>
            text.Contains(stop.Found.Message.For(Words.English.ReaderOf(data.House)), StringComparison.Ordinal)));
        Assert.DoesNotContain("wrong", PaperList.Find(id)!.Write(SampleJobs.Data("orchard-cottage")).Markdown.Split("\n## ")[0], StringComparison.Ordinal);
    }

    [Fact]
    public void TheBookIsADraftUntilItIsSignedFor()
    {
        var job = FinishedHouse.Build();
        string Head() => Binder.Markdown(job.Scribe.Log, FinishedHouse.Day).Split("\n## ")[0];
        Assert.DoesNotContain("DRAFT", Head(), StringComparison.Ordinal);
        job.Do(SetFact.Typed(job.House, job.House.Job, HouseFacts.AcceptedOn, ""));
        Assert.Contains("DRAFT", Head(), StringComparison.Ordinal);
    }
}
