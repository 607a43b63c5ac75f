using System.Collections.Immutable;
using CsCheck;
using TrimOut.Core.Checks;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks;

public class CheckReportTests
{
    private static readonly ImmutableArray<ICheck> Checks = [.. AllChecks.All, new LooksEverywhere()];

    /// <summary>The houses that are walked, and how often; the one without a name is the invented big one.</summary>
    public static TheoryData<string, int> Walked
    {
        get
        {
            var walked = new TheoryData<string, int> { { "", 200 } };
            foreach (var sample in SampleHouse.Names)
                walked.Add(sample, 25);
            return walked;
        }
    }

    // The report after a step is the report from the beginning, whatever was typed into whatever fact, added, removed, undone, done again or taken over
    // from another laptop; and so are the lookups that it goes by.
    [Theory]
    [MemberData(nameof(Walked))]
    public void JudgingOnlyWhatChangedSaysTheSameAsJudgingEverything(string sample, int walks)
    {
        var start = sample.Length == 0 ? BigHouse.Of(12).Scribe.Log : HouseLog.Of(SampleHouse.Changes(sample)).Value;
        var first = CheckReport.Of(start.House, Checks);
        RandomDeeds.Gen.Sample(deeds =>
        {
            var (log, report) = (start, first);
            foreach (var deed in deeds)
            {
                foreach (var step in deed.DoneTo(log))
                {
                    log = step;
                    report = report.After(log.House);
                    Same(CheckReport.Of(new House(log.House.Items), Checks), report);
                    SameLookups(new House(log.House.Items), log.House);
                }
            }
        }, iter: walks, threads: 1);
    }

    // Lookups go along with a step that changes nothing, or the step after it would be held against none.
    [Fact]
    public void AStepThatChangesNothingLeavesTheNextOneRight()
    {
        var job = Jobs.Walked("W02", Jobs.Walked()).Say("W01", UnitFacts.HubName, "Den left").Say("W02", UnitFacts.HubName, "Den right");
        var report = CheckReport.Of(job.House).After(job.Say("W01", UnitFacts.Fabric, "Linen").House);
        Assert.True(job.Scribe.Undo().Ok);
        Assert.True(job.Scribe.Redo().Ok);
        report = report.After(job.House).After(job.Say("W02", UnitFacts.HubName, "Den left").House);
        Same(CheckReport.Of(job.House), report);
        report = report.After(job.Do(RemoveItems.Remove(job.House, job.House.Windows[0].Item)).House);
        Same(CheckReport.Of(job.House), report);
    }

    [Fact]
    public void TwoUnitsOfAWindowThatChangePlacesAreJudgedAsTheyStandNow()
    {
        var house = HouseLog.Of(SampleHouse.Changes("canal-house")).Value.House;
        var report = CheckReport.Of(house);
        Assert.All(house.Windows.Where(w => w.Units.Length == 2), window =>
        {
            var swap = new Draft("swap").Put(window.Units[0].Id, UnitFacts.Position, 2).Put(window.Units[1].Id, UnitFacts.Position, 1);
            var swapped = HouseLog.Preview(house, swap);
            Same(CheckReport.Of(swapped), report.After(swapped));
        });
    }

    [Fact]
    public void ARunThatLiesUnderItselfHasAName()
    {
        var log = Jobs.Walked().Scribe.Log;
        var id = new ChangeId("evil", 1);
        var circle = log.With(new Change(id, log.LargestStamp + 1, DateTimeOffset.UnixEpoch, "x", "x", [new Edit.Add("q", ItemKind.Run, "q")]));
        Assert.Equal("(run)", circle.House.NameOf(circle.House.Find("q")!));
    }

    // Nothing is judged that read nothing of what changed: a tail that was measured touches only checks that look at tails.
    [Fact]
    public void WhatReadNothingOfTheChangeIsNotJudgedAgain()
    {
        var counting = new CountsItsJudgements();
        var job = Jobs.Roughed("W02", Jobs.Roughed());
        var report = CheckReport.Of(job.House, [counting]);
        Assert.Equal(["W01", "W02"], counting.Judged);
        report = report.After(job.Say("W02", RunFacts.TailAtPanel, "80").House);
        Assert.Equal(2, counting.Judged.Count);
        report = report.After(job.Say("W02", RunFacts.TailAtWindow, "30").House);
        Assert.Equal(["W01", "W02", "W02"], counting.Judged);
        Assert.Equal(2, report.Passed);
    }

    [Fact]
    public void AWaiverAndItsFindingsFiguresAreKeptUp()
    {
        var job = Jobs.Roughed().Say("W01", RunFacts.TailAtWindow, "12");
        var report = CheckReport.Of(job.House);
        var finding = report.Findings.Single(f => f.Check.Id == "tail-under-half-width");
        job.Do(PunchList.Waive(finding, job.House, "battery later", "TC"));
        report = report.After(job.House);
        Assert.False(report.Findings.Single(f => f.Check.Id == "tail-under-half-width").Open);
        Assert.True(report.After(job.Say("W01", RunFacts.TailAtWindow, "13").House).Findings.Single(f => f.Check.Id == "tail-under-half-width").Open);
    }

    [Fact]
    public void TheSameHouseIsNotJudgedAgain()
    {
        var report = Jobs.Roughed().Report;
        Assert.Same(report, report.After(report.House));
    }

