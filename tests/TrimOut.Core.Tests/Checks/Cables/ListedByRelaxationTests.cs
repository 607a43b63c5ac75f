using TrimOut.Core.Checks.Cables;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Cables;

public class ListedByRelaxationTests
{
    private static readonly ListedByRelaxation Check = new();

    public static Example Finds => new(() => Jobs.Roughed(), j => j.Legs("W01", ("10 ft", CablePlace.BetweenFloors)));

    public static Example Passes => new(() => Jobs.Roughed(),
        j => j.Legs("W01", ("10 ft", CablePlace.BetweenFloors)).SayOf("16/2", CableTypeFacts.Listing, "cl2r"));

    [Fact]
    public void Cl2BetweenTheFloorsOfAHouseIsNoted() =>
        Assert.Equal("16/2 goes between floors by the rule for one- and two-family houses.",
            Jobs.Roughed().Legs("W01", ("10", CablePlace.BetweenFloors)).Fault(Check, "W01").Message);

    [Fact]
    public void ARiserCableRestsOnNoRelaxation() =>
        Jobs.Roughed().Legs("W01", ("10", CablePlace.BetweenFloors)).SayOf("16/2", CableTypeFacts.Listing, "cl2r").Silent(Check, "W01");

    [Fact]
    public void WhatOnlyAConduitAllowsIsNotedInAnyBuilding()
    {
        var job = Jobs.Roughed().Legs("W01", ("10", CablePlace.BetweenFloors)).SayOf("", HouseFacts.Dwelling, "multi-family");
        job.Do(Core.Decisions.SetFact.Typed(job.House, job.Run("W01").Legs[1].Item, LegFacts.Conduit, "metal"));
        Assert.Equal("16/2 goes where its listing alone does not let it, by the rule for cables in conduit.", job.Fault(Check, "W01").Message);
    }

    [Fact]
    public void InAFlatTheOtherCheckSpeaks() =>
        Jobs.Roughed().Legs("W01", ("10", CablePlace.BetweenFloors)).SayOf("", HouseFacts.Dwelling, "multi-family").Silent(Check, "W01");

    [Fact]
    public void Cl2xInsideAWallIsNotedAsWhatItIs() => Assert.DoesNotContain("between floors",
        Jobs.Roughed().SayOf("16/2", CableTypeFacts.Listing, "cl2x").SayOf("16/2", CableTypeFacts.Diameter, "5.9 mm").Fault(Check, "W01").Message,
        StringComparison.Ordinal);

    // NFPA 70-2017, 725.135: only a CL2X cable thinner than 6 mm is let in, so one that is thicker relies on no rule.
    [Theory]
    [InlineData("")]
    [InlineData("6 mm")]
    public void Cl2xThatIsNotKnownToBeThinReliesOnNothing(string across)
    {
        var job = Jobs.Roughed().SayOf("16/2", CableTypeFacts.Listing, "cl2x").SayOf("16/2", CableTypeFacts.Diameter, "5.9 mm");
        job.Fault(Check, "W01");
        job.SayOf("16/2", CableTypeFacts.Diameter, across).Silent(Check, "W01");
    }
}
