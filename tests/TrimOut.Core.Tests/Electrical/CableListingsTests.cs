using TrimOut.Core.Electrical;
using TrimOut.Core.Facts;

namespace TrimOut.Core.Tests.Electrical;

public class CableListingsTests
{
    private static readonly CableListing[] All = Enum.GetValues<CableListing>();

    // NFPA 70-2017, table 725.154(A): 50 pairs; no cable stands in for itself, none in a ring, and whatever stands in for a stand-in does too.
    [Fact]
    public void ThereAreFiftyPairsWithoutRingsAndTheyAreClosed()
    {
        var pairs = All.SelectMany(asked => CableListings.SubstitutesFor(asked).Select(used => (Used: used, Asked: asked))).ToHashSet();
        Assert.Equal(50, pairs.Count);
        Assert.DoesNotContain(pairs, p => p.Used == p.Asked || pairs.Contains((p.Asked, p.Used)));
        Assert.All(pairs, first => Assert.All(pairs.Where(p => p.Used == first.Asked), second => Assert.Contains((first.Used, second.Asked), pairs)));
    }

    [Theory]
    [InlineData(CableListing.Cl2p, "Cmp Cl3p")]
    [InlineData(CableListing.Cl2r, "Cmp Cl3p Cl2p Cmr Cl3r")]
    [InlineData(CableListing.Cl2, "Cmp Cl3p Cl2p Cmr Cl3r Cl2r Cmg Cm Pltc Cl3")]
    [InlineData(CableListing.Cl2x, "Cmp Cl3p Cl2p Cmr Cl3r Cl2r Cmg Cm Pltc Cl3 Cl2 Cmx Cl3x")]
    [InlineData(CableListing.Cl3, "Cmp Cl3p Cmr Cl3r Cmg Cm Pltc")]
    [InlineData(CableListing.Cl3p, "Cmp")]
    [InlineData(CableListing.Cl3r, "Cmp Cl3p Cmr")]
    [InlineData(CableListing.Cl3x, "Cmp Cl3p Cmr Cl3r Cmg Cm Pltc Cl3 Cmx")]
    [InlineData(CableListing.Pltc, "")]
    public void TheRowsAreThoseOfTheTable(CableListing asked, string substitutes) =>
        Assert.Equal(substitutes.Split(' ', StringSplitOptions.RemoveEmptyEntries).Order(),
            CableListings.SubstitutesFor(asked).Select(s => s.ToString()).Order());

    // NFPA 70-2017, table 725.154, in any building; our places are open plenum, a run through floors, and inside a wall.
    [Theory]
    [InlineData(CablePlace.AirHandlingSpace, "Cl2p Cl3p Cmp")]
    [InlineData(CablePlace.BetweenFloors, "Cl2p Cl3p Cmp Cl2r Cl3r Cmr")]
    [InlineData(CablePlace.InWall, "Cl2p Cl3p Cmp Cl2r Cl3r Cmr Cl2 Cl3 Cmg Cm Pltc")]
    public void WhatMayGoWhereInAnyBuilding(CablePlace place, string may) =>
        Assert.Equal(may.Split(' ').Order(), All.Where(l => CableListings.MayGo(l, place)).Select(l => l.ToString()).Order());

    // From memory of the same 725.135: metal takes any listed cable anywhere, plastic one for limited use inside a wall.
    [Theory]
    [InlineData(CableListing.Cl2x, CablePlace.AirHandlingSpace, Conduit.Metal, true)]
    [InlineData(CableListing.Cl2x, CablePlace.BetweenFloors, Conduit.Metal, true)]
    [InlineData(CableListing.NotListed, CablePlace.InWall, Conduit.Metal, false)]
    [InlineData(CableListing.Cl2x, CablePlace.InWall, Conduit.Plastic, true)]
    [InlineData(CableListing.Cmx, CablePlace.InWall, Conduit.Plastic, true)]
    [InlineData(CableListing.Cl2x, CablePlace.BetweenFloors, Conduit.Plastic, false)]
    [InlineData(CableListing.NotListed, CablePlace.InWall, Conduit.Plastic, false)]
    [InlineData(CableListing.Cl2x, CablePlace.InWall, Conduit.None, false)]
    public void WhatAConduitAllows(CableListing used, CablePlace place, Conduit conduit, bool allowed) =>
        Assert.Equal(allowed, CableListings.InConduit(used, place, conduit));

    // NFPA 70-2017, 725.135: what one- and two-family houses relax; a flat relaxes nothing of it.
    [Theory]
    [InlineData(CableListing.Cl2, CablePlace.BetweenFloors, Relaxation.Allowed)]
    [InlineData(CableListing.Pltc, CablePlace.BetweenFloors, Relaxation.Allowed)]
    [InlineData(CableListing.Cl2x, CablePlace.BetweenFloors, Relaxation.AllowedWhenThin)]
    [InlineData(CableListing.Cl2x, CablePlace.InWall, Relaxation.AllowedWhenThin)]
    [InlineData(CableListing.Cl2x, CablePlace.AirHandlingSpace, Relaxation.None)]
    [InlineData(CableListing.Cl2r, CablePlace.BetweenFloors, Relaxation.None)]
    [InlineData(CableListing.NotListed, CablePlace.InWall, Relaxation.None)]
    public void WhatASmallHouseRelaxes(CableListing used, CablePlace place, Relaxation relaxed)
    {
        Assert.Equal(relaxed, CableListings.InDwelling(used, place, Dwelling.OneOrTwoFamily));
        Assert.Equal(Relaxation.None, CableListings.InDwelling(used, place, Dwelling.MultiFamily));
        Assert.Equal(Relaxation.None, CableListings.InDwelling(used, place, Dwelling.Other));
    }
}
