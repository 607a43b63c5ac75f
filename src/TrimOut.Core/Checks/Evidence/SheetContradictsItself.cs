using System.Collections.Immutable;
using TrimOut.Core.Electrical;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
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
    private static readonly Message GivesMoreThanItTakes =
        new("At {0} from the mains it takes {1} at the most, and its outputs give {2} together.", "power");
    private static readonly Message ReadAgain = new("Read both lines of the sheet again, and put right the one that is typed wrong.");

    private static readonly Message VoltsTaken =
        new("Taken as {0}, for none is written: type the input voltage by its plate. Then read both lines of the sheet again.");

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
                + "center support from <= widest; per output <= all outputs together; "
                + "supply x current of all outputs <= input current x input voltage, 240 V where that is not written"));

    /// <inheritdoc/>
    public override Outcome Judge(AnyItem subject)
    {
        var missing = new List<Outcome.NotChecked>();
        var compared = false;
        var faults = new List<Outcome.Found>();
        foreach (var (less, more, isMore) in Rules.Where(r => r.Less.Subject == subject.Item.Kind))
        {
            var (first, second) = (subject.Item.Latest(less)?.Value, subject.Item.Latest(more)?.Value);
            // What a kind does not have is no more than anything.
            if (first is Length none && none == CoveringKindFacts.None)
                continue;
            if (first is not null && second is not null)
            {
                compared = true;
                if (isMore(first, second))
                    faults.Add(Found(subject, (less, first), (more, second)));
            }
            else if (first is not null || second is not null)
            {
                missing.Add(Checks.NotChecked.Of(subject, first is null ? less : more));
            }
        }
        if (GivesMore(subject) is { } gives)
            faults.Add(gives);
        return Outcome.All(faults) ?? Checks.NotChecked.All(missing) ?? (compared ? (Outcome)new Outcome.Fine() : new Outcome.DoesNotApply());
    }

    /// <summary>The highest mains voltage that a house has as a rule, in volts: common practice, no published source.</summary>
    private const decimal HighestMains = 240;

    /// <summary>A panel that would give more than it takes, however good it is.</summary>
    private static Outcome.Found? GivesMore(AnyItem sheet)
    {
        if (sheet.Item.Kind != ItemKind.PanelType || sheet.Item.Get(PanelTypeFacts.InputCurrent) is not { } input
            || sheet.Item.Get(PanelTypeFacts.Supply) is not { } supply
            || (sheet.Item.Get(PanelTypeFacts.TotalCurrent) ?? sheet.Item.Get(PanelTypeFacts.OutputCurrent)) is not { } output)
            return null;
        var outputs = sheet.Item.Get(PanelTypeFacts.TotalCurrent) is null ? PanelTypeFacts.OutputCurrent : PanelTypeFacts.TotalCurrent;
        var written = MainsVolts.Highest(sheet.Item.Get(PanelTypeFacts.InputVolts) ?? "");
        var mains = written ?? HighestMains;
        return supply.Volts * output.Amperes <= mains * input.Amperes ? null : new Outcome.Found(
            GivesMoreThanItTakes.With(new Voltage(mains), Arg.Number(mains * input.Amperes, "W"), Arg.Number(supply.Volts * output.Amperes, "W")),
            written is null ? VoltsTaken.With(new Voltage(mains)) : ReadAgain, FieldRef.To(sheet.Item, PanelTypeFacts.InputCurrent))
        {
            RestsOn = ByValues(sheet, PanelTypeFacts.Supply, outputs, PanelTypeFacts.InputVolts, PanelTypeFacts.InputCurrent),
        };
    }

    private static Rule NoMore<T>(Fact<T> less, Fact<T> more)
        where T : IComparable<T> => new(less, more, (a, b) => ((T)a).CompareTo((T)b) > 0);

    private static Outcome.Found Found(AnyItem sheet, (Fact Fact, object Value) less, (Fact Fact, object Value) more) => new(
        NotMore.With(Arg.Label(less.Fact, small: false), Arg.Value(less.Fact, less.Value), Arg.Label(more.Fact, small: false),
            Arg.Value(more.Fact, more.Value)), ReadAgain, FieldRef.To(sheet.Item, less.Fact))
    {
        RestsOn = ByValues(sheet, less.Fact, more.Fact),
    };

    private static ImmutableArray<FieldRef> ByValues(AnyItem sheet, params IEnumerable<Fact> facts) => [.. facts.Select(f => FieldRef.To(sheet.Item, f))];

    private sealed record Rule(Fact Less, Fact More, Func<object, object, bool> IsMore);
}
