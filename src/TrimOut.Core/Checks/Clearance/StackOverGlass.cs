using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Clearance;

/// <summary>Raised, a cellular shade or a blind leaves the glass free.</summary>
/// <remarks>
/// <para>Why: a stack grows with the drop, and on a tall window it hides what the window is there for.</para>
/// <para>To clear: an outside mount that starts as far above the opening as the stack needs, or the owner's word that it may cover the top of the glass.</para>
/// </remarks>
public sealed class StackOverGlass : UnitCheck
{
    private static readonly Message CoversGlass = new("Raised, its stack is {0} high and covers {1} of the glass.");
    private static readonly Message AgreeOrMountOutside = new("Have the owner agree, or mount it outside from {0} above the opening.");
    private static readonly Message Agree = new("Have the owner agree that it covers the top of the glass.");

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
        {
            return stack.BelowHead <= Length.Zero
                ? new Outcome.Fine(stack.Working(subject, Info.Source.Formula))
                : NotChecked.Of(subject.Window, WindowFacts.GlassBelowHead);
        }
        var working = stack.Working(subject, Info.Source.Formula, ("glass below head", glass.In(subject)));
        return stack.BelowHead <= glass
            ? new Outcome.Fine(working)
            : new Outcome.Found(CoversGlass.With(Arg.AtLeast(stack.Height), Arg.AtLeast(stack.BelowHead - glass)),
                subject.Window.Mount == Mount.Inside && Moment.NotOrdered(subject)
                    ? AgreeOrMountOutside.With(Arg.AtLeast(OutsideFrom(subject, stack, glass)))
                    : Agree,
                FieldRef.To(subject.Window.Item, WindowFacts.Mount), working);
    }

    /// <summary>
    /// How far above the opening it has to start outside: what starts higher drops farther and stacks higher, and its brackets, and those of the units beside
    /// it, which start where it does, need wall.
    /// </summary>
    private static Length OutsideFrom(Unit unit, RaisedStack stack, Length glass) => Length.Max(
        (stack.Height - glass) / (1 - Math.Min(unit.Kind!.Item.Get(CoveringKindFacts.StackShare)!.Value, 0.9m)),
        unit.Window.Units.Aggregate(Length.Zero, (most, u) => Length.Max(most, u.Kind?[CoveringKindFacts.EndBracketDown] ?? Length.Zero)));
}
