using TrimOut.Core.Plans.Cutting;
using TrimOut.Core.Plans.Cutting.Solving;
using static TrimOut.Core.Tests.Plans.Cutting.CutOrders;

namespace TrimOut.Core.Tests.Plans.Cutting;

public class PublishedInstancesTests
{
    // Optima: proven by an exact solver; for u120 they agree with the published bounds (the best known counts in the header of binpack1 are one higher for 08
    // and 19).
    public static TheoryData<string, int[], int> WithOptimum => new()
    {
        { "PM_u010_05", PublishedInstances.PmU010Number05, 4 },
        { "PM_u020_06", PublishedInstances.PmU020Number06, 8 },
        { "PM_u060_06", PublishedInstances.PmU060Number06, 27 },
        { "PM_u060_07", PublishedInstances.PmU060Number07, 25 },
        { "PM_u120_09", PublishedInstances.PmU120Number09, 50 },
        { "u120_08", PublishedInstances.OrU120Number08, 50 },
        { "u120_19", PublishedInstances.OrU120Number19, 49 },
    };

    [Theory]
    [MemberData(nameof(WithOptimum))]
    public void APublishedInstanceIsSolvedToItsOptimumAndProven(string name, int[] sizes, int optimum)
    {
        var order = PublishedInstances.Order(sizes);
        var plan = CutPlanner.Solve(order, CutAim.FewestBoxes).Value;
        AssertSound(order, plan);
        Assert.Equal((name, optimum, true), (name, plan.Opened.Found, plan.FewestProven));
    }

    [Fact]
    public void FourHundredAndFiftyThreeBarsOfTheTextbook()
    {
        // Chvátal, Linear Programming (1983), chapter 13: stock 100; fractional optimum 452.25.
        Assert.Equal((453, true), Cut(100, (45, 97), (36, 610), (31, 395), (14, 211)));
    }

    [Fact]
    public void SeventyThreeRollsOfTheWidelyPrintedExample()
    {
        // Stock 5600, 13 widths, printed in encyclopaedias under "cutting stock problem"; area bound 72.7.
        Assert.Equal((73, true), Cut(5600, (1380, 22), (1520, 25), (1560, 12), (1710, 14), (1820, 18), (1880, 18), (1930, 20),
            (2000, 10), (2050, 12), (2100, 14), (2140, 16), (2150, 18), (2200, 20)));
    }

    [Fact]
    public void FirstFitDecreasingIsBeatenOnTheSmallestCounterExample()
    {
        var order = PublishedInstances.Order(PublishedInstances.PmU010Number05);
        Assert.Equal(5, FirstFitBoxes(order));
        Assert.Equal(4, CutPlanner.Solve(order).Value.Opened.Found);
    }

    [Fact]
    public void TheTotalLengthAloneWouldPromiseABoxTooFew()
    {
        // PM_u060_06: 26 boxes would hold the total, 27 are needed.
        var sizes = PublishedInstances.PmU060Number06;
        Assert.Equal(26, (sizes.Sum() + PublishedInstances.Box - 1) / PublishedInstances.Box);
        Assert.Equal(27, CutPlanner.Solve(PublishedInstances.Order(sizes), CutAim.FewestBoxes).Value.Opened.Limit);
    }

    internal static int FirstFitBoxes(CutOrder order)
    {
        var shop = new Workshop(order, order.Pieces.Length);
        return FirstFit.Pack(shop.Pieces, shop.Rooms)!.Distinct().Count();
    }

    private static (int Boxes, bool Proven) Cut(int stock, params (int Width, int Count)[] widths)
    {
        var order = PublishedInstances.Order([.. widths.SelectMany(w => Enumerable.Repeat(w.Width, w.Count))], stock);
        var plan = CutPlanner.Solve(order, CutAim.FewestBoxes).Value;
        AssertSound(order, plan);
        return (plan.Opened.Found, plan.FewestProven);
    }
}
