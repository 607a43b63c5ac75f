using TrimOut.Core.Checks.Clearance;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Limits;

/// <summary>Open, the bar of a cellular shade or a blind is no higher than its stack lets it.</summary>
/// <remarks>
/// <para>Why: the bar hangs below the stack. Where it is said to be higher than that, one of the figures is wrong, and the owner's book holds it.</para>
/// <para>To clear: open it and read both again; where they are right, the stack by the sheet is not.</para>
/// </remarks>
public sealed class OpenBarAboveStack : UnitCheck
{
    private static readonly Message PastEnd = new("Open, its bar is said to be {0} above the glass: {1} higher than its raised stack ends.");
    private static readonly Message ReadAgain =
        new("Open it and read again how far the bar is above the glass, and how far below the head the glass begins; if both are right, the sheet is not.");

    /// <summary>How much the readings and a stack by its sheet may be apart: common practice, no published source.</summary>
    public static readonly Length Tolerance = Length.FromInches(0, 1, 2);

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("open-bar-above-stack", "Open bar is said to be above its stack", Severity.Caution, Phase.Limits,
        new Source(Source.CommonPractice, "open: bar above glass - (glass below head - (fixed part + share x drop - head above)) <= 1/2 in"));

    /// <inheritdoc/>
    public override Outcome Judge(Unit subject)
    {
        var (figures, unknown) = RaisedStack.Of(subject);
        if (figures is not { } stack)
            return unknown as Outcome ?? new Outcome.DoesNotApply();
        if (subject.Item.Get(UnitFacts.OpenGap) is not { } gap)
            return NotChecked.Of(subject, UnitFacts.OpenGap);
        if (subject.Window.Item.Get(WindowFacts.GlassBelowHead) is not { } glass)
            return NotChecked.Of(subject.Window, WindowFacts.GlassBelowHead);
        var clear = glass - stack.BelowHead;
        var working = stack.Working(subject, Info.Source.Formula, ("glass below head", glass.In(subject)), ("open: bar above glass", gap.In(subject)));
        // A bar in front of the glass is read as none above it, however far below its top it is.
        return gap <= Length.Zero || gap - clear <= Tolerance ? new Outcome.Fine(working)
            : new Outcome.Found(PastEnd.With(gap, Arg.AtLeast(gap - clear)), ReadAgain, FieldRef.To(subject.Item, UnitFacts.OpenGap), working);
    }
}
