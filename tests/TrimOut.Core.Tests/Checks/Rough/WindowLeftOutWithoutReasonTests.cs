using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Rough;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Rough;

public class WindowLeftOutWithoutReasonTests
{
    private static readonly WindowLeftOutWithoutReason Check = new();

    public static Example Finds => new(() => Jobs.Walked(), j => j.SayOf("W01", WindowFacts.Covered, "no"));

    public static Example Passes => new(() => LeftOut(), j => j.SayOf("W01", WindowFacts.NotCoveredBecause, "stained glass"));

    [Fact]
    public void AWindowLeftOutForAReasonIsFine() =>
        Assert.IsType<Outcome.Fine>(LeftOut().SayOf("W01", WindowFacts.NotCoveredBecause, "stained glass").Of(Check, "W01"));

    [Fact]
    public void AWindowLeftOutWithoutAReasonIsACaution() =>
        Assert.Equal("W01 gets no covering and nobody said why.", LeftOut().FaultOf(Check, "W01").Message);

    [Fact]
    public void AWindowThatIsCoveredHasNothingToExplain() => Assert.Empty(Check.Run(Jobs.Walked().House));

    private static TestJob LeftOut() => Jobs.Walked().SayOf("W01", WindowFacts.Covered, "no");

    [Fact]
    public void OnceAWallOfTheHouseIsClosedNoCoveringNeedsACable()
    {
        var job = Jobs.Walked("W02", LeftOut());
        Assert.EndsWith("or give it a covering while the wall is open.", job.FaultOf(Check, "W01").Mend, System.StringComparison.Ordinal);
        Assert.EndsWith("on a battery or a plug: the walls are closed.", job.Mark("W02", "cable-found").FaultOf(Check, "W01").Mend,
            System.StringComparison.Ordinal);
    }
}
