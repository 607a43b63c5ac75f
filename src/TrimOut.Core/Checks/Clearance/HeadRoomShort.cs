using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;

namespace TrimOut.Core.Checks.Clearance;

/// <summary>An outside mount has wall for its brackets: enough above the opening, and no more than there is.</summary>
/// <remarks>
/// <para>Why: a bracket that reaches down over the opening has nothing behind it, and one that is pushed into the ceiling can't be fixed.</para>
/// <para>To clear: start the unit where there is flat wall for the whole bracket.</para>
/// </remarks>
public sealed class HeadRoomShort : UnitCheck
{
    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("head-room-short", "Brackets do not find flat wall above the opening", Severity.Stop, Phase.Measure,
        new Source(Source.MakersSheet, "outside: bracket down <= head above <= wall above"));

    /// <inheritdoc/>
    public override Outcome Judge(Unit subject)
    {
        var window = subject.Window;
        if (window.Mount is not { } mount)
            return Unknown.Of(window, WindowFacts.Mount);
        if (mount == Mount.Inside)
            return new Outcome.DoesNotApply();
        if (window.Item.Get(WindowFacts.HeadAbove) is not { } above)
            return Unknown.Of(window, WindowFacts.HeadAbove);
        if (subject.Kind?[CoveringKindFacts.EndBracketDown] is not { } down)
            return Unknown.Of(subject.Kind, CoveringKindFacts.EndBracketDown, subject, UnitFacts.Kind);
        var wall = window.Item.Get(WindowFacts.WallAbove);
        var working = Working.Of(Info.Source.Formula, () => [("head above", above.In(subject)), ("bracket down", down.In(subject)), ("wall above", wall?.In(subject) ?? "not known")]);
        if (above < down)
        {
            return new Outcome.Found($"The unit starts {above.In(subject)} above the opening and its brackets reach {down.In(subject)} down: {(down - above).In(subject)} of them hang over the opening.",
                $"Start it {down.In(subject)} or more above the opening.", FieldRef.To(window.Item, WindowFacts.HeadAbove), working);
        }
        return wall is not { } there ? Unknown.Of(window, WindowFacts.WallAbove)
            : above <= there ? new Outcome.Fine(working)
            : new Outcome.Found($"The unit starts {above.In(subject)} above the opening; there are {there.In(subject)} of flat wall.",
                there >= down ? $"Start it {there.In(subject)} above the opening or less." : "There is no room for its brackets: choose an inside mount, or ask for brackets that fix to the ceiling.",
                FieldRef.To(window.Item, WindowFacts.HeadAbove), working);
    }
}
