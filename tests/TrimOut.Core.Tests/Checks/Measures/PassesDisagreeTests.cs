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

    [Fact]
    public void TheWorkingTellsBothPasses() => Assert.Equal("first pass 36\", second pass 36 3/16\", apart 3/16\", limit 1/8\"",
        Jobs.Measured().Say("W01", WindowFacts.WidthAgain, "36 3/16").Fault(Check, "W01").Worked);

    // The first pass of a width is its smallest, and of a height its largest, as they are ordered.
    [Fact]
    public void TheFirstPassIsWhatIsOrderedBy()
    {
        Jobs.Measured().Say("W01", WindowFacts.WidthTop, "36 1/4").Fine(Check, "W01");
        Jobs.Measured().Say("W01", WindowFacts.HeightRight, "59 3/4").Fine(Check, "W01");
        Jobs.Measured().Say("W01", WindowFacts.HeightRight, "60 1/4").Fault(Check, "W01");
    }

    [Fact]
    public void WidthAndHeightAreTwoFindings() => Assert.Equal(2,
        Check.Run(Jobs.Measured().Say("W01", WindowFacts.WidthAgain, "37").Say("W01", WindowFacts.HeightAgain, "61").House).Count());

    [Fact]
    public void WithoutALimitOrAFirstPassNothingIsHeldAgainstIt()
    {
        Jobs.Measured().SayOf("", HouseFacts.PassLimit, "").Lacks(Check, "W01", "2nd measure may differ by of the house");
        Jobs.Measured().Forget("W01", WindowFacts.WidthTop).Lacks(Check, "W01", "width, top");
    }
}
