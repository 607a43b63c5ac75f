using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Rough;

/// <summary>No two units of one window have the same place from the left, and none has a place past their number.</summary>
/// <remarks>
/// <para>Why: parts, cables, labels and boxes follow the place; of two units at one place nobody knows which is which.</para>
/// <para>To clear: number them from the left, 1, 2, 3.</para>
/// </remarks>
public sealed class PositionTwice : WindowCheck
{
    private static readonly Message SamePlace = new("{0} and {1} are both number {2} from the left.");
    private static readonly Message PastNumber = new("{0} is number {1} from the left, and there are {2} units in {3}.", "past-number");
    private static readonly Message Number = new("Number the units of {0} from the left, and see that each has its own cable, part and box.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("position-twice", "Two units in the same position of a window", Severity.Stop, Phase.WalkThrough,
        new Source(Source.CommonPractice, "each place from the left once in a window, and none past the number of its units"));

    /// <inheritdoc/>
    public override Outcome Judge(Window subject)
    {
        if (subject.Units.Length < 2)
            return new Outcome.DoesNotApply();
        if (subject.Units.FirstOrDefault(u => u.Position is null) is { } without)
            return NotChecked.Of(without, UnitFacts.Position);
        return Outcome.All(subject.Units.GroupBy(u => u.Position!.Value).Select(g => (At: g.Key, Units: g.ToList())).Where(g => g.Units.Count > 1)
            .Select(g => new Outcome.Found(
                SamePlace.With(Arg.Of(g.Units.Select(u => Arg.Name(u)), Arg.Name(g.Units[0])), Arg.Of([], Arg.Name(g.Units[1])), g.At),
                Number.With(Arg.Name(subject)), FieldRef.To(g.Units[1].Item, UnitFacts.Position)))
            .Concat(subject.Units.Where(u => u.Position > subject.Units.Length).Select(u => new Outcome.Found(
                PastNumber.With(Arg.Name(u), u.Position!.Value, subject.Units.Length, Arg.Name(subject)),
                Number.With(Arg.Name(subject)), FieldRef.To(u.Item, UnitFacts.Position)))))
            ?? (Outcome)new Outcome.Fine();
    }
}
