using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Phases;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Phases;

public class HouseHeadTests
{
    private static readonly DateOnly Today = new(2026, 6, 8);

    private static HouseHead Of(TestJob job) => HouseHead.Of(job.House, StepList.Shipped, Today);

    private static string Waiting(TestJob job) => string.Join(", ", Of(job).Waiting.Select(w => $"{w.For} {w.Units}"));

    /// <summary>Says of every step up to a phase that it is not needed.</summary>
    private static TestJob Through(TestJob job, string tag, Phase last)
    {
        foreach (var step in StepList.All.Where(s => s.Phase <= last && StepList.Of(s.Phase, job.Unit(tag)).Contains(s)))
            job.Do(MarkStep.NotNeeded(job.Unit(tag), step, "test"));
        return job;
    }

    [Fact]
    public void OneFinishedUnitOfTwoIsOneOfTwo()
    {
        var head = Of(Through(new TestJob().Window("W01").Window("W02"), "W02", Phase.Handover));
        Assert.Equal((1, 2), (head.Finished, head.Units));
        Assert.Equal("W01", head.Next!.Value.Subject.Name);
        Assert.Empty(head.Waiting);
    }

    [Fact]
    public void AfterTheCableAUnitWaitsForThePaintUntilTheDayOfIt()
    {
        var job = Through(new TestJob().Window("W01"), "W01", Phase.RoughIn);
        Assert.Equal("Paint 1", Waiting(job));
        Assert.Equal("Paint 1", Waiting(job.SayOf("", HouseFacts.PaintedOn, "2026-06-09")));
        Assert.Empty(Of(job.SayOf("", HouseFacts.PaintedOn, "2026-06-08")).Waiting);
    }

    [Fact]
    public void WhatIsOrderedWaitsForTheMaker()
    {
        var job = Through(new TestJob().Window("W01"), "W01", Phase.Measure);
        foreach (var step in (string[])["finish-chosen", "size-worked-out", "sheet-frozen"])
            job.Mark("W01", step);
        Assert.Equal("Maker 1", Waiting(job));
        Assert.Equal("Maker 1", Waiting(job.Mark("W01", "acknowledged")));
        Assert.Empty(Of(job.Mark("W01", "box-matched")).Waiting);
    }

    [Fact]
    public void VoltsWaitForTheElectricianAndNobodyElseIsToldToDoIt()
    {
        var job = Through(new TestJob().Window("W01"), "W01", Phase.Hang).Add(Core.Houses.ItemKind.Panel, "A");
        job.Do(Landing.Land(job.Run("W01"), job.House.Panels[0], 1)).Mark("W01", "landed").Mark("W01", "spliced");
        Assert.Equal("Electrician 1", Waiting(job));
        Assert.NotEqual("mains-connected", Of(job).Next?.Step.Id);
        job.Do(MarkStep.Done(job.House.Panels[0], StepList.Find("mains-connected")!));
        Assert.Empty(Of(job).Waiting);
    }

    [Fact]
    public void AUnitThatIsReadyWaitsForTheOwner() =>
        Assert.Equal("Owner 1", Waiting(Through(new TestJob().Window("W01"), "W01", Phase.Limits)));
}
