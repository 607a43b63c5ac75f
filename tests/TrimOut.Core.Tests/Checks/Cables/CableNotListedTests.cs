using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Cables;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Cables;

public class CableNotListedTests
{
    private static readonly CableNotListed Check = new();

    public static Example Finds => new(() => Jobs.Roughed(), j => j.Legs("W01", ("20 ft", CablePlace.AirHandlingSpace)));

    public static Example Passes => new(() => Jobs.Roughed(), j => j.Legs("W01", ("20 ft", CablePlace.InWall)));

    [Fact]
    public void Cl2InAWallIsFine() => Jobs.Roughed().Fine(Check, "W01");

    [Fact]
    public void Cl2InAnAirHandlingSpaceIsAStopEverywhere() =>
        Assert.Equal("16/2 is CL2 and goes in an air-handling space; CL2P or what may stand in for it is asked for.",
            Leg(CablePlace.AirHandlingSpace, "cl2", "one-or-two-family").Fault(Check, "W01").Message);

    // NFPA 70-2017, 725.135: CL2 from floor to floor passes in a one- or two-family house and fails in a flat;
    // concealed CL2X thinner than 6 mm passes in a house and fails in a flat.
    [Theory]
    [InlineData(CablePlace.BetweenFloors, "cl2", "one-or-two-family", true)]
    [InlineData(CablePlace.BetweenFloors, "cl2", "multi-family", false)]
    [InlineData(CablePlace.BetweenFloors, "cl2", "other", false)]
    [InlineData(CablePlace.BetweenFloors, "cl2r", "other", true)]
    [InlineData(CablePlace.InWall, "cl2x", "one-or-two-family", true)]
    [InlineData(CablePlace.InWall, "cl2x", "multi-family", false)]
    [InlineData(CablePlace.InWall, "cmx", "one-or-two-family", true)]
    [InlineData(CablePlace.AirHandlingSpace, "cmp", "other", true)]
    [InlineData(CablePlace.AirHandlingSpace, "cl2r", "other", false)]
    [InlineData(CablePlace.InWall, "pltc", "other", true)]
    public void WhatMayGoWhere(CablePlace place, string listing, string dwelling, bool fine) =>
        Assert.Equal(fine, Leg(place, listing, dwelling).SayOf("16/2", CableTypeFacts.Diameter, "5.9 mm").Judge(Check, "W01") is Outcome.Fine);

    [Theory]
    [InlineData("5.999999 mm", true)]
    [InlineData("6 mm", false)]
    public void Cl2xInAHouseIsThinnerThanSixMillimetres(string across, bool fine) =>
        Assert.Equal(fine, Leg(CablePlace.InWall, "cl2x", "one-or-two-family").SayOf("16/2", CableTypeFacts.Diameter, across).Judge(Check, "W01")
            is Outcome.Fine);

    [Fact]
    public void Cl2xOfUnknownThicknessIsNotAPass() =>
        Leg(CablePlace.InWall, "cl2x", "one-or-two-family").Lacks(Check, "W01", "outside diameter of 16/2 in the kit");

