using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;

namespace TrimOut.Testing;

/// <summary>A house of any size with every fact filled in, eight windows to a room; every tenth window has a fault or two.</summary>
public static class BigHouse
{
    /// <summary>The house with so many windows.</summary>
    public static TestJob Of(int windows)
    {
        var job = new TestJob();
        var kinds = job.House.ItemsOf(ItemKind.CoveringKind).Select(i => i.Id).ToList();
        var cables = job.House.ItemsOf(ItemKind.CableType).Select(i => i.Id).ToList();
        var covers = job.House.ItemsOf(ItemKind.HeadCover).Select(i => i.Id).ToList();
        var panelType = job.House.ItemsOf(ItemKind.PanelType).First().Id;
        var remoteType = job.House.ItemsOf(ItemKind.RemoteType).First().Id;
        job.Do(new Draft("hub").New(ItemKind.Hub, House.RootId, out var newHub).Put(newHub, HubFacts.Name, "Hub")
            .Put(newHub, HubFacts.Type, new ItemRef(job.House.ItemsOf(ItemKind.HubType).First().Id)));
        var hub = job.House.Hubs[0].Id;
        string room = "", panel = "", remote = "";
        for (var n = 0; n < windows; n++)
        {
            if (n % 8 == 0)
            {
                job.Do(new Draft("room").New(ItemKind.Room, House.RootId, out var newRoom).Put(newRoom, RoomFacts.Name, $"Room {n / 8}")
                    .Put(newRoom, RoomFacts.WalkingOrder, Math.Min(999, n / 8 + 1)));
                room = Last(job);
                job.Do(new Draft("remote").New(ItemKind.Remote, House.RootId, out var newRemote).Put(newRemote, RemoteFacts.Name, $"Remote {n / 8}")
                    .Put(newRemote, RemoteFacts.Type, new ItemRef(remoteType))
                    .Put(newRemote, RemoteFacts.Room, new ItemRef(room)).Put(newRemote, RemoteFacts.Hub, new ItemRef(hub)));
                remote = Last(job);
            }
            if (n % 10 == 0)
            {
                job.Do(new Draft("panel").New(ItemKind.Panel, House.RootId, out var newPanel).Put(newPanel, PanelFacts.Name, $"P{n / 10}")
                    .Put(newPanel, PanelFacts.Type, new ItemRef(panelType))
                    .Put(newPanel, PanelFacts.ConnectedBy, "An electrician").Put(newPanel, PanelFacts.Licence, "L-1"));
                panel = Last(job);
            }
            job.Do(Window(n, room, panel, hub, remote, kinds[n % kinds.Count], cables[n % 2], covers[1 + n % 3]));
        }
        return job;
    }

