using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;

namespace TrimOut.Core.Checks.Clearance;

/// <summary>Raised, a cellular shade or a blind leaves the glass free.</summary>
/// <remarks>
/// <para>Why: a stack grows with the drop, and on a tall window it hides what the window is there for.</para>
/// <para>To clear: an outside mount that starts as far above the opening as the stack needs, or the owner's word that it may cover the top of the glass.</para>
/// </remarks>
public sealed class StackOverGlass : UnitCheck
{
    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("stack-over-glass", "Raised stack covers the top of the glass", Severity.Note, Phase.Measure,
        new Source(Source.MakersSheet, "fixed part + share x drop - head above <= glass below head"));

    /// <inheritdoc/>
    public override Outcome Judge(Unit subject)
    {
        var (figures, unknown) = RaisedStack.Of(subject);
        if (figures is not { } stack)
            return unknown as Outcome ?? new Outcome.DoesNotApply();
        if (subject.Window.Item.Get(WindowFacts.GlassBelowHead) is not { } glass)
            return stack.BelowHead <= Length.Zero ? new Outcome.Fine(stack.Working(subject, Info.Source.Formula)) : Unknown.Of(subject.Window, WindowFacts.GlassBelowHead);
        var working = stack.Working(subject, Info.Source.Formula, ("glass below head", glass.In(subject)));
        return stack.BelowHead <= glass
            ? new Outcome.Fine(working)
            : new Outcome.Found($"Raised, its stack is {stack.Height.About(subject)} high and covers {(stack.BelowHead - glass).About(subject)} of the glass.",
                subject.Window.Mount == Mount.Inside && Moment.NotOrdered(subject) ? $"Have the owner agree, or mount it outside from {(stack.Height - glass).RoundUp(Length.FromMillimetres(1)).About(subject)} above the opening."
                    : "Have the owner agree that it covers the top of the glass.",
                FieldRef.To(subject.Window.Item, WindowFacts.Mount), working);
    }
}
