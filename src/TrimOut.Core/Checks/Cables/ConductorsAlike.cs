using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Cables;

/// <summary>The conductors of a cable in use are told apart by their colours, and one of them is plus.</summary>
/// <remarks>
/// <para>Why: of two conductors alike every second pair is joined the wrong way round, one end in the mechanical room and one at the window.</para>
/// <para>To clear: mark one conductor at both ends of each cable, and write colours and plus in the kit.</para>
/// </remarks>
public sealed class ConductorsAlike() : Check<CableType>(Subjects.Cables)
{
    private static readonly Message TwoAlike = new("{0} has more than one conductor that is {1}.");
    private static readonly Message NoSuchPlus = new("Plus is to be {0}, and the conductors of {1} are {2}.");
    private static readonly Message MarkOne = new("Mark one of them at both ends of every run before it is joined, and write the colors as they are then.");
    private static readonly Message LookAgain = new("Look at the cable again, and write its colors and which of them is plus.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("conductors-alike", "Conductors can't be told apart", Severity.Caution, Phase.RoughIn,
        new Source(Source.CommonPractice, "every color is there once; plus is one of them"));

    /// <inheritdoc/>
    public override Outcome Judge(CableType subject)
    {
        if (subject.House.Look(Lookups.UsersOfPart, subject.Id).Count == 0)
            return new Outcome.DoesNotApply();
        if (subject.Item.Get(CableTypeFacts.Colours) is not { } typed)
            return NotChecked.Of(subject, CableTypeFacts.Colours);
        var colours = subject.Colours;
        var twice = colours.GroupBy(c => c, SameName.Comparer).Where(c => c.Count() > 1).Select(c => new Outcome.Found(
            TwoAlike.With(Arg.Name(subject), Arg.Typed(c.Key)), MarkOne, FieldRef.To(subject.Item, CableTypeFacts.Colours)));
        var plus = subject.Item.Get(CableTypeFacts.Plus);
        var noSuch = plus is null || colours.Contains(plus.Trim(), SameName.Comparer) ? null : new Outcome.Found(
            NoSuchPlus.With(Arg.Typed(plus), Arg.Name(subject), Arg.Typed(typed)), LookAgain, FieldRef.To(subject.Item, CableTypeFacts.Plus));
        return Outcome.All([.. twice, noSuch]) as Outcome ?? (plus is null ? NotChecked.Of(subject, CableTypeFacts.Plus) : new Outcome.Fine());
    }
}
