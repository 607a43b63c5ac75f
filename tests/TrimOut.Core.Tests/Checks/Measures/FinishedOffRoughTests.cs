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

    // Where only one of the two is off, 3 1/16 in of trim instead of 3 at the most, and both fit once they change places, they did.
    [Theory]
    [InlineData("36", "37", "39 1/16", "38")]
    [InlineData("37", "36", "38", "39 1/16")]
    public void OneThatIsOffIsEnoughToBeChangedOver(string width, string height, string wide, string high) =>
        Assert.EndsWith("only when width and height change places.", Finished(width, height).Say("W01", WindowFacts.RoughWidth, wide)
            .Say("W01", WindowFacts.RoughHeight, high).Fault(Check, "W01").Message, StringComparison.Ordinal);

    [Fact]
    public void WhatFitsEitherWayIsFine() =>
        Finished("36", "36 1/2").Say("W01", WindowFacts.RoughWidth, "37").Say("W01", WindowFacts.RoughHeight, "38").Fine(Check, "W01");

    [Theory]
    [InlineData("width-top", "30")]
    [InlineData("width-middle", "30")]
    [InlineData("width-bottom", "30")]
    [InlineData("width-top", "40")]
    [InlineData("width-bottom", "40")]
    public void WhicheverOfThreeIsMisreadTheMiddleOneCounts(string fact, string width) =>
        Framed().Say("W01", FactTable.Find(Core.Houses.ItemKind.Window, fact)!, width).Fine(Check, "W01");

    [Theory]
    [InlineData("rough-width", "rough width", "not known x 60\"")]
    [InlineData("rough-height", "rough height", "36\" x not known")]
    public void OneOfTheTwoIsJudgedWithoutTheOther(string without, string missing, string rough)
    {
        var fact = FactTable.Find(Core.Houses.ItemKind.Window, without)!;
        Framed().Forget("W01", fact).Lacks(Check, "W01", missing);
        Assert.Contains(("rough", rough), Jobs.Measured().Forget("W01", fact).Fault(Check, "W01").Working!.Inputs);
    }

    private static TestJob Finished(string width, string height)
    {
        var job = Framed();
        foreach (var fact in (Fact[])[WindowFacts.WidthTop, WindowFacts.WidthMiddle, WindowFacts.WidthBottom])
            job.Say("W01", fact, width);
        foreach (var fact in (Fact[])[WindowFacts.HeightLeft, WindowFacts.HeightMiddle, WindowFacts.HeightRight])
            job.Say("W01", fact, height);
        return job;
    }
}
