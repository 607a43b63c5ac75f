using TrimOut.Core.Checks.Rough;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Rough;

public class LeadAwayFromMotorTests
{
    private static readonly LeadAwayFromMotor Check = new();

    public static Example Finds => new(() => Jobs.Walked(), j => j.Say("W01", UnitFacts.LeadSide, "right"));

    public static Example Passes => new(() => Jobs.Walked(),
        j => j.SayOf("Roller", CoveringKindFacts.MotorEnd, "either").Say("W01", UnitFacts.LeadSide, "right"));

    [Fact]
    public void ALeadAtTheMotorEndIsFine() => Jobs.Walked().Fine(Check, "W01");

    [Fact]
    public void ALeadOnTheOtherSideIsAStop()
    {
        var found = Jobs.Walked().Say("W01", UnitFacts.LeadSide, "right").Say("W01", UnitFacts.EntrySide, "right").Fault(Check, "W01");
        Assert.Equal("The lead is on the right; Roller has its motor on the left.", found.Message);
        Assert.StartsWith("Bring the cable to the left side now", found.Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void OnceTheWallIsClosedTheMendIsToOrderItTheOtherWayRound() =>
        Assert.StartsWith("Order it with the motor on the right", Jobs.Walked().Say("W01", UnitFacts.LeadSide, "right").Say("W01", UnitFacts.EntrySide, "right")
            .Mark("W01", "cable-found").Fault(Check, "W01").Mend, StringComparison.Ordinal);

    [Fact]
    public void ALeadSideThatStandsAgainstMotorAndCableIsToBePutBack()
    {
        var found = Jobs.Walked().Say("W01", UnitFacts.LeadSide, "right").Fault(Check, "W01");
        Assert.StartsWith("The cable comes out on the left, where the motor is: put the lead side back to left", found.Mend, StringComparison.Ordinal);
        Assert.Equal("lead-side", found.Mends.Field);
        var unsaid = Jobs.Walked().Say("W01", UnitFacts.LeadSide, "right").Forget("W01", UnitFacts.EntrySide).Fault(Check, "W01");
        Assert.StartsWith("Bring the cable", unsaid.Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void AKindThatIsOrderedEitherWayTakesAnySide() =>
        Jobs.Walked().SayOf("Roller", CoveringKindFacts.MotorEnd, "either").Say("W01", UnitFacts.LeadSide, "right").Fine(Check, "W01");

    [Fact]
    public void AnUnknownLeadSideIsNotAPass() => Jobs.Walked().Forget("W01", UnitFacts.LeadSide).Lacks(Check, "W01", "lead side");

    [Fact]
    public void OnceItIsOrderedTheMakerIsAsked() => Assert.StartsWith("Ask the maker for the motor at the other end",
        Jobs.Walked().Say("W01", UnitFacts.LeadSide, "right").Say("W01", UnitFacts.EntrySide, "right").Mark("W01", "cable-found")
            .Say("W01", UnitFacts.OrderedOn, "2026-03-02").Fault(Check, "W01").Mend, StringComparison.Ordinal);
}
