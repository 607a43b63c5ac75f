using System.Collections.Frozen;
using TrimOut.Core.Facts;
using static TrimOut.Core.Facts.CableListing;

namespace TrimOut.Core.Electrical;

/// <summary>Which cable may go where in a house, by what is printed on its jacket.</summary>
/// <remarks>
/// Figures of NFPA 70-2017, 725.135 and tables 725.154 and 725.154(A); editions from 2023 keep them in article 722. The code in force governs.
/// </remarks>
public static class CableListings
{
    /// <summary>The edition that the tables were read in.</summary>
    public const string Edition = "NFPA 70-2017, 725.135, tables 725.154 and 725.154(A)";

    private static readonly FrozenDictionary<CableListing, CableListing[]> Substitutes = new Dictionary<CableListing, CableListing[]>
    {
        [Cl3p] = [Cmp],
        [Cl2p] = [Cmp, Cl3p],
        [Cl3r] = [Cmp, Cl3p, Cmr],
        [Cl2r] = [Cmp, Cl3p, Cl2p, Cmr, Cl3r],
        [Cl3] = [Cmp, Cl3p, Cmr, Cl3r, Cmg, Cm, Pltc],
        [Cl2] = [Cmp, Cl3p, Cl2p, Cmr, Cl3r, Cl2r, Cmg, Cm, Pltc, Cl3],
        [Cl3x] = [Cmp, Cl3p, Cmr, Cl3r, Cmg, Cm, Pltc, Cl3, Cmx],
        [Cl2x] = [Cmp, Cl3p, Cl2p, Cmr, Cl3r, Cl2r, Cmg, Cm, Pltc, Cl3, Cl2, Cmx, Cl3x],
    }.ToFrozenDictionary();

    /// <summary>What may stand in for a cable that is asked for; nothing for one that is never asked for.</summary>
    public static IReadOnlyList<CableListing> SubstitutesFor(CableListing asked) => Substitutes.GetValueOrDefault(asked) ?? [];

    /// <summary>Whether a cable may be used where another is asked for.</summary>
    public static bool ServesAs(CableListing used, CableListing asked) => used == asked || SubstitutesFor(asked).Contains(used);

    /// <summary>Whether a cable may go in a place, in any building.</summary>
    public static bool MayGo(CableListing used, CablePlace place) => place switch
    {
        CablePlace.AirHandlingSpace => ServesAs(used, Cl2p),
        CablePlace.BetweenFloors => ServesAs(used, Cl2r),
        _ => ServesAs(used, Cl2),
    };

    /// <summary>Whether a conduit allows a cable in a place where it may not go without one.</summary>
    /// <remarks>
    /// From memory of the same 725.135: any listed cable in a metal raceway, between floors with a fire-stop at each; one for limited use in any raceway
    /// inside a wall. The code in force governs.
    /// </remarks>
    public static bool InConduit(CableListing used, CablePlace place, Conduit conduit) => conduit switch
    {
        Conduit.Metal => used != NotListed,
        Conduit.Plastic => place == CablePlace.InWall && ServesAs(used, Cl2x),
        _ => false,
    };

    /// <summary>What a dwelling relaxes for a cable that may not go there in any building.</summary>
    public static Relaxation InDwelling(CableListing used, CablePlace place, Dwelling dwelling)
    {
        if (dwelling != Dwelling.OneOrTwoFamily || place == CablePlace.AirHandlingSpace || MayGo(used, place))
            return Relaxation.None;
        return ServesAs(used, Cl2) ? Relaxation.Allowed
            : ServesAs(used, Cl2x) ? Relaxation.AllowedWhenThin
            : Relaxation.None;
    }
}

/// <summary>What the wiring rules relax for a one- or two-family house.</summary>
public enum Relaxation
{
    /// <summary>Nothing.</summary>
    None,

    /// <summary>The cable may go there.</summary>
    Allowed,

    /// <summary>The cable may go there when it is less than 6 mm (1/4 in) across.</summary>
    AllowedWhenThin,
}
