using TrimOut.Core.Checks.Rough;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Rough;

public class EntryOffOpeningTests
{
    private static readonly EntryOffOpening Check = new();

    public static Example Finds => new(() => Jobs.Walked(), j => j.Say("W01", UnitFacts.EntryFromJamb, "38\""));

    public static Example Passes => new(() => Jobs.Measured(), j => j.Say("W01", UnitFacts.EntryBack, "4\""));

    [Fact]
    public void AtTheFarCornerOfTheOpeningItIsInside() =>
        Jobs.Measured().Say("W01", UnitFacts.EntryFromJamb, "36").Say("W01", UnitFacts.EntryBelowHead, "60").Fine(Check, "W01");

    [Fact]
    public void JustPastTheFarJambIsAStop()
    {
        var found = Jobs.Walked().Say("W01", UnitFacts.EntryFromJamb, "36 1/16").Fault(Check, "W01");
        Assert.Equal("The cable leaves the wall 36 1/16\" from the jamb; the opening is 36\" wide.", found.Message);
        Assert.Equal("Put the figure right; if it is right, move the entry to 36\" or less while the wall is open.", found.Mend);
    }

    [Fact]
    public void JustBelowTheSillIsAStop() => Assert.Equal("The cable leaves the wall 60 1/16\" below the head; the opening is 60\" high.",
        Jobs.Walked().Say("W01", UnitFacts.EntryBelowHead, "60 1/16").Fault(Check, "W01").Message);

    [Fact]
    public void JustDeeperThanTheRevealIsAStopOnceItIsMeasured()
    {
        Jobs.Measured().Say("W01", UnitFacts.EntryBack, "5").Fine(Check, "W01");
        Assert.Equal("The cable leaves the wall 5 1/16\" back from the room face; the opening is 5\" deep.",
            Jobs.Measured().Say("W01", UnitFacts.EntryBack, "5 1/16").Fault(Check, "W01").Message);
    }

    [Fact]
    public void OutsideItMayLieBesideTheOpening() =>
        Jobs.Walked().Say("W01", UnitFacts.EntryFromJamb, "38").Say("W01", WindowFacts.Mount, "outside").Silent(Check, "W01");

    [Fact]
    public void OutsideItLiesNoDeeperThanTheOpeningEither()
    {
        Jobs.Measured().Say("W01", WindowFacts.Mount, "outside").Say("W01", UnitFacts.EntryBack, "5").Silent(Check, "W01");
        Assert.Equal("The cable leaves the wall 5 1/16\" back from the room face; the opening is 5\" deep.",
            Jobs.Measured().Say("W01", WindowFacts.Mount, "outside").Say("W01", UnitFacts.EntryBack, "5 1/16").Fault(Check, "W01").Message);
    }

    [Fact]
    public void AnUnknownDepthIsNotAPass() => Jobs.Walked().Lacks(Check, "W01", "depth");

    [Fact]
    public void AnUnknownDistanceIsNotAPass() => Jobs.Measured().Forget("W01", UnitFacts.EntryFromJamb).Lacks(Check, "W01", "entry from jamb");

    // 36 in less half of a cable 1/4 in thick.
    [Fact]
    public void TheHoleIsToLieInTheOpeningWithAllOfTheCable()
    {
        var job = Jobs.Roughed().SayOf("16/2", CableTypeFacts.Diameter, "1/4").Say("W01", UnitFacts.EntryFromJamb, "38");
        Assert.Equal("Put the figure right; if it is right, move the entry to 35 7/8\" or less while the wall is open.", job.Fault(Check, "W01").Mend);
        Assert.StartsWith("Look where the cable comes out", job.Mark("W01", "cable-found").Fault(Check, "W01").Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void AllThatIsMissingIsNamed()
    {
        Jobs.Walked().Forget("W01", UnitFacts.EntryFromJamb).Forget("W01", UnitFacts.EntryBelowHead)
            .Lacks(Check, "W01", "entry from jamb; entry below head; depth");
        Jobs.Walked().Forget("W01", WindowFacts.RoughWidth).Forget("W01", WindowFacts.RoughHeight).Lacks(Check, "W01", "rough width; rough height; depth");
    }

    [Fact]
    public void TheFieldOfTheFigureThatCountsIsTheOneToPutRight()
    {
        var job = Jobs.Walked().Say("W01", UnitFacts.EntryFromJamb, "38");
        Assert.Equal("entry-from-jamb", job.Fault(Check, "W01").Mends.Field);
        Assert.Equal("entry-as-built", job.Say("W01", UnitFacts.EntryAsBuilt, "37").Fault(Check, "W01").Mends.Field);
    }

    [Fact]
    public void TheWorkingTellsTheEntryAndTheOpening() =>
        Assert.Equal("entry 38\", opening 36\"", Jobs.Walked().Say("W01", UnitFacts.EntryFromJamb, "38").Fault(Check, "W01").Worked);

    [Fact]
    public void ABatteryUnitHasNoEntry() => Jobs.Walked().Say("W01", UnitFacts.EntryFromJamb, "38").Say("W01", UnitFacts.Power, "battery").Silent(Check, "W01");
}
