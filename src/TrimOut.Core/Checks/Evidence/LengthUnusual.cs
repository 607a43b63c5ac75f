using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Evidence;

/// <summary>The lengths of windows, units, home runs, boxes and the house lie where such lengths usually lie.</summary>
/// <remarks>
/// <para>Why: feet typed for inches, inches for millimeters or a point in the wrong place look like any other length, and every sum goes on from them.</para>
/// <para>To clear: measure it again and put right what is typed wrong; waive it where it really is so. What can't be at all is refused as it is typed.</para>
/// </remarks>
public sealed class LengthUnusual : SubjectCheck
{
    private static readonly Message Off = new("{0}: {1}. Usual is {2} to {3}: {4}.");
    private static readonly Message OfLeg = new("{0}, {1}: {2}. Usual is {3} to {4}: {5}.");
    private static readonly Message NumberOfLeg = new("Leg {0}");
    private static readonly Message MeasureAgain =
        new("Measure it again. Look at the unit, such as feet for inches, and at the point. Waive it where it really is so.");

    private readonly IReadOnlyDictionary<Phase, CheckInfo> _byPhase;

    /// <summary>The rule.</summary>
    public LengthUnusual() => _byPhase = Info.InEachPhase();

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("length-unusual", "Length is far from usual", Severity.Caution, Phase.WalkThrough,
        new Source(Source.CommonPractice, "least <= length <= most, for each length by docs/figures.md; reported in the phase of the length"));

    internal override IEnumerable<string> SubjectIds(House house) => Subjects.House.Ids(house).Concat(Subjects.CoveredWindows.Ids(house))
        .Concat(Subjects.Units.Ids(house)).Concat(house.ItemsOf(ItemKind.CableType).Concat(house.ItemsOf(ItemKind.Box)).Select(i => i.Id));

    internal override Subject Find(House house, string id) => id == House.RootId ? new JobItself(house)
        : house.FindWindow(id) ?? house.FindUnit(id) as Subject ?? new AnyItem(house, house.State.Items[id]);

    internal override IEnumerable<CheckResult> RunOn(Subject subject)
    {
        var off = PastUsual(subject).ToList();
        return off.Count == 0
            ? [new CheckResult(Info, subject.Item, new Outcome.Fine())]
            : off.Select(o => new CheckResult(_byPhase[o.Usual.Fact.Phase ?? Phase.WalkThrough], subject.Item, Found(o.Item, o.Usual, o.Leg)));
    }

    private static IEnumerable<(Item Item, UsualLength Usual, Sentence? Leg)> PastUsual(Subject subject)
    {
        foreach (var (item, leg) in Holders(subject))
        {
            foreach (var usual in UsualLengths.Of(item.Kind))
            {
                if (!usual.HoldsIn(item))
                    yield return (item, usual, leg);
            }
        }
    }

    private static IEnumerable<(Item Item, Sentence? Leg)> Holders(Subject subject)
    {
        yield return (subject.Item, null);
        if (subject is not Unit { Run: { } run })
            yield break;
        yield return (run.Item, null);
        for (var at = 0; at < run.Legs.Length; at++)
            yield return (run.Legs[at].Item, NumberOfLeg.With(Arg.Of([Arg.Name(run.Legs[at])], at + 1)));
    }

    private static Outcome.Found Found(Item item, UsualLength usual, Sentence? leg)
    {
        var (label, value) = (Arg.Label(usual.Fact, small: leg is not null), Arg.Value(usual.Fact, item.Get(usual.Fact)!.Value));
        var (least, most, why) = (Limit(usual, usual.Least), Limit(usual, usual.Most), (Arg)usual.Why);
        return new Outcome.Found(leg is { } of ? OfLeg.With(of, label, value, least, most, why) : Off.With(label, value, least, most, why), MeasureAgain,
            FieldRef.To(item, usual.Fact));
    }

    private static Arg Limit(UsualLength usual, Length limit) => usual.IsOfCable ? Arg.Run(limit) : limit;
}
