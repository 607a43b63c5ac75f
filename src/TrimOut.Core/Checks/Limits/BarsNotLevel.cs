using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Limits;

/// <summary>The bars of neighbors on one wall of a room stand level, open and closed.</summary>
/// <remarks>
/// <para>Why: two bars side by side show a difference that nobody sees on one alone. Units of two walls, and a unit inside its opening beside one
/// on the face of the wall, are not seen as one line.</para>
/// <para>To clear: set the limit of one of the two again.</para>
/// </remarks>
public sealed class BarsNotLevel : UnitCheck
{
    private static readonly Message OpenApart = new("Open, its bar stands at {0} and that of {1} at {2}: {3} apart.", "open");
    private static readonly Message ClosedApart = new("Closed, its bar stands at {0} and that of {1} at {2}: {3} apart.", "closed");
    private static readonly Message SetAgain = new("Set the limit of one of the two again, seen from across the room.");

    /// <summary>How far neighbors may differ: common practice, no published source.</summary>
    public static readonly Length Tolerance = Length.FromInches(0, 1, 8);

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("bars-not-level", "Bar is not level with its neighbor's", Severity.Caution, Phase.Limits,
        new Source(Source.CommonPractice, "gaps of neighbors in a room, with one facing and one mount, within 1/8 in, open and closed"));

    /// <inheritdoc/>
    public override Outcome Judge(Unit subject)
    {
        if (subject.House.UnitBefore(subject) is not { } neighbour || neighbour.Window.RoomId is not { } room || room != subject.Window.RoomId
            || AreUnlike(neighbour.Window, subject.Window))
            return new Outcome.DoesNotApply();
        var (faults, fine) = (new List<Outcome.Found>(), new Outcome.Fine());
        var missing = new List<Outcome.NotChecked>();
        foreach (var (fact, unlike) in ((Fact<Length>, Message)[])[(UnitFacts.OpenGap, OpenApart), (UnitFacts.CloseGap, ClosedApart)])
        {
            if (subject.Item.Get(fact) is not { } mine || neighbour.Item.Get(fact) is not { } theirs)
            {
                missing.Add(subject.Item.Get(fact) is null ? NotChecked.Of(subject, fact) : new Outcome.NotChecked(
                    NotChecked.OfOther.With(Arg.Label(fact, small: false), Arg.Name(neighbour)), FieldRef.To(neighbour.Item, fact)));
                continue;
            }
            var working = Working.Of(Info.Source.Formula, () =>
                [(subject.Tag, mine.In(subject)), (neighbour.Tag, theirs.In(subject)), ("apart", (mine - theirs).Abs().In(subject))]);
            if ((mine - theirs).Abs() > Tolerance)
            {
                faults.Add(new Outcome.Found(unlike.With(mine, Arg.Name(neighbour), theirs, (mine - theirs).Abs()),
                    SetAgain, FieldRef.To(subject.Item, fact), working)
                {
                    ToldOf = [new(neighbour.Id, unlike.With(theirs, Arg.Name(subject), mine, (mine - theirs).Abs()))],
                });
            }
            fine = new Outcome.Fine(working);
        }
        return Outcome.All(faults) ?? NotChecked.All(missing) ?? (Outcome)fine;
    }

    /// <summary>Whether two windows are known to look out of two walls, or to be covered one inside and one outside.</summary>
    private static bool AreUnlike(Window one, Window other) =>
        (one.Item.Get(WindowFacts.Facing) is { } facing && other.Item.Get(WindowFacts.Facing) is { } theirs && !facing.Equals(theirs))
        || (one.Mount is { } mount && other.Mount is { } with && mount != with);
}
