using TrimOut.Core.Checks.Rough;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Rough;

public class EntryOffLeadSideTests
{
    private static readonly EntryOffLeadSide Check = new();

    public static Example Finds => new(() => Jobs.Walked(), j => j.Say("W01", UnitFacts.EntrySide, "right"));

    public static Example Passes => new(() => Jobs.Walked(), j => j.Say("W01", UnitFacts.EntrySide, "left"));

    [Fact]
    public void AnEntryOnTheLeadSideIsFine() => Jobs.Walked().Fine(Check, "W01");

    [Fact]
    public void AnEntryOnTheOtherSideSaysWhichTailReachesAcross()
    {
        // 36 - 1 along the head, 1 up to it, 6 behind the unit.
        var found = Jobs.Walked().Say("W01", UnitFacts.EntrySide, "right").Fault(Check, "W01");
        Assert.Equal("The cable leaves the wall on the right and reaches the unit on the left. A tail of 42\" reaches across.", found.Message);
    }

    [Fact]
    public void WhereTheMotorIsAtTheEntryTheLeadSideIsToBePutBack()
    {
        var found = Jobs.Walked().Say("W01", UnitFacts.LeadSide, "right").Fault(Check, "W01");
        Assert.StartsWith("The motor is on the left too: put the lead side back to left", found.Mend, StringComparison.Ordinal);
        Assert.Equal("lead-side", found.Mends.Field);
        var other = Jobs.Walked().Say("W01", UnitFacts.EntrySide, "right").Fault(Check, "W01");
        Assert.StartsWith("Move the entry to the left", other.Mend, StringComparison.Ordinal);
        Assert.Equal("entry-side", other.Mends.Field);
        Assert.EndsWith("while the wall is open.", other.Mend, StringComparison.Ordinal);
        Assert.Equal("Move the entry to the right now, while the wall is open; or put the lead side to left if that was mistyped.",
            Jobs.Walked().SayOf("Roller", CoveringKindFacts.MotorEnd, "either").Say("W01", UnitFacts.LeadSide, "right")
            .Fault(Check, "W01").Mend);
    }

    [Fact]
    public void AnUnknownEntrySideIsNotAPass() => Jobs.Walked().Forget("W01", UnitFacts.EntrySide).Lacks(Check, "W01", "entry side");

    [Fact]
    public void UntilALeadSideIsSaidTheMotorOfTheKindSaysWhereTheCableMustReach()
    {
        var job = Jobs.Walked().Forget("W01", UnitFacts.LeadSide);
        job.Lacks(Check, "W01", "lead side");
        Assert.StartsWith("The cable leaves the wall on the right and reaches the unit on the left.",
            job.Say("W01", UnitFacts.EntrySide, "right").Fault(Check, "W01").Message, StringComparison.Ordinal);
    }

    [Fact]
    public void ABatteryUnitHasNoEntry() => Jobs.Walked().Say("W01", UnitFacts.Power, "battery").Silent(Check, "W01");

    [Fact]
    public void BehindDrywallTheCableIsLedAcross() => Assert.Equal("Lead the cable across behind the head cover, and see that the tail reaches.",
        Jobs.Walked().Say("W01", UnitFacts.EntrySide, "right").Mark("W01", "cable-found").Fault(Check, "W01").Mend);
}
