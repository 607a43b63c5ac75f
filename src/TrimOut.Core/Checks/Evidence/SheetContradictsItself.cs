using System.Collections.Immutable;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Evidence;

/// <summary>The values of one sheet can all be true together.</summary>
/// <remarks>
/// <para>Why: two values that can't both be true are a slip of whoever typed them, and every check leans on them.</para>
/// <para>To clear: read both lines of the sheet again, and put right the one that is typed wrong.</para>
/// </remarks>
public sealed class SheetContradictsItself() : Check<AnyItem>(Subjects.Parts)
{
    private static readonly Message NotMore = new("{0}: {1}. {2}: {3}. The first can't be more than the second.");
    private static readonly Message ReadAgain = new("Read both lines of the sheet again, and put right the one that is typed wrong.");

    /// <summary>What can't be more than what, on one sheet.</summary>
    private static readonly ImmutableArray<Rule> Rules =
    [
        NoMore(CoveringKindFacts.LeastVolts, CoveringKindFacts.MotorVolts),
        NoMore(CoveringKindFacts.RunningCurrent, CoveringKindFacts.StartingCurrent),
        NoMore(CoveringKindFacts.DepthNeeded, CoveringKindFacts.DepthFlush),
        NoMore(CoveringKindFacts.GapBetween, CoveringKindFacts.GapMost),
        NoMore(CoveringKindFacts.CentreFrom, CoveringKindFacts.Widest),
        NoMore(PanelTypeFacts.OutputCurrent, PanelTypeFacts.TotalCurrent),
    ];

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("sheet-contradicts-itself", "Two values of one sheet contradict each other", Severity.Stop, Phase.WalkThrough,
        new Source(Source.CommonPractice,
            "minimum volts <= motor volts; running current <= starting current; depth needed <= depth, flush; gap between units <= at most; "
                + "centre support from <= widest; per output <= all outputs together"));

    /// <inheritdoc/>
    public override Outcome Judge(AnyItem subject)
    {
        Outcome? missing = null;
        var compared = false;
        var faults = new List<Outcome.Found>();
        foreach (var (less, more, isMore) in Rules.Where(r => r.Less.Subject == subject.Item.Kind))
        {
            var (first, second) = (subject.Item.Latest(less)?.Value, subject.Item.Latest(more)?.Value);
            if (first is not null && second is not null)
            {
                compared = true;
                if (isMore(first, second))
                    faults.Add(Found(subject, (less, first), (more, second)));
            }
            else if (first is not null || second is not null)
            {
                missing ??= Checks.NotChecked.Of(subject, first is null ? less : more);
            }
        }
        return Outcome.All(faults) ?? missing ?? (compared ? new Outcome.Fine() : new Outcome.DoesNotApply());
    }

    private static Rule NoMore<T>(Fact<T> less, Fact<T> more)
        where T : IComparable<T> => new(less, more, (a, b) => ((T)a).CompareTo((T)b) > 0);

    private static Outcome.Found Found(AnyItem sheet, (Fact Fact, object Value) less, (Fact Fact, object Value) more) => new(
        NotMore.With(Arg.Label(less.Fact, small: false), Arg.Value(less.Fact, less.Value), Arg.Label(more.Fact, small: false),
            Arg.Value(more.Fact, more.Value)), ReadAgain, FieldRef.To(sheet.Item, less.Fact));

    private sealed record Rule(Fact Less, Fact More, Func<object, object, bool> IsMore);
}
