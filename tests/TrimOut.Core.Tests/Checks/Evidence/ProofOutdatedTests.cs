using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Evidence;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Evidence;

public class ProofOutdatedTests
{
    private static readonly ProofOutdated Check = new();

    public static Example Finds => new(() => Read(), j => j.Say("W01", RunFacts.Output, "7"));

    public static Example Passes => new(() => Read().Say("W01", RunFacts.Output, "7"), j => j.Say("W01", RunFacts.Output, "3"));

    [Fact]
    public void VoltsOfAnotherOutputAreAStop()
    {
        Read().Fine(Check, "W01");
        var result = Assert.Single(Check.Run(Read().Say("W01", RunFacts.Output, "7").House), r => r.Outcome is Outcome.Found);
        Assert.Equal((Severity.Stop, Phase.Power), (result.Check.Severity, result.Check.Phase));
    }

    [Fact]
    public void WhatWasPutBackIsNoOther() => Read().Say("W01", RunFacts.Output, "7").Say("W01", RunFacts.Output, "3").Fine(Check, "W01");

    [Fact]
    public void WhatWasReadInBetweenIs() =>
        Assert.Contains("Output was 7 and is 3", Read().Say("W01", RunFacts.Output, "7").Say("W01", RunFacts.OpenVolts, "12.1")
            .Say("W01", RunFacts.Output, "3").Fault(Check, "W01").Message, StringComparison.Ordinal);

    [Fact]
    public void AnOutputThatIsWrittenLateIsNoOther() =>
        Jobs.Roughed().WithPanel().Say("W01", RunFacts.OpenVolts, "12.1").Say("W01", RunFacts.Panel, "P1").Say("W01", RunFacts.Output, "3").Fine(Check, "W01");

    [Fact]
    public void ReadingsTakenAgainClearIt() =>
        Read().Say("W01", RunFacts.Output, "7").Say("W01", RunFacts.OpenVolts, "12.1").Fine(Check, "W01");

    [Fact]
    public void AnotherMotorIsPairedWithNothing()
    {
        var job = Jobs.Roughed().Say("W01", UnitFacts.Serial, "S1").Mark("W01", "hub-paired");
        job.Fine(Check, "W01");
        Assert.StartsWith("Serial was S1 and is S2", job.Say("W01", UnitFacts.Serial, "S2").Fault(Check, "W01").Message, StringComparison.Ordinal);
    }

    [Fact]
    public void VoltsThatWereReadOnAnotherPanelDoNotSayThatThisOneWasLive()
    {
        var job = Read().WithPanel("P2").SayOf("P2", PanelFacts.ConnectedOn, "2026-03-09").Say("W01", RunFacts.Panel, "P2").Say("W01", RunFacts.Output, "1");
        Assert.DoesNotContain(job.Report.Findings, f => f.Check.Id is "live-before-connected" && f.Subject.Id == job.Run("W01").Panel!.Id);
        Assert.Contains(job.Report.Findings, f => f.Check.Id == "proof-outdated");
    }

    private static TestJob Read() => Jobs.Roughed().WithPanel().Say("W01", RunFacts.Panel, "P1").Say("W01", RunFacts.Output, "3")
        .Say("W01", RunFacts.OpenVolts, "12.1");

    [Fact]
    public void WhatWasDoneWithAnotherMotorIsACautionAndNoStop()
    {
        var job = Jobs.Roughed().Say("W01", UnitFacts.Serial, "S1").Mark("W01", "hub-paired").Say("W01", UnitFacts.Serial, "S2");
        Assert.Equal([(Severity.Caution, Phase.Pair)], Found(job).Select(r => (r.Check.Severity, r.Check.Phase)));
    }

    [Fact]
    public void ALoopOfAnotherCableIsAStopInRoughIn()
    {
        var job = Jobs.Roughed().Add(ItemKind.CableType, "Other").Say("W01", RunFacts.Cable, "Other");
        Assert.Equal([(Severity.Stop, Phase.RoughIn)], Found(job).Select(r => (r.Check.Severity, r.Check.Phase)));
    }

    // Two grounds of one reading that each make a stop of it make one stop.
    [Fact]
    public void AnotherPanelAndAnotherOutputAreOneStop() => Assert.Equal([Severity.Stop],
        Found(Read().WithPanel("P2").Say("W01", RunFacts.Panel, "P2").Say("W01", RunFacts.Output, "1")).Select(r => r.Check.Severity));

    // The tail was left for a panel at another place: it is to be measured again, and nobody is hurt by it.
    [Theory]
    [InlineData("Attic", 1)]
    [InlineData("closet", 0)]
    public void ATailThatWasLeftForAPanelElsewhereIsACaution(string place, int found)
    {
        var job = Jobs.Roughed().WithPanel().WithPanel("P2").SayOf("P1", PanelFacts.Location, "Closet").SayOf("P2", PanelFacts.Location, place)
            .Say("W01", RunFacts.Panel, "P1").Say("W01", RunFacts.TailAtPanel, "72").Say("W01", RunFacts.Panel, "P2");
        Assert.Equal(Enumerable.Repeat((Severity.Caution, Phase.RoughIn), found), Found(job).Select(r => (r.Check.Severity, r.Check.Phase)));
    }

