using System.Diagnostics;
using System.Globalization;
using TrimOut.Core.Checks;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;
using TrimOut.Testing;

namespace TrimOut.Benchmarks.Checks;

/// <summary>
/// All checks over houses of three sizes, and what a person waits for after one edit: the new house and what the checks say of it. The sizes take
/// turns in one run, so that the machine is as busy for one as for the other.
/// </summary>
internal static class ChecksBySize
{
    private const int WarmTurns = 12;
    private const int Turns = 41;
    private static readonly int[] Sizes = [50, 500, 5000];

    public static void Measure()
    {
        var houses = Array.ConvertAll(Sizes, windows => new Measured(windows));
        for (var turn = -WarmTurns; turn < Turns; turn++)
        {
            foreach (var house in houses)
                house.Take(turn >= 0);
        }
        Console.WriteLine($"Median of {Turns} turns, in ms; in brackets the best; MB allocated; and how often as long 5000 windows take as 500.");
        Console.WriteLine($"  {"windows",-28}{string.Concat(Sizes.Select(s => $"{s,26}"))}   ratio");
        foreach (var what in houses[0].Times.Keys)
        {
            var all = Array.ConvertAll(houses, h => h.Times[what]);
            Console.WriteLine($"  {what,-28}{string.Concat(all.Select(t => $"{t,26}"))}" +
                string.Create(CultureInfo.InvariantCulture, $"   {all[2].Median / all[1].Median:0.0}"));
        }
    }

    private sealed class Measured
    {
        private readonly TestJob _job;
        private readonly CheckReport _report;
        private readonly List<(string What, Func<Draft> Make)> _edits;

        public Measured(int windows)
        {
            _job = BigHouse.Of(windows);
            var house = _job.House;
            _report = CheckReport.Of(house);
            var unit = house.Units[windows / 2];
            var type = house.ItemsOf(ItemKind.PanelType).First().Id;
            _edits =
            [
                ("a tail that is measured", () => new Draft("tail").Put(unit.Run!.Id, RunFacts.TailAtWindow, Length.FromInches(10))),
                ("a depth", () => new Draft("depth").Put(unit.Window.Id, WindowFacts.Depth, Length.FromInches(3))),
                ("a mark", () => new Draft("mark").PutStored(unit.Id, UnitFacts.Step.Field("shown"), "done")),
                ("a name at the hub", () => new Draft("name").Put(unit.Id, UnitFacts.HubName, "Another name")),
                ("an output", () => new Draft("output").Put(unit.Run!.Id, RunFacts.Output, 3)),
                ("a remote moves one more", () => new Draft("moves").Put(house.Remotes[0].Id, RemoteFacts.Moves, YesNo.Yes, unit.Id)),
                ("a value of the kit", () => new Draft("kit").Put(type, PanelTypeFacts.OutputCurrent, new Current(0.5m))),
                ("a window more", () => new Draft("window").New(ItemKind.Window, House.RootId, out var window)
                    .Put(window, WindowFacts.Tag, "W99999").Put(window, WindowFacts.Covered, YesNo.Yes)
                    .Put(window, WindowFacts.Room, new ItemRef(house.Rooms[^1].Id))
                    .New(ItemKind.Unit, window, out var added).Put(added, UnitFacts.Position, 1)),
            ];
        }

        public Dictionary<string, Best> Times { get; } = [];

        public void Take(bool counts)
        {
            Time("all checks", counts, () => CheckReport.Of(_report.House));
            Time("all checks of a new house", counts, () => CheckReport.Of(new House(_report.House.Items)));
            foreach (var (what, make) in _edits)
                Time(what, counts, () => _report.After(HouseLog.Preview(_report.House, make())));
            _job.Do(_edits[0].Make());
            var edited = _report.After(_job.House);
            Time("undo of the tail", counts, () =>
            {
                _job.Scribe.Undo();
                return edited.After(_job.House);
            });
        }

        private void Time(string what, bool counts, Func<CheckReport> work)
        {
            var (before, start) = (GC.GetAllocatedBytesForCurrentThread(), Stopwatch.GetTimestamp());
            var report = work();
            var took = Stopwatch.GetElapsedTime(start).TotalMilliseconds;
            GC.KeepAlive(report);
            if (!counts)
                return;
            if (!Times.TryGetValue(what, out var times))
                Times.Add(what, times = new Best());
            times.Take(took, GC.GetAllocatedBytesForCurrentThread() - before);
        }
    }

    private sealed class Best
    {
        private readonly List<double> _times = [];
        private long _bytes = long.MaxValue;

        public double Median => _times.Order().ElementAt(_times.Count / 2);

        public void Take(double milliseconds, long bytes)
        {
            _times.Add(milliseconds);
            _bytes = Math.Min(_bytes, bytes);
        }

        public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Median:0.00} ({_times.Min():0.00}) {_bytes / 1e6:0.00} MB");
    }
}
