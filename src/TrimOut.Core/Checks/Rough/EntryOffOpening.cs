using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Rough;

/// <summary>The cable of an inside mount leaves the wall inside its opening: within its width, its height and its depth; of an outside one no deeper.</summary>
/// <remarks>
/// <para>Why: a distance that is typed without its point puts the entry into the next room, and a tail and a bracket are reckoned from it.</para>
/// <para>To clear: put the figure right, or move the entry into the opening while the wall is open. The depth counts once it is measured.</para>
/// </remarks>
public sealed class EntryOffOpening : UnitCheck
{
    private static readonly Message PastWidth = new("The cable leaves the wall {0} from the jamb; the opening is {1} wide.", "past-width");
    private static readonly Message BelowSill = new("The cable leaves the wall {0} below the head; the opening is {1} high.", "below-sill");
    private static readonly Message TooDeep = new("The cable leaves the wall {0} back from the room face; the opening is {1} deep.", "too-deep");
    private static readonly Message MoveInto = new("Put the figure right; if it is right, move the entry to {0} or less while the wall is open.");
    private static readonly Message Look = new("Look where the cable comes out and put the figure right; if it is right, lead it into the opening in a slot.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("entry-off-opening", "Entry is outside the opening", Severity.Stop, Phase.WalkThrough,
        new Source(Source.CommonPractice, "from jamb <= width, below head <= height, back <= depth"));

    /// <inheritdoc/>
    public override Outcome Judge(Unit subject)
    {
        var window = subject.Window;
        // On the face of the wall there is no depth to measure; where it was measured, no entry lies behind it.
        var outside = window.Mount == Mount.Outside;
        if (!subject.OnPanel || (outside && !(subject.EntryBack > window.Depth)))
            return new Outcome.DoesNotApply();
        var unknown = new List<Outcome.NotChecked>();
        var faults = new List<Outcome.Found>();
        foreach (var (entry, entryFact, limit, limitFact, past) in ((Length?, Fact, Length?, Fact, Message)[])
            [
                .. outside ? [] : ((Length?, Fact, Length?, Fact, Message)[])
                [
                    (subject.EntryFromJamb, Entry.FromJambFact(subject), window.KnownWidth, WindowFacts.RoughWidth, PastWidth),
                    (subject.EntryBelowHead, UnitFacts.EntryBelowHead, window.KnownHeight, WindowFacts.RoughHeight, BelowSill),
                ],
                (subject.EntryBack, UnitFacts.EntryBack, window.Depth, WindowFacts.Depth, TooDeep),
            ])
        {
            if (entry is not { } at)
                unknown.Add(NotChecked.Of(subject, entryFact));
            else if (limit is not { } most)
                unknown.Add(NotChecked.Of(window, limitFact));
            else if (at > most)
            {
                faults.Add(new Outcome.Found(past.With(at, most), Moment.WallOpen(subject) ? MoveInto.With(Arg.AtMost(most - subject.EntryRadius)) : Look,
                    FieldRef.To(subject.Item, entryFact), Working.Of(Info.Source.Formula, () => [("entry", at.In(subject)), ("opening", most.In(subject))])));
            }
        }
        return Outcome.All(faults) ?? NotChecked.All(unknown) ?? (Outcome)new Outcome.Fine();
    }
}
