using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;

namespace TrimOut.Core.Checks.Orders;

/// <summary>Units side by side leave no strip of light between them.</summary>
/// <remarks>
/// <para>Why: a strip of light between two blackout fabrics is what the owner sees every morning.</para>
/// <para>To clear: order one of them wider, before they are made.</para>
/// </remarks>
public sealed class GapBetweenUnitsTooLarge : WindowCheck
{
    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("gap-between-units-too-large", "A strip of light between units side by side", Severity.Caution, Phase.Order,
        new Source(Source.MakersSheet, "opening, and outside both overlaps, - order widths - both end allowances <= sum of the largest gaps"));

    /// <inheritdoc/>
    public override Outcome Judge(Window subject)
    {
        if (subject.Units.Length < 2)
            return new Outcome.DoesNotApply();
        var (figures, unknown) = Neighbours.Of(subject);
        if (figures is not { } there)
            return unknown!;
        var (sum, silent) = Neighbours.ForGaps(subject, CoveringKindFacts.GapMost);
        if (sum is not { } most)
            return silent!;
        var working = there.Working(subject, Info.Source.Formula, "at most", most);
        return there.Left <= most
            ? new Outcome.Fine(working)
            : new Outcome.Found($"{there.Left.In(subject)} are left for {(there.Gaps == 1 ? "1 gap" : $"{there.Gaps} gaps")} between the units; {most.In(subject)} are the most.",
                Moment.NotOrdered(subject.Units[^1]) ? $"Order them {(there.Left - most).In(subject)} wider, together." : "Ask the maker, or cover the strip with a moulding.",
                FieldRef.To(subject.Units[^1].Item, UnitFacts.OrderWidth), working);
    }
}
