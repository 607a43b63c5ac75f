using TrimOut.Core.Electrical;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Cables;

/// <summary>Says where a cable is allowed only because the house is a one- or two-family dwelling, or because it lies in conduit.</summary>
/// <remarks>
/// <para>Why: not every authority adopts the relaxation, a flat does not have it, and a conduit that ends half way relaxes nothing.</para>
/// <para>To clear: a cable that may go there in any building; or waive it once the authority has said yes.</para>
/// </remarks>
public sealed class ListedByRelaxation : RunCheck
{
    private static readonly Message BetweenFloors = new("{0} goes between floors by the rule for one- and two-family houses.", "between-floors");
    private static readonly Message InsideWall = new("{0} goes inside a wall by the rule for one- and two-family houses.", "in-wall");
    private static readonly Message InConduit = new("{0} goes where its listing alone does not let it, by the rule for cables in conduit.", "conduit");
    private static readonly Message AskAboutConduit =
        new("See that the conduit covers the whole leg, and ask the local authority whether that rule holds here; else pull a cable listed for the place.");
    private static readonly Message AskAuthority = new("Ask the local authority whether that rule holds here; else pull a cable listed for any building.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("listed-by-relaxation", "Listing relies on a code exception", Severity.Note, Phase.RoughIn,
        new Source(CableListings.Edition + "; the code in force governs",
            "CL2 between floors, thin CL2X anywhere: in one- and two-family houses only; in conduit, from memory: any listed cable in metal, CL2X in any"));

    /// <inheritdoc/>
    public override Outcome Judge(HomeRun subject)
    {
        if (subject.Cable?.Listing is not { } listing)
            return new Outcome.DoesNotApply();
        var legs = subject.Legs;
        var inConduit = legs.Where(l => l is { Place: { } place, Conduit: { } conduit } && !CableListings.MayGo(listing, place)
            && CableListings.InConduit(listing, place, conduit)).ToList();
        var dwelling = subject.House.Job.Get(HouseFacts.Dwelling);
        var inDwelling = legs.Except(inConduit)
            .Where(l => l.Place is { } place && dwelling is { } there && Relaxes(subject.Cable, CableListings.InDwelling(listing, place, there)));
        return Outcome.All([Found(subject, inConduit, InConduit, AskAboutConduit), .. inDwelling.GroupBy(l => l.Place)
            .Select(g => Found(subject, [.. g], g.Key == CablePlace.BetweenFloors ? BetweenFloors : InsideWall, AskAuthority))])
            ?? (Outcome)new Outcome.DoesNotApply();
    }

    /// <summary>Whether a rule lets the cable in: what only a thin one may relies on nothing until its jacket is known to be thin.</summary>
    private static bool Relaxes(CableType cable, Relaxation by) =>
        by == Relaxation.Allowed || (by == Relaxation.AllowedWhenThin && cable.Diameter < CableNotListed.Thin);

    private static Outcome.Found? Found(HomeRun run, List<Leg> legs, Message relaxed, Message ask) => legs.Count == 0 ? null : new(
        relaxed.With(Arg.Name(run.Cable!)).StandingFor(legs.Select(l => Arg.Name(l))), ask, FieldRef.To(run.Item, RunFacts.Cable));
}
