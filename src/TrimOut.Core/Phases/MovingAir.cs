using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Phases;

/// <summary>What is not written yet of the air around a run.</summary>
internal static class MovingAir
{
    private static readonly Message Legs = new("legs");
    private static readonly Message OfEachLegAcross = new("{0} of each leg across");

    /// <summary>The first thing that is missing; null when every leg across says whether air moves there.</summary>
    public static Sentence? MissingOf(HomeRun run) =>
        run.Legs.IsEmpty ? Legs
        : Silent(run) is not null ? OfEachLegAcross.With(Arg.Label(LegFacts.AirMoves))
        : null;

    /// <summary>The first leg across of which nobody said whether air moves there; null where all is said.</summary>
    public static Leg? Silent(HomeRun run) => run.Legs.FirstOrDefault(l => l.AsksAboutAir && l.AirMoves is null);
}
