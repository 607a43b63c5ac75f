using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Decisions;

/// <summary>Which step makes no sense before which other: common practice, no published source.</summary>
public class StepGuardTests
{
    private static System.Collections.Immutable.ImmutableArray<string> Against(TestJob job, string step, string tag = "W01") =>
        StepGuard.Against(job.Unit(tag), StepList.Find(step)!, job.Report, StepList.Shipped);

    private static Result<Draft> Mark(TestJob job, string step, string? although = null) =>
        MarkStep.InOrder(job.Unit("W01"), StepList.Find(step)!, job.Report, StepList.Shipped, although);

    private static TestJob Received(string delivered) => new TestJob().Window("W01")
        .Say("W01", UnitFacts.OrderWidth, "36").Say("W01", UnitFacts.OrderHeight, "60")
        .Mark("W01", "sheet-frozen").Say("W01", UnitFacts.DeliveredWidth, delivered).Say("W01", UnitFacts.DeliveredHeight, "60");

    [Fact]
    public void AUnitIsNotClickedInBeforeItsBoxWasMatched() =>
        Assert.Contains("\"Box matched\" (Receive) is not done yet.", Against(new TestJob().Window("W01"), "clicked-in"));

    [Fact]
    public void WhatIsNotNeededSpeaksAgainstNothing()
    {
        var job = new TestJob().Window("W01").Say("W01", UnitFacts.Damage, "none").Say("W01", UnitFacts.LeadSide, "left")
            .Say("W01", UnitFacts.LeadCameAt, "left").Mark("W01", "looked-over").Say("W01", UnitFacts.Setback, "1").Say("W01", UnitFacts.FixedInto, "wood")
            .Mark("W01", "brackets-fixed").Mark("W01", "centre-support-clear");
        job.Do(MarkStep.NotNeeded(job.Unit("W01"), StepList.Find("box-matched")!, "came without a box"));
        Assert.Empty(Against(job, "clicked-in"));
    }

    [Fact]
    public void AWrongSizeSpeaksAgainstTheBoxAndAgainstHanging()
    {
        var job = Received("35");
        Assert.Contains("35\" x 60\" came", Assert.Single(Against(job, "box-matched")), StringComparison.Ordinal);
        Assert.Contains(Against(job.Mark("W01", "box-matched"), "clicked-in"), a => a.StartsWith("STOP ", StringComparison.Ordinal));
        Assert.Empty(Against(Received("36"), "box-matched"));
    }

    [Fact]
    public void PolaritySpeaksAgainstPairingUntilItIsWaived()
    {
        var job = new TestJob().Window("W01").Mark("W01", "volts-read").Say("W01", RunFacts.Polarity, "swapped");
        Assert.Contains(Against(job, "hub-paired"), a => a.Contains("Plus and minus are changed over", StringComparison.Ordinal));
        job.Do(PunchList.Waive(job.Report.OpenStops.Single(f => f.Check.Id == "polarity-swapped"), job.House, "The sheet has it so.", "TO"));
        Assert.DoesNotContain(Against(job, "hub-paired"), a => a.Contains("Plus and minus", StringComparison.Ordinal));
    }

    [Fact]
    public void AUnitWithoutAPanelIsPairedWithoutVolts() =>
        Assert.Empty(Against(new TestJob().Window("W01").Say("W01", UnitFacts.Power, "battery"), "hub-paired"));

    [Fact]
    public void AStopOfThePartThatAUnitIsOfSpeaksAgainstOrderingAndPoweringItAndIsToldOnceOfThePart()
    {
        var job = new TestJob().Window("W01").Window("W02");
        var kind = job.Unit("W01").Kind!;
        job.Do(new Draft("sheet").Put(kind.Id, CoveringKindFacts.MotorVolts, new Voltage(48)));
        var stop = Assert.Single(job.Report.OpenStops, f => f.Check.Id == "motor-off-supply");
        Assert.Equal(kind.Id, stop.Subject.Id);
        Assert.DoesNotContain(stop, job.Report.About(job.Unit("W01")));
        Assert.Contains(stop, job.Report.StopsOfParts(job.Unit("W01")));
        foreach (var step in new[] { "sheet-frozen", "hub-paired" })
            Assert.Contains(Against(job, step), a => a.StartsWith("STOP ", StringComparison.Ordinal) && a.Contains("48 V", StringComparison.Ordinal));
        job.Do(PunchList.Waive(stop, job.House, "A panel of that voltage comes.", "TO"));
        Assert.Empty(job.Report.StopsOfParts(job.Unit("W01")));
    }

    [Fact]
    public void MainsOfItsPanelComeBeforeVoltsOfAUnit()
    {
        var job = new TestJob().Window("W01").Add(ItemKind.Panel, "A").Mark("W01", "spliced");
        job.Do(Landing.Land(job.Run("W01"), job.House.Panels[0], 1));
        Assert.Contains("\"Connected to mains by a licensed electrician\" (Power) is not done yet: A.", Against(job, "volts-read"));
    }

    [Fact]
    public void AHouseIsNotSignedBeforeEveryUnitWasShown()
    {
        var job = new TestJob().Window("W01").Window("W02").Mark("W02", "shown");
        var against = StepGuard.Against(new JobItself(job.House), StepList.Find("signed-off")!, job.Report, StepList.Shipped);
        Assert.Contains("\"Shown to the owner\" (Handover) is not done yet: W01.", against);
    }

