using TrimOut.Core.Checks.Clearance;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Limits;

/// <summary>Open, the bottom bar is clear of the glass.</summary>
/// <remarks>
/// <para>Why: neighbors that all stop too low look level, and the bar is across the view of every window of the room.</para>
/// <para>To clear: set the open limit higher. Of a stack that covers the top of the glass by its sheet, which no limit can lift, another check speaks.</para>
/// </remarks>
public sealed class BarInGlass : UnitCheck
{
    private static readonly Message InGlass = new("Open, the bar is {0} clear of the glass; {1} show that it is out of it.");
    private static readonly Message SetHigher = new("Set the open limit higher, or have the owner agree that the bar stays in the glass.");

    /// <summary>What counts as clear: common practice, no published source.</summary>
    public static readonly Length Least = Length.FromInches(0, 1, 8);

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("bar-in-glass", "Open bar hangs over the glass", Severity.Caution, Phase.Limits,
        new Source(Source.CommonPractice, "open: bar above glass >= 1/8 in"));

    /// <inheritdoc/>
    public override Outcome Judge(Unit subject) =>
        subject.Item.Get(UnitFacts.OpenGap) is not { } gap ? NotChecked.Of(subject, UnitFacts.OpenGap)
        : gap >= Least ? new Outcome.Fine()
        : StackCovers(subject) ? new Outcome.DoesNotApply()
        : new Outcome.Found(InGlass.With(Arg.AtMost(gap), Arg.AtLeast(Least)), SetHigher, FieldRef.To(subject.Item, UnitFacts.OpenGap));

    private static bool StackCovers(Unit unit) => RaisedStack.Of(unit).Figures is { } stack
        && unit.Window.Item.Get(WindowFacts.GlassBelowHead) is { } glass && glass - stack.BelowHead < Least;
}
