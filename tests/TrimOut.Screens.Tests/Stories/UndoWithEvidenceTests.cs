using Microsoft.Extensions.Time.Testing;
using TrimOut.Core.Facts;
using TrimOut.Core.Phases;
using TrimOut.Testing;

namespace TrimOut.Screens.Tests.Stories;

/// <summary>A step marked on the wrong unit, with its evidence: what was one act is taken back as one.</summary>
public class UndoWithEvidenceTests
{
    private const string Step = "both-ends-labelled";

    private readonly TestJob _job = new TestJob().Window("W01").Window("W02").Say("W02", UnitFacts.BoxLabel, "W02");

    private TerminalUser User() => new(new TestDesk(new FakeTimeProvider()), _job.Scribe);

    [Fact]
    public void AMarkGoesWithTheEvidenceThatWasTypedForItAndComesBackWithIt()
    {
        _job.Say("W01", RunFacts.LabelAtWindow, "W01").Say("W01", RunFacts.LabelAtPanel, "W01").Mark("W01", Step);
        using var user = User();
        user.Press("u").Sees("typed for it: ").Sees(RunFacts.LabelAtPanel.Label).Sees("u or y undoes all of it").Press("u");
        Assert.Equal((false, "", ""), Now());
        Assert.Equal("W02", _job.Unit("W02").Show(UnitFacts.BoxLabel));
        user.Press("U", "U");
        Assert.Equal((true, "W01", "W01"), Now());

        (bool, string, string) Now() => (user.House.Units[0].MarkOf(StepList.Find(Step)!) is not null,
            user.House.Units[0].Run!.Show(RunFacts.LabelAtWindow), user.House.Units[0].Run!.Show(RunFacts.LabelAtPanel));
    }

    [Fact]
    public void WhatWasNotedBeforeOtherWorkStaysAndThatIsSaid()
    {
        _job.Say("W01", RunFacts.LabelAtWindow, "W01").Say("W02", UnitFacts.BoxLabel, "W2").Say("W01", RunFacts.LabelAtPanel, "W01").Mark("W01", Step);
        using var user = User();
        user.Press("u").Sees($"stays: {RunFacts.LabelAtWindow.Label}").Press("u");
        Assert.Equal(("W01", ""), (user.House.Units[0].Run!.Show(RunFacts.LabelAtWindow), user.House.Units[0].Run!.Show(RunFacts.LabelAtPanel)));
    }

    [Fact]
    public void AReadingGoesWithWhatStandsBesideIt()
    {
        _job.SayOf("", HouseFacts.Meter, "M1").Say("W01", RunFacts.FirstLoop, "1.28").Mark("W01", StepList.All.First(s =>
            s.Evidence.Contains(RunFacts.FirstLoop)).Id);
        using var user = User();
        user.Press("u").Sees(RunFacts.FirstLoop.Label).Press("u");
        Assert.Equal("", user.House.Units[0].Run!.Show(RunFacts.FirstLoop));
    }
}
