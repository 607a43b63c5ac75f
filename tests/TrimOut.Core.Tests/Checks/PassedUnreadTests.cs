using TrimOut.Core.Checks;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks;

/// <summary>A value that nobody read off a sheet makes a stop go away: what passes by it is no pass.</summary>
public class PassedUnreadTests
{
    private const string TooWide = "past-what-is-made";

    private static TestJob Wide() => Checked(new TestJob().Window("W01").Say("W01", WindowFacts.RoughWidth, "150").Say("W01", WindowFacts.RoughHeight, "60"));

    /// <summary>Every value of the kit was checked.</summary>
    private static TestJob Checked(TestJob job)
    {
        foreach (var part in job.House.Items.Values.Where(i => FactTable.IsKit(i.Kind) && SheetValues.NotHeldIn(i).Any()).ToList())
            job.Do(KitCheck.All(job.House, part));
        return job;
    }

    private static Item Roller(TestJob job) => job.House.ItemsOf(ItemKind.CoveringKind).First(i => job.House.NameOf(i) == "Roller");

    private static IEnumerable<PassedUnread> By(TestJob job, Fact fact) =>
        job.Report.Unread.Where(u => u.Values.Contains(FieldRef.To(Roller(job), fact)));

    [Fact]
    public void AStopThatGoesAwayByAValueThatNobodyReadIsNoPass()
    {
        var job = Wide();
        Assert.Contains(job.Report.OpenStops, f => f.Check.Id == TooWide);
        Assert.Empty(job.Report.Unread);
        var waiting = job.Report.Waiting;
        job.SayOf("Roller", CoveringKindFacts.Widest, "200");
        Assert.DoesNotContain(job.Report.Findings, f => f.Check.Id == TooWide);
        var passed = Assert.Single(By(job, CoveringKindFacts.Widest), u => u.Check.Id == TooWide);
        Assert.Equal(("W01", 1), (job.House.NameOf(passed.Subject), passed.Passed));
        Assert.Equal(waiting.Checks + job.Report.Unread.Length, job.Report.Waiting.Checks);
        Assert.True(job.Report.WaitingForSheets.Checks >= 1);
    }

    [Fact]
    public void OnceTheValueWasCheckedItIsAPass()
    {
        var job = Wide().SayOf("Roller", CoveringKindFacts.Widest, "200");
        var before = job.Report;
        job.Do(KitCheck.Toggle(job.House, Roller(job), CoveringKindFacts.Widest));
        Assert.Empty(job.Report.Unread);
        // They are passes now, and so is that every value of the part was checked.
        Assert.Equal(before.Passed + before.Unread.Sum(u => u.Passed) + 1, job.Report.Passed);
    }

    /// <summary>A unit needs no support by the width that the sheet is said to have: that its rule does not apply rests on the value too.</summary>
    [Fact]
    public void ARuleThatDoesNotApplyByAValueThatNobodyReadRestsOnItToo()
    {
        var job = Wide().SayOf("Roller", CoveringKindFacts.CentreFrom, "300");
        Assert.Equal(0, Assert.Single(By(job, CoveringKindFacts.CentreFrom), u => u.Check.Id == "entry-under-centre-support").Passed);
    }

    [Fact]
    public void WhatJudgesAPartItselfDoesNotRestOnIt() => Assert.DoesNotContain(Wide().SayOf("Roller", CoveringKindFacts.PairHold, "70").Report.Unread,
        u => FactTable.IsKit(u.Subject.Kind));

    /// <summary>
    /// Two values that nobody can have read off one sheet, and one of them changed so that they agree: nobody read that one either. What is named is what
    /// nobody checked of what is compared.
    /// </summary>
    [Fact]
    public void AContradictionThatGoesAwayByAValueThatNobodyReadIsNoPass()
    {
        var job = Checked(new TestJob().SayOf("Roller", CoveringKindFacts.StartingCurrent, "0.4"));
        const string contradicts = "sheet-contradicts-itself";
        Assert.Contains(job.Report.OpenStops, f => f.Check.Id == contradicts);
        Assert.DoesNotContain(job.Report.Unread, u => u.Check.Id == contradicts);
        job.SayOf("Roller", CoveringKindFacts.StartingCurrent, "0.9");
        Assert.DoesNotContain(job.Report.Findings, f => f.Check.Id == contradicts);
        var passed = Assert.Single(job.Report.Unread, u => u.Check.Id == contradicts);
        Assert.Equal(FieldRef.To(Roller(job), CoveringKindFacts.StartingCurrent), Assert.Single(passed.Values));
        Assert.Contains(job.Report.UnreadOf(Roller(job)), u => u.Check.Id == contradicts);
        Assert.DoesNotContain(Checked(job).Report.Unread, u => u.Check.Id == contradicts);
    }

