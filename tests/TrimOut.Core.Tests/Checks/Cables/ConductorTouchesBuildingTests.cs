using TrimOut.Core.Checks.Cables;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Cables;

public class ConductorTouchesBuildingTests
{
    private static readonly ConductorTouchesBuilding Check = new();

    public static Example Finds => new(() => Jobs.Roughed(), j => j.Say("W01", RunFacts.FirstToFrame, "3"));

    public static Example Passes => new(() => Jobs.Roughed(), j => j.Say("W01", RunFacts.FirstToFrame, "open"));

    [Fact]
    public void OpenIsFine() => Jobs.Roughed().Say("W01", RunFacts.FirstToFrame, "open").Fine(Check, "W01");

    [Theory]
    [InlineData("0")]
    [InlineData("900 k")]
    public void AnyWayToTheBuildingIsAStop(string ohms)
    {
        var found = Jobs.Roughed().Say("W01", RunFacts.FirstToFrame, ohms).Fault(Check, "W01");
        Assert.EndsWith("were read from its conductors to bare metal of the building: a staple, a plate or a screw is in it.", found.Message,
            System.StringComparison.Ordinal);
        Assert.EndsWith("now, while the wall is open.", found.Mend, System.StringComparison.Ordinal);
    }

    [Fact]
    public void TheReadingAfterDrywallCounts() =>
        Assert.Equal("second-to-frame", Jobs.Roughed().Say("W01", RunFacts.FirstToFrame, "open").Say("W01", RunFacts.SecondToFrame, "12")
            .Fault(Check, "W01").Mends.Field);

    [Fact]
    public void OnceTheWallIsClosedTheMendIsAnotherOne() => Assert.DoesNotContain("while the wall is open",
        Jobs.Roughed().Mark("W01", "tested-second").Say("W01", RunFacts.FirstToFrame, "3").Fault(Check, "W01").Mend, System.StringComparison.Ordinal);

    [Fact]
    public void ACableThatNobodyReadIsNotAPass() => Jobs.Roughed().Lacks(Check, "W01", "first test, to the frame");
}
