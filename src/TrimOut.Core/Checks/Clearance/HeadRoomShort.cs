using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Clearance;

/// <summary>An outside mount has wall for its brackets: enough above the opening, and no more than there is.</summary>
/// <remarks>
/// <para>Why: a bracket that reaches down over the opening has nothing behind it, and one that is pushed into the ceiling can't be fixed.</para>
/// <para>To clear: start the unit where there is flat wall for the whole bracket.</para>
/// </remarks>
public sealed class HeadRoomShort : UnitCheck
{
    private static readonly Message OverOpening =
        new("The unit starts {0} above the opening and its brackets reach {1} down: {2} of them hang over the opening.");
    private static readonly Message StartHigher = new("Start it {0} or more above the opening.");
    private static readonly Message PastFlatWall = new("The unit starts {0} above the opening; there are {1} of flat wall.");
    private static readonly Message StartLower = new("Start it {0} above the opening or less.");
    private static readonly Message NoRoom = new("There is no room for its brackets: choose an inside mount, or ask for brackets that fix to the ceiling.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("head-room-short", "Not enough flat wall for the brackets", Severity.Stop, Phase.Measure,
        new Source(Source.MakersSheet, "outside: bracket down <= head above <= wall above"));

    /// <inheritdoc/>
    public override Outcome Judge(Unit subject)
    {
        var window = subject.Window;
        if (window.Mount is not { } mount)
            return NotChecked.Of(window, WindowFacts.Mount);
        if (mount == Mount.Inside)
            return new Outcome.DoesNotApply();
        if (window.Item.Get(WindowFacts.HeadAbove) is not { } above)
            return NotChecked.Of(window, WindowFacts.HeadAbove);
        if (subject.Kind?[CoveringKindFacts.EndBracketDown] is not { } down)
            return NotChecked.Of(subject.Kind, CoveringKindFacts.EndBracketDown, subject, UnitFacts.Kind);
        var wall = window.Item.Get(WindowFacts.WallAbove);
        var working = Working.Of(Info.Source.Formula, () =>
            [("head above", above.In(subject)), ("bracket down", down.In(subject)), ("wall above", wall?.In(subject) ?? "not known")]);
        return Outcome.All(
            above >= down ? null : new Outcome.Found(OverOpening.With(above, down, down - above), StartHigher.With(down),
                FieldRef.To(window.Item, WindowFacts.HeadAbove), working),
            wall is not { } there || above <= there ? null : new Outcome.Found(PastFlatWall.With(above, there),
                there >= down ? StartLower.With(there) : NoRoom, FieldRef.To(window.Item, WindowFacts.HeadAbove), working))
            ?? (wall is null ? NotChecked.Of(window, WindowFacts.WallAbove) : (Outcome)new Outcome.Fine(working));
    }
}
