using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Evidence;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Tests.Decisions;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Evidence;

public class StepPassedOverTests
{
    private static readonly StepPassedOver Check = new();

    public static Example Finds => new(() => Marked(Phase.WalkThrough, Phase.RoughIn), j => Mark(j, Phase.Measure));

    public static Example Passes => new(() => Marked(Phase.WalkThrough, Phase.RoughIn), j => Mark(j, Phase.CloseIn));

    [Fact]
    public void AStepThatIsOpenWhileALaterPhaseIsDoneIsACautionInItsPhase()
    {
        var job = Mark(Marked(Phase.WalkThrough, Phase.RoughIn), Phase.Measure);
        var result = Assert.Single(Check.Run(job.House));
        Assert.Equal("Passed over: Cable found again, Entry as built, Tail still long enough, Second test. \"Opening measured\" is done already.",
            Assert.IsType<Outcome.Found>(result.Outcome).Message.In(job.House));
        Assert.Equal((Severity.Caution, Phase.CloseIn), (result.Check.Severity, result.Check.Phase));
    }

    [Fact]
    public void ALaterPhaseThatIsOnlyBegunPassesNothingOver() =>
        Assert.DoesNotContain(Check.Run(Marked(Phase.WalkThrough, Phase.RoughIn).Mark("W01", "measured").House), r => r.Outcome is Outcome.Found);

    [Fact]
    public void WhatIsNotNeededIsNotOpen()
    {
        var job = Mark(Marked(Phase.WalkThrough, Phase.RoughIn), Phase.Measure);
        foreach (var step in StepList.Of(Phase.CloseIn, job.Unit("W01")).ToList())
            job.Do(MarkStep.NotNeeded(job.Unit("W01"), step, "no wall was closed"));
        job.Fine(Check, "W01");
    }

