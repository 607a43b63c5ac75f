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

    [Fact]
    public void AnUnknownGapIsNotAPass() => Jobs.Ordered().Lacks(Check, "W01", "open: bar above glass");
}
