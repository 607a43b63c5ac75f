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
public sealed class BarsNotLevel : HouseCheck
{
    private static readonly Message OpenApart = new("Open, its bar stands at {0} and that of {1} at {2}: {3} apart.");
    private static readonly Message ClosedApart = new("Closed, its bar stands at {0} and that of {1} at {2}: {3} apart.");
    private static readonly Message SetAgain = new("Set the limit of one of the two again, seen from across the room.");

    /// <summary>How far neighbours may differ: common practice, no published source.</summary>
    public static readonly Length Tolerance = Length.FromInches(0, 1, 8);

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("bars-not-level", "Bar is not level with its neighbour's", Severity.Caution, Phase.Limits,
        new Source(Source.CommonPractice, "gaps of neighbours in a room within 1/8 in, open and closed"));

    /// <inheritdoc/>
    public override IEnumerable<CheckResult> Run(House house) =>
        house.Units.Zip(house.Units.Skip(1)).Where(p => p.First.Window.RoomId is { } room && room == p.Second.Window.RoomId).Select(p => Result(p.Second, Judge(p.First, p.Second)));

    private Outcome Judge(Unit neighbour, Unit unit)
    {
        Outcome.Fine? fine = null;
        foreach (var (fact, unlike) in ((Fact<Length>, Message)[])[(UnitFacts.OpenGap, OpenApart), (UnitFacts.CloseGap, ClosedApart)])
        {
            if (unit.Item.Get(fact) is not { } mine)
                return Unknown.Of(unit, fact);
            if (neighbour.Item.Get(fact) is not { } theirs)
                return new Outcome.NotChecked(Unknown.OfOther.With(Arg.Label(fact, small: false), Arg.Name(neighbour)), FieldRef.To(neighbour.Item, fact));
            var working = Working.Of(Info.Source.Formula, () =>
                [(unit.Tag, mine.In(unit)), (neighbour.Tag, theirs.In(unit)), ("apart", (mine - theirs).Abs().In(unit))]);
            if ((mine - theirs).Abs() > Tolerance)
            {
                return new Outcome.Found(unlike.With(mine, Arg.Name(neighbour), theirs, (mine - theirs).Abs()),
                    SetAgain, FieldRef.To(unit.Item, fact), working);
            }
            fine = new Outcome.Fine(working);
        }
        return fine!;
    }
}