    /// <summary>A contradiction of two values that were checked rests on no other value of its sheet, whoever did not check that.</summary>
    [Fact]
    public void AContradictionRestsOnItsTwoValuesAlone()
    {
        var job = Checked(new TestJob().SayOf("Roller", CoveringKindFacts.StartingCurrent, "0.4")).SayOf("Roller", CoveringKindFacts.Widest, "109");
        Assert.Empty(job.Report.UncheckedBehind(job.Report.Findings.Single(f => f.Check.Id == "sheet-contradicts-itself")));
        job.SayOf("Roller", CoveringKindFacts.RunningCurrent, "0.7");
        Assert.Equal([CoveringKindFacts.RunningCurrent],
            job.Report.UncheckedBehind(job.Report.Findings.Single(f => f.Check.Id == "sheet-contradicts-itself")));
    }

    [Fact]
    public void ItIsToldOfItsUnitAndOfThePartThatTheValueIsOf()
    {
        var job = Wide().SayOf("Roller", CoveringKindFacts.Widest, "200");
        Assert.Contains(job.Report.UnreadAbout(job.Unit("W01")), u => u.Check.Id == TooWide);
        Assert.Contains(job.Report.UnreadOf(Roller(job)), u => u.Check.Id == TooWide);
    }

    /// <summary>A value that lies where such values lie, and that nobody checked: what judges the part itself tells of that elsewhere.</summary>
    [Fact]
    public void APartThatPassesByItsOwnUncheckedValueIsNotToldTwice()
    {
        var job = Wide().SayOf("Roller", CoveringKindFacts.PairHold, "11");
        Assert.DoesNotContain(job.Report.Findings, f => f.Check.Id == "sheet-value-unusual");
        Assert.DoesNotContain(job.Report.Unread, u => FactTable.IsKit(u.Subject.Kind));
    }

    /// <summary>One of the two was changed after it was checked; that nobody ever checked the other one makes it no better.</summary>
    [Fact]
    public void AContradictionThatWentByOneOfItsTwoValuesIsNoPassWhoeverNeverCheckedTheOther()
    {
        var job = new TestJob().SayOf("Roller", CoveringKindFacts.StartingCurrent, "0.4");
        job.Do(KitCheck.Toggle(job.House, Roller(job), CoveringKindFacts.StartingCurrent));
        job.SayOf("Roller", CoveringKindFacts.StartingCurrent, "0.9");
        var passed = Assert.Single(job.Report.Unread, u => u.Check.Id == "sheet-contradicts-itself");
        Assert.Contains(FieldRef.To(Roller(job), CoveringKindFacts.RunningCurrent), passed.Values);
    }

    /// <summary>A cable whose name gives no gauge has nothing that could contradict it, whatever was changed.</summary>
    [Fact]
    public void WhereNothingIsComparedNothingPasses()
    {
        var job = Checked(new TestJob().SayOf("16/2", CableTypeFacts.Name, "Bell wire")).SayOf("Bell wire", CableTypeFacts.Conductor, "18 AWG");
        Assert.DoesNotContain(job.Report.Unread, u => u.Check.Id == "sheet-contradicts-itself");
    }

    /// <summary>
    /// W01 does not apply by the volts, of which the part itself is told: that is said once. W02 does not by the least volts too, and W03 passes: both are
    /// told.
    /// </summary>
    [Fact]
    public void WhatIsToldOfAPartIsNotToldAgainOfWhatDoesNotApplyByTheSameValues()
    {
        var job = new TestJob().Window("W01").Window("W02").Window("W03").SayOf("Roller", CoveringKindFacts.MotorVolts, "13")
            .SayOf("Roller", CoveringKindFacts.LeastVolts, "11");
        var subjects = new Subjects<Subject>(h => [Roller(job).Id, .. h.Units.Select(u => u.Id)],
            (h, id) => h.FindUnit(id) as Subject ?? new CoveringKind(h, h.Find(id)!));
        Outcome Judge(Subject subject)
        {
            var kind = subject as CoveringKind ?? ((Unit)subject).Kind!;
            var volts = kind.Item.Get(CoveringKindFacts.MotorVolts);
            var least = subject.Name == "W02" ? kind.Item.Get(CoveringKindFacts.LeastVolts) : null;
            return subject is CoveringKind ? new Outcome.Found(Words.With(Arg.Typed("found")), Words.With(Arg.Typed("mend")), FieldRef.To(kind.Item,
                    CoveringKindFacts.MotorVolts))
                : volts > least || subject.Name == "W01" ? new Outcome.DoesNotApply() : new Outcome.Fine();
        }
        var report = CheckReport.Of(job.House, [new Says<Subject>("of-all", subjects, Severity.Note, Phase.Order, Judge)]);
        Assert.Equal([("W02", 0), ("W03", 1)], report.Unread.Select(u => (job.House.NameOf(u.Subject), u.Passed)));
    }

    private static readonly Message Words = new("{0}");
}
