using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Panels;

/// <summary>All panels on one breaker, with what else it feeds, draw no more than its rating.</summary>
/// <remarks>
/// <para>Why: a breaker that trips when all units move takes with it whatever else it feeds.</para>
/// <para>To clear: the licensed electrician says which breaker feeds it; nobody else changes that.</para>
/// </remarks>
public sealed class BreakerOverloaded() : Check<Panel>(Subjects.Panels)
{
    private static readonly Message TooMuch = new("Breaker {0} is rated {1}; the panels on it draw {2}, all else {3}.");
    private static readonly Message AskElectrician = new("Ask the licensed electrician for another breaker before the units move; mains work is theirs alone.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("breaker-overloaded", "Panels draw more than their breaker's rating", Severity.Caution, Phase.Power,
        new Source(Source.CommonPractice + "; the electrician and the code in force govern",
            "input currents of the panels on it + all else on it <= its rating"));

    /// <inheritdoc/>
    public override Outcome Judge(Panel subject)
    {
        foreach (var fact in (Fact[])[PanelFacts.Breaker, PanelFacts.BreakerRating, PanelFacts.ElseOnBreaker])
        {
            if (subject.Item.Latest(fact)?.Stored is null)
                return NotChecked.Of(subject, fact);
        }
        var (rating, other) = (subject.Item.Get(PanelFacts.BreakerRating)!.Value, subject.Item.Get(PanelFacts.ElseOnBreaker)!.Value);
        var together = 0m;
        foreach (var panel in subject.House.Panels.Where(p => IsFedLike(p, subject)))
        {
            if (panel.Type?.InputCurrent is not { } input)
                return NotChecked.Of(panel.Type, PanelTypeFacts.InputCurrent, panel, PanelFacts.Type);
            together += input.Amperes;
        }
        return together + other.Amperes <= rating.Amperes
            ? new Outcome.Fine()
            : new Outcome.Found(TooMuch.With(Arg.Typed(subject.Item.Get(PanelFacts.Breaker)!), rating, new Units.Current(together), other), AskElectrician,
                FieldRef.To(subject.Item, PanelFacts.Breaker));
    }

    private static bool IsFedLike(Panel panel, Panel other) =>
        SameName.Comparer.Equals(panel.Item.Get(PanelFacts.Board) ?? "", other.Item.Get(PanelFacts.Board) ?? "")
        && SameName.Comparer.Equals(panel.Item.Get(PanelFacts.Breaker) ?? "", other.Item.Get(PanelFacts.Breaker) ?? "");
}
