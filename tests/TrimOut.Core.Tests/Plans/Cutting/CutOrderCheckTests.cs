using TrimOut.Core.Plans.Cutting;
using TrimOut.Core.Units;
using static TrimOut.Core.Tests.Plans.Cutting.CutOrders;

namespace TrimOut.Core.Tests.Plans.Cutting;

public class CutOrderCheckTests
{
    [Fact]
    public void NoRunsIsNoOrder() => Assert.Equal("There is no run to cut.", Refused(Feet([], [100])));

    [Fact]
    public void NoBoxesIsNoOrder() => Assert.Contains("no box to cut from", Refused(Feet([10], [])), StringComparison.Ordinal);

    [Theory]
    [InlineData(0)]
    [InlineData(-5)]
    [InlineData(100_000_000)]
    public void ALengthThatIsNoneNamesItsRun(int feet) => Assert.StartsWith("Run W02: a length of", Refused(Feet([10, feet], [100])), StringComparison.Ordinal);

    [Theory]
    [InlineData(0)]
    [InlineData(-5)]
    public void ABoxThatHoldsNothingIsNamed(int feet) => Assert.StartsWith("Box B2: it can't hold", Refused(Feet([10], [100, feet])), StringComparison.Ordinal);

    [Fact]
    public void ANegativeLossIsRefused() => Assert.StartsWith("Waste per cut:", Refused(Feet([10], [100], loss: -1)), StringComparison.Ordinal);

    [Fact]
    public void ANewBoxOfNothingIsRefused() => Assert.StartsWith("A new box can't hold", Refused(Feet([10], [], newBox: 0)), StringComparison.Ordinal);

    [Fact]
    public void ARunLongerThanEveryBoxIsNamedWithBothLengths() => Assert.Equal(
        "Run W02 needs 101 ft and the longest box holds 100 ft. A run has no splice: get a longer box or find a shorter way.",
        Refused(Feet([10, 101, 20], [100, 50])));

    [Fact]
    public void ARunTwiceIsNamed() => Assert.Equal("Run W01 is in the order twice.",
        Refused(Feet([10], [100]) with { Pieces = [new("W01", Length.FromFeet(1)), new("W01", Length.FromFeet(2))] }));

    [Fact]
    public void ABoxTwiceIsNamed() => Assert.Equal("Box B1 is in the order twice.",
        Refused(Feet([10], [100]) with { Pieces = [new("W01", Length.FromFeet(1))] } is var order
            ? new CutOrder(order.Pieces, [order.Boxes[0], order.Boxes[0]], order.LossPerCut) : order));

    [Fact]
    public void ABundleOfMoreRunsThanBoxesIsNamedWithItsRuns() => Assert.Equal(
        "Bundle east pulls 3 runs at once and there are 2 boxes: W01, W02, W03.",
        Refused(Feet([10, 10, 10], [100, 100]).Bundled("east", "W01", "W02", "W03")));

    [Fact]
    public void BoxesThatDoNotDoAreRefusedWithTheProofSaid()
    {
        // 120 ft of runs in 130 ft of boxes, but 40 + 40 fits no box.
        Assert.Equal(
            "The runs need 120 ft and the boxes on hand hold 130 ft. No way of cutting them without a splice does: get another box.",
            Refused(Feet([40, 40, 40], [65, 65])));
    }

    private static string Refused(CutOrder order)
    {
        var plan = CutPlanner.Solve(order);
        Assert.False(plan.Ok);
        return plan.Reason!;
    }
}
