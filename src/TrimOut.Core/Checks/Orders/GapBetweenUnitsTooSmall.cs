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
    private static readonly Message DoNotHangPlumb = new("The {0} units and their ends take {1}; {2} hang plumb in the opening.", "plumb");
    private static readonly Message OneGap = new("{0} are left for 1 gap; the sheet asks for {1}.");
    private static readonly Message ManyGaps = new("{0} are left for {1} gaps; the sheet asks for {2}.");
    private static readonly Message OrderWorkedOut = new("Order {0}, as the parts give it.");
    private static readonly Message PartsNarrower = new("Take {0} off the parts, together, the gap between them included, and order what they give then.");
    private static readonly Message WidthOf = new("{0} {1} wide");
    private static readonly Message CallMaker = new("Call the maker today: before they are cut, the size can still be changed.");

    private static readonly Message SeeHowTheyHang =
        new("They hang: run them side by side and see that nothing rubs, and waive this; one that rubs is ordered again, narrower.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("gap-between-units-too-small", "Too little room between units side by side", Severity.Stop, Phase.Order,
        new Source(Source.MakersSheet, "smallest width, or what hangs plumb, - order widths - both end allowances >= sum of the gaps"));

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
                    ? (there.Room < subject.SmallestWidth ? DoNotHangPlumb : DoNotGoIn)
                        .With(subject.Units.Length, Arg.AtLeast(there.Room - there.Left), Arg.AtMost(there.Room))
                    : there.Gaps == 1 ? OneGap.With(Arg.AtMost(there.Left), asked)
                    : ManyGaps.With(Arg.AtMost(there.Left), there.Gaps, asked),
                Moment.NotOrdered(subject.Units[^1]) ? Narrower(subject, there, asked)
                    : subject.Units.Any(Moment.Hangs) ? SeeHowTheyHang : CallMaker,
                FieldRef.To((subject.Units.FirstOrDefault(u => IsWider(u)) ?? subject.Units[^1]).Item, UnitFacts.OrderWidth), working);
    }

    /// <summary>The sizes that the parts give, where they leave the gaps; else smaller parts: a size that both rules accept.</summary>
    private static Sentence Narrower(Window window, Neighbours there, Length asked)
    {
        var spared = window.Units.Where(IsWider).Aggregate(Length.Zero, (sum, u) => sum + u.Item.Get(UnitFacts.OrderWidth)!.Value - u.WorkedOutWidth!.Value);
        return there.Left + spared >= asked
            ? OrderWorkedOut.With(Arg.All(window.Units.Where(IsWider).Select(u => (Arg)WidthOf.With(Arg.Name(u), u.WorkedOutWidth!.Value))))
            : PartsNarrower.With(Arg.AtLeast(asked - there.Left - spared));
    }

    private static bool IsWider(Unit unit) => unit.WorkedOutWidth is { } worked && unit.Item.Get(UnitFacts.OrderWidth) > worked;
}
