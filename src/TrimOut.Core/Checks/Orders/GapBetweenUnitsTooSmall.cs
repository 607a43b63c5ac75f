using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Orders;

/// <summary>Units side by side in one opening have the gap that their sheet asks for.</summary>
/// <remarks>
/// <para>Why: each goes in by itself, and two that touch rub, tilt and tear at each other's fabric.</para>
/// <para>To clear: order them narrower, before they are made. A gap between unlike kinds is the larger of their two.</para>
/// </remarks>
public sealed class GapBetweenUnitsTooSmall : WindowCheck
{
    private static readonly Message DoNotGoIn = new("The {0} units and their ends take {1}; the opening is {2} at its narrowest.", "too-wide");
    private static readonly Message OneGap = new("{0} are left for 1 gap; the sheet asks for {1}.");
    private static readonly Message ManyGaps = new("{0} are left for {1} gaps; the sheet asks for {2}.");
    private static readonly Message OrderNarrower = new("Order them {0} narrower, together.");
    private static readonly Message CallMaker = new("Call the maker today: before they are cut, the size can still be changed.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("gap-between-units-too-small", "Too little room between units side by side", Severity.Stop, Phase.Order,
        new Source(Source.MakersSheet, "smallest width - order widths - both end allowances >= sum of the gaps"));

    /// <inheritdoc/>
    public override Outcome Judge(Window subject)
    {
        if (subject.Units.Length < 2 || subject.Mount == Mount.Outside)
            return new Outcome.DoesNotApply();
        var (figures, unknown) = Neighbours.Of(subject);
        if (figures is not { } there)
            return unknown!;
        var (sum, silent) = Neighbours.ForGaps(subject, CoveringKindFacts.GapBetween);
        if (sum is not { } asked)
            return silent!;
        var working = there.Working(subject, Info.Source.Formula, "asked for", asked);
        return there.Left >= asked
            ? new Outcome.Fine(working)
            : new Outcome.Found(
                there.Left < Length.Zero ? DoNotGoIn.With(subject.Units.Length, there.Room - there.Left, there.Room)
                    : there.Gaps == 1 ? OneGap.With(there.Left, asked)
                    : ManyGaps.With(there.Left, there.Gaps, asked),
                Moment.NotOrdered(subject.Units[^1]) ? OrderNarrower.With(asked - there.Left) : CallMaker,
                FieldRef.To(subject.Units[^1].Item, UnitFacts.OrderWidth), working);
    }
}
