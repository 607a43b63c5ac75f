using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Measures;

/// <summary>An outside mount ends before the corner of its wall.</summary>
/// <remarks>
/// <para>Why: past the corner there is no wall for its bracket, or another wall is in the way.</para>
/// <para>To clear: a smaller overlap. On a straight wall that goes on to the next window the two are compared instead.</para>
/// </remarks>
public sealed class OverlapPastCorner : WindowCheck
{
    private static readonly Message PastRight = new("It overlaps the opening by {0}, and the corner on the right is {1} away.", "right");
    private static readonly Message PastLeft = new("It overlaps the opening by {0}, and the corner on the left is {1} away.", "left");
    private static readonly Message OverlapLess = new("Overlap it by {0} or less, or mount it inside.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("overlap-past-corner", "Outside mount reaches past its wall", Severity.Stop, Phase.Measure,
        new Source(Source.CommonPractice, "outside: overlap each side <= to the corner, right and left"));

    /// <inheritdoc/>
    public override Outcome Judge(Window subject)
    {
        if (subject.Mount is not { } mount)
            return NotChecked.Of(subject, WindowFacts.Mount);
        var (right, left) = (subject.Item.Get(WindowFacts.ToCornerRight), subject.Item.Get(WindowFacts.ToCornerLeft));
        // Where no corner was measured, there is none near.
        if (mount == Mount.Inside || (right is null && left is null))
            return new Outcome.DoesNotApply();
        if (subject.Item.Get(WindowFacts.OverlapEachSide) is not { } overlap)
            return NotChecked.Of(subject, WindowFacts.OverlapEachSide);
        var (pastRight, pastLeft) = (right < overlap && !IsStraight(subject), left < overlap && !NeighboursOnLeft(subject).Any(IsStraight));
        var working = Working.Of(Info.Source.Formula, () =>
            [("overlap", overlap.In(subject)), ("corner right", right?.In(subject) ?? "none"), ("corner left", left?.In(subject) ?? "none")]);
        Outcome.Found Found(Sentence fault) => new Outcome.Found(fault,
            OverlapLess.With(Arg.AtMost(Length.Min(pastRight ? right!.Value : overlap, pastLeft ? left!.Value : overlap))),
            FieldRef.To(subject.Item, WindowFacts.OverlapEachSide), working);
        return Outcome.All(pastRight ? Found(PastRight.With(overlap, right!.Value)) : null, pastLeft ? Found(PastLeft.With(overlap, left!.Value)) : null)
            ?? (Outcome)new Outcome.Fine(working);
    }

    private static bool IsStraight(Window onLeft) =>
        onLeft.Item.Get(WindowFacts.MeetsRight) is not null && onLeft.Item.Get(WindowFacts.CornerAngle) == 180;

    private static IEnumerable<Window> NeighboursOnLeft(Window window) => window.House.Windows.Where(w => w.Item.Get(WindowFacts.MeetsRight)?.Id == window.Id);
}
