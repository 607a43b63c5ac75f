using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Testing;

namespace TrimOut.Tests.SampleJobs;

public class MendingRidgeHouseTests
{
    private readonly TestJob _job = new(store: new MemoryStore("laptop", SampleJob.Open("ridge-house").Log.Changes));

    /// <summary>What is typed into the units, their windows and their runs, once each mistake was mended in the house.</summary>
    private static readonly (string Tag, Fact Fact, string Typed)[] Typed =
    [
        ("W01", UnitFacts.EntryFromJamb, "1"), ("W02", UnitFacts.EntrySide, "left"), ("W03", RunFacts.Photo, "photos/rough-in/W03.jpg"),
        ("W04A", RunFacts.LabelAtWindow, "W04A"), ("W04A", RunFacts.LabelAtPanel, "W04A"), ("W04B", RunFacts.LabelAtWindow, "W04B"),
        ("W04B", RunFacts.LabelAtPanel, "W04B"),
        ("W04B", RunFacts.TailAtWindow, "44"), ("W04C", RunFacts.BranchesOff, ""), ("W07", RunFacts.Cable, "16/2"), ("W08", UnitFacts.LeadSide, "left"),
        ("W09", UnitFacts.EntryFromJamb, "2"), ("W09", RunFacts.Cable, "16/2"),
        ("W05", RunFacts.SecondLoop, "0.40"), ("W05", WindowFacts.DiagonalDown, "54 5/8"), ("W05", WindowFacts.DiagonalUp, "54 5/8"),
        ("W05", WindowFacts.InTheWay, "Crank that folds flat"), ("W05", WindowFacts.InTheWayDepth, "0"),
        ("W06", WindowFacts.WidthAgain, "71 3/4"), ("W06A", UnitFacts.PartWidth, "35 3/4"), ("W06B", UnitFacts.PartWidth, "35 3/4"),
        ("W14", UnitFacts.EntryBack, "2"),
        ("W06A", UnitFacts.OrderWidth, "35 3/4"), ("W06B", UnitFacts.OrderWidth, "35 3/4"), ("W06A", UnitFacts.HeadCover, "Fascia, small"),
        ("W06B", UnitFacts.HeadCover, "Fascia, small"),
        ("W14", UnitFacts.BoxLabel, "W14"), ("W14", UnitFacts.DeliveredWidth, "29 1/2"), ("W15", UnitFacts.BoxLabel, "W15"),
        ("W15", UnitFacts.DeliveredWidth, "31 1/2"),
        ("W15", WindowFacts.DiagonalDown, "57"), ("W15", WindowFacts.DiagonalUp, "57 1/16"),
        ("W12", RunFacts.Output, "1"), ("W16", RunFacts.Output, "2"), ("W13", UnitFacts.HubName, "Guest room, bed"),
    ];

    [Fact]
    public void EveryStopIsMendedByTypingButOneThatIsWaived()
    {
        Mend();
        var left = Assert.Single(_job.Report.OpenStops);
        Assert.Equal(("depth-too-shallow", "W14"), (left.Check.Id, _job.House.NameOf(left.Subject)));
        _job.Do(PunchList.Waive(left, _job.House, "The maker sends brackets for a shallow reveal.", "AR"));
        Assert.Empty(_job.Report.OpenStops);
    }

    [Fact]
    public void EveryStopCanBeWaivedAsWell()
    {
        var stops = _job.Report.OpenStops.ToList();
        Assert.Equal(40, stops.Count);
        foreach (var stop in stops)
            _job.Do(PunchList.Waive(stop, _job.House, "Agreed on site.", "AR"));
        Assert.Empty(_job.Report.OpenStops);
    }

    private void Mend()
    {
        foreach (var (tag, fact, typed) in Typed)
            _job.Say(tag, fact, typed);
        var chase = _job.Run("W08").Legs.Single(l => l.Place == CablePlace.AirHandlingSpace);
        _job.Do(SetFact.Typed(_job.House, chase.Item, LegFacts.Place, "in-wall"));
        _job.Add(ItemKind.Panel, "B").Add(ItemKind.Panel, "C");
        _job.SayOf("Wood blind", CoveringKindFacts.MiddleScrew, "2 1/4").SayOf("A", PanelFacts.Licence, "E-4417").SayOf("Wing hub", HubFacts.Type, "Hub")
            .SayOf("Guest remote", RemoteFacts.Type, "Handheld");
    }
}
