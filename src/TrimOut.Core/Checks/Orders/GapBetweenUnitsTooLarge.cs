using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Orders;

/// <summary>Units side by side leave no strip of light between them.</summary>
/// <remarks>
/// <para>Why: a strip of light between two blackout fabrics is what the owner sees every morning.</para>
/// <para>To clear: order one of them wider, before they are made.</para>
/// </remarks>
public sealed class GapBetweenUnitsTooLarge : WindowCheck
{
    private static readonly Message OneGap = new("{0} are left for 1 gap between the units; {1} are the most.");
    private static readonly Message ManyGaps = new("{0} are left for {1} gaps between the units; {2} are the most.");
    private static readonly Message OrderWider = new("Order them {0} wider, together.");
    private static readonly Message CoverStrip = new("Ask the maker, or cover the strip with a molding.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("gap-between-units-too-large", "A strip of light between units side by side", Severity.Caution, Phase.Order,
        new Source(Source.MakersSheet, "smallest width, or what hangs plumb, outside the largest and both overlaps, - order widths - both end " +
            "allowances <= sum of the largest gaps"));

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
            : new Outcome.Found(there.Gaps == 1 ? OneGap.With(Arg.AtLeast(there.Left), most) : ManyGaps.With(Arg.AtLeast(there.Left), there.Gaps, most),
                Moment.NotOrdered(subject.Units[^1]) ? OrderWider.With(there.Left - most) : CoverStrip,
                FieldRef.To(subject.Units[^1].Item, UnitFacts.OrderWidth), working);
    }
}
