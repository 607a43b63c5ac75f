using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;

namespace TrimOut.Tests.SampleJobs;

public class OrchardCottageTests
{
    private readonly SampleJob _orchard = SampleJob.Open("orchard-cottage");

    private House House => _orchard.House;

    [Fact]
    public void OnlyTheLastFiveStepsOfTheHouseAreLeft()
    {
        var left = from walker in Progress.Walkers(House)
                   from phase in PhaseNames.All
                   from step in StepList.Of(phase, walker)
                   where walker.MarkOf(step) is null
                   select $"{walker.Name}: {step.Id}";
        Assert.Equal(["Orchard cottage: demonstrated", "Orchard cottage: power-cut-shown", "Orchard cottage: binder-given",
            "Orchard cottage: open-items-agreed", "Orchard cottage: signed-off"], left);
    }

    [Fact]
    public void NothingIsOpenAndNothingIsUnknown()
    {
        Assert.DoesNotContain(_orchard.Report.Findings, f => f.Open);
        Assert.Empty(_orchard.Report.Missing);
        Assert.DoesNotContain(House.PunchItems, p => !p.Done);
    }

    [Fact]
    public void TheMotorOfOneUnitWasReplacedAndAllThatItUndidIsDoneAgain()
    {
        var service = Assert.Single(House.Services);
        Assert.Equal(("W03 motor replaced 2026-07-20", "K-2207", ClaimOutcome.Granted), (service.Name, service.Claim, service.Item.Get(ServiceFacts.Outcome)));
        Assert.Empty(AskedAgain.Waiting(House));
    }

    [Fact]
    public void EveryRemoteHasAPresetForEachUnitThatItMoves() =>
        Assert.All(House.Remotes, remote => Assert.Equal(remote.Units.Select(u => u.Tag), Assert.Single(remote.Presets).Positions.Select(p => p.Unit.Tag)));

    [Fact]
    public void TenUnitsAreOnThePanelAndTheEleventhHasItsOwnSupply()
    {
        Assert.Equal(Enumerable.Range(1, 10), Assert.Single(House.Panels).Runs.Select(r => r.Output!.Value));
        Assert.Equal(PowerSource.PlugIn, House.Units.Single(u => u.Run is null).Power);
    }
}
