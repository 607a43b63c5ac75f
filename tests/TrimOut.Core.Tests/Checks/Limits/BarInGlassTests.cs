using TrimOut.Core.Checks.Limits;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Limits;

public class BarInGlassTests
{
    private static readonly BarInGlass Check = new();

    public static Example Finds => new(() => Jobs.Ordered(), j => j.Say("W01", UnitFacts.OpenGap, "0\""));

    public static Example Passes => new(() => Jobs.Ordered(), j => j.Say("W01", UnitFacts.OpenGap, "1/2\""));

    [Fact]
    public void AnEighthShowsThatItIsClear() => Jobs.Ordered().Say("W01", UnitFacts.OpenGap, "1/8").Fine(Check, "W01");

    [Fact]
    public void JustLessIsACaution() => Assert.Equal("Open, the bar is 1/16\" clear of the glass; 1/8\" show that it is out of it.",
        Jobs.Ordered().Say("W01", UnitFacts.OpenGap, "1/16").Fault(Check, "W01").Message);

    // The generic cellular shade, 50 in high, stacks to 4 1/2 in: with glass from 4 5/8 in on, an eighth stays clear.
    [Fact]
    public void OfAStackThatCoversTheGlassNoLimitCanLiftTheBar()
    {
        Stacked("4 5/8").Fault(Check, "W01");
        Stacked("4 9/16").Silent(Check, "W01");
    }

    [Fact]
    public void WithoutTheSheetNobodyKnowsThatItCovers() => Stacked("4").SayOf("Cellular", CoveringKindFacts.StackShare, "").Fault(Check, "W01");

    private static TestJob Stacked(string glass) => Jobs.Measured().Say("W01", UnitFacts.Kind, "Cellular").Say("W01", UnitFacts.OrderHeight, "50")
        .Say("W01", WindowFacts.GlassBelowHead, glass).Say("W01", UnitFacts.OpenGap, "0");

    [Fact]
    public void AnUnknownGapIsNotAPass() => Jobs.Ordered().Lacks(Check, "W01", "open: bar above glass");
}
