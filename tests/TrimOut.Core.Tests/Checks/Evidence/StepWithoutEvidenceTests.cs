using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Evidence;
using TrimOut.Core.Decisions;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Evidence;

public class StepWithoutEvidenceTests
{
    private static readonly StepWithoutEvidence Check = new();

    public static Example Finds => new(() => Jobs.Walked(), j => j.Mark("W01", "cable-pulled"));

    public static Example Passes => new(() => Jobs.Walked(), j => j.Mark("W01", "entry-marked"));

    [Fact]
    public void AMarkWithItsEvidenceIsFine() => Assert.IsType<Outcome.Fine>(Only(Jobs.Walked().Mark("W01", "entry-marked")).Outcome);

    [Fact]
    public void AMarkWithoutItIsAStopInThePhaseOfTheStep()
    {
        var job = Jobs.Walked().Mark("W01", "cable-pulled");
        var result = Only(job);
        Assert.Equal("\"Cable pulled, tails left\" is marked done; missing: tail at window, tail at panel.",
            Assert.IsType<Outcome.Found>(result.Outcome).Message.In(job.House));
        Assert.Equal(Phase.RoughIn, result.Check.Phase);
        Assert.Equal("tail-at-window", ((Outcome.Found)result.Outcome).Mends.Field);
    }

    [Fact]
    public void EvidenceThatIsNoSingleFactCountsToo()
    {
        var job = Jobs.Walked().Mark("W01", "remotes-paired");
        Assert.Contains("a remote that moves it", Assert.IsType<Outcome.Found>(Only(job).Outcome).Message.In(job.House), StringComparison.Ordinal);
    }

    [Fact]
    public void WhatWasNotNeededNeedsNoEvidence()
    {
        var job = Jobs.Walked();
        Assert.Empty(Check.Run(job.Do(MarkStep.NotNeeded(job.Unit("W01"), StepList.Find("cable-pulled")!, "old cable kept")).House));
    }

    [Fact]
    public void NothingMarkedNothingSaid() => Assert.Empty(Check.Run(Jobs.Roughed().House));

    [Fact]
    public void PanelsAndTheHouseHaveStepsToo()
    {
        var job = Jobs.Walked().WithPanel();
        job.Do(MarkStep.Done(job.House.Panels[0], StepList.Find("mains-connected")!)).Do(MarkStep.Done(new JobItself(job.House), StepList.Find("signed-off")!));
        Assert.Equal([Phase.Power, Phase.Handover], Check.Run(job.House).Select(r => r.Check.Phase));
    }

    private static CheckResult Only(TestJob job) => Assert.Single(Check.Run(job.House));
}
