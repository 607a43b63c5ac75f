using TrimOut.Core.Plans.Outputs;
using static TrimOut.Core.Tests.Plans.Outputs.OutputOrders;

namespace TrimOut.Core.Tests.Plans.Outputs;

public class OutputPlannerTests
{
    // A panel has ten outputs; eighteen units are spread nine and nine: common practice, no published source.
    [Theory]
    [InlineData(10, 1, 0)]
    [InlineData(11, 2, 1)]
    [InlineData(18, 2, 0)]
    [InlineData(21, 3, 0)]
    public void AsFewPanelsAsCanBeLoadedAlike(int runs, int panels, int spread)
    {
        var plan = Solve(Panels(10, 10, 10).Room(null, runs));
        Assert.Equal((panels, spread, true), (plan.Panels.Found, plan.Spread.Found, plan.Proven));
    }

    [Fact]
    public void AGroupThatMovesTogetherIsSharedOutOverThePanels()
    {
        var plan = Solve(Panels(10, 10).Room("Living", 6, "south").Room("Kitchen", 6));
        Assert.Equal((3, 3), (plan.Peak.Found, plan.Peak.Limit));
    }

    [Fact]
    public void RoomsStayTogetherWhereNothingElseIsLost()
    {
        var plan = Solve(Panels(10, 10).Room("Living", 5).Room("Kitchen", 4).Room("Study", 3).Room("Hall", 4).Room("Bath", 2));
        Assert.Equal(0, plan.RoomSplits.Found);
        Assert.Equal(
            "2 panels, loaded alike; no two units that move together share a panel; every room on one panel. No landed cable is moved. No plan is better.",
            plan.Says());
    }

    [Fact]
    public void TheLoadCountsNotTheNumberOfUnits()
    {
        var order = Panels(2, 2).Room("Living", 4, "south");
        order = order with { Runs = [.. order.Runs.Select((r, i) => r with { Load = i == 0 ? 3000 : 1000 })], LoadIn = "mA" };
        Assert.Equal(4000, Solve(order).Peak.Found);
    }

    [Fact]
    public void ALandedRunStaysWhereItIs()
    {
        var plan = Solve(Panels(10, 10).Room("Living", 4).Landed("W01", "P2", 7));
        Assert.Equal(new OutputPlace("P2", 7), plan.Runs[0].At);
        Assert.Equal("P2", plan.PanelsOf("Living"));
        Assert.Equal("No landed cable is moved.", plan.Says().Split(". ")[^2] + ".");
    }

    [Fact]
    public void APlanThatMovesALandedRunSaysSoAndCountsIt()
    {
        var order = Panels(4, 4).Room("Living", 3).Landed("W01", "P1", 1).Landed("W02", "P2", 1).Landed("W03", "P2", 2);
        Assert.Equal((2, 0), (Solve(order).Panels.Found, Solve(order).Moved.Found));
        var moved = Solve(order with { MayMove = true });
        Assert.Equal((1, 1), (moved.Panels.Found, moved.Moved.Found));
        Assert.Contains("1 landed cable is moved.", moved.Says(), StringComparison.Ordinal);
        Assert.Equal("W01", moved.Runs.Single(r => r.Moved).Run.Id);
    }

    [Fact]
    public void TooFewStepsStillLandEveryRunAndSayHowFarItMayBeOff()
    {
        var order = Panels(10, 10, 10, 10);
        for (var room = 0; room < 12; room++)
            order = order.Room($"Room {room}", 1 + room % 5, $"group {room % 4}", $"scene {room % 3}");
        var plan = OutputPlanner.Solve(order, steps: 1).Value;
        AssertSound(order, plan);
        Assert.False(plan.Proven);
        Assert.Contains("may be possible", plan.Says(), StringComparison.Ordinal);
    }

    [Fact]
    public void AStoppedPlanIsNoPlan()
    {
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        Assert.ThrowsAny<OperationCanceledException>(() => OutputPlanner.Solve(Panels(10).Room("Living", 5), stop: stop.Token));
    }

    [Fact]
    public void NonsenseIsRefusedByName()
    {
        Assert.Equal("There is no run to land.", Refused(Panels(10)));
        Assert.StartsWith("There is no panel", Refused(Panels().Room("Living", 1)), StringComparison.Ordinal);
        Assert.StartsWith("Panel P2: 0 outputs", Refused(Panels(10, 0).Room("Living", 1)), StringComparison.Ordinal);
        Assert.Equal("11 runs wait for an output and 10 are free. Add a panel first.", Refused(Panels(10).Room("Living", 11)));
        Assert.StartsWith("Run W01: a load of -2", Refused(Panels(10).Room("Living", 1) is var o ? o with { Runs = [o.Runs[0] with { Load = -2 }] } : o),
            StringComparison.Ordinal);
        Assert.Equal("Run W01 is landed on panel P9, which is not in the order.", Refused(Panels(10).Room("Living", 1).Landed("W01", "P9", 1)));
        Assert.StartsWith("Run W01 is landed on output 11 of panel P1", Refused(Panels(10).Room("Living", 1).Landed("W01", "P1", 11) with { MayMove = true }),
            StringComparison.Ordinal);
        Assert.Equal("Run W01 is in the order twice.", Refused(Panels(10).Room("Living", 1) is var p ? p with { Runs = [p.Runs[0], p.Runs[0]] } : p));
    }

    private static string Refused(OutputOrder order)
    {
        var plan = OutputPlanner.Solve(order);
        Assert.False(plan.Ok);
        return plan.Reason!;
    }

    private static OutputPlan Solve(OutputOrder order)
    {
        var plan = OutputPlanner.Solve(order);
        Assert.True(plan.Ok, plan.Reason);
        AssertSound(order, plan.Value);
        return plan.Value;
    }
}
