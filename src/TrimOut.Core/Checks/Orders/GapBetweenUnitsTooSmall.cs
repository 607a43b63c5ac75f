using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;

namespace TrimOut.Core.Checks.Orders;

/// <summary>Units side by side in one opening have the gap that their sheet asks for.</summary>
/// <remarks>
/// <para>Why: each goes in by itself, and two that touch rub, tilt and tear at each other's fabric.</para>
/// <para>To clear: order them narrower, before they are made. A gap between unlike kinds is the larger of their two.</para>
/// </remarks>
public sealed class GapBetweenUnitsTooSmall : WindowCheck
{
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
                there.Left < Length.Zero
                    ? $"The {subject.Units.Length} units and their ends take {(there.Room - there.Left).In(subject)}; the opening is {there.Room.In(subject)} at its narrowest."
                    : $"{there.Left.In(subject)} are left for {Counted(there.Gaps)}; the sheet asks for {asked.In(subject)}.",
                Moment.NotOrdered(subject.Units[^1]) ? $"Order them {(asked - there.Left).In(subject)} narrower, together." : "Call the maker today: before they are cut, the size can still be changed.",
                FieldRef.To(subject.Units[^1].Item, UnitFacts.OrderWidth), working);
    }

    private static string Counted(int gaps) => gaps == 1 ? "1 gap" : $"{gaps} gaps";
}
