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
    private static readonly Message AsOrderedAndNarrower =
        new("{0}: {1}. {2}: {3}. What is made as wide as it is ordered is no narrower than that.", "ordered");
    private static readonly Message ReadAgain = new("Read both lines of the sheet again, and put right the one that is typed wrong.");

    private static readonly Message NamedOtherwise = new("{0} is {1} by its name, and {2} by its conductor.", "name");
    private static readonly Message ReadName = new("Read the print on the jacket, and put right the conductor or the name.");

    private static readonly Message VoltsTaken =
        new("Taken as {0}, for none is written: type the input voltage by its plate. Then read both lines of the sheet again.");

    /// <summary>What can't be so together, on one sheet.</summary>
    private static readonly ImmutableArray<Rule> Rules =
    [
        NoMore(CoveringKindFacts.LeastVolts, CoveringKindFacts.MotorVolts),
        NoMore(CoveringKindFacts.RunningCurrent, CoveringKindFacts.StartingCurrent),
        NoMore(CoveringKindFacts.DepthNeeded, CoveringKindFacts.DepthFlush),
        NoMore(CoveringKindFacts.GapBetween, CoveringKindFacts.GapMost),
        NoMore(CoveringKindFacts.CentreFrom, CoveringKindFacts.Widest),
        NoMore(PanelTypeFacts.OutputCurrent, PanelTypeFacts.TotalCurrent),
        new(CoveringKindFacts.OrderedOutside, CoveringKindFacts.DeductionOutside,
            (ordered, off) => ordered is OrderedWidth.Made && (Length)off > Length.Zero, AsOrderedAndNarrower),
    ];

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("sheet-contradicts-itself", "Two values of one sheet contradict each other", Severity.Stop, Phase.WalkThrough,
        new Source(Source.CommonPractice,
            "minimum volts <= motor volts; running current <= starting current; depth needed <= depth, flush; gap between units <= at most; "
                + "center support from <= widest; per output <= all outputs together; ordered as made outside, no deduction; "
                + "gauge in a cable's name = conductor; "
                + "supply x current of all outputs <= input current x input voltage, 240 V where that is not written"));

    /// <inheritdoc/>
    public override Outcome Judge(AnyItem subject)
    {
        var missing = new List<Outcome.NotChecked>();
        var compared = false;
        var faults = new List<Outcome.Found>();
        foreach (var rule in Rules.Where(r => r.First.Subject == subject.Item.Kind))
        {
            var (first, second) = (subject.Item.Latest(rule.First)?.Value, subject.Item.Latest(rule.Second)?.Value);
            // What a kind does not have is no more than anything.
            if (first is Length none && none == CoveringKindFacts.None)
                continue;
            if (first is not null && second is not null)
            {
                compared = true;
                if (rule.AreWrong(first, second))
                    faults.Add(Found(subject, rule, first, second));
            }
            else if (first is not null || second is not null)
            {
                missing.Add(Checks.NotChecked.Of(subject, first is null ? rule.First : rule.Second));
            }
        }
        faults.AddRange(new[] { GivesMore(subject), IsNamedOtherwise(subject) }.OfType<Outcome.Found>());
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

    /// <summary>A cable with another gauge than its name gives: the name is what the crew reads on the box.</summary>
    private static Outcome.Found? IsNamedOtherwise(AnyItem sheet) =>
        sheet.Item.Kind == ItemKind.CableType && sheet.Item.Get(CableTypeFacts.Name) is { } name && GaugeInName.Of(name) is { } named
        && sheet.Item.Get(CableTypeFacts.Conductor) is { } conductor && conductor != named
            ? new Outcome.Found(
                NamedOtherwise.With(Arg.Typed(name), Arg.Value(CableTypeFacts.Conductor, named), Arg.Value(CableTypeFacts.Conductor, conductor)),
                ReadName, FieldRef.To(sheet.Item, CableTypeFacts.Conductor))
            {
                RestsOn = ByValues(sheet, CableTypeFacts.Conductor),
            }
            : null;

    private static Rule NoMore<T>(Fact<T> less, Fact<T> more)
        where T : IComparable<T> => new(less, more, (a, b) => ((T)a).CompareTo((T)b) > 0, NotMore);

    private static Outcome.Found Found(AnyItem sheet, Rule rule, object first, object second) => new(
        rule.Says.With(Arg.Label(rule.First, small: false), Arg.Value(rule.First, first), Arg.Label(rule.Second, small: false),
            Arg.Value(rule.Second, second)), ReadAgain, FieldRef.To(sheet.Item, rule.First))
    {
        RestsOn = ByValues(sheet, rule.First, rule.Second),
    };

    private static ImmutableArray<FieldRef> ByValues(AnyItem sheet, params IEnumerable<Fact> facts) => [.. facts.Select(f => FieldRef.To(sheet.Item, f))];

    private sealed record Rule(Fact First, Fact Second, Func<object, object, bool> AreWrong, Message Says);
}
