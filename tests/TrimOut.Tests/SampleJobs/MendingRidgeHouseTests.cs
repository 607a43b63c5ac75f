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
        ("W15", UnitFacts.EntryAsBuilt, "1 1/4"), ("W16", UnitFacts.EntryAsBuilt, "1 1/4"),
        ("W04B", UnitFacts.EntryFromJamb, "41"), ("W15", WindowFacts.InTheWayDepth, "0"),
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
        ("W01", RunFacts.FirstLoop, "0.51"), ("W03", RunFacts.FirstApart, "open"), ("W04C", RunFacts.MainsDistance, "6"), ("W06B", UnitFacts.Position, "2"),
        ("W06B", RunFacts.SecondLoop, "0.48"), ("W08", WindowFacts.Escape, "no"), ("W08", WindowFacts.HeadAbove, "3"), ("W12", RunFacts.Output, "1"),
        ("W12", RunFacts.Polarity, "right"), ("W16", RunFacts.Output, "2"), ("W16", RunFacts.Polarity, "right"), ("W16", RunFacts.OpenVolts, "24.03"),
        ("W16", RunFacts.LoadedVolts, "23.66"),
        ("W12", RunFacts.OpenVolts, "24.05"), ("W12", RunFacts.LoadedVolts, "23.74"), ("W13", RunFacts.OpenVolts, "24.06"),
        ("W13", RunFacts.LoadedVolts, "23.69"), ("W13", UnitFacts.FreeCord, "0"), ("W16", UnitFacts.Setback, "1 1/2"), ("W16", UnitFacts.OrderWidth, "35"),
        ("W16", UnitFacts.DeliveredWidth, "35"), ("W17", WindowFacts.RoughHeight, "72"),
        ("W07", RunFacts.OnePiece, "yes"), ("W12", UnitFacts.Setback, "1"), ("W13", UnitFacts.Setback, "5/8"),
        ("W09", RunFacts.FirstToFrame, "open"), ("W14", UnitFacts.LeadCameAt, "left"),
        ("W02", WindowFacts.MeetsRight, ""), ("W05", UnitFacts.OrderHeight, ""), ("W07", UnitFacts.EntryBelowHead, "1"),
        ("W12", UnitFacts.FixedInto, "wood"), ("W17", RunFacts.WentDead, "this-window"),
        ("W13", UnitFacts.HubName, "Guest room, bed"),
    ];

    [Fact]
    public void EveryStopIsMendedByTypingButOneThatIsWaived()
    {
        Mend();
        Assert.Equal(["depth-too-shallow W14"], _job.Report.OpenStops.Select(f => $"{f.Check.Id} {_job.House.NameOf(f.Subject)}"));
        var left = _job.Report.OpenStops.Single();
        _job.Do(PunchList.Waive(left, _job.House, "The maker sends brackets for a shallow opening.", "AR"));
        Assert.Empty(_job.Report.OpenStops);
    }

    [Fact]
    public void EveryStopCanBeWaivedAsWell()
    {
        var stops = _job.Report.OpenStops.ToList();
        Assert.Equal(84, stops.Count);
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
        var floor = _job.Run("W09").Legs.Single(l => l.Direction == LegDirection.ThroughFloor);
        _job.Do(SetFact.Typed(_job.House, floor.Item, LegFacts.Place, "between-floors"));
        _job.Do(SetFact.Typed(_job.House, _job.Run("W05").Legs[0].Item, LegFacts.SealedBy, ""));
        _job.Do(SetFact.Typed(_job.House, _job.Run("W05").Legs[1].Item, LegFacts.SealSeenOn, "2026-06-05"));
        var barrier = _job.Run("W03").Legs.Single(l => l.ThroughFireBarrier == true);
        _job.Do(SetFact.Typed(_job.House, barrier.Item, LegFacts.SealedBy, "Builder's crew"));
        _job.Do(SetFact.Typed(_job.House, _job.House.Find(barrier.Id)!, LegFacts.SealSeenOn, "2026-06-05"));
        _job.Add(ItemKind.Panel, "C").Add(ItemKind.Panel, "D");
        _job.SayOf("Panel, 8 outputs", PanelTypeFacts.OutputCurrent, "1.8").SayOf("Panel, 8 outputs", PanelTypeFacts.TotalCurrent, "9.5")
            .SayOf("Panel, 5 outputs", PanelTypeFacts.OutputCurrent, "3.6").SayOf("A", PanelFacts.ConnectedOn, "2026-03-02")
            .SayOf("Cellular", CoveringKindFacts.MotorVolts, "24")
            .SayOf("A", PanelFacts.OffSeen, "meter-read-nothing").SayOf("Ridge house", HouseFacts.Openings, "17")
            .SayOf("Wood blind", CoveringKindFacts.Widest, "96");
        _job.SayOf("Wood blind", CoveringKindFacts.MiddleScrew, "2 1/4").SayOf("A", PanelFacts.Licence, "E-4417").SayOf("Wing hub", HubFacts.Type, "Hub")
            .SayOf("Guest remote", RemoteFacts.Type, "Handheld");
    }
}
