using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Measures;

/// <summary>An outside mount reaches past its opening on both sides.</summary>
/// <remarks>
/// <para>Why: light comes round the edge of a unit that is no wider than its opening.</para>
/// <para>To clear: a larger overlap, where there is flat wall for it; or the owner's word that the light may come in.</para>
/// </remarks>
public sealed class OverlapShort : WindowCheck
{
    private static readonly Message Short = new("It overlaps the opening by {0} each side; less than {1} lets light in beside it.");
    private static readonly Message ShortAsMade =
        new("It overlaps the opening by {0} each side, of which the maker takes {1} off; less than {2} lets light in beside it.");
    private static readonly Message OrderedNoWider = new("It is to be {0} wide, and the opening is {1} wide: nothing of it covers the wall beside.", "ordered");
    private static readonly Message OrderWider = new("Order it wider than the opening, by {0} or more each side; if it hangs inside, say so.");
    private static readonly Message Overlap = new("Overlap it by {0} or more each side, where there is flat wall.");

    /// <summary>The least overlap on each side: common practice, no published source.</summary>
    public static readonly Length Least = Length.FromInches(0, 3, 4);

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("overlap-short", "Outside mount barely overlaps its opening", Severity.Caution, Phase.Measure,
        new Source(Source.CommonPractice, "outside: overlap each side, less half of what the maker takes off, >= 3/4 in; "
            + "made width, or order width where the sheet says nothing, > widest that is measured"));

    /// <inheritdoc/>
    public override Outcome Judge(Window subject)
    {
        if (subject.Mount is not { } mount)
            return NotChecked.Of(subject, WindowFacts.Mount);
        if (mount == Mount.Inside)
            return new Outcome.DoesNotApply();
        if (subject.Item.Get(WindowFacts.OverlapEachSide) is not { } overlap)
            return NoWider(subject) ?? (Outcome)NotChecked.Of(subject, WindowFacts.OverlapEachSide);
        var off = subject.Units is [{ OrderedWidth: OrderedWidth.Opening, Deduction: { } whole }] ? whole / 2 : Length.Zero;
        var working = Working.Of(Info.Source.Formula, () =>
            [("overlap", overlap.In(subject)), ("taken off each side", off.In(subject)), ("least", Least.In(subject))]);
        var tooLittle = overlap - off >= Least ? null
            : new Outcome.Found(off > Length.Zero ? ShortAsMade.With(overlap, off, Least) : Short.With(overlap, Least), Overlap.With(Arg.AtLeast(Least + off)),
                FieldRef.To(subject.Item, WindowFacts.OverlapEachSide), working);
        return Outcome.All(tooLittle, NoWider(subject)) ?? Unsaid(subject, overlap) ?? (Outcome)new Outcome.Fine(working);
    }

    /// <summary>What is ordered no wider than the opening is at one of its widths overlaps it by nothing, whatever overlap was meant.</summary>
    private static Outcome.Found? NoWider(Window window)
    {
        if (window.Units is not [var unit] || unit.Item.Get(UnitFacts.OrderWidth) is not { } ordered)
            return null;
        var widest = new[] { window.Widths.Top, window.Widths.Middle, window.Widths.Bottom }.Max();
        var made = unit.MadeFrom(ordered) ?? ordered;
        return widest is { } opening && made <= opening
            ? new Outcome.Found(OrderedNoWider.With(made, opening), OrderWider.With(Arg.AtLeast(Least)), FieldRef.To(unit.Item, UnitFacts.OrderWidth))
            : null;
    }

    /// <summary>What the sheet does not say of the width, where the overlap would be too little if something comes off it.</summary>
    private static Outcome.NotChecked? Unsaid(Window window, Length overlap) =>
        window.Units is [{ WidthUnsaid: { } unsaid } unit] && !(unit.Deduction is { } whole && overlap - whole / 2 >= Least)
            ? NotChecked.Of(unit.Kind, unsaid, unit, UnitFacts.Kind)
            : null;
}
