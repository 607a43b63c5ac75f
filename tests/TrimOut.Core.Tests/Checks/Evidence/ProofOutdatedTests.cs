using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Evidence;
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
}
