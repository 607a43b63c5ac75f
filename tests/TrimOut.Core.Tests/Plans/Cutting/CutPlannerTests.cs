using TrimOut.Core.Plans.Cutting;
using TrimOut.Core.Units;
using static TrimOut.Core.Tests.Plans.Cutting.CutOrders;

namespace TrimOut.Core.Tests.Plans.Cutting;

public class CutPlannerTests
{
    [Fact]
    public void RunsThatFillABoxToTheEndLeaveNothing()
    {
        var plan = Solve(Feet([60, 30, 10], [100]));
        Assert.Equal("W01 0-60, W02 60-90, W03 90-100", plan.Boxes.Single().Marks());
        Assert.Equal(Length.Zero, plan.LongestLeft.Found);
        Assert.Equal("1 box opened: no plan needs fewer. Nothing is left over.", plan.Says(DisplayUnits.Inches));
    }

    [Fact]
    public void TheLastRunOfABoxNeedsNoCut()
    {
        // Two cuts of 1 ft: 60 + 1 + 30 + 1 + 8 = 100.
        var plan = Solve(Feet([60, 30, 8], [100], loss: 1));
        Assert.Equal("W01 0-60, W02 61-91, W03 92-100", plan.Boxes.Single().Marks());
        Assert.False(CutPlanner.Solve(Feet([60, 30, 9], [100], loss: 1)).Ok);
    }

    [Fact]
    public void WhatIsLeftOfABoxIsCountedAfterTheLastCut() =>
        Assert.Equal(Length.FromFeet(47), Solve(Feet([50, 1], [100], loss: 1)).LongestLeft.Found);

    [Fact]
    public void RunsPulledTogetherComeFromDifferentBoxes()
    {
        var plan = Solve(Feet([20, 20, 20], [100, 100, 100]).Bundled("east wall", "W01", "W02", "W03"));
        Assert.Equal(3, plan.Opened.Found);
        Assert.True(plan.FewestProven);
    }

    [Fact]
    public void RunsPulledTogetherComeOffTheirBoxesInTheSameOrder()
    {
        var order = Feet([30, 10, 40, 15, 35, 12], [100, 100]).Bundled("east", "W01", "W02").Bundled("west", "W03", "W04").Bundled("north", "W05", "W06");
        var pulls = Solve(order).Boxes.Select(b => string.Join(' ', b.Cuts.Select(c => c.Piece.Bundle))).ToList();
        Assert.Equal(["west north east", "west north east"], pulls);
    }

    [Fact]
    public void APartBoxIsUsedBeforeAFullOneIsOpened()
    {
        var plan = Solve(Feet([40, 30], [500, 80, 500]));
        Assert.Equal("B2", plan.Boxes.Single().Box.Id);
        Assert.Equal(["B1", "B3"], plan.Shut.Select(b => b.Id));
    }

    [Fact]
    public void WasteIsGatheredInOneBoxSoThatItStaysUseful()
    {
        // First fit leaves 10 and 30; 60 + 40 and 50 + 10 leave 40 in one piece.
        var plan = Solve(Feet([60, 50, 40, 10], [100, 100]));
        Assert.Equal(Length.FromFeet(40), plan.LongestLeft.Found);
        Assert.True(plan.Proven);
    }

    [Fact]
    public void BoxesAreBoughtOnlyWhenThoseOnHandDoNotDo()
    {
        var enough = Solve(Feet([50, 50], [60, 60], newBox: 500));
        Assert.Equal((0, 2), (enough.ToBuy.Found, enough.Opened.Found));
        var short1 = Solve(Feet([50, 50, 50], [60, 60], newBox: 500));
        Assert.Equal((1, 1), (short1.ToBuy.Found, short1.Opened.Found));
        Assert.Equal("new box 1", short1.Boxes.Single(b => b.ToBuy).Box.Id);
        Assert.Equal("1 box opened (1 to buy): no plan needs fewer. The longest leftover is 350 ft: no plan for these boxes leaves a longer one.",
            short1.Says(DisplayUnits.Inches));
    }

    [Fact]
    public void ARunThatOnlyAnOddLongBoxHoldsComesFromIt()
    {
        var plan = Solve(Feet([600, 590], [700, 650], newBox: 500));
        Assert.Equal(0, plan.ToBuy.Found);
        Assert.Equal(
            "The runs need 1770 ft and the boxes on hand hold 1350 ft. No way of cutting them without a splice does, whatever is bought: get a longer box.",
            CutPlanner.Solve(Feet([600, 590, 580], [700, 650], newBox: 500)).Reason);
    }

    [Fact]
    public void TooFewStepsStillGiveAPlanAndSayHowFarItMayBeOff()
    {
        var order = PublishedInstances.Order(PublishedInstances.PmU120Number09);
        var plan = CutPlanner.Solve(order, steps: 1).Value;
        AssertSound(order, plan);
        Assert.Equal((52, 50), (plan.ToBuy.Found, plan.ToBuy.Limit));
        Assert.False(plan.FewestProven);
        Assert.StartsWith("52 boxes to buy; it may be possible with 50, no fewer.", plan.Says(DisplayUnits.Inches), StringComparison.Ordinal);
    }

    [Fact]
    public void TheSameOrderGivesTheSamePlan()
    {
        var order = PublishedInstances.Order(PublishedInstances.PmU120Number09);
        static string Text(CutPlan plan) => string.Join('\n', plan.Boxes.Select(b => b.Marks()));
        Assert.Equal(Text(Solve(order)), Text(Solve(order)));
    }

    [Fact]
    public void AStoppedPlanIsNoPlan()
    {
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        Assert.ThrowsAny<OperationCanceledException>(() => CutPlanner.Solve(PublishedInstances.Order(PublishedInstances.PmU120Number09), stop: stop.Token));
    }

    private static CutPlan Solve(CutOrder order)
    {
        var plan = CutPlanner.Solve(order);
        Assert.True(plan.Ok, plan.Reason);
        AssertSound(order, plan.Value);
        return plan.Value;
    }
}