    [Fact]
    public void OfAThickCl2xTheJacketIsMeasuredBeforeAnythingIsPulledAgain()
    {
        var found = Leg(CablePlace.InWall, "cl2x", "one-or-two-family").SayOf("16/2", CableTypeFacts.Diameter, "6 mm").Fault(Check, "W01");
        Assert.StartsWith("Measure across the jacket first", found.Mend, StringComparison.Ordinal);
        Assert.Equal("diameter", found.Mends.Field);
        Assert.StartsWith("Pull a cable", Leg(CablePlace.InWall, "cl2x", "multi-family").Fault(Check, "W01").Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void ACableWithoutAListingIsAStop() => Leg(CablePlace.InWall, "not-listed", "one-or-two-family").Fault(Check, "W01");

    [Theory]
    [InlineData(CablePlace.AirHandlingSpace, "cl2", "metal", true)]
    [InlineData(CablePlace.BetweenFloors, "cl2x", "metal", true)]
    [InlineData(CablePlace.InWall, "not-listed", "metal", false)]
    [InlineData(CablePlace.InWall, "cl2x", "plastic", true)]
    [InlineData(CablePlace.BetweenFloors, "cl2", "plastic", false)]
    [InlineData(CablePlace.AirHandlingSpace, "cl2", "none", false)]
    public void WhatAConduitRelaxes(CablePlace place, string listing, string conduit, bool fine)
    {
        var job = Leg(place, listing, "multi-family");
        foreach (var leg in job.Run("W01").Legs)
            job.Do(SetFact.Typed(job.House, leg.Item, LegFacts.Conduit, conduit));
        Assert.Equal(fine, job.Judge(Check, "W01") is Outcome.Fine);
    }

    [Fact]
    public void ALegOfUnknownPlaceIsNotAPass()
    {
        var job = Jobs.Roughed();
        job.Do(SetFact.Typed(job.House, job.Run("W01").Legs[0].Item, LegFacts.Place, "")).Lacks(Check, "W01", "place");
    }

    [Fact]
    public void OfSeveralLegsTheOneThatAsksForMostIsNamed()
    {
        var job = Jobs.Roughed().SayOf("16/2", CableTypeFacts.Listing, "not-listed").Legs("W01", ("5 ft", CablePlace.AirHandlingSpace));
        Assert.Contains("CL2P", job.Fault(Check, "W01").Message, StringComparison.Ordinal);
    }

    private static TestJob Leg(CablePlace place, string listing, string dwelling) =>
        Jobs.Walked().Say("W01", RunFacts.Cable, "16/2").Legs("W01", ("20", CablePlace.InWall), ("20", place))
        .SayOf("16/2", CableTypeFacts.Listing, listing).SayOf("", HouseFacts.Dwelling, dwelling);

    [Fact]
    public void ALegWhereAirMovesIsAnAirHandlingSpaceWhateverItWasTakenFor() =>
        Assert.Equal("16/2 is CL2 and goes in an air-handling space; CL2P or what may stand in for it is asked for.",
            Across("yes").Fault(Check, "W01").Message);

    [Fact]
    public void ALegAcrossInStillAirIsFine() => Across("no").Fine(Check, "W01");

    [Fact]
    public void ALegAcrossOfWhoseAirNobodySaidIsNotAPass() => Across().Lacks(Check, "W01", "return air or plenum");

    [Fact]
    public void ACableForMovingAirIsFineWhateverTheAirDoes() => Across().SayOf("16/2", CableTypeFacts.Listing, "cl2p").Fine(Check, "W01");

    private static TestJob Across(string? air = null)
    {
        var job = Jobs.Roughed().Do(j => SetFact.Typed(j.House, j.Run("W01").Legs[0].Item, LegFacts.Direction, "across"));
        return air is null ? job : job.Do(j => SetFact.Typed(j.House, j.Run("W01").Legs[0].Item, LegFacts.AirMoves, air));
    }

    [Theory]
    [InlineData(CablePlace.AirHandlingSpace, "16/2 is CL2X and goes in an air-handling space; CL2P or", "Pull a cable listed CL2P")]
    [InlineData(CablePlace.BetweenFloors, "16/2 is CL2X and goes between floors; CL2R or", "Pull a cable listed CL2R")]
    [InlineData(CablePlace.InWall, "16/2 is CL2X and goes inside a wall; CL2 or", "Pull a cable listed CL2,")]
    public void WhatIsAskedForIsNamedForEachPlace(CablePlace place, string said, string mend)
    {
        var job = Jobs.Walked().Say("W01", RunFacts.Cable, "16/2").Legs("W01", ("20", place)).SayOf("16/2", CableTypeFacts.Listing, "cl2x")
            .SayOf("", HouseFacts.Dwelling, "other");
        var found = job.Fault(Check, "W01");
        Assert.StartsWith(said, found.Message, StringComparison.Ordinal);
        Assert.StartsWith(mend, found.Mend, StringComparison.Ordinal);
        Assert.Equal("cable", found.Mends.Field);
    }

    // Each sort of place is one fault, the one that asks for most first; of a cable without a listing it is one in all.
    [Theory]
    [InlineData("cl2x", 3)]
    [InlineData("not-listed", 1)]
    public void EachSortOfPlaceIsAFaultOfItsOwn(string listing, int faults)
    {
        var job = Jobs.Walked().Say("W01", RunFacts.Cable, "16/2").Legs("W01", ("20", CablePlace.InWall), ("5", CablePlace.BetweenFloors),
            ("5", CablePlace.AirHandlingSpace), ("5", CablePlace.InWall)).SayOf("16/2", CableTypeFacts.Listing, listing)
            .SayOf("", HouseFacts.Dwelling, "other");
        var found = Check.Run(job.House).Select(r => ((Outcome.Found)r.Outcome).Message.In(job.House)).ToList();
        Assert.Equal(faults, found.Count);
        Assert.Contains("CL2P", found[0], StringComparison.Ordinal);
    }

    [Fact]
    public void WhatIsNotKnownIsNamed()
    {
        Jobs.Roughed().SayOf("16/2", CableTypeFacts.Listing, "").Lacks(Check, "W01", "listing of 16/2 in the kit");
        Jobs.Roughed().Forget("W01", RunFacts.Cable).Lacks(Check, "W01", "cable");
        Jobs.Walked().Say("W01", RunFacts.Cable, "16/2").Lacks(Check, "W01", "legs with their places");
        Leg(CablePlace.BetweenFloors, "cl2", "one-or-two-family").SayOf("", HouseFacts.Dwelling, "")
            .Lacks(Check, "W01", $"{HouseFacts.Dwelling.Label.ToLowerInvariant()} of the house");
    }
}
