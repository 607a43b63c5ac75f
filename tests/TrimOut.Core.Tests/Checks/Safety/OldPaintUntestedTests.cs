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
}
