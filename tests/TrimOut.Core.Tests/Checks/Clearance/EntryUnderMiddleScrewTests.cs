using TrimOut.Core.Checks.Clearance;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;
using TrimOut.Core.Tests.Decisions;
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

    // A kit of before "none" could be typed left this blank for kinds without such a screw.
    [Fact]
    public void ABlankInAKitOfBeforeMeansThatThereIsNone()
    {
        var job = Entry("20", "left");
        job.Do(new Draft("blank").PutStored(job.Part(ItemKind.CoveringKind, "Wood blind").Id, CoveringKindFacts.MiddleScrew.Name, null)).Silent(Check, "W01");
    }

    [Fact]
    public void NoneOnTheSheetMeansThatThereIsNone() => Entry("20", "left").SayOf("Wood blind", CoveringKindFacts.MiddleScrew, "none").Silent(Check, "W01");

    [Fact]
    public void ABlankInABlankKitIsNotCheckedUntilTheSheetSays()
    {
        var job = BlankHouse.With("W01").Say("W01", UnitFacts.Kind, "Wood blind").Say("W01", WindowFacts.Mount, "inside");
        job.Lacks(Check, "W01", "middle screw off center of Wood blind in the kit");
        job.SayOf("Wood blind", CoveringKindFacts.MiddleScrew, "none").Silent(Check, "W01");
    }

    [Fact]
    public void ABlankInAKindThatWasAddedOrTakenFromAFileIsNotChecked()
    {
        var job = Entry("20", "left");
        job.Do(AddItems.Named(job.House, ItemKind.CoveringKind, "Slats")).Say("W01", UnitFacts.Kind, "Slats")
            .Lacks(Check, "W01", "middle screw off center of Slats in the kit");
        job.Do(TakePart.Into(job.House, PartSheet.Of(job.House, job.Part(ItemKind.CoveringKind, "Roller")) with { Name = "Wide roller" }))
            .Say("W01", UnitFacts.Kind, "Wide roller").Lacks(Check, "W01", "middle screw off center of Wide roller in the kit");
    }

    [Fact]
    public void AnUnknownEntryIsNotAPass() => Entry("20", "left").Forget("W01", UnitFacts.EntryFromJamb).Lacks(Check, "W01", "entry from jamb");

    private static TestJob Entry(string jamb, string side) =>
        Jobs.Walked().Say("W01", UnitFacts.Kind, "Wood blind").Say("W01", UnitFacts.EntrySide, side).Say("W01", UnitFacts.EntryFromJamb, jamb);

    [Fact]
    public void TheEntryIsMovedWhileTheWallIsOpenAndTheScrewAfterwards()
    {
        var job = Entry("20", "left");
        Assert.Equal("Move the entry to the lead side, clear of the brackets.", job.Fault(Check, "W01").Mend);
        Assert.Equal("Set the screw to the other side of the middle, and hold the cable away while you drive it.",
            job.Mark("W01", "cable-found").Fault(Check, "W01").Mend);
    }

    [Fact]
    public void OutsideOrWithoutAHomeRunNoCableLeavesTheWallThere()
    {
        Entry("20", "left").Say("W01", WindowFacts.Mount, "outside").Say("W01", WindowFacts.OverlapEachSide, "0").Silent(Check, "W01");
        Entry("20", "left").Say("W01", UnitFacts.Power, "battery").Silent(Check, "W01");
    }

    // Ordered 35 in wide for an opening of 36, it begins 1/2 in from the jamb, and its screw is 17 1/2 + 2 in from its left end: 20 in.
    [Fact]
    public void AUnitThatIsNarrowerThanItsPartHangsInTheMiddleOfIt() => Assert.EndsWith("the middle screw goes in at 20\".",
        Entry("20", "left").Say("W01", UnitFacts.OrderWidth, "35").Fault(Check, "W01").Message, StringComparison.Ordinal);

    // The right one of two has the half from 18 in on, and its screw 9 + 2 in from there: 29 in.
    [Fact]
    public void TheScrewOfAUnitAtTheRightIsCountedFromWhereItBegins()
    {
        var job = Entry("1", "left").Do(j => AddItems.Unit(j.House, j.House.FindTag("W01")!.Id)).Say("W01B", UnitFacts.Kind, "Wood blind")
            .Say("W01B", UnitFacts.EntrySide, "left").Say("W01B", UnitFacts.EntryFromJamb, "29");
        Assert.EndsWith("the middle screw goes in at 29\".", Said.Of((Core.Checks.Outcome.Found)Check.Run(job.House)
            .Single(r => r.Subject.Id == job.Unit("W01B").Id).Outcome, job.House).Message, StringComparison.Ordinal);
    }

    /// <summary>Of 36" comes 1", made: it begins 1/2" from the jamb, and a screw measured 19 1/2" from its end goes in at 20".</summary>
    [Fact]
    public void AMeasuredScrewIsCountedFromTheEndOfTheUnitAsItIsMade()
    {
        var job = Entry("20", "left").Say("W01", UnitFacts.MiddleScrew, "19 1/2").SayOf("Wood blind", CoveringKindFacts.DeductionInside, "1");
        Assert.EndsWith("the middle screw goes in at 20\".", job.Fault(Check, "W01").Message, StringComparison.Ordinal);
        job.SayOf("Wood blind", CoveringKindFacts.DeductionInside, "");
        job.Lacks(Check, "W01", "deduction, inside of Wood blind in the kit");
        job.Say("W01", UnitFacts.EntryFromJamb, "20 1/2").Fine(Check, "W01");
    }

    /// <summary>What the sheet plans is counted from the middle, which stays where it is however much comes off.</summary>
    [Fact]
    public void APlannedScrewWaitsForNothingThatComesOff() =>
        Entry("20", "left").SayOf("Wood blind", CoveringKindFacts.DeductionInside, "").Fault(Check, "W01");

    [Fact]
    public void AnUnknownWidthIsNotAPass() => Entry("20", "left").Forget("W01", WindowFacts.RoughWidth).Lacks(Check, "W01", "rough width");
}
