using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Measures;

/// <summary>The reveal of an inside mount is deep enough for the brackets.</summary>
/// <remarks>
/// <para>Why: brackets that hang over the edge have nothing to hold in.</para>
/// <para>To clear: a shallower kind, or an outside mount.</para>
/// </remarks>
public sealed class DepthTooShallow : UnitCheck
{
    private static readonly Message TooShallow = new("The opening is {0} deep; {1} needs {2}.");
    private static readonly Message OrderOther = new("Order a kind that needs less depth, or mount it outside.");
    private static readonly Message AskMaker = new("Ask the maker for brackets for less depth, or mount it outside.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("depth-too-shallow", "Opening is too shallow for the brackets", Severity.Stop, Phase.Measure,
        new Source(Source.MakersSheet, "depth >= depth needed"));

    /// <inheritdoc/>
    public override Outcome Judge(Unit subject)
    {
        if (subject.Window.Mount is not { } mount)
            return NotChecked.Of(subject.Window, WindowFacts.Mount);
        if (mount == Mount.Outside)
            return new Outcome.DoesNotApply();
        if (subject.Kind?[CoveringKindFacts.DepthNeeded] is not { } needed)
            return NotChecked.Of(subject.Kind, CoveringKindFacts.DepthNeeded, subject, UnitFacts.Kind);
        if (subject.Window.Depth is not { } depth)
            return NotChecked.Of(subject.Window, WindowFacts.Depth);
        var working = Working.Of(Info.Source.Formula, () => [("depth", depth.In(subject)), ("depth needed", needed.In(subject))]);
        return depth >= needed
            ? new Outcome.Fine(working)
            : new Outcome.Found(TooShallow.With(depth, Arg.Name(subject.Kind), needed), Moment.NotOrdered(subject) ? OrderOther : AskMaker,
                FieldRef.To(subject.Window.Item, WindowFacts.Mount), working);
    }
}
