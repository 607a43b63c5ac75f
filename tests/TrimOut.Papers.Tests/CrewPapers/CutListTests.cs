using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Papers.CrewPapers;
using TrimOut.Testing;

namespace TrimOut.Papers.Tests.CrewPapers;

public class CutListTests
{
    [Fact]
    public void BoxesOnHandAreCutBeforeNewOnes()
    {
        // Two runs of 40 ft come out of the 90 ft in A, the one of 60 ft out of B; without them a new box of 500 ft is opened.
        var cuts = Cuts(Roughing().Box("A", "90 ft").Box("B", "60 ft"));
        Assert.Equal([("A", "W01"), ("A", "W02"), ("B", "W03")], cuts.Select(c => (c[0], c[2])).Order());
        Assert.Equal(("90 ft", "10 ft"), (cuts.First(c => c[0] == "A")[1], cuts.Last(c => c[0] == "A")[5]));
        Assert.All(Cuts(Roughing()), c => Assert.Equal("new 1", c[0]));
    }

    [Fact]
    public void TheLossPerCutIsInTheMarksAndIsSaid()
    {
        var job = Roughing();
        Assert.Equal("No loss per cut is noted in the house, so none is counted.", Said(job)[1]);
        Assert.Equal(["0 ft", "60 ft"], Cuts(job).Single(c => c[2] == "W03").Skip(3).Take(2));
        job.SayOf("", HouseFacts.CutLoss, "12");
        Assert.Equal("Each cut costs 12\", which is in the marks.", Said(job)[1]);
        var cuts = Cuts(job);
        Assert.Equal(3, cuts.Count);
        Assert.Equal(1, Feet(cuts[1][3]) - Feet(cuts[0][4]));
    }

    [Fact]
    public void APulledRunIsNotCutAgainAndItIsSaidWhy()
    {
        var job = Roughing();
        job.Do(Core.Decisions.MarkStep.Done(job.Unit("W03"), Core.Phases.StepList.Find("cable-pulled")!));
        Assert.DoesNotContain(Cuts(job), c => c[2] == "W03");
        Assert.Contains(Rows(job, "Not in the plan"), r => r is ["W03", "pulled already"]);
    }

    [Fact]
    public void ABoxThatIsNotNeededStaysShut() =>
        Assert.Contains("On hand and not needed: B.", Said(Roughing().Box("A", "400 ft").Box("B", "400 ft"), "16/2"));

    /// <summary>Three runs of 16/2: 40, 40 and 60 ft with tails and no allowance.</summary>
    private static RoughingJob Roughing() => new();

    private static List<List<string>> Cuts(RoughingJob job) => Rows(job, "Box");

    private static List<List<string>> Rows(RoughingJob job, string column)
    {
        var table = PullSheet.Paper.Page(FinishedHouse.Data(job.Log)).QuerySelectorAll("table")
            .LastOrDefault(t => t.QuerySelector("th")!.TextContent == column);
        Assert.NotNull(table);
        return [.. table.QuerySelectorAll("tbody tr").Select(r => r.Children.Select(c => c.TextContent).ToList())];
    }

    private static List<string> Said(RoughingJob job, string heading = "Cuts per box") => PullSheet.Paper.Page(FinishedHouse.Data(job.Log)).SaidUnder(heading);

    private static decimal Feet(string mark) => decimal.Parse(mark[..^3], System.Globalization.CultureInfo.InvariantCulture);

    private sealed class RoughingJob
    {
        private readonly TestJob _job = new();

        public RoughingJob()
        {
            SayOf("", HouseFacts.CableAllowance, "0");
            foreach (var (tag, feet) in new[] { ("W01", 30), ("W02", 30), ("W03", 50) })
            {
                _job.Window(tag).Say(tag, UnitFacts.Power, "panel").Legs(tag, ($"{feet} ft", CablePlace.InWall));
                _job.Say(tag, RunFacts.Cable, "16/2").Say(tag, RunFacts.TailAtWindow, "60 in").Say(tag, RunFacts.TailAtPanel, "60 in");
            }
        }

        public House House => _job.House;

        public HouseLog Log => _job.Scribe.Log;

        public Unit Unit(string tag) => _job.Unit(tag);

        public RoughingJob Box(string name, string left)
        {
            _job.Add(ItemKind.Box, name);
            return SayOf(name, BoxFacts.Cable, "16/2").SayOf(name, BoxFacts.Left, left);
        }

        public RoughingJob SayOf(string name, Fact fact, string typed)
        {
            _job.SayOf(name, fact, typed);
            return this;
        }

        public void Do(Core.Result<Core.History.Draft> draft) => _job.Do(draft);
    }
}