    private static Draft Window(int n, string room, string panel, string hub, string remote, string kind, string cable, string cover)
    {
        var faulty = n % 10 == 3;
        var (width, height) = (Length.FromInches(24 + n % 60), Length.FromInches(36 + n % 50));
        var diagonal = Length.FromInches((decimal)Math.Sqrt((double)(width.Inches * width.Inches + height.Inches * height.Inches)));
        var draft = new Draft("window").New(ItemKind.Window, House.RootId, out var window)
            .Put(window, WindowFacts.Tag, $"W{n:0000}").Put(window, WindowFacts.Covered, YesNo.Yes).Put(window, WindowFacts.Room, new ItemRef(room))
            .Put(window, WindowFacts.Mount, Mount.Inside).Put(window, WindowFacts.RoughWidth, width).Put(window, WindowFacts.RoughHeight, height)
            .Put(window, WindowFacts.Depth, Length.FromInches(faulty ? 2 : 6)).Put(window, WindowFacts.InTheWay, "none")
            .Put(window, WindowFacts.DiagonalDown, diagonal).Put(window, WindowFacts.DiagonalUp, diagonal)
            .Put(window, WindowFacts.WidthAgain, width).Put(window, WindowFacts.HeightAgain, height);
        foreach (var fact in (Fact<Length>[])[WindowFacts.WidthTop, WindowFacts.WidthMiddle, WindowFacts.WidthBottom])
            draft = draft.Put(window, fact, width);
        foreach (var fact in (Fact<Length>[])[WindowFacts.HeightLeft, WindowFacts.HeightMiddle, WindowFacts.HeightRight])
            draft = draft.Put(window, fact, height);
        draft = draft.New(ItemKind.Unit, window, out var unit)
            .Put(unit, UnitFacts.Position, 1).Put(unit, UnitFacts.Kind, new ItemRef(kind)).Put(unit, UnitFacts.LeadSide, faulty ? Side.Right : Side.Left)
                .Put(unit, UnitFacts.Power, PowerSource.Panel)
            .Put(unit, UnitFacts.EntrySide, Side.Left).Put(unit, UnitFacts.EntryFromJamb, Length.FromInches(2))
                .Put(unit, UnitFacts.EntryBack, Length.FromInches(2)).Put(unit, UnitFacts.EntryBelowHead, Length.FromInches(1))
            .Put(unit, UnitFacts.HeadCover, new ItemRef(cover)).Put(unit, UnitFacts.OrderWidth, width).Put(unit, UnitFacts.OrderHeight, height)
            .Put(unit, UnitFacts.BoxLabel, $"W{n:0000}").Put(unit, UnitFacts.DeliveredWidth, width).Put(unit, UnitFacts.DeliveredHeight, height)
                .Put(unit, UnitFacts.Damage, "none")
            .Put(unit, UnitFacts.Group, $"G{n / 4}").Put(unit, UnitFacts.Hub, new ItemRef(hub)).Put(unit, UnitFacts.HubName, $"Room {n / 8} window {n % 8}")
            .Put(unit, UnitFacts.OpenGap, Length.FromInches(1)).Put(unit, UnitFacts.CloseGap, Length.Zero)
            .Put(remote, RemoteFacts.Moves, YesNo.Yes, unit)
            .New(ItemKind.Run, unit, out var run)
            .Put(run, RunFacts.Cable, new ItemRef(cable)).Put(run, RunFacts.TailAtWindow, faulty ? width / 4 : width)
                .Put(run, RunFacts.TailAtPanel, Length.FromFeet(6))
            .Put(run, RunFacts.MainsDistance, Length.FromInches(12)).Put(run, RunFacts.HoleEdge, Length.FromInches(2))
            .Put(run, RunFacts.LabelAtWindow, $"W{n:0000}").Put(run, RunFacts.LabelAtPanel, $"W{n:0000}")
            .Put(run, RunFacts.FirstLoop, new Resistance(0.9m)).Put(run, RunFacts.SecondLoop, new Resistance(0.9m))
            .Put(run, RunFacts.Panel, new ItemRef(panel)).Put(run, RunFacts.Output, n % 10 + 1)
            .Put(run, RunFacts.OpenVolts, new Voltage(12)).Put(run, RunFacts.LoadedVolts, new Voltage(11.2m)).Put(run, RunFacts.Polarity, Polarity.Right);
        foreach (var (feet, place) in ((int, CablePlace)[])[(10, CablePlace.InWall), (20 + n % 40, CablePlace.BetweenFloors), (8, CablePlace.InWall)])
            draft = draft.New(ItemKind.Leg, run, out var leg).Put(leg, LegFacts.Length, Length.FromFeet(feet)).Put(leg, LegFacts.Place, place);
        return new[] { "covering-planned", "cable-pulled", "both-ends-labelled", "measured", "clicked-in" }
            .Aggregate(draft, (d, step) => d.PutStored(unit, UnitFacts.Step.Field(step), "done"));
    }

    private static string Last(TestJob job) => job.Scribe.Log.Changes[^1].Edits.OfType<Edit.Add>().Last().Item;
}