    [Fact]
    public void AHouseThatIsNotOneChangeAwayIsJudgedFromTheBeginning()
    {
        var job = Jobs.Roughed();
        var report = CheckReport.Of(job.House);
        job.Say("W01", RunFacts.TailAtWindow, "1").Say("W01", RunFacts.TailAtPanel, "1");
        Same(CheckReport.Of(job.House), report.After(job.House));
        job.Scribe.Undo();
        Same(CheckReport.Of(job.House), report.After(job.House));
    }

    [Fact]
    public void FindingsComeStopsFirstThenByPhase()
    {
        var findings = BigHouse.Of(30).Report.Findings;
        Assert.NotEmpty(findings);
        Assert.Equal(findings.OrderBy(f => f.Check.Severity).ThenBy(f => f.Check.Phase), findings);
    }

    // Facts that nobody judges by, undone and done again: the house is another object each time, and nothing in it reads otherwise.
    [Theory]
    [MemberData(nameof(Samples))]
    public void WhatIsUndoneAndDoneAgainLeavesEveryLookupAsItWas(string sample)
    {
        var scribe = SampleHouse.Open(sample, TimeProvider.System);
        var report = CheckReport.Of(scribe.House, Checks);
        foreach (var window in scribe.House.Windows.Take(3))
        {
            Assert.True(scribe.Record(new Draft("note").Put(window.Id, WindowFacts.Note, "ladder")).Ok);
            foreach (var step in (Func<Result<Change>>[])[scribe.Undo, scribe.Redo, scribe.Undo])
            {
                report = report.After(scribe.House);
                Assert.True(step().Ok);
                report = report.After(scribe.House);
                Same(CheckReport.Of(new House(scribe.House.Items), Checks), report);
                SameLookups(new House(scribe.House.Items), scribe.House);
            }
        }
    }

    public static TheoryData<string> Samples => [.. SampleHouse.Names];

    // One subject with two findings: each has the working of its own figures.
    [Fact]
    public void AFindingHasItsOwnWorkingAndNotThatOfAnotherFindingOfItsSubject()
    {
        var report = CheckReport.Of(Jobs.Walked().House, [new FindsTwice()]);
        Assert.Equal(["1", "2"], report.Findings.Select(f => report.WorkingOf(f)!.Formula));
    }

    private static void SameLookups(House expected, House actual)
    {
        Assert.All(Lookup.All, lookup =>
        {
            switch (lookup)
            {
                case Lookup<string> ids:
                    SameLookup(expected.State.Of(ids), actual.State.Of(ids));
                    break;
                case Lookup<(string, Length?)> lengths:
                    SameLookup(expected.State.Of(lengths), actual.State.Of(lengths));
                    break;
                default:
                    SameLookup(expected.State.Of((Lookup<(string, long, ChangeId)>)lookup), actual.State.Of((Lookup<(string, long, ChangeId)>)lookup));
                    break;
            }
        });
    }

    private static void SameLookup<T>(LookupMade<T> expected, LookupMade<T> actual)
        where T : IEquatable<T>
    {
        Assert.Equal(expected.Keys, actual.Keys);
        Assert.All(expected.Keys, key => Assert.Equal(expected[key], actual[key]));
    }

    private static readonly Comparer<FieldRef> ByName = Comparer<FieldRef>.Create((a, b) => string.CompareOrdinal(a.ToString(), b.ToString()));

    private static void Same(CheckReport expected, CheckReport actual)
    {
        Assert.Equal(expected.Findings.Select(f => (f.Check, f.Subject.Id, f.Found, f.Waiver?.Id)),
            actual.Findings.Select(f => (f.Check, f.Subject.Id, f.Found, f.Waiver?.Id)));
        Assert.Equal(expected.Missing.Select(m => (m.Check, m.Subject.Id, m.NotChecked)), actual.Missing.Select(m => (m.Check, m.Subject.Id, m.NotChecked)));
        Assert.Equal(expected.Unread.Select(u => (u.Check, u.Subject.Id, string.Join(' ', u.Values.Order(ByName)), u.Passed)),
            actual.Unread.Select(u => (u.Check, u.Subject.Id, string.Join(' ', u.Values.Order(ByName)), u.Passed)));
        Assert.Equal(expected.Passed, actual.Passed);
        Assert.All(actual.Findings.Select(f => f.Subject).Concat(actual.Missing.Select(m => m.Subject)), s => Assert.Same(actual.House.Find(s.Id), s));
    }

    /// <summary>Finds two things of each window, worked out in two ways.</summary>
    private sealed class FindsTwice : HouseCheck
    {
        private static readonly Message Found = new("{0}");

        public override CheckInfo Info { get; } =
            new("finds-twice", "Found twice", Severity.Note, Phase.RoughIn, new Source(Source.CommonPractice, "none"));

        public override IEnumerable<CheckResult> Run(House house) =>
            from window in house.Windows
            from number in new[] { 1, 2 }
            select Result(window, new Outcome.Found(Found.With(number), Found.With(number), FieldRef.To(window.Item, WindowFacts.Tag),
                Working.Of(number == 1 ? "1" : "2", () => [])));
    }

    /// <summary>Judges each run by its tail at the window, and keeps which it judged.</summary>
    private sealed class CountsItsJudgements : RunCheck
    {
        public List<string> Judged { get; } = [];

        public override CheckInfo Info { get; } =
            new("counts-its-judgements", "Counted", Severity.Note, Phase.RoughIn, new Source(Source.CommonPractice, "none"));

        public override Outcome Judge(HomeRun subject)
        {
            Judged.Add(subject.Name);
            return subject.Item.Get(RunFacts.TailAtWindow) is null ? new Outcome.DoesNotApply() : new Outcome.Fine();
        }
    }
}
