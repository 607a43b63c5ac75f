using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Safety;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Safety;

public class OldPaintUntestedTests
{
    private const string House = "Test house";
    private static readonly OldPaintUntested Check = new();

    public static Example Finds => new(() => new TestJob(), j => j.SayOf(House, HouseFacts.OldestPaint, "1977"));

    public static Example Passes => new(() => new TestJob(), j => j.SayOf(House, HouseFacts.OldestPaint, "1978"));

    [Fact]
    public void PaintOf1978IsFineAndPaintOf1977IsACaution()
    {
        Assert.IsType<Outcome.Fine>(Painted("1978").Of(Check, House));
        Assert.Equal("The oldest paint is of 1977 and may hold lead; no test of it is written.", Painted("1977").FaultOf(Check, House).Message);
    }

    [Fact]
    public void ATestedPaintIsFine() =>
        Assert.IsType<Outcome.Fine>(Painted("1920").SayOf(House, HouseFacts.PaintTested, "A laboratory: none").Of(Check, House));

    [Fact]
    public void PaintOfNoYearIsNotAPass() => Assert.Equal("oldest paint, year of the house", new TestJob().MissingOf(Check, House));

    private static TestJob Painted(string year) => new TestJob().SayOf(House, HouseFacts.OldestPaint, year);

    [Theory]
    [InlineData("laboratory: positive")]
    [InlineData("Lead found in the window trim")]
    [InlineData("The trim contains lead")]
    [InlineData("Labor: positiv")]
    [InlineData("bleihaltig")]
    public void ATestThatFoundLeadAsksWhoTreatsIt(string tested)
    {
        var found = Tested(tested).FaultOf(Check, House);
        Assert.Equal($"The oldest paint is of 1920, and its test says \"{tested}\"; nobody has written who treats it as lead paint, and how.", found.Message);
        Assert.StartsWith("Nobody drills or sands it until", found.Mend, StringComparison.Ordinal);
        Assert.Equal("paint-tested", found.Mends.Field);
    }

    [Theory]
    [InlineData("laboratory: not positive")]
    [InlineData("No lead found")]
    [InlineData("kein Blei gefunden")]
    [InlineData("Positive; removed by a licensed painter, dust kept in by sheets")]
    [InlineData("positiv, vom Fachbetrieb entfernt")]
    [InlineData("treated as lead paint by the painter")]
    public void ATestThatFoundNoneOrSaysWhoTreatsItIsFine(string tested) => Assert.IsType<Outcome.Fine>(Tested(tested).Of(Check, House));

    [Fact]
    public void WithoutATestItIsTestedOrTreatedBeforeAnybodyDrills()
    {
        var found = Painted("1977").FaultOf(Check, House);
        Assert.StartsWith("Before anybody drills:", found.Mend, StringComparison.Ordinal);
        Assert.Equal("paint-tested", found.Mends.Field);
        Assert.IsType<Outcome.Found>(Painted("1977").SayOf(House, HouseFacts.PaintTested, "none").Of(Check, House));
    }

    private static TestJob Tested(string tested) => Painted("1920").SayOf(House, HouseFacts.PaintTested, tested);
}
