using TrimOut.Core.Checks.Measures;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Geometry;
using TrimOut.Core.History;
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

    [Theory]
    [InlineData("W02 bottom, W01 top, W02 top", true)]
    [InlineData("W01 bottom, W02 top, W01 top", false)]
    [InlineData("W01 top, W02 top, W01 bottom", false)]
    public void WhoWroteLastIsSeenWhateverOrderTheyMeasureIn(string order, bool leftOut)
    {
        var job = Jobs.Walked("W02", Jobs.Walked());
        foreach (var step in order.Split(", "))
            job.Say(step[..3], step.EndsWith("top", StringComparison.Ordinal) ? WindowFacts.WidthTop : WindowFacts.WidthBottom, "36");
        Assert.Equal(leftOut, job.Of(Check, "W01") is Core.Checks.Outcome.Found);
    }

    [Theory]
    [InlineData("ordered", "Measure what is left before anything is ordered.")]
    [InlineData("measured", "Measure what is left before anything is ordered.")]
    [InlineData("clicked-in", "It hangs: measure what can still be reached, and waive the rest.")]
    public void OneUnitOfSeveralIsEnough(string done, string mend)
    {
        var job = Jobs.Measured().Do(j => AddItems.Unit(j.House, j.House.FindTag("W01")!.Id)).Forget("W01", WindowFacts.WidthBottom);
        job = done == "ordered" ? job.Say("W01B", UnitFacts.OrderWidth, "18") : job.Mark("W01B", done);
        Assert.Equal(mend, job.FaultOf(Check, "W01").Mend);
    }

    [Theory]
    [InlineData("width-top")]
    [InlineData("width-middle")]
    [InlineData("width-bottom")]
    [InlineData("height-left")]
    [InlineData("height-middle")]
    [InlineData("height-right")]
    [InlineData("diagonal-down")]
    [InlineData("diagonal-up")]
    [InlineData("depth")]
    public void EachMeasureIsNeededOnceASizeIsWritten(string measure)
    {
        var fact = FactTable.Find(Core.Houses.ItemKind.Window, measure)!;
        var found = Jobs.Ordered().Forget("W01", fact).Fault(Check, "W01");
        Assert.Equal($"An order size is written, and not measured yet: {fact.Label[..1].ToLowerInvariant()}{fact.Label[1..]}.", found.Message);
        Assert.Equal(measure, found.Mends.Field);
    }

    [Fact]
    public void AHeightAloneIsAnOrderSizeToo() =>
        Jobs.Measured().Say("W01", UnitFacts.OrderHeight, "60").Forget("W01", WindowFacts.WidthTop).Fault(Check, "W01");

    // A file that brings a measure of each window has gone on from neither.
    [Fact]
    public void WhoMeasuresTwoWindowsAtOnceHasLeftNothingOut()
    {
        var job = Jobs.Walked("W02", Jobs.Walked());
        Draft Put(string tag) => SetFact.Typed(job.House, job.House.FindTag(tag)!.Item, WindowFacts.WidthTop, "36").Value;
        job.Do(Put("W01").And(Put("W02")));
        Assert.All(Check.Run(job.House), r => Assert.IsType<Core.Checks.Outcome.NotChecked>(r.Outcome));
    }
}
