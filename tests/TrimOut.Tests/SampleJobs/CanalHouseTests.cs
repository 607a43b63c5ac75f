using TrimOut.Core.Electrical;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.HouseFile.Schedules;
using TrimOut.Testing;

namespace TrimOut.Tests.SampleJobs;

public class CanalHouseTests
{
    private readonly SampleJob _canal = SampleJob.Open("canal-house");

    private House House => _canal.House;

    [Fact]
    public void EighteenRunsAreSpreadOverTwoPanels()
    {
        Assert.Equal(18, House.Runs.Length);
        Assert.Equal([9, 9], House.Panels.Select(p => p.Runs.Count()));
    }

    [Fact]
    public void EverythingUpToPowerIsDoneAndPairingIsNot()
    {
        Assert.All(PhaseNames.All.Where(p => p <= Phase.Power), p => Assert.All(Progress.Walkers(House).Where(w => w is not JobItself),
            w => Assert.Equal((w.Name, p) is not ("W08", Phase.Hang) and not ("W07B", Phase.Power), Progress.Of(w, p).Complete)));
        Assert.InRange(Progress.Of(House, Phase.Pair).Done, 1, Progress.Of(House, Phase.Pair).Total - 1);
        Assert.Equal(12, House.Units.Count(u => u.Hub is not null));
        Assert.Equal(10, House.Units.Count(u => Progress.Of(u, Phase.Pair).Complete));
    }

    [Fact]
    public void ItsStopsAreOfTheLastTwoDaysTwoFindingsAreWaivedAndTwoPunchItemsWait()
    {
        Assert.Equal(
            ["openings-off-count Canal house", "plug-in-without-socket W11", "position-twice W05", "sheet-contradicts-itself Panel, 12 outputs",
                "leg-place-off-way W10B", "overlap-past-corner W08", "overlap-past-corner W08", "head-room-short W08", "corner-clash W01",
                "corner-clash W02", "corner-clash W07", "corner-clash W09", "corner-clash W10", "centre-support-left-out W08", "mains-unsigned A",
                "mains-unsigned B", "joints-under-power A", "output-feeds-another W09A", "remote-at-another-hub Landing wall",
                "plate-too-small Dining wall", "hub-name-twice W05A", "preset-off-remote Front remote"],
            _canal.Report.OpenStops.Select(f => $"{f.Check.Id} {House.NameOf(f.Subject)}"));
        Assert.Equal(["W12B", "W11"], _canal.Report.Findings.Where(f => !f.Open).Select(f => House.NameOf(f.Subject)));
        Assert.Equal(["W05B", "W07B"], House.PunchItems.Where(p => !p.Done).Select(p => House.NameOf(p.About!)));
    }

    [Fact]
    public void ItsScheduleGivesTheSameRoomsAndOpenings()
    {
        var job = new TestJob(DisplayUnits.Millimetres);
        var plan = ScheduleImport.Plan(job.Scribe.Log, File.ReadAllBytes(_canal.In("window-schedule.csv")), "window-schedule.csv",
            ScheduleOptions.ByHeaders).Value;
        Assert.Empty(plan.Problems);
        Assert.Empty(plan.Unused);
        job.Do(plan.Draft);
        Assert.Equal(House.Rooms.Select(Room), job.House.Rooms.Select(Room));
        Assert.Equal(House.Windows.Select(Opening), job.House.Windows.Select(Opening));
        Assert.Equal(House.Windows.Select(w => w.Units[0].Kind!.Name), job.House.Windows.Select(w => w.Units[0].Kind!.Name));

        static string Room(Room room) => $"{room.Name}, {room.Floor}";
        static string Opening(Window window) =>
            $"{window.Tag} in {window.Room!.Name}: {window.RoughWidth} x {window.RoughHeight}, {window.Show(WindowFacts.Facing)}, {window.Reach}, " +
                $"{window.Mount}";
    }

    [Theory]
    [InlineData("canal-house")]
    [InlineData("orchard-cottage")]
    public void LoopsAndVoltsAreWhatTheRunsGive(string name)
    {
        Assert.All(SampleJob.Open(name).House.Runs, run =>
        {
            var ohms = Conductors.OhmsPerMetre(run.Cable!.Conductor!, run.Cable.Stranding!.Value, Temperature.Reference).Value;
            var loop = TwoWire.Loop(run.OneWay!.Value, ohms);
            Assert.InRange(run.Item.Get(RunFacts.FirstLoop)!.Value.Ohms, loop.Ohms * 0.97m, loop.Ohms * 1.03m + 0.01m);
            Assert.InRange(run.Item.Get(RunFacts.SecondLoop)!.Value.Ohms, loop.Ohms * 0.95m, loop.Ohms * 1.03m + 0.01m);
            var drop = run.Item.Get(RunFacts.OpenVolts)!.Value - run.Item.Get(RunFacts.LoadedVolts)!.Value;
            var predicted = TwoWire.Drop(run.OneWay.Value, ohms, run.Unit.Kind!.RunningCurrent!.Value);
            Assert.InRange(drop.Volts, predicted.Volts * 0.9m - 0.01m, predicted.Volts * 1.05m + 0.01m);
        });
    }
}
