using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Boxes;
using TrimOut.Core.Checks.Evidence;
using TrimOut.Core.Checks.Measures;
using TrimOut.Core.Checks.Panels;
using TrimOut.Core.Checks.Rough;
using TrimOut.Core.Checks.Safety;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Tests.Checks;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Facts;

public class AbsenceWordsTests
{
    private const string House = "Test house";

    [Theory]
    [InlineData("none")]
    [InlineData("None.")]
    [InlineData(" no ")]
    [InlineData("Nothing")]
    [InlineData("No damage")]
    [InlineData("-")]
    [InlineData("n/a")]
    [InlineData("N/A.")]
    [InlineData("keine")]
    [InlineData("Kein Schaden.")]
    [InlineData("nichts")]
    [InlineData("Ninguno.")]
    [InlineData("nada")]
    [InlineData("Sin daños")]
    public void NothingIsThere(string text)
    {
        Assert.True(AbsenceWords.SayNothing(text));
        Assert.True(AbsenceWords.SayNoMore(text));
    }

    [Theory]
    [InlineData("nobody")]
    [InlineData("Nobody yet")]
    [InlineData("not yet")]
    [InlineData("Not tested")]
    [InlineData("not tested yet.")]
    [InlineData("?")]
    [InlineData("none?")]
    [InlineData("no license")]
    [InlineData("TBD")]
    [InlineData("noch nicht")]
    [InlineData("noch nicht geprüft")]
    [InlineData("Niemand")]
    [InlineData("noch niemand")]
    [InlineData("unbekannt")]
    [InlineData("nadie")]
    [InlineData("Todavía no")]
    [InlineData("sin probar")]
    [InlineData("pendiente")]
    public void ThatIsNotKnownOrNotDoneIsNoEvidenceAndNotNothing(string text)
    {
        Assert.False(AbsenceWords.SayNothing(text));
        Assert.True(AbsenceWords.SayNoMore(text));
    }

    [Theory]
    [InlineData("No. 4711")]
    [InlineData("No bottom bar")]
    [InlineData("Noah, electrician")]
    [InlineData("Nobody's house, the firm next door")]
    [InlineData("A laboratory: none")]
    [InlineData("no lead found, A laboratory")]
    [InlineData("nothing fits")]
    [InlineData("Open Sky Electric")]
    public void WhateverSaysMoreIsTaken(string text)
    {
        Assert.False(AbsenceWords.SayNothing(text));
        Assert.False(AbsenceWords.SayNoMore(text));
    }

    [Theory]
    [InlineData("none", "EL-1234", "name")]
    [InlineData("nobody yet", "EL-1234", "name")]
    [InlineData("Mains Bros", "none", "license")]
    [InlineData("Mains Bros", "?", "license")]
    public void NoElectricianIsSignedForByAWordOfAbsence(string by, string licence, string missing) =>
        Assert.Equal($"Volts were read on P1 and no {missing} stands beside its mains connection.",
            Live().SayOf("P1", PanelFacts.ConnectedBy, by).SayOf("P1", PanelFacts.Licence, licence).FaultOf(new MainsUnsigned(), "P1").Message);

