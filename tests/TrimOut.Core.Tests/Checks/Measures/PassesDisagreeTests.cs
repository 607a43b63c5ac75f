using TrimOut.Core.Checks.Measures;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Measures;

public class PassesDisagreeTests
{
    private static readonly PassesDisagree Check = new();

    public static Example Finds => new(() => Jobs.Measured(), j => j.Say("W01", WindowFacts.WidthAgain, "36 1/2\""));

    public static Example Passes => new(() => Jobs.Measured(), j => j.Say("W01", WindowFacts.WidthAgain, "36 1/8\""));

    // Two passes agree to 1/8 in: common practice, no published source.
    [Theory]
    [InlineData("36 1/8")]
    [InlineData("35 7/8")]
    public void AnEighthApartIsFine(string again) => Jobs.Measured().Say("W01", WindowFacts.WidthAgain, again).Fine(Check, "W01");

    [Fact]
    public void MoreThanAnEighthIsAStop() =>
        Assert.Equal("The first pass gives a width of 36\", the second 36 3/16\": 3/16\" apart.", Jobs.Measured().Say("W01", WindowFacts.WidthAgain, "36 3/16")
            .Fault(Check, "W01").Message);

    [Fact]
    public void TheHeightsAreHeldTooAndEvenWhenTheWidthIsUnknown() =>
        Assert.Equal("The first pass gives a height of 60\", the second 59\": 1\" apart.",
            Jobs.Measured().Say("W01", WindowFacts.HeightAgain, "59").Forget("W01", WindowFacts.WidthAgain).Fault(Check, "W01").Message);

    [Fact]
    public void BothSecondMeasuresAreNamedWhereBothAreMissing() => Jobs.Measured().Forget("W01", WindowFacts.WidthAgain).Forget("W01", WindowFacts.HeightAgain)
        .Lacks(Check, "W01", "width, 2nd measure; height, 2nd measure");

    [Fact]
    public void WithoutASecondPassNothingIsProved() => Jobs.Measured().Forget("W01", WindowFacts.WidthAgain).Lacks(Check, "W01", "width, 2nd measure");

    [Fact]
    public void ASecondHeightIsAskedForAsAWidthIs() => Jobs.Measured().Forget("W01", WindowFacts.HeightAgain).Lacks(Check, "W01", "height, 2nd measure");
}
