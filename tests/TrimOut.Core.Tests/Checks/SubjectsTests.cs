using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Evidence;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks;

/// <summary>What checks are about, and what becomes of what they say.</summary>
public class SubjectsTests
{
    private static readonly Message Words = new("{0}");
    private static readonly CheckInfo Info = new("id", "Title", Severity.Note, Phase.Order, new Source(Source.CommonPractice, "none"));

    private static TestJob House() => Jobs.Walked("W02", Jobs.Walked()).WithPanel().Add(ItemKind.Hub, "H1").Add(ItemKind.Remote, "R1").Window("W03")
        .Say("W03", WindowFacts.Covered, "no").Say("W03", WindowFacts.NotCoveredBecause, "stays bare");

    private static IEnumerable<string> Of<T>(Subjects<T> subjects, House house)
        where T : Subject => subjects.Ids(house).Select(id => house.NameOf(subjects.Find(house, id).Item));

    [Fact]
    public void EachSortOfSubjectIsFoundInTheHouse()
    {
        var house = House().House;
        Assert.Equal(["W01", "W02"], Of(Subjects.Units, house));
        Assert.Equal([house.Units[0].Run!.Id, house.Units[1].Run!.Id], Subjects.Runs.Ids(house).Select(id => Subjects.Runs.Find(house, id).Id));
        Assert.Equal(["W01", "W02", "W03"], Of(Subjects.Windows, house));
        Assert.Equal(["W01", "W02"], Of(Subjects.CoveredWindows, house));
        Assert.Equal(["P1"], Of(Subjects.Panels, house));
        Assert.Equal(["H1"], Of(Subjects.Hubs, house));
        Assert.Equal(["R1"], Of(Subjects.Remotes, house));
        Assert.Equal(["Test house"], Of(Subjects.House, house));
        Assert.Contains("Roller", Of(Subjects.Kinds, house));
        Assert.Contains("16/2", Of(Subjects.Cables, house));
        Assert.Empty(Of(Subjects.Services, house));
    }

    [Fact]
    public void WalkersAreUnitsPanelsAndTheHouse() => Assert.Equal(["W01", "W02", "P1", "Test house"], Of(Subjects.Walkers, House().House));

    [Fact]
    public void PartsAreAllOfTheKitInTheOrderInWhichTheyWereAdded()
    {
        var house = House().Add(ItemKind.CoveringKind, "Late kind").House;
        var parts = Subjects.Parts.Ids(house).Select(id => house.Find(id)!).ToList();
        Assert.Equal(parts.OrderBy(p => p.Place), parts);
        Assert.Equal("Late kind", house.NameOf(parts[^1]));
        Assert.All(parts, p => Assert.True(FactTable.IsKit(p.Kind)));
        Assert.True(parts.Select(p => p.Kind).Distinct().Count() > 3);
    }

    private static Outcome.Found Found(string said, Working? working = null) =>
        new(Words.With(Arg.Typed(said)), Words.With(Arg.Typed("mend")), new FieldRef("w", "note"), working);

    [Fact]
    public void OfWhatIsJudgedPassesAreCountedAndWhatIsFoundKeepsNoWorking()
    {
        var item = Jobs.Walked().Unit("W01").Item;
        CheckResult Result(Outcome outcome) => new(Info, item, outcome);
        var missing = new Outcome.NotChecked(Words.With(Arg.Typed("m")));
        var judged = Judged.Of([Result(new Outcome.Fine()), Result(Found("a", Working.Of("f", () => []))), Result(new Outcome.DoesNotApply()),
            Result(missing), Result(new Outcome.Fine())]);
        Assert.Equal(2, judged.Passed);
        Assert.Equal<Outcome>([Found("a"), missing], judged.Found.Concat(judged.Missing).Select(r => r.Outcome));
        Assert.Equal([(0, 0), (1, 0), (2, 0)], new[] { 0, 1, 2 }.Select(n => Judged.Of(Enumerable.Repeat(Result(new Outcome.Fine()), n)))
            .Select(j => (j.Passed, j.Found.Length + j.Missing.Length)));
        Assert.Equal(new Judged([], [], 1), Judged.Of(Info, item, new Outcome.Fine()));
        Assert.Equal(new Judged([], [], 0), Judged.Of(Info, item, new Outcome.DoesNotApply()));
        Assert.Equal(2, Judged.Of(Info, item, Outcome.All(Found("a"), Found("b"))!).Found.Length);
    }

    [Fact]
    public void ACheckIsFoundByItsIdAndALaterListOfStepsChangesOnlyTheOneThatGoesByIt()
    {
        Assert.IsType<KitUnchecked>(AllChecks.Find("kit-unchecked"));
        Assert.Null(AllChecks.Find("no-such-check"));
        Assert.Equal(AllChecks.All, AllChecks.By(StepList.Shipped));
        var later = AllChecks.By(LaterSteps.Second);
        Assert.Equal(["step-without-evidence"], later.Where(c => !AllChecks.All.Contains(c)).Select(c => c.Info.Id));
        Assert.Equal(AllChecks.All.Select(c => c.Info.Id), later.Select(c => c.Info.Id));
    }

    [Fact]
    public void ACheckIsTheSameInEachPhase()
    {
        var each = Info.InEachPhase();
        Assert.Equal(PhaseNames.All.Count, each.Count);
        Assert.All(each, p => Assert.Equal(Info with { Phase = p.Key }, p.Value));
    }

    [Fact]
    public void AFindingIsOpenUntilItIsWaivedAndHasItsWorkingAgainWhenItIsAskedFor()
    {
        var job = Jobs.Measured().Say("W01", WindowFacts.Depth, "2");
        var finding = job.Report.Findings.Single(f => f.Check.Id == "depth-too-shallow");
        Assert.True(finding.Open);
        Assert.Null(finding.Found.Working);
        Assert.Equal("depth >= depth needed", job.Report.WorkingOf(finding)!.Formula);
        job.Do(PunchList.Waive(finding, job.House, "the maker has other brackets", "TC"));
        Assert.False(job.Report.Findings.Single(f => f.Check.Id == "depth-too-shallow").Open);
    }

    // Of a value that nobody held against the maker's sheet the finding says so; the rule that tells of such values does not say it twice.
    [Fact]
    public void AFindingSaysWhichValuesBehindItNobodyChecked()
    {
        var job = Jobs.Measured().Say("W01", WindowFacts.Depth, "2");
        var report = job.Report;
        var finding = report.Findings.Single(f => f.Check.Id == "depth-too-shallow");
        Assert.Equal<Fact>([CoveringKindFacts.DepthNeeded], report.UncheckedBehind(finding));
        Assert.NotEqual(finding.Found.Message.In(job.House), report.Said(finding));
        var kit = report.Findings.First(f => f.Check.Id == "kit-unchecked");
        Assert.Empty(report.UncheckedBehind(kit));
        Assert.Equal(kit.Found.Message.In(job.House), report.Said(kit));
    }
}
