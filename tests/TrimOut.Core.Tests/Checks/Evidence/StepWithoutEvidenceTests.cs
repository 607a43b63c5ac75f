using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Evidence;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;
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
        Assert.Equal("\"Cable pulled, tails left\" is marked done; missing: tail at window, tail at panel, one piece.",
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

    // A later version asks for one more piece of evidence; a phase that was complete before it came is not asked for it.
    [Fact]
    public void ByALaterListAUnitIsHeldToTheStepsThatItIsAskedFor()
    {
        var job = Jobs.Walked("W02", Jobs.Walked(job: new TestJob(steps: LaterSteps.First)));
        foreach (var step in LaterSteps.First.Asked(Phase.Hang, job.Unit("W01")).ToList())
            job.Do(MarkStep.Done(job.Unit("W01"), step));
        job.Mark("W02", "clicked-in");
        var later = new TestJob(store: new MemoryStore("laptop", job.Scribe.Log.Changes), steps: LaterSteps.Second);
        var report = CheckReport.Of(later.House, LaterSteps.Second);
        string[] Missing(string tag) => [.. report.Findings.Where(f => f is { Check.Id: "step-without-evidence" } && f.Subject.Id == later.Unit(tag).Id)
            .Select(f => f.Found.Message.In(later.House)).Where(m => m.Contains("photo", StringComparison.Ordinal))];
        Assert.Empty(Missing("W01"));
        Assert.NotEmpty(Missing("W02"));
        later.Do(MarkStep.Done(later.Unit("W02"), LaterSteps.Levelled));
        Assert.Equal(report.Findings.Length, CheckReport.Of(later.House, LaterSteps.Second).Findings.Length);
    }

    // The field that a finding leads to is one that is asked for: not a later piece of evidence that is only offered.
    [Fact]
    public void TheFieldThatMendsIsOneThatIsAskedFor()
    {
        var clicked = StepList.Find("clicked-in")!;
        var first = clicked with { Evidence = [UnitFacts.Photo, .. clicked.Evidence], Later = clicked.Later.Add(UnitFacts.Photo, 2) };
        var steps = new StepList(StepList.All.Select(s => s.Id == first.Id ? first with { AlsoMissing = _ => OwnWords } : s));
        var job = Jobs.Walked();
        foreach (var step in StepList.Of(Phase.Hang, job.Unit("W01")).ToList())
            job.Do(MarkStep.Done(job.Unit("W01"), step));
        var later = new TestJob(store: new MemoryStore("laptop", job.Scribe.Log.Changes), steps: steps);
        var found = new StepWithoutEvidence(steps).Run(later.House).Single(r => r.Check.Phase == Phase.Hang && r.Subject.Id == later.Unit("W01").Id);
        Assert.NotEqual(UnitFacts.Photo.Name, Assert.IsType<Outcome.Found>(found.Outcome).Mends.Field);
    }

    private static readonly Message OwnWords = new("a level");

    private static CheckResult Only(TestJob job) => Assert.Single(Check.Run(job.House));

    [Fact]
    public void EachPhaseIsHeldByItselfAndOnlyWhatLacksIsNamed()
    {
        var job = Jobs.Roughed().Mark("W01", "cable-pulled").Mark("W01", "both-ends-labelled").Mark("W01", "remotes-paired");
        var results = Check.Run(job.House).ToList();
        Assert.Equal([Phase.RoughIn, Phase.Pair], results.Select(r => r.Check.Phase));
        Assert.Equal("\"Cable pulled, tails left\" is marked done; missing: one piece.", ((Outcome.Found)results[0].Outcome).Message.In(job.House));
    }

    [Fact]
    public void OnceTheHouseIsSignedOffNoMarkIsCleared()
    {
        var job = Jobs.Walked().Mark("W01", "cable-pulled");
        Assert.Equal("Write what is missing, or clear the mark.", ((Outcome.Found)Only(job).Outcome).Mend.In(job.House));
        job.SayOf("Test house", HouseFacts.AcceptedOn, "2026-09-30");
        Assert.EndsWith("the house is signed off.", ((Outcome.Found)Only(job).Outcome).Mend.In(job.House), StringComparison.Ordinal);
    }
}
