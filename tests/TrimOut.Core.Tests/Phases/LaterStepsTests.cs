using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;
using TrimOut.Testing;
using static TrimOut.Testing.LaterSteps;

namespace TrimOut.Core.Tests.Phases;

/// <summary>What a later version of TrimOut adds to the list of steps, in houses that were begun before it came.</summary>
public class LaterStepsTests
{
    [Fact]
    public void TheVersionOfAListIsThatOfItsNewestPart() => Assert.Equal((1, 2, 3), (First.Version, Second.Version, Third.Version));

    [Fact]
    public void AStepIsNotAskedWhereThePhaseWasCompleteWhenItCame()
    {
        var job = Updated(Hung("W01"));
        Assert.True(Progress.Of(job.Unit("W01"), Phase.Hang, Second).Complete);
        Assert.DoesNotContain(Levelled, Second.Asked(Phase.Hang, job.Unit("W01")));
        Assert.Contains(Levelled, Second.Open(Phase.Hang, job.Unit("W01")));
        Assert.NotEqual(Levelled, Progress.Next(job.Unit("W01"), Second));
    }

    /// <summary>A unit that was hung before a blank of the sheet counted as undecided is not opened again by it.</summary>
    [Fact]
    public void AStepThatIsUndecidedIsNotAskedWhereThePhaseWasCompleteBefore()
    {
        var job = new TestJob(steps: First).Window("W01").Say("W01", WindowFacts.RoughWidth, "36").SayOf("Roller", CoveringKindFacts.CentreFrom, "");
        foreach (var step in StepList.Of(Phase.Hang, job.Unit("W01")).Where(s => s.Since == 1 && s.Id != "centre-support-clear").ToList())
            job.Mark("W01", step.Id);
        var undecided = StepList.Find("centre-support-clear")!;
        Assert.DoesNotContain(undecided, StepList.Of(Phase.Hang, job.Unit("W01")));
        Assert.Contains(undecided, StepList.Shipped.Open(Phase.Hang, job.Unit("W01")));
        job.Do(j => MarkStep.Clear(j.Unit("W01"), StepList.Find("moves-free")!));
        Assert.Contains(undecided, StepList.Of(Phase.Hang, job.Unit("W01")));
    }

    [Fact]
    public void AStepIsAskedWhereThePhaseWasOpenWhenItCame()
    {
        var job = Updated(Hung("W01").Do(job => MarkStep.Clear(job.Unit("W01"), StepList.Find("moves-free")!)));
        Assert.Contains(Levelled, Second.Asked(Phase.Hang, job.Unit("W01")));
        job.Mark("W01", "moves-free");
        Assert.False(Progress.Of(job.Unit("W01"), Phase.Hang, Second).Complete);
        job.Do(MarkStep.Done(job.Unit("W01"), Levelled));
        Assert.True(Progress.Of(job.Unit("W01"), Phase.Hang, Second).Complete);
    }

    [Fact]
    public void WhatIsOfferedCountsOnceItIsMarkedAndAsksForNothingElse()
    {
        var job = Updated(Hung("W01"), Third);
        var before = Progress.Of(job.Unit("W01"), Phase.Hang, Third);
        job.Do(MarkStep.Done(job.Unit("W01"), Levelled));
        Assert.Equal(before + new Progress(1, 1), Progress.Of(job.Unit("W01"), Phase.Hang, Third));
        Assert.DoesNotContain(Dusted, Third.Asked(Phase.Hang, job.Unit("W01")));
        Assert.True(Progress.IsComplete(job.Unit("W01"), ClickedIn, Third));
    }

    [Fact]
    public void EvidenceIsNotAskedWhereThePhaseWasCompleteWhenItCame()
    {
        var job = Updated(Hung("W01").Window("W02").Mark("W02", "clicked-in"));
        Assert.True(Progress.IsComplete(job.Unit("W01"), ClickedIn, Second));
        Assert.Empty(Progress.Missing(job.Unit("W01"), ClickedIn, Second));
        Assert.Equal([Arg.Label(UnitFacts.Photo, small: false)], Progress.Missing(job.Unit("W02"), ClickedIn, Second));
        Assert.Equal([Arg.Label(UnitFacts.Photo, small: false)], Progress.Missing(Updated(Hung("W01"), Third).Window("W03").Unit("W03"), ClickedIn, Third));
    }

    [Fact]
    public void AUnitThatIsAddedAfterwardsIsAskedEverything()
    {
        var job = Updated(Hung("W01")).Window("W02");
        foreach (var step in First.Asked(Phase.Hang, job.Unit("W02")).ToList())
            job.Do(MarkStep.Done(job.Unit("W02"), step));
        Assert.Contains(Levelled, Second.Asked(Phase.Hang, job.Unit("W02")));
        Assert.False(Progress.Of(job.Unit("W02"), Phase.Hang, Second).Complete);
    }

    [Fact]
    public void APhaseThatAskedNothingBeforeGoesByTheNextThatDid()
    {
        var old = new TestJob(steps: First).Add(ItemKind.Panel, "Open").Add(ItemKind.Panel, "Done");
        foreach (var step in First.Asked(Phase.Power, Panel(old, "Done")).ToList())
            old.Do(MarkStep.Done(Panel(old, "Done"), step));
        var job = Updated(old).Add(ItemKind.Panel, "New");
        Assert.Equal([true, false, true], new[] { "Open", "Done", "New" }.Select(p => Second.Asked(Phase.Hang, Panel(job, p)).Contains(Aired)));
    }