    [Fact]
    public void OfTheVoltsOnlyThoseUnderLoadAreOfTheMotorToo()
    {
        var open = Read().Say("W01", UnitFacts.Serial, "S1").Say("W01", RunFacts.OpenVolts, "12.1").Say("W01", UnitFacts.Serial, "S2");
        open.Fine(Check, "W01");
        var loaded = Read().Say("W01", UnitFacts.Serial, "S1").Say("W01", RunFacts.LoadedVolts, "11.8").Say("W01", UnitFacts.Serial, "S2");
        Assert.StartsWith("Serial was S1 and is S2", loaded.Fault(Check, "W01").Message, StringComparison.Ordinal);
    }

    [Fact]
    public void ARemoteThatMovesItSinceIsNew()
    {
        var job = Jobs.Roughed().Add(ItemKind.Remote, "R1").Mark("W01", "remotes-paired");
        Assert.Equal("R1 is to move it since 2026-03-02; shown before that: paired with its remotes.",
            job.SayOf("R1", RemoteFacts.Moves, "yes", job.Unit("W01").Id).Fault(Check, "W01").Message, ignoreCase: true);
        job.Do(MarkStep.Clear(job.Unit("W01"), StepList.Find("remotes-paired")!)).Mark("W01", "remotes-paired").Fine(Check, "W01");
    }

    [Fact]
    public void APresetThatGetsAPlaceForItSinceIsNew()
    {
        var job = Jobs.Roughed().Add(ItemKind.Remote, "R1");
        job.Do(AddItems.Preset(job.House.Remotes[0], "Evening")).Mark("W01", "preset-stored");
        Assert.StartsWith("Evening is to move it since 2026-03-02;",
            job.SayOf("Evening", PresetFacts.Position, "50", job.Unit("W01").Id).Fault(Check, "W01").Message, StringComparison.Ordinal);
    }

    // What was shown of the cable alone holds; what was shown of the unit that came first does not.
    [Fact]
    public void OnceItIsOrderedAgainAndAnotherOneCameWhatWasShownOfTheFirstIsOutdated()
    {
        var job = Read().Say("W01", UnitFacts.Serial, "S1").Mark("W01", "hub-paired").Say("W01", UnitFacts.ReorderedOn, "2026-03-05");
        Assert.Empty(Found(job));
        var result = Assert.Single(Found(job.Say("W01", UnitFacts.BoxLabel, "W01")));
        Assert.Equal(Phase.Pair, result.Check.Phase);
        Assert.StartsWith("It was ordered again on 2026-03-05, and another one came; shown before that:",
            ((Outcome.Found)result.Outcome).Message.In(job.House), StringComparison.Ordinal);
    }

    [Fact]
    public void WhatChangedOnTheCableThatItBranchesOffIsNamedAsThat()
    {
        var job = Jobs.Walked("W02", Read()).Say("W02", RunFacts.BranchesOff, "W01").Say("W02", RunFacts.OpenVolts, "12.1").Say("W01", RunFacts.Output, "7");
        Assert.StartsWith("Output of W01 was 3 and is 7", job.Fault(Check, "W02").Message, StringComparison.Ordinal);
        Assert.StartsWith("Output was 3 and is 7", job.Fault(Check, "W01").Message, StringComparison.Ordinal);
    }

    private static IEnumerable<CheckResult> Found(TestJob job) => Check.Run(job.House).Where(r => r.Outcome is Outcome.Found);

