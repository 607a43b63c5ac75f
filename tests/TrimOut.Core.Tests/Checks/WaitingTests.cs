using TrimOut.Core.Checks;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks;

/// <summary>What a report counts: checks that wait, what they wait for, and stops by what they are about.</summary>
public class WaitingTests
{
    private static readonly Message Words = new("{0}");

    private readonly TestJob _job = Jobs.Walked("W02", Jobs.Walked());

    private static Says<Window> LacksDepth(Phase phase) => new($"lacks-depth-{(int)phase}", Subjects.CoveredWindows, Severity.Stop, phase,
        w => NotChecked.Of(w, WindowFacts.Depth));

    private static Says<Unit> LacksSheet(Phase phase) => new($"lacks-sheet-{(int)phase}", Subjects.Units, Severity.Stop, phase,
        u => NotChecked.Of(u.Kind, CoveringKindFacts.MotorVolts, u, UnitFacts.Kind));

    private static Says<JobItself> LacksWords() => new("lacks-words", Subjects.House, Severity.Stop, Phase.Power,
        _ => new Outcome.NotChecked(Words.With(Arg.Typed("a panel"))));

    private static Outcome.Found Found(Subject subject, Fact fact) => new(Words.With(Arg.Typed("found")), Words.With(Arg.Typed("mend")),
        FieldRef.To(subject.Item, fact));

    [Fact]
    public void ChecksAreCountedAndEachDetailOnce()
    {
        var report = CheckReport.Of(_job.House, [LacksDepth(Phase.Measure), LacksDepth(Phase.Order), LacksSheet(Phase.Order), LacksWords()]);
        Assert.Equal(new Waiting(7, 4), report.Waiting);
        Assert.Equal("7 checks waiting for 4 details", report.Waiting.ToString());
        Assert.Equal("1 check waiting for 1 detail", Waiting.Of(report.Missing.Take(1)).ToString());
        Assert.False(report.Waiting.None);
        Assert.True(Waiting.Of([]).None);
    }

    [Fact]
    public void WhatWaitsForASheetIsToldApart()
    {
        var report = CheckReport.Of(_job.House, [LacksDepth(Phase.Measure), LacksSheet(Phase.Order), LacksWords()]);
        Assert.Equal(new Waiting(2, 1), report.WaitingForSheets);
        Assert.Equal(1, report.PartsWaitedFor);
        Assert.Equal([false, false, true, true, false], report.Missing.Select(report.WaitsForSheet));
        Assert.Equal(0, CheckReport.Of(_job.House, [LacksDepth(Phase.Measure)]).PartsWaitedFor);
    }

    [Fact]
    public void AKindThatIsNotChosenIsNoSheet()
    {
        var report = CheckReport.Of(_job.Say("W01", UnitFacts.Kind, "").House, [LacksSheet(Phase.Order)]);
        Assert.Equal(new Waiting(1, 1), report.WaitingForSheets);
        Assert.Equal(1, report.WaitingIn(Phase.Order));
    }

    [Fact]
    public void APhaseWaitsForWhatIsNoSheetAndUpToItAllCounts()
    {
        var report = CheckReport.Of(_job.House, [LacksDepth(Phase.Measure), LacksSheet(Phase.Order), LacksWords()]);
        Assert.Equal((0, 2, 0, 1), (report.WaitingIn(Phase.CloseIn), report.WaitingIn(Phase.Measure), report.WaitingIn(Phase.Order),
            report.WaitingIn(Phase.Power)));
        Assert.Equal((0, 2, 4, 4, 5), (report.WaitingUpTo(Phase.CloseIn), report.WaitingUpTo(Phase.Measure), report.WaitingUpTo(Phase.Order),
            report.WaitingUpTo(Phase.Hang), report.WaitingUpTo(Phase.Handover)));
    }

    [Fact]
    public void WhatIsMissingOfAWindowIsMissingAboutItsUnitAndOfAPartWhereverItIsUsed()
    {
        var report = CheckReport.Of(_job.House, [LacksDepth(Phase.Measure), LacksSheet(Phase.Order)]);
        Assert.Equal(["lacks-sheet-4", "lacks-depth-3"], report.MissingAbout(_job.Unit("W02")).Select(m => m.Check.Id));
        Assert.Equal([_job.Unit("W01").Id, _job.Unit("W02").Id], report.MissingOf(_job.Unit("W01").Kind!.Item).Select(m => m.Subject.Id));
        Assert.Empty(report.MissingOf(_job.House.ItemsOf(ItemKind.CableType).First()));
    }

