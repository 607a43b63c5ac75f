using TrimOut.Core.Checks.Rough;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Rough;

public class PositionTwiceTests
{
    private static readonly PositionTwice Check = new();

    public static Example Finds => new(() => Two(), j => j.Say("W01B", UnitFacts.Position, "1"));

    public static Example Passes => new(() => Two().Say("W01B", UnitFacts.Position, "1"), j => j.Say("W01B", UnitFacts.Position, "2"));

    [Fact]
    public void TwoUnitsWithPlacesOfTheirOwnAreFine() => Two().Fine(Check, "W01A");

    [Fact]
    public void OnePlaceForTwoIsAStop() =>
        Assert.Equal("W01A and W01B are both number 1 from the left.", Two().Say("W01B", UnitFacts.Position, "1").Fault(Check, "W01A").Message);

    [Fact]
    public void APlacePastTheNumberOfUnitsIsAStop() => Assert.Equal("W01B is number 3 from the left, and there are 2 units in W01.",
        Two().Say("W01B", UnitFacts.Position, "3").Fault(Check, "W01A").Message);

    [Fact]
    public void OneUnitAloneHasNoNeighbour() => Jobs.Walked().Silent(Check, "W01");

    [Fact]
    public void AnUnknownPlaceIsNotAPass() => Two().Forget("W01A", UnitFacts.Position).Lacks(Check, "W01A", "position");

    private static TestJob Two() => Jobs.Walked().Do(j => AddItems.Unit(j.House, j.House.FindTag("W01")!.Id));
}