    /// <summary>Whatever is shown of a unit with its motor is outdated by another motor, each in its phase and with what is done about it.</summary>
    [Theory]
    [InlineData("cord-confirmed-by", Phase.Hang, "Look at its cords again")]
    [InlineData("open-gap", Phase.Limits, "Set its limits and presets again")]
    [InlineData("close-gap", Phase.Limits, "Set its limits and presets again")]
    [InlineData("loaded-volts", Phase.Power, "See the splice")]
    [InlineData("spliced", Phase.Power, "See the splice")]
    [InlineData("hub-paired", Phase.Pair, "Pair it again")]
    [InlineData("remotes-paired", Phase.Pair, "Pair it again")]
    [InlineData("moved-by-all", Phase.Pair, "Pair it again")]
    [InlineData("preset-stored", Phase.Limits, "Set its limits and presets again")]
    public void AnotherMotorOutdatesWhatWasShownOfTheFirst(string shown, Phase phase, string mend)
    {
        var job = Jobs.Roughed().Say("W01", UnitFacts.Serial, "S1");
        job = StepList.Find(shown) is not null ? job.Mark("W01", shown)
            : job.Say("W01", FactTable.Find(ItemKind.Unit, shown) ?? FactTable.Find(ItemKind.Run, shown)!, shown == "cord-confirmed-by" ? "The crew" : "1");
        Assert.Empty(Found(job));
        var result = Assert.Single(Found(job.Say("W01", UnitFacts.Serial, "S2")));
        Assert.Equal((Severity.Caution, phase), (result.Check.Severity, result.Check.Phase));
        Assert.StartsWith(mend, ((Outcome.Found)result.Outcome).Mend.In(job.House), StringComparison.Ordinal);
        Assert.EndsWith(shown, ((Outcome.Found)result.Outcome).Mends.Field, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("first-loop", Phase.RoughIn)]
    [InlineData("first-apart", Phase.RoughIn)]
    [InlineData("first-to-frame", Phase.RoughIn)]
    [InlineData("second-loop", Phase.CloseIn)]
    [InlineData("second-apart", Phase.CloseIn)]
    [InlineData("second-to-frame", Phase.CloseIn)]
    public void EveryReadingOfACableIsOutdatedByAnotherOne(string reading, Phase phase)
    {
        var job = Jobs.Walked().Say("W01", RunFacts.Cable, "16/2").Say("W01", FactTable.Find(ItemKind.Run, reading)!, "open").Add(ItemKind.CableType, "Other");
        var result = Assert.Single(Found(job.Say("W01", RunFacts.Cable, "Other")));
        Assert.Equal((Severity.Stop, phase, reading), (result.Check.Severity, result.Check.Phase, ((Outcome.Found)result.Outcome).Mends.Field));
        Assert.StartsWith("See where the cable ends", ((Outcome.Found)result.Outcome).Mend.In(job.House), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("open-volts", "12.1")]
    [InlineData("loaded-volts", "11.8")]
    [InlineData("polarity", "right")]
    [InlineData("went-dead", "this window")]
    public void EveryReadingOfAnOutputIsOutdatedByAnotherOneByAnotherCableAndByAnotherTrunk(string reading, string value)
    {
        TestJob Shown() => Jobs.Roughed().WithPanel().WithPanel("P2").Add(ItemKind.CableType, "Other").Say("W01", RunFacts.Panel, "P1")
            .Say("W01", RunFacts.Output, "3").Say("W01", FactTable.Find(ItemKind.Run, reading)!, value);
        void Outdated(TestJob job, string said)
        {
            var result = Assert.Single(Found(job), r => r.Check.Phase == Phase.Power);
            Assert.Equal((Severity.Stop, reading), (result.Check.Severity, ((Outcome.Found)result.Outcome).Mends.Field));
            Assert.StartsWith(said, ((Outcome.Found)result.Outcome).Message.In(job.House), StringComparison.Ordinal);
        }
        Assert.Empty(Found(Shown()));
        Outdated(Shown().Say("W01", RunFacts.Panel, "P2"), "Panel was P1 and is P2");
        Outdated(Shown().Say("W01", RunFacts.Output, "4"), "Output was 3 and is 4");
        Outdated(Shown().Say("W01", RunFacts.Cable, "Other"), "Cable was 16/2 and is Other");
    }

    [Theory]
    [InlineData("panel", "P2", "Panel of W01 was P1 and is P2")]
    [InlineData("cable", "Other", "Cable of W01 was 16/2 and is Other")]
    public void WhatChangesOnTheTrunkOutdatesWhatWasReadOnTheBranch(string fact, string typed, string said)
    {
        var job = Jobs.Walked("W02", Jobs.Roughed().WithPanel().WithPanel("P2").Add(ItemKind.CableType, "Other").Say("W01", RunFacts.Panel, "P1"))
            .Say("W02", RunFacts.BranchesOff, "W01").Say("W02", RunFacts.OpenVolts, "12.1");
        job.Fine(Check, "W02");
        Assert.StartsWith(said, job.Say("W01", FactTable.Find(ItemKind.Run, fact)!, typed).Fault(Check, "W02").Message, StringComparison.Ordinal);
    }

    [Fact]
    public void AStepThatWasNotNeededShowsNothing()
    {
        var job = Jobs.Walked().Say("W01", UnitFacts.Serial, "S1");
        job.Do(MarkStep.NotNeeded(job.Unit("W01"), StepList.Find("hub-paired")!, "no hub")).Say("W01", UnitFacts.Serial, "S2");
        Assert.Empty(Check.Run(job.House));
    }

    // Two that are shown with one value are told together, in one sentence for each value that changed.
    [Fact]
    public void WhatChangedIsToldOnceForAllThatWasShownWithIt()
    {
        var job = Read().Say("W01", RunFacts.Polarity, "right").Say("W01", RunFacts.Output, "7");
        Assert.Equal("Output was 3 and is 7 since 2026-03-02; shown before that: open-circuit volts, polarity.", job.Fault(Check, "W01").Message);
        job.Say("W01", RunFacts.OpenVolts, "12.1").Say("W01", RunFacts.Output, "8");
        Assert.Equal("Output was 7 and is 8 since 2026-03-02; shown before that: open-circuit volts. " +
            "Output was 3 and is 8 since 2026-03-02; shown before that: polarity.", job.Fault(Check, "W01").Message);
    }

    [Fact]
    public void AReadingThatIsTakenAwayIsNoProof() => Assert.Empty(Found(Read().Say("W01", RunFacts.Output, "7").Forget("W01", RunFacts.OpenVolts)));

    [Fact]
    public void AValueThatIsTakenAwayIsNoOther() => Assert.Empty(Found(Read().Forget("W01", RunFacts.Output)));
}