    [Fact]
    public void ASignatureMakesAStopOfEveryStepThatIsOpen()
    {
        var job = Marked(Phase.WalkThrough).SayOf("Test house", HouseFacts.AcceptedOn, "2026-09-30");
        var results = Check.Run(job.House).ToList();
        Assert.All(results, r => Assert.Equal(Severity.Stop, r.Check.Severity));
        Assert.Equal(PhaseNames.All.Count - 1, results.Count(r => r.Subject.Kind == ItemKind.Unit));
        Assert.StartsWith("The house is signed off with this open: Demonstration given, ", Said.Of(Assert.IsType<Outcome.Found>(
            results.Last(r => r.Subject.Id == House.RootId).Outcome), job.House).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void WhatIsAskedAgainAfterTheSignatureIsACautionThatSaysSinceWhen()
    {
        var job = ServedHouse.Of().Serve("Attic replaced 2027-03-02");
        var results = Check.Run(job.House).Where(r => r.Outcome is Outcome.Found).ToList();
        Assert.Equal(2, results.Count);
        Assert.All(results, r => Assert.Equal((Severity.Caution, Phase.Pair), (r.Check.Severity, r.Check.Phase)));
        Assert.Equal("To be done again: Paired with the hub, Moved from every remote (Attic replaced 2027-03-02).",
            ((Outcome.Found)results[0].Outcome).Message.In(job.House));
    }

    [Fact]
    public void WhatWasOpenAtTheSignatureStaysAStopBesideWhatIsAskedAgain()
    {
        var job = ServedHouse.Of();
        job.Do(MarkStep.Clear(job.Unit("W01"), StepList.Find("hub-paired")!)).Serve("Attic replaced");
        Assert.Equal([Severity.Stop, Severity.Caution], Check.Run(job.House).Where(r => r.Outcome is Outcome.Found && r.Subject.Id == job.Unit("W01").Id)
            .Select(r => r.Check.Severity).Order());
    }

    [Fact]
    public void AWindowThatCameAfterTheSignatureIsNotSignedOver()
    {
        var job = Jobs.Walked("W03", ServedHouse.Of());
        Assert.DoesNotContain(Check.Run(job.House), r => r.Outcome is Outcome.Found);
        job.Do(LeaveOut.Window(job.House.FindTag("W03")!, "stays as it is"));
        Assert.DoesNotContain(Check.Run(job.Do(LeaveOut.TakeIn(job.House.FindTag("W03")!)).House), r => r.Outcome is Outcome.Found);
    }

    /// <summary>Whoever marks it past the guard, in another copy or before there was one, hears it here.</summary>
    [Fact]
    public void AHandoverThatIsMarkedBeforeVoltsAreReadIsACaution()
    {
        var job = Marked(Phase.WalkThrough, Phase.RoughIn, Phase.CloseIn);
        job.Do(MarkStep.Done(new JobItself(job.House), StepList.Find("binder-given")!));
        var result = Assert.Single(Check.Run(job.House), r => r.Subject.Id == House.RootId);
        Assert.Equal("\"Binder given\" is marked done, and not done yet: Volts and polarity read of W01.",
            Assert.IsType<Outcome.Found>(result.Outcome).Message.In(job.House));
        Assert.Equal((Severity.Caution, Phase.Handover), (result.Check.Severity, result.Check.Phase));
        job.Mark("W01", "volts-read");
        Assert.DoesNotContain(Check.Run(job.House), r => r.Subject.Id == House.RootId && r.Outcome is Outcome.Found);
    }

    [Theory]
    [InlineData("hub-paired", "Volts and polarity read")]
    [InlineData("open-limit", "Clicked in, Volts and polarity read")]
    [InlineData("preset-stored", "Paired with its remotes")]
    public void AStepAfterPowerThatIsMarkedBeforeWhatItPresupposesIsACaution(string step, string before)
    {
        var job = Jobs.Walked().Mark("W01", step);
        Assert.EndsWith($"is marked done, and not done yet: {before}.", job.Fault(Check, "W01").Message, StringComparison.Ordinal);
    }

    [Fact]
    public void AMarkThatSaysWhyItWasMadeAllTheSameIsLetPass()
    {
        var job = Jobs.Walked();
        job.Do(MarkStep.InOrder(job.Unit("W01"), StepList.Find("hub-paired")!, job.Report, StepList.Shipped, "paired on the bench"));
        Assert.Empty(Check.Run(job.House));
    }

    [Fact]
    public void ManyUnitsAreCounted()
    {
        var job = Enumerable.Range(1, 9).Aggregate(new TestJob(), (j, n) => Jobs.Walked($"W0{n}", j));
        job.Do(MarkStep.Done(new JobItself(job.House), StepList.Find("binder-given")!));
        Assert.Contains("Volts and polarity read of W01, W02, W03, W04, W05, W06 and 3 more", job.FaultOf(Check, "Test house").Message,
            StringComparison.Ordinal);
    }

    [Fact]
    public void AHouseInWhichNothingWasDoneYetHasNothingToCompare() => Assert.Empty(Check.Run(Jobs.Walked().House));

    private static TestJob Marked(params Phase[] phases) => phases.Aggregate(Jobs.Walked(), Mark);

    private static TestJob Mark(TestJob job, Phase phase)
    {
        foreach (var step in StepList.Of(phase, job.Unit("W01")).ToList())
            job.Mark("W01", step.Id);
        return job;
    }

    [Fact]
    public void SixUnitsAreNamedAndNoneIsCounted()
    {
        var job = Enumerable.Range(1, 6).Aggregate(new TestJob(), (j, n) => Jobs.Walked($"W0{n}", j));
        job.Do(MarkStep.Done(new JobItself(job.House), StepList.Find("binder-given")!));
        Assert.Contains("Volts and polarity read of W01, W02, W03, W04, W05, W06.", job.FaultOf(Check, "Test house").Message, StringComparison.Ordinal);
    }

    // Until the power is on, units are worked on in any order: what was passed over is told by the phase.
    [Theory]
    [InlineData("tested-second")]
    [InlineData("size-worked-out")]
    [InlineData("landed")]
    public void UpToThePowerOneStepBeforeAnotherIsLetPass(string step) => Assert.Empty(Check.Run(Jobs.Walked().Mark("W01", step).House));

    [Fact]
    public void WhatWasOpenAtTheSignatureAndWhatIsAskedAgainAreToldApart()
    {
        var job = ServedHouse.Of();
        job.Do(MarkStep.Clear(job.Unit("W01"), StepList.Find("hub-paired")!)).Serve("Attic replaced");
        var said = Check.Run(job.House).Where(r => r.Outcome is Outcome.Found && r.Subject.Id == job.Unit("W01").Id)
            .ToDictionary(r => r.Check.Severity, r => ((Outcome.Found)r.Outcome).Message.In(job.House));
        Assert.Equal("The house is signed off with this open: Paired with the hub.", said[Severity.Stop]);
        Assert.StartsWith("To be done again: Moved from every remote (", said[Severity.Caution], StringComparison.Ordinal);
    }
}