    [Fact]
    public void WhatIsFoundOfARunOrAWindowIsAboutItsUnit()
    {
        var report = CheckReport.Of(_job.House,
        [
            new Says<HomeRun>("of-run", Subjects.Runs, Severity.Note, Phase.Power, r => Found(r, RunFacts.Note)),
            new Says<Window>("of-window", Subjects.CoveredWindows, Severity.Note, Phase.Power, w => Found(w, WindowFacts.Note)),
            new Says<Unit>("of-unit", Subjects.Units, Severity.Caution, Phase.Power, u => Found(u, UnitFacts.Note)),
            new Says<JobItself>("of-house", Subjects.House, Severity.Note, Phase.Power, h => Found(h, HouseFacts.SiteContact)),
        ]);
        var unit = _job.Unit("W01");
        Assert.Equal(["of-unit", "of-run", "of-window"], report.About(unit).Select(f => f.Check.Id));
        Assert.Equal(["of-unit", "of-run", "of-window"], report.About((Subject)unit).Select(f => f.Check.Id));
        Assert.Equal(["of-window"], report.About((Subject)unit.Window).Select(f => f.Check.Id));
        Assert.Equal(["of-run"], report.About(unit.Run!.Item).Select(f => f.Check.Id));
        Assert.Empty(report.OpenStops);
    }

    [Fact]
    public void StopsOfTheKitAreThoseOfEachUnitThatHasThePart()
    {
        ICheck[] checks =
        [
            new Says<CoveringKind>("of-kind", Subjects.Kinds, Severity.Stop, Phase.Order, k => Found(k, CoveringKindFacts.MotorVolts)),
            new Says<CoveringKind>("of-kind-too", Subjects.Kinds, Severity.Caution, Phase.Order, k => Found(k, CoveringKindFacts.MotorVolts)),
            new Says<Unit>("of-unit", Subjects.Units, Severity.Stop, Phase.Power, u => Found(u, UnitFacts.Note)),
        ];
        var report = CheckReport.Of(_job.House, checks);
        var ofKind = Assert.Single(report.StopsOfParts(_job.Unit("W01")));
        Assert.Equal(("of-kind", _job.Unit("W01").Kind!.Id), (ofKind.Check.Id, ofKind.Subject.Id));
        Assert.Empty(report.StopsOfParts(_job.Say("W01", UnitFacts.Kind, "").Unit("W01")));
        Assert.Equal((2, 0), (report.StopsIn(Phase.Power), report.StopsIn(Phase.Hang)));
        Assert.All(report.OpenStops, f => Assert.Equal(Severity.Stop, f.Check.Severity));
        _job.Do(PunchList.Waive(ofKind, _job.House, "as the maker says", "TC"));
        Assert.Empty(CheckReport.Of(_job.House, checks).StopsOfParts(_job.Unit("W02")));
    }

    [Fact]
    public void PartsThatAreWaitedForAreCountedOnceEachWhetherBlankOrUnchecked()
    {
        ICheck[] checks =
        [
            LacksSheet(Phase.Order),
            new Says<HomeRun>("by-cable", Subjects.Runs, Severity.Stop, Phase.Order,
                r => r.House.ItemsOf(ItemKind.CableType).First().Get(CableTypeFacts.Conductor) is null ? new Outcome.DoesNotApply() : new Outcome.Fine()),
        ];
        var report = CheckReport.Of(_job.House, checks);
        Assert.Equal(2, report.Unread.Length);
        Assert.Equal((new Waiting(4, 2), 2), (report.WaitingForSheets, report.PartsWaitedFor));
        Assert.Equal(new Waiting(4, 2), Waiting.Of(report.Missing, report.Unread));
    }

    [Fact]
    public void WhatPassesOfAWindowARunAndAUnitByAnUncheckedValueIsToldOfTheUnit()
    {
        static Outcome Reads(CoveringKind? kind) => kind!.Item.Get(CoveringKindFacts.MotorVolts) is null ? new Outcome.DoesNotApply() : new Outcome.Fine();
        var job = _job.SayOf("Roller", CoveringKindFacts.MotorVolts, "13");
        var report = CheckReport.Of(job.House,
        [
            new Says<Window>("of-window", Subjects.CoveredWindows, Severity.Stop, Phase.Order, w => Reads(w.Units[0].Kind)),
            new Says<HomeRun>("of-run", Subjects.Runs, Severity.Stop, Phase.Order, r => Reads(r.Unit.Kind)),
            new Says<Unit>("of-unit", Subjects.Units, Severity.Stop, Phase.Order, u => Reads(u.Kind)),
        ]);
        Assert.Equal(["of-run", "of-unit", "of-window"], report.UnreadAbout(job.Unit("W01")).Select(u => u.Check.Id).Order(StringComparer.Ordinal));
    }

    /// <summary>A run is judged under the id of its unit, and its finding is about the run.</summary>
    [Fact]
    public void TheWorkingOfAFindingIsThatOfItsOwnSubject()
    {
        Outcome Off(HomeRun run) => new Outcome.Found(Words.With(Arg.Typed("found")), Words.With(Arg.Typed("mend")), FieldRef.To(run.Item, RunFacts.Note),
            Working.Of("1 + 1", () => [("run of", run.Unit.Tag)]));
        var report = CheckReport.Of(_job.House, [new Says<HomeRun>("of-run", Subjects.Runs, Severity.Note, Phase.Power, Off)]);
        Assert.Equal(["W01", "W02"], report.Findings.Select(f => report.WorkingOf(f)!.Inputs.Single().Value));
    }
}
