using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Rough;

/// <summary>A cable comes out of the drywall where it was planned to.</summary>
/// <remarks>
/// <para>Why: a hole far from its plan was measured from the other jamb, is another cable's, or one of the two figures is a slip; brackets and tails
/// are reckoned from it. What plaster and trim take off an opening is let pass.</para>
/// <para>To clear: measure it again from the jamb of its entry side, and put right the figure that is wrong.</para>
/// </remarks>
public sealed class EntryOffPlan : UnitCheck
{
    private static readonly Message Moved = new("The cable was planned {0} from the jamb on the {1}, and came out {2} from it.");
    private static readonly Message MeasureAgain = new("Measure it again from the jamb on the {0}, and put right the figure that is wrong.");

    /// <summary>How far the two may be apart: common practice, no published source.</summary>
    public static readonly Length Tolerance = Length.FromInches(2);

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("entry-off-plan", "Cable came out away from its plan", Severity.Caution, Phase.CloseIn,
        new Source(Source.CommonPractice, "|entry as built - entry as planned| <= 2 in"));

    /// <inheritdoc/>
    public override Outcome Judge(Unit subject)
    {
        if (!subject.OnPanel)
            return new Outcome.DoesNotApply();
        if (subject.Item.Get(UnitFacts.EntryAsBuilt) is not { } built)
            return NotChecked.Of(subject, UnitFacts.EntryAsBuilt);
        if (subject.Item.Get(UnitFacts.EntryFromJamb) is not { } planned)
            return NotChecked.Of(subject, UnitFacts.EntryFromJamb);
        if (subject.EntrySide is not { } side)
            return NotChecked.Of(subject, UnitFacts.EntrySide);
        var working = Working.Of(Info.Source.Formula, () => [("planned", planned.In(subject)), ("as built", built.In(subject))]);
        return (built - planned).Abs() <= Tolerance
            ? new Outcome.Fine(working)
            : new Outcome.Found(Moved.With(planned, Arg.Value(UnitFacts.EntrySide, side), built), MeasureAgain.With(Arg.Value(UnitFacts.EntrySide, side)),
                FieldRef.To(subject.Item, UnitFacts.EntryAsBuilt), working);
    }
}
