using TrimOut.Core.Checks.Clearance;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Clearance;

public class EntryUnderMiddleScrewTests
{
    private static readonly EntryUnderMiddleScrew Check = new();

    public static Example Finds => new(() => Jobs.Walked().Say("W01", UnitFacts.Kind, "Wood blind"), j => j.Say("W01", UnitFacts.EntryFromJamb, "20\""));

    public static Example Passes => new(() => Jobs.Walked().Say("W01", UnitFacts.Kind, "Wood blind"), j => j.Say("W01", UnitFacts.EntryFromJamb, "19\""));

    // The generic wood blind's screw is 2 in right of the middle: at 20 in of 36. Half an inch around it is common practice, no published source.
    [Theory]
    [InlineData("19 1/2", "left")]
    [InlineData("20 1/2", "left")]
    [InlineData("15 1/2", "right")]
    public void HalfAnInchAwayIsFine(string jamb, string side) => Entry(jamb, side).Fine(Check, "W01");

    [Theory]
    [InlineData("19 9/16", "left", "The cable leaves the wall 19 9/16\" from the left and the middle screw goes in at 20\".")]
    [InlineData("16", "right", "The cable leaves the wall 20\" from the left and the middle screw goes in at 20\".")]
    public void NearerIsAStop(string jamb, string side, string message) => Assert.Equal(message, Entry(jamb, side).Fault(Check, "W01").Message);

    [Fact]
    public void ARollerHasNoSuchScrew() => Entry("20", "left").Say("W01", UnitFacts.Kind, "Roller").Silent(Check, "W01");

    [Fact]
    public void AnUnknownEntryIsNotAPass() => Entry("20", "left").Forget("W01", UnitFacts.EntryFromJamb).Lacks(Check, "W01", "entry from jamb");

    private static TestJob Entry(string jamb, string side) =>
        Jobs.Walked().Say("W01", UnitFacts.Kind, "Wood blind").Say("W01", UnitFacts.EntrySide, side).Say("W01", UnitFacts.EntryFromJamb, jamb);
}