    [Fact]
    public void ALaptopThatHasTheOldVersionStillCompletesAPhaseByTheOldList()
    {
        var old = new TestJob(steps: First).Window("W01");
        var other = new TestJob(store: new MemoryStore("another-laptop", old.Scribe.Log.Changes), steps: First);
        var job = Updated(old).Window("W02");
        foreach (var step in First.Asked(Phase.Hang, other.Unit("W01")).ToList())
            other.Do(MarkStep.Done(other.Unit("W01"), step));
        var merged = Merge.Of(job.Scribe.Log, other.Scribe.Log).Value.Merged.House;
        Assert.True(Progress.Of(merged.Units.Single(u => u.Tag == "W01"), Phase.Hang, Second).Complete);
        Assert.Contains(Levelled, Second.Asked(Phase.Hang, merged.Units.Single(u => u.Tag == "W02")));
    }

    [Fact]
    public void WhatIsUndoneTakesItsNoteBack()
    {
        var job = Updated(Hung("W01").Do(job => MarkStep.Clear(job.Unit("W01"), StepList.Find("moves-free")!)));
        job.Mark("W01", "moves-free");
        Assert.Contains(Levelled, Second.Asked(Phase.Hang, job.Unit("W01")));
        Assert.True(job.Scribe.Undo().Ok);
        job.Do(new Draft("Undo: mark cleared",
            [new Edit.Undo(job.Scribe.Log.Changes.Last(c => c.What.EndsWith("mark cleared", StringComparison.Ordinal)).Id)]));
        Assert.DoesNotContain(Levelled, Second.Asked(Phase.Hang, job.Unit("W01")));
    }

    [Fact]
    public void APhaseThatIsOpenedAgainGoesByTheListOfTheDay()
    {
        var job = Updated(Hung("W01"));
        job.Do(MarkStep.Clear(job.Unit("W01"), StepList.Find("moves-free")!)).Mark("W01", "moves-free");
        Assert.Contains(Levelled, Second.Asked(Phase.Hang, job.Unit("W01")));
    }

    [Fact]
    public void WhatWasCompleteByTheSecondVersionIsNotAskedForTheThird()
    {
        var job = Updated(new TestJob(steps: First)).Window("W01");
        foreach (var step in Second.Open(Phase.Hang, job.Unit("W01")).ToList())
            job.Do(MarkStep.Done(job.Unit("W01"), step));
        var later = Updated(job, Third);
        Assert.True(Progress.Of(later.Unit("W01"), Phase.Hang, Third).Complete);
        Assert.Contains(Levelled, Third.Asked(Phase.Hang, later.Unit("W01")));
        Assert.DoesNotContain(Dusted, Third.Asked(Phase.Hang, later.Unit("W01")));
    }

    [Fact]
    public void AHouseThatIsBegunWithALaterVersionIsByItFromTheStart()
    {
        var signed = new Step("keys-handed-over", Phase.Handover, ItemKind.House, "Keys handed over", "To the owner in person.", []) { Since = 2 };
        var steps = new StepList([.. First.Steps, signed]);
        var (old, begun) = (new TestJob(steps: First), new TestJob(steps: steps));
        foreach (var job in new[] { old, begun })
        {
            foreach (var step in First.Asked(Phase.Handover, new JobItself(job.House)).ToList())
                job.Do(MarkStep.Done(new JobItself(job.House), step));
        }
        Assert.Equal([false, true], new[] { old, begun }.Select(j => steps.Asked(Phase.Handover, new JobItself(j.House)).Contains(signed)));
    }

    [Fact]
    public void TheVersionIsNotedOnceForAPhaseAndNotAtAllByTheFirstList()
    {
        var old = Hung("W01");
        Assert.DoesNotContain(Notes(old), n => n.Field.StartsWith("steps-version", StringComparison.Ordinal));
        var job = Updated(old).Window("W02");
        foreach (var step in Second.Open(Phase.WalkThrough, job.Unit("W01")).ToList())
            job.Do(MarkStep.Done(job.Unit("W01"), step));
        Assert.Equal([(job.Unit("W02").Id, "steps-version", "2")],
            Notes(job).Where(n => n.Item == job.Unit("W02").Id && n.Field.StartsWith("steps", StringComparison.Ordinal)));
        Assert.Equal([(job.Unit("W01").Id, "steps-version:walk-through", "2")],
            Notes(job).Where(n => n.Item == job.Unit("W01").Id && n.Field.StartsWith("steps", StringComparison.Ordinal)));
    }

    private static IEnumerable<(string Item, string Field, string? Value)> Notes(TestJob job) =>
        job.Scribe.Log.Changes.SelectMany(c => c.Edits.OfType<Edit.Put>()).Select(p => (p.Item, p.Field, p.Value));

    /// <summary>A window with every step of hanging marked by the first list.</summary>
    private static TestJob Hung(string tag)
    {
        var job = new TestJob(steps: First).Window(tag);
        foreach (var step in First.Asked(Phase.Hang, job.Unit(tag)).ToList())
            job.Do(MarkStep.Done(job.Unit(tag), step));
        return job;
    }

    /// <summary>The same house, opened with a later version.</summary>
    private static TestJob Updated(TestJob old, StepList? steps = null) =>
        new(store: new MemoryStore("laptop", old.Scribe.Log.Changes), steps: steps ?? Second);

    private static Panel Panel(TestJob job, string name) => job.House.Panels.Single(p => p.Name == name);
}
