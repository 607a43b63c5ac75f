using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Safety;

/// <summary>Paint that may hold lead is tested before anybody drills or sands it.</summary>
/// <remarks>
/// <para>Why: its dust poisons whoever lives there, children first.</para>
/// <para>To clear: have it tested and write by whom; or write who treats it as lead paint, and how.</para>
/// </remarks>
public sealed class OldPaintUntested() : Check<JobItself>(Subjects.House)
{
    private static readonly Message MayHoldLead = new("The oldest paint is of {0} and may hold lead; no test of it is written.");
    private static readonly Message TestFirst =
        new("Before anybody drills: have it tested, or have it treated as lead paint by whoever the local rules let do it, and write which.");

    private static readonly Message LeadFound =
        new("The oldest paint is of {0}, and its test says \"{1}\"; nobody has written who treats it as lead paint, and how.");
    private static readonly Message TreatIt =
        new("Nobody drills or sands it until whoever the local rules let treats it as lead paint; write who, and how the dust is kept in.");

    /// <summary>The first year whose paint is taken as free of lead.</summary>
    public const int FreeFrom = 1978;

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("old-paint-untested", "Old paint, and lead is not cleared up before drilling", Severity.Caution,
        Phase.WalkThrough,
        new Source("US 40 CFR 745, subpart E: housing built before 1978 (from memory); other countries have other years, local rules govern",
            "paint before 1978 = tested"));

    /// <inheritdoc/>
    public override Outcome Judge(JobItself subject)
    {
        if (subject.Item.Get(HouseFacts.OldestPaint) is not { } year)
            return NotChecked.Of(subject, HouseFacts.OldestPaint);
        if (year >= FreeFrom)
            return new Outcome.Fine();
        if (subject.Item.Evidence(HouseFacts.PaintTested) is not { } tested)
            return new Outcome.Found(MayHoldLead.With(year), TestFirst, FieldRef.To(subject.Item, HouseFacts.PaintTested));
        return SaysLeadWasFound(tested) && !SaysWhoTreatsIt(tested)
            ? new Outcome.Found(LeadFound.With(year, Arg.Typed(tested)), TreatIt, FieldRef.To(subject.Item, HouseFacts.PaintTested))
            : new Outcome.Fine();
    }

    private static bool SaysLeadWasFound(string tested) => Holds(tested, ["positive", "lead found", "found lead", "has lead", "holds lead", "contains lead",
        "positiv", "blei gefunden", "enthält blei", "bleihaltig"]) && !Holds(tested, ["not positive", "no lead found", "nicht positiv", "kein blei gefunden"]);

    private static bool SaysWhoTreatsIt(string tested) => Holds(tested, ["treat", "remov", "strip", "encapsul", "abate", "certified", "licensed", "wet",
        "containment", "behandel", "entfern", "versiegel", "saniert", "sanierung", "fachbetrieb"]);

    private static bool Holds(string text, string[] words) => words.Any(w => text.Contains(w, StringComparison.OrdinalIgnoreCase));
}
