using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Limits;

/// <summary>The bars of neighbours in a room stand level, open and closed.</summary>
/// <remarks>
/// <para>Why: two bars side by side show a difference that nobody sees on one alone.</para>
/// <para>To clear: set the limit of one of the two again.</para>
/// </remarks>
public sealed class BarsNotLevel : UnitCheck
{
    private static readonly Message OpenApart = new("Open, its bar stands at {0} and that of {1} at {2}: {3} apart.", "open");
    private static readonly Message ClosedApart = new("Closed, its bar stands at {0} and that of {1} at {2}: {3} apart.", "closed");
    private static readonly Message SetAgain = new("Set the limit of one of the two again, seen from across the room.");

    /// <summary>How far neighbours may differ: common practice, no published source.</summary>
    public static readonly Length Tolerance = Length.FromInches(0, 1, 8);

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("bars-not-level", "Bar is not level with its neighbor's", Severity.Caution, Phase.Limits,
        new Source(Source.CommonPractice, "gaps of neighbors in a room within 1/8 in, open and closed"));

    /// <inheritdoc/>
    public override Outcome Judge(Unit subject)
    {
        if (subject.House.UnitBefore(subject) is not { } neighbour || neighbour.Window.RoomId is not { } room || room != subject.Window.RoomId)
            return new Outcome.DoesNotApply();
        var (faults, fine) = (new List<Outcome.Found>(), new Outcome.Fine());
        Outcome.NotChecked? missing = null;
        foreach (var (fact, unlike) in ((Fact<Length>, Message)[])[(UnitFacts.OpenGap, OpenApart), (UnitFacts.CloseGap, ClosedApart)])
        {
            if (subject.Item.Get(fact) is not { } mine || neighbour.Item.Get(fact) is not { } theirs)
            {
                missing ??= subject.Item.Get(fact) is null ? NotChecked.Of(subject, fact) : new Outcome.NotChecked(
                    NotChecked.OfOther.With(Arg.Label(fact, small: false), Arg.Name(neighbour)), FieldRef.To(neighbour.Item, fact));
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
        return Outcome.All(faults) ?? missing ?? (Outcome)fine;
    }
}