    /// <summary>Every step of the handover, of a unit and of the house, waits for volts and loops, and says so where it is marked.</summary>
    [Theory]
    [InlineData("demonstrated")]
    [InlineData("power-cut-shown")]
    [InlineData("binder-given")]
    [InlineData("open-items-agreed")]
    [InlineData("signed-off")]
    public void NothingIsHandedOverBeforeVoltsAreRead(string step)
    {
        var job = new TestJob().Window("W01").Window("W02").Mark("W02", "volts-read").Mark("W02", "tested-second");
        var against = StepGuard.Against(new JobItself(job.House), StepList.Find(step)!, job.Report, StepList.Shipped);
        Assert.Contains(against, a => a == "\"Volts and polarity read\" (Power) is not done yet: W01." || a.Contains("before it are not done yet",
            StringComparison.Ordinal));
    }

    /// <summary>What a step after power presupposes leads back to volts and to both loops, by one step or by several.</summary>
    [Fact]
    public void EveryStepAfterPowerWaitsForVoltsAndForLoops()
    {
        static IEnumerable<string> All(string id) => StepOrder.Of(StepList.Find(id)!).Before.SelectMany(b => All(b).Append(b));
        Assert.All(StepList.All.Where(s => s.Phase > Phase.Power), step =>
        {
            Assert.True(StepOrder.Of(step).AllEarlier || All(step.Id).Contains("volts-read"), step.Id);
            Assert.True(StepOrder.Of(step).AllEarlier || All(step.Id).Contains("tested-second"), step.Id);
        });
    }

    /// <summary>Behind drywall a wrong lead side costs the wall: whoever finds the cable again is told of it.</summary>
    [Fact]
    public void AStopOfTheLeadSideSpeaksAgainstFindingTheCableAgain()
    {
        var job = new TestJob().Window("W01").Mark("W01", "cable-pulled").Say("W01", UnitFacts.LeadSide, "right").Say("W01", UnitFacts.EntrySide, "left");
        Assert.Contains(job.Report.OpenStops, f => f.Check.Phase == Phase.WalkThrough);
        Assert.All(job.Report.OpenStops.Where(f => f.Check.Phase <= Phase.RoughIn), stop =>
            Assert.Contains(Against(job, "cable-found"), a => a.Contains(stop.Found.Message.In(job.House), StringComparison.Ordinal)));
    }

    [Fact]
    public void ManyStopsAreCountedAndTheWorstIsTold()
    {
        var job = Received("35").Say("W01", UnitFacts.BoxLabel, "W09").Say("W01", UnitFacts.Damage, "bent").Mark("W01", "box-matched");
        var stops = job.Report.OpenStops.Where(f => f.Check.Phase is Phase.Receive or Phase.Hang).ToList();
        Assert.True(stops.Count > 2);
        var said = Against(job, "clicked-in")[0];
        Assert.StartsWith($"{stops.Count} stops are open; the worst: STOP ", said, StringComparison.Ordinal);
        Assert.Contains(stops, s => said.Contains(s.Found.Message.In(job.House), StringComparison.Ordinal));
    }

    [Fact]
    public void AtHandoverEveryStepThatIsLeftSpeaksAgainstIt()
    {
        var job = new TestJob().Window("W01").Mark("W01", "moved-by-all").Mark("W01", "open-limit").Mark("W01", "close-limit");
        Assert.Matches("^\\d+ steps before it are not done yet, the first: \"Opening recorded\" \\(Walk-through\\)\\.$", Against(job, "shown")[^1]);
        var signed = StepGuard.Against(new JobItself(job.House), StepList.Find("signed-off")!, job.Report, StepList.Shipped);
        Assert.Contains(signed, a => a.EndsWith("the first: \"Opening recorded\" (Walk-through) of W01.", StringComparison.Ordinal));
    }

    [Fact]
    public void WithoutAReasonItIsRefusedAndNamesWhatSpeaksAgainstIt()
    {
        var refused = Mark(Received("35"), "box-matched");
        Assert.Contains("35\" x 60\" came", refused.Reason, StringComparison.Ordinal);
        Assert.False(Mark(Received("35"), "box-matched", "  ").Ok);
    }

    [Fact]
    public void TheReasonIsKeptWithTheMarkAndInTheHistory()
    {
        var job = Received("35");
        job.Do(Mark(job, "box-matched", "the maker sends another head"));
        Assert.Equal(new StepMark(null, "the maker sends another head"), job.Unit("W01").MarkOf(StepList.Find("box-matched")!));
        Assert.Contains("Reason: the maker sends another head", job.Scribe.Log.Changes[^1].What, StringComparison.Ordinal);
    }

    [Fact]
    public void WhereNothingSpeaksAgainstItNoReasonIsKept()
    {
        var job = Received("36");
        job.Do(Mark(job, "box-matched", "no need"));
        Assert.Equal(StepMark.Done, job.Unit("W01").MarkOf(StepList.Find("box-matched")!));
    }

    [Fact]
    public void NothingThatAsksPeopleMarksPastTheGuard() => Assert.DoesNotContain(
        Directory.EnumerateFiles(Path.Combine(RepositoryRoot.Path, "src"), "*.cs", SearchOption.AllDirectories)
            .Where(f => Path.GetFileName(f) != "MarkStep.cs"),
        f => File.ReadAllText(f).Contains("MarkStep.Done(", StringComparison.Ordinal));

    [Theory]
    [InlineData("done")]
    [InlineData("done although: late")]
    [InlineData("not needed: battery")]
    public void EveryMarkIsReadAsItIsWritten(string stored) => Assert.Equal(stored, StepMark.Read(stored).Value.ToString());

    [Theory]
    [InlineData("done although: ")]
    [InlineData("not needed:")]
    [InlineData("yes")]
    public void WhatIsNoMarkIsRefused(string stored) => Assert.False(StepMark.Read(stored).Ok);
}