    [Fact]
    public void AHoleThatNobodySealedYetIsOpen()
    {
        var job = Jobs.Roughed().Legs("W01", ("20 ft", CablePlace.InWall)).Say("W01", RunFacts.FirstLoop, "0.8");
        foreach (var at in job.Run("W01").Legs)
        {
            job.Do(Core.Decisions.SetFact.Typed(job.House, at.Item, LegFacts.FireBarrier, "yes"));
            job.Do(Core.Decisions.SetFact.Typed(job.House, job.House.Find(at.Id)!, LegFacts.SealedBy, "nobody yet"));
        }
        Assert.Contains("nobody has written who sealed the hole", job.Fault(new FireStopOpen(), "W01").Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("not tested")]
    [InlineData("noch nicht geprüft")]
    public void PaintThatIsNotTestedIsUntested(string typed) => Assert.Equal("The oldest paint is of 1920 and may hold lead; no test of it is written.",
        Old().SayOf(House, HouseFacts.PaintTested, typed).FaultOf(new OldPaintUntested(), House).Message);

    [Fact]
    public void LeadThatWasFoundIsTreatedBySomebody()
    {
        var job = Old().SayOf(House, HouseFacts.PaintTested, "positive, lead found");
        Assert.Equal("The oldest paint is of 1920, and its test says \"positive, lead found\"; nobody has written who treats it as lead paint, and how.",
            job.FaultOf(new OldPaintUntested(), House).Message);
        job.SayOf(House, HouseFacts.PaintTested, "positive; a certified painter strips it wet");
        Assert.IsType<Outcome.Fine>(job.Of(new OldPaintUntested(), House));
        job.SayOf(House, HouseFacts.PaintTested, "A laboratory: no lead found");
        Assert.IsType<Outcome.Fine>(job.Of(new OldPaintUntested(), House));
    }

    [Fact]
    public void AStepWhoseEvidenceIsAWordOfAbsenceLacksIt()
    {
        var job = Jobs.Walked().SayOf(House, HouseFacts.DrillGuard, "glasses and a vacuum");
        job.Do(j => Core.Decisions.MarkStep.Done(new JobItself(j.House), Core.Phases.StepList.Find("drilling-guarded")!));
        Assert.DoesNotContain(new StepWithoutEvidence().Run(job.House), Lacking);
        job.SayOf(House, HouseFacts.DrillGuard, "none");
        var found = (Outcome.Found)Assert.Single(new StepWithoutEvidence().Run(job.House), Lacking).Outcome;
        Assert.Equal(HouseFacts.DrillGuard.Name, found.Mends.Field);

        static bool Lacking(CheckResult result) => result is { Subject.Id: Core.Houses.House.RootId, Outcome: Outcome.Found };
    }

    [Theory]
    [InlineData("no")]
    [InlineData("nothing")]
    [InlineData("None.")]
    [InlineData("No damage")]
    public void WhatSaysThatNothingIsWrongIsNoDamageAndNothingInTheWay(string typed)
    {
        Jobs.Walked().Say("W01", UnitFacts.Damage, typed).Fine(new DeliveredDamaged(), "W01");
        Jobs.Measured().Say("W01", WindowFacts.InTheWay, typed).Fine(new HandleInHangingPlane(), "W01");
    }

    [Theory]
    [InlineData("none", false)]
    [InlineData("Nothing.", false)]
    [InlineData("keine", false)]
    [InlineData("ninguno", false)]
    [InlineData("no bottom bar", true)]
    [InlineData("?", true)]
    public void APunchItemThatSaysNothingIsNotOpen(string typed, bool open)
    {
        var job = new TestJob();
        job.Do(Core.Decisions.PunchList.Write(job.House, job.House.Job, typed, Core.Phases.Phase.Handover));
        Assert.Equal(open, Assert.Single(job.House.PunchItems).Open);
    }

    [Fact]
    public void WhatNobodyKnowsYetIsNotAPass()
    {
        Jobs.Walked().Say("W01", UnitFacts.Damage, "not checked yet").Lacks(new DeliveredDamaged(), "W01", "damage");
        Jobs.Measured().Say("W01", WindowFacts.InTheWay, "?").Lacks(new HandleInHangingPlane(), "W01", "obstructions");
    }

    [Fact]
    public void ADashIsNoReasonToLeaveAWindowOut()
    {
        var job = Jobs.Walked().Say("W01", WindowFacts.NotCoveredBecause, "-").Say("W01", WindowFacts.Covered, "no");
        Assert.IsType<Outcome.Found>(Assert.Single(new WindowLeftOutWithoutReason().Run(job.House)).Outcome);
    }

    [Fact]
    public void OneOfTheCrewIsNoLicensedElectrician()
    {
        var job = Live().SayOf(House, HouseFacts.Crew, "Lea and Max").SayOf("P1", PanelFacts.ConnectedBy, "max").SayOf("P1", PanelFacts.Licence, "EL-1");
        Assert.Equal("P1 was connected to mains by max, who stands in this job as somebody else than the licensed electrician.",
            job.FaultOf(new MainsUnsigned(), "P1").Message);
        job.Add(ItemKind.Contact, "Max").SayOf("Max", ContactFacts.Part, "electrician");
        Assert.IsType<Outcome.Fine>(job.Of(new MainsUnsigned(), "P1"));
        job.SayOf("Max", ContactFacts.Part, "supplier").SayOf(House, HouseFacts.Crew, "Lea");
        Assert.IsType<Outcome.Found>(job.Of(new MainsUnsigned(), "P1"));
    }

    private static TestJob Old() => new TestJob().SayOf(House, HouseFacts.OldestPaint, "1920");

    private static TestJob Live() =>
        Jobs.Walked().WithPanel().Say("W01", RunFacts.Panel, "P1").Say("W01", RunFacts.Output, "1").Say("W01", RunFacts.OpenVolts, "12.1");
}
