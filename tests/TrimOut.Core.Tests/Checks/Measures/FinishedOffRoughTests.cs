using TrimOut.Core.Checks.Measures;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Measures;

public class FinishedOffRoughTests
{
    private static readonly FinishedOffRough Check = new();

    public static Example Finds => new(() => Framed(), j => j.Say("W01", WindowFacts.RoughWidth, "25 1/2\""));

    public static Example Passes => new(() => Framed(), j => j.Say("W01", WindowFacts.RoughWidth, "37 1/4\""));

    [Fact]
    public void AsMuchAsTrimTakesIsFine() => Framed().Fine(Check, "W01");

    [Theory]
    [InlineData("36 1/8")]
    [InlineData("39")]
    public void AtTheLimitsItIsFine(string rough) => Framed().Say("W01", WindowFacts.RoughWidth, rough).Fine(Check, "W01");

    [Fact]
    public void AWidthThatIsHardlySmallerThanTheFramingIsAStop() => Assert.Equal(
        "The finished width is 36\" and the rough width 36 1/16\": plaster and trim take 1/8\" or more.",
        Framed().Say("W01", WindowFacts.RoughWidth, "36 1/16").Fault(Check, "W01").Message);

    [Fact]
    public void AWidthThatIsFarSmallerIsAStop() => Assert.Equal(
        "The finished width is 36\" and the rough width 39 1/16\": 3 1/16\" apart, and trim takes 3\" at the most.",
        Framed().Say("W01", WindowFacts.RoughWidth, "39 1/16").Fault(Check, "W01").Message);

    [Fact]
    public void TheHeightIsHeldAgainstItsOwn() => Assert.StartsWith("The finished height is 60\" and the rough height 60\"",
        Framed().Say("W01", WindowFacts.RoughHeight, "60").Fault(Check, "W01").Message, StringComparison.Ordinal);

    [Fact]
    public void SizesThatAreChangedOverAreToldAsSuch() => Assert.Equal(
        "Finished 36\" x 60\" fits rough 61\" x 37\" only when width and height change places.",
        Framed().Say("W01", WindowFacts.RoughWidth, "61").Say("W01", WindowFacts.RoughHeight, "37").Fault(Check, "W01").Message);

    [Fact]
    public void OneMisreadWidthOfThreeIsNoMatterOfTheFraming() => Framed().Say("W01", WindowFacts.WidthMiddle, "40").Fine(Check, "W01");

    [Fact]
    public void AnUnknownRoughHeightIsNotAPass() => Framed().Forget("W01", WindowFacts.RoughHeight).Lacks(Check, "W01", "rough height");

    [Fact]
    public void AnUnknownWidthIsNotAPass() => Framed().Forget("W01", WindowFacts.WidthTop).Lacks(Check, "W01", "width, top");

    private static TestJob Framed() => Jobs.Measured().Say("W01", WindowFacts.RoughWidth, "37").Say("W01", WindowFacts.RoughHeight, "61");
}
