using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Phases;

public class StepListTests
{
    public static TheoryData<string> Ids => [.. StepList.All.Select(s => s.Id)];

    [Theory]
    [MemberData(nameof(Ids))]
    public void AStepIsWellMade(string id)
    {
        var step = Assert.Single(StepList.All, s => s.Id == id);
        Assert.Matches("^[a-z]+(-[a-z]+)*$", id);
        Assert.False(string.IsNullOrWhiteSpace(step.Label));
        Assert.Matches("[.]$", step.Cue);
        Assert.Contains(step.Subject, (ItemKind[])[ItemKind.Unit, ItemKind.Panel, ItemKind.House]);
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void ItsEvidenceIsAFactThatTheSubjectOrItsWindowOrRunHas(string id)
    {
        var step = StepList.Find(id)!;
        ItemKind[] holders = step.Subject == ItemKind.Unit ? [ItemKind.Unit, ItemKind.Window, ItemKind.Run] : [step.Subject];
        Assert.All(step.Evidence, f => Assert.Contains(f.Subject, holders));
    }

    [Fact]
    public void StepsStandInTheOrderOfThePhases() => Assert.Equal(StepList.All.Select(s => s.Phase).Order(), StepList.All.Select(s => s.Phase));

    [Fact]
    public void EveryPhaseHasStepsForAUnitOrTheHouse() =>
        Assert.All(PhaseNames.All, p => Assert.Contains(StepList.All, s => s.Phase == p && s.Subject != ItemKind.Panel));

    /// <summary>A blank is no "no": nobody knows that no centre support is needed, and so it is asked.</summary>
    [Fact]
    public void ACentreSupportIsAskedUntilTheSheetSaysThatNoneIsNeeded()
    {
        var job = new TestJob().Window("W01").Say("W01", WindowFacts.RoughWidth, "36");
        bool Asked() => StepList.Of(Phase.Hang, job.Unit("W01")).Any(s => s.Id == "centre-support-clear");
        Assert.False(Asked());
        job.SayOf("Roller", CoveringKindFacts.CentreFrom, "");
        Assert.True(Asked());
        job.SayOf("Roller", CoveringKindFacts.CentreFrom, "35");
        Assert.True(Asked());
        job.SayOf("Roller", CoveringKindFacts.CentreFrom, "none").Say("W01", WindowFacts.RoughWidth, "");
        Assert.False(Asked());
    }

    [Fact]
    public void WhatAnOrderSizeIsWorkedOutFromIsAskedAsTheOpeningIsMeasured()
    {
        var job = new TestJob().Window("W01").Window("W02").Say("W02", WindowFacts.Mount, "outside");
        job.Do(j => AddItems.Unit(j.House, j.House.FindTag("W01")!.Id));
        Assert.Equal([UnitFacts.PartWidth], Asked("W01A"));
        Assert.Equal([WindowFacts.OverlapEachSide, WindowFacts.HeadAbove], Asked("W02"));
        job.Say("W02", WindowFacts.Mount, "inside");
        Assert.Empty(Asked("W02"));

        IEnumerable<Fact> Asked(string tag) => StepList.Of(Phase.Measure, job.Unit(tag)).Where(s => s.Since == 4)
            .SelectMany(s => StepList.Shipped.EvidenceOf(s, job.Unit(tag)));
    }

    /// <summary>A route that is marked while nobody said what is around the cable lacks that; one that was marked before it was asked is left alone.</summary>
    [Fact]
    public void ARouteWaitsForWhatIsAroundEachLeg()
    {
        var step = StepList.Find("route-chosen")!;
        var job = new TestJob().Window("W01").Say("W01", RunFacts.Cable, "16/2");
        job.Do(QuickLegs.Add(job.Run("W01"), "up 8, across 46 in wall"));
        Assert.Equal(["place of each leg"], Progress.Missing(job.Unit("W01"), step).Select(m => m.For(new Reader(job.House))));
        job.Do(QuickLegs.Add(job.Run("W01"), "in wall"));
        Assert.True(Progress.IsComplete(job.Unit("W01"), step));
    }

    [Fact]
    public void PresetStoredWaitsForAPresetThatMovesTheUnit()
    {
        var step = StepList.Find("preset-stored")!;
        var job = new TestJob().Window("W01").Add(ItemKind.Remote, "R1");
        Assert.Equal(["a preset that moves it"], Progress.Missing(job.Unit("W01"), step).Select(m => m.For(new Reader(job.House))));
        job.Do(AddItems.Preset(job.House.Remotes[0], "Evening"));
        Assert.False(Progress.IsComplete(job.Unit("W01"), step));
        job.SayOf("Evening", PresetFacts.Position, "40", job.Unit("W01").Id);
        Assert.True(Progress.IsComplete(job.Unit("W01"), step));
    }

    [Fact]
    public void AHouseWhoseLimitsWereSetBeforeIsNotAskedForAPreset()
    {
        var old = new TestJob(steps: LaterSteps.First).Window("W01");
        foreach (var step in LaterSteps.First.Asked(Phase.Limits, old.Unit("W01")).ToList())
            old.Do(MarkStep.Done(old.Unit("W01"), step));
        Assert.DoesNotContain("a preset that moves it",
            Progress.Missing(old.Unit("W01"), StepList.Find("preset-stored")!).Select(m => m.For(new Reader(old.House))));
    }

    [Fact]
    public void FireBarriersWaitForEveryLegAndForEachSeal()
    {
        var job = Jobs.Roughed();
        string? Lacks() => Progress.Missing(job.Unit("W01"), StepList.Find("fire-stops-seen")!).Select(m => m.For(new Reader(job.House))).SingleOrDefault();
        void Leg(Fact fact, string typed) => job.Do(j => SetFact.Typed(j.House, j.Run("W01").Legs[0].Item, fact, typed));
        Assert.Equal("through a fire barrier of each leg", Lacks());
        Leg(LegFacts.FireBarrier, "yes");
        Assert.Equal("sealed by of each leg", Lacks());
        Leg(LegFacts.SealedBy, "The fire-stopping crew");
        Assert.Equal("seal seen on of each leg", Lacks());
        Leg(LegFacts.SealSeenOn, "2026-03-02");
        Assert.Null(Lacks());
        Leg(LegFacts.FireBarrier, "no");
        Assert.Null(Lacks());
    }

    // Mains work is for a licensed electrician: the step that records it asks for the name and the licence.
    [Fact]
    public void MainsAreSignedByAnElectricianWithALicence() =>
        Assert.Superset(new HashSet<Fact> { PanelFacts.ConnectedBy, PanelFacts.Licence }, StepList.Find("mains-connected")!.Evidence.ToHashSet());
}
