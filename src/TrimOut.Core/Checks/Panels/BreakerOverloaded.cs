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

    private static readonly Message TwoRatings = new("Breaker {0} is written with {1} at {2} and with {3} at {4}: one breaker has one rating.");
    private static readonly Message ReadBoth = new("Read the number of the breaker and its rating again, at both panels.");
    private static readonly Message Unusual = new("Breaker {0} is written with {1}; a circuit that feeds a panel has {2} at the most as a rule.");
    private static readonly Message ReadPrint =
        new("Read again what is printed on it. If it is right, ask the licensed electrician whether that circuit may feed the panel.");

    /// <summary>The largest rating, in amperes, of a breaker that feeds small panels as a rule: common practice, no published source.</summary>
    public const decimal MostOfCircuit = 63;

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("breaker-overloaded", "Panels and their breaker don't go together", Severity.Caution, Phase.Power,
        new Source(Source.CommonPractice + "; the electrician and the code in force govern",
            "input currents of the panels on it + all else on it <= its rating, and that <= 63 A; one breaker of one board has one rating"));

    /// <inheritdoc/>
    public override Outcome Judge(Panel subject)
    {
        if (OfTwoRatings(subject) is { } unlike)
            return unlike;
        foreach (var fact in (Fact[])[PanelFacts.Breaker, PanelFacts.BreakerRating, PanelFacts.ElseOnBreaker])
        {
            if (subject.Item.Latest(fact)?.Stored is null)
                return NotChecked.Of(subject, fact);
        }
        if (subject.Item.Get(PanelFacts.BreakerRating) is { } printed && printed.Amperes > MostOfCircuit)
        {
            return new Outcome.Found(Unusual.With(Arg.Typed(subject.Item.Get(PanelFacts.Breaker)!), printed, new Units.Current(MostOfCircuit)), ReadPrint,
                FieldRef.To(subject.Item, PanelFacts.BreakerRating));
        }
        // Two panels on breakers of one number are on one breaker, or on those of two boards: that has to be said.
        if (OnBreakerOf(subject).FirstOrDefault(p => !IsOnBoard(p, subject) && (IsBoardBlank(p) || IsBoardBlank(subject))) is { } unclear)
            return NotChecked.Of(IsBoardBlank(subject) ? subject : unclear, PanelFacts.Board);
        var (rating, other) = (subject.Item.Get(PanelFacts.BreakerRating)!.Value, subject.Item.Get(PanelFacts.ElseOnBreaker)!.Value);
        var together = 0m;
        Panel? unknown = null;
        foreach (var panel in OnBreakerOf(subject).Where(p => IsOnBoard(p, subject)))
        {
            together += panel.Type?.InputCurrent?.Amperes ?? 0;
            unknown ??= panel.Type?.InputCurrent is null ? panel : null;
        }
        // What is not known only adds: where the rest is too much already, nothing is waited for.
        return together + other.Amperes <= rating.Amperes
            ? unknown is null ? new Outcome.Fine() : NotChecked.Of(unknown.Type, PanelTypeFacts.InputCurrent, unknown, PanelFacts.Type)
            : new Outcome.Found(TooMuch.With(Arg.Typed(subject.Item.Get(PanelFacts.Breaker)!), rating, new Units.Current(together), other), AskElectrician,
                FieldRef.To(subject.Item, PanelFacts.Breaker));
    }

    private static Outcome.Found? OfTwoRatings(Panel panel)
    {
        if (IsBoardBlank(panel) || panel.Item.Get(PanelFacts.Breaker) is not { } breaker || panel.Item.Get(PanelFacts.BreakerRating) is not { } rating)
            return null;
        return OnBreakerOf(panel).FirstOrDefault(p => p.Id != panel.Id && IsOnBoard(p, panel)
            && p.Item.Get(PanelFacts.BreakerRating) is { } theirs && theirs != rating) is { } other
            ? new Outcome.Found(TwoRatings.With(Arg.Typed(breaker), rating, Arg.Name(panel), other.Item.Get(PanelFacts.BreakerRating)!.Value, Arg.Name(other)),
                ReadBoth, FieldRef.To(panel.Item, PanelFacts.BreakerRating))
            : null;
    }

    private static IEnumerable<Panel> OnBreakerOf(Panel panel) => panel.House.PanelsAt(Lookups.PanelsByBreaker, panel.Item.Get(PanelFacts.Breaker) ?? "");

    private static bool IsOnBoard(Panel panel, Panel other) =>
        SameName.Comparer.Equals(panel.Item.Get(PanelFacts.Board) ?? "", other.Item.Get(PanelFacts.Board) ?? "");

    private static bool IsBoardBlank(Panel panel) => panel.Item.Get(PanelFacts.Board) is null;
}
