using TrimOut.Core.Checks.Measures;
using TrimOut.Core.Facts;
using TrimOut.Core.Geometry;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Measures;

public class MeasuresIncompleteTests
{
    private static readonly MeasuresIncomplete Check = new();

    public static Example Finds => new(() => Jobs.Ordered(), j => j.Forget("W01", WindowFacts.WidthBottom));

    public static Example Passes => new(() => Jobs.Measured(), j => j.Say("W01", WindowFacts.Mount, "outside").Forget("W01", WindowFacts.Depth));

    [Fact]
    public void AllMeasuresAreFine() => Jobs.Measured().Fine(Check, "W01");

    [Fact]
    public void OneThatIsLeftOutIsAStop()
    {
        var found = Jobs.Measured().Mark("W01", "measured").Forget("W01", WindowFacts.WidthBottom).Fault(Check, "W01");
        Assert.Equal("Not measured yet: width, bottom.", found.Message);
        Assert.Equal("width-bottom", found.Mends.Field);
    }

    [Fact]
    public void WhoIsStillAtItHasForgottenNothing()
    {
        var job = Jobs.Walked().Say("W01", WindowFacts.WidthTop, "36");
        job.Lacks(Check, "W01", "width, middle; width, bottom; height, left; height, middle; height, right; diagonal, top left; diagonal, bottom left; depth");
        Jobs.Measured().Forget("W01", WindowFacts.WidthBottom).Lacks(Check, "W01", "width, bottom");
        Jobs.Measured().Mark("W01", "measured-again").Forget("W01", WindowFacts.WidthBottom).Fault(Check, "W01");
    }

    [Fact]
    public void WhoGoesOnToAnotherWindowHasLeftOutTheRest()
    {
        var job = Jobs.Walked("W02", Jobs.Walked()).Say("W01", WindowFacts.WidthTop, "36");
        job.Lacks(Check, "W01", "width, middle; width, bottom; height, left; height, middle; height, right; diagonal, top left; diagonal, bottom left; depth");
        job.Say("W02", WindowFacts.Facing, "S");
        Assert.IsType<TrimOut.Core.Checks.Outcome.NotChecked>(job.Of(Check, "W01"));
        job.Say("W02", WindowFacts.WidthTop, "36").Fault(Check, "W01");
        Assert.IsType<TrimOut.Core.Checks.Outcome.NotChecked>(job.Of(Check, "W02"));
    }

    [Fact]
    public void AnOutsideMountNeedsNoDepth() => Jobs.Measured().Forget("W01", WindowFacts.Depth).Say("W01", WindowFacts.Mount, "outside").Fine(Check, "W01");

    [Fact]
    public void AWindowThatNobodyMeasuredIsNotAPass() => Jobs.Walked().Lacks(Check, "W01", "finished measures");

    [Fact]
    public void AnOrderSizeWithoutMeasuresIsAStop() =>
        Assert.StartsWith("An order size is written, and not measured yet", Jobs.Walked().Say("W01", UnitFacts.OrderWidth, "36").Fault(Check, "W01").Message,
            StringComparison.Ordinal);
}
