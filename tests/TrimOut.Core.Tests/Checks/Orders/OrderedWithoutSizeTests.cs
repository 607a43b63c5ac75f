using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Orders;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Phases;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Orders;

public class OrderedWithoutSizeTests
{
    private static readonly OrderedWithoutSize Check = new();

    public static Example Finds => new(() => Jobs.Ordered().Say("W01", UnitFacts.OrderedOn, "2026-03-02"), j => j.Forget("W01", UnitFacts.OrderHeight));

    public static Example Passes => new(() => Jobs.Ordered(), j => j.Say("W01", UnitFacts.OrderedOn, "2026-03-02"));

    [Fact]
    public void AnOrderWithBothIsFine() => Assert.IsType<Outcome.Fine>(Sent().Judge(Check, "W01"));

    [Fact]
    public void AnOrderWithoutAHeightIsAStopThatLeadsToTheHeight()
    {
        var job = Sent().Forget("W01", UnitFacts.OrderHeight);
        var found = job.Fault(Check, "W01");
        Assert.Equal("It is ordered, and this is blank: order height.", found.Message);
        Assert.StartsWith("Write the size that went to the maker", found.Mend, StringComparison.Ordinal);
        Assert.Equal(FieldRef.To(job.Unit("W01").Item, UnitFacts.OrderHeight), found.Mends);
        Assert.Equal((Severity.Stop, Phase.Order), (Check.Info.Severity, Check.Info.Phase));
    }

    [Theory]
    [InlineData("order-width", "It is ordered, and this is blank: order width.")]
    [InlineData("order-width order-height", "It is ordered, and this is blank: order width, order height.")]
    public void WhatIsBlankIsNamed(string blank, string said)
    {
        var job = Sent();
        foreach (var name in blank.Split(' '))
            job.Forget("W01", FactTable.Find(Core.Houses.ItemKind.Unit, name)!);
        Assert.Equal(said, job.Fault(Check, "W01").Message);
    }

    [Fact]
    public void TheMakersNumberSaysAsWellThatItWentOutAndAWordForNoneDoesNot()
    {
        Jobs.Measured().Say("W01", UnitFacts.Acknowledgement, "A-7").Fault(Check, "W01");
        Assert.IsType<Outcome.DoesNotApply>(Jobs.Measured().Say("W01", UnitFacts.Acknowledgement, "pending").Judge(Check, "W01"));
    }

    [Fact]
    public void WhatIsNotOrderedIsNotAsked() => Assert.IsType<Outcome.DoesNotApply>(Jobs.Measured().Judge(Check, "W01"));

    [Fact]
    public void OnceItHangsTheSizeIsWrittenForASpare() => Assert.Contains("the owner orders a spare by it",
        Sent().Forget("W01", UnitFacts.OrderHeight).Mark("W01", "clicked-in").Fault(Check, "W01").Mend, StringComparison.Ordinal);

    /// <summary>Whatever was marked before: the step that says that it went out is not marked over a blank.</summary>
    [Fact]
    public void OrderPlacedIsNotMarkedOverABlank()
    {
        var job = Sent().Forget("W01", UnitFacts.OrderHeight);
        job.Do(MarkStep.NotNeeded(job.Unit("W01"), StepList.Find("size-worked-out")!, "a size of the owner"));
        Assert.Contains(StepGuard.Against(job.Unit("W01"), StepList.Find("sheet-frozen")!, job.Report, StepList.Shipped),
            s => s.Contains("this is blank: order height", StringComparison.Ordinal));
    }

    private static TestJob Sent() => Jobs.Ordered().Say("W01", UnitFacts.OrderedOn, "2026-03-02");
}
