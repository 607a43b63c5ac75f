using TrimOut.Core.Checks.Rough;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Rough;

public class EntryUnderEndBracketTests
{
    private static readonly EntryUnderEndBracket Check = new();

    public static Example Finds => new(() => Jobs.Walked(), j => j.Say("W01", UnitFacts.EntryFromJamb, "1/2\""));

    public static Example Passes => new(() => Jobs.Walked(), j => j.Say("W01", UnitFacts.EntryFromJamb, "3/4\""));

    // The generic roller: bracket 3/4 in wide, from 1 1/2 in to 4 in back, 2 1/2 in down.
    [Fact]
    public void AnEntryAtTheEdgeOfTheBracketIsFine() => Jobs.Walked().Say("W01", UnitFacts.EntryFromJamb, "3/4").Fine(Check, "W01");

    [Fact]
    public void AnEntryJustInsideTheBracketIsAStop()
    {
        var found = Jobs.Walked().Say("W01", UnitFacts.EntryFromJamb, "47/64").Fault(Check, "W01");
        Assert.Equal("The cable leaves the wall 47/64\" from the jamb and 2\" back; the end bracket takes 3/4\" from the jamb, 1 1/2\" to 4\" back.",
            found.Message);
        Assert.Contains(("end bracket", "3/4\""), found.Working!.Inputs);
    }

    [Theory]
    [InlineData("4", "1")]        // behind it
    [InlineData("1 1/2", "1")]    // in front of it
    [InlineData("2", "2 1/2")]    // below it
    public void AnEntryClearOfItsDepthOrHeightIsFine(string back, string below) =>
        Jobs.Walked().Say("W01", UnitFacts.EntryFromJamb, "0").Say("W01", UnitFacts.EntryBack, back).Say("W01", UnitFacts.EntryBelowHead, below)
            .Fine(Check, "W01");

    [Fact]
    public void TheEntryAsBuiltCountsOverThePlannedOne() => Jobs.Walked().Say("W01", UnitFacts.EntryAsBuilt, "1/2").Fault(Check, "W01");

    [Fact]
    public void OutsideMountsAreNoMatterOfTheReveal() => Jobs.Walked().Say("W01", WindowFacts.Mount, "outside").Silent(Check, "W01");

    [Fact]
    public void AnUnknownBracketIsNotAPass() =>
        Jobs.Walked().SayOf("Roller", CoveringKindFacts.EndBracket, "").Lacks(Check, "W01", "end bracket of Roller in the kit");

    [Fact]
    public void AnUnknownDepthOfTheEntryIsNotAPass() => Jobs.Walked().Forget("W01", UnitFacts.EntryBack).Lacks(Check, "W01", "entry back");
}
