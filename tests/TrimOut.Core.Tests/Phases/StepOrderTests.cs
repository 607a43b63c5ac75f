using TrimOut.Core.Phases;

namespace TrimOut.Core.Tests.Phases;

public class StepOrderTests
{
    private static readonly List<string> InOrder = [.. StepList.All.Select(s => s.Id)];

    public static TheoryData<string> Ids() => [.. InOrder];

    [Fact]
    public void EveryStepHasItsLineAndNoLineIsOfNoStep() => Assert.Equal(InOrder.Order(), StepOrder.Ids.Order());

    [Theory]
    [MemberData(nameof(Ids))]
    public void WhatAStepPresupposesStandsBeforeItInTheList(string id) =>
        Assert.All(StepOrder.Of(StepList.Find(id)!).Before, before => Assert.InRange(InOrder.IndexOf(before), 0, InOrder.IndexOf(id) - 1));

    [Theory]
    [MemberData(nameof(Ids))]
    public void NoStopOfALaterPhaseSpeaksAgainstAStep(string id)
    {
        var step = StepList.Find(id)!;
        Assert.All(StepOrder.Of(step).NoStopOf, phase => Assert.True(phase <= step.Phase));
    }
}
