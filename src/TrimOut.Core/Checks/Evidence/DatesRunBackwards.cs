using System.Collections.Immutable;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Evidence;

/// <summary>No date stands before a date that must come first, and no sheet is dated before its measures.</summary>
/// <remarks>
/// <para>Why: every date after a wrong one is reckoned from it, and a signature before the work is worth nothing.</para>
/// <para>To clear: put right the date that is wrong. Readings count from the day on which they were typed; a date that was typed on the same day as the
/// reading is taken as copied from paper, and nothing is said.</para>
/// </remarks>
public sealed class DatesRunBackwards : SubjectCheck
{
    private static readonly Message BeforeDate = new("{0} is {1}, and {2}, which comes first, is {3}.", "before-date");
    private static readonly Message FrozenBeforeMeasure = new("{0} is {1}, and the opening was measured on {2}.");
    private static readonly Message FrozenAfterBox = new("{0} is {1}, and its box was read on {2}.", "box-before-order");
    private static readonly Message FirstAfterSecond = new("{0} was written on {1}, and {2}, which comes after it, on {3}.", "first-after-second");
    private static readonly Message StillToCome = new("{0} is {1}, and that was written on {2}, before it could be done.", "still-to-come");
    private static readonly Message All = new("{0}");
    private static readonly Message PutRight = new("Put right the date that is wrong; if it is right, do again what came too early.");
    private static readonly Message ReadSecondAgain =
        new("See of which day the reading is. If it was read after the drywall, read the loop again and write that as the second test.");

    private static readonly ImmutableArray<ImmutableArray<Fact<DateOnly>>> Orders =
    [
        [HouseFacts.FramingOn, HouseFacts.DrywallOn, HouseFacts.PaintedOn, HouseFacts.HandoverOn],
        [HouseFacts.DemonstratedOn, HouseFacts.AcceptedOn, HouseFacts.WarrantyFrom],
    ];

    /// <summary>Further pairs of the house, of which nothing is missing where the first is not there.</summary>
    private static readonly ImmutableArray<(Fact<DateOnly> First, Fact<DateOnly> Then)> Pairs =
    [
        (HouseFacts.FramingOn, HouseFacts.DemonstratedOn), (HouseFacts.PaintedOn, HouseFacts.DemonstratedOn), (HouseFacts.FramingOn, HouseFacts.BinderGivenOn),
    ];

    /// <summary>Days on which something is said to be done: none of them can be later than the day on which it was written.</summary>
    private static readonly ImmutableArray<Fact<DateOnly>> DoneOn =
    [
        HouseFacts.RoughInPartsOn, HouseFacts.HangPartsOn, HouseFacts.PowerPartsOn, HouseFacts.PairPartsOn,
        HouseFacts.DemonstratedOn, HouseFacts.BinderGivenOn, HouseFacts.AcceptedOn, UnitFacts.OrderedOn, UnitFacts.ReorderedOn, LegFacts.SealSeenOn,
        PanelFacts.ConnectedOn, ServiceFacts.On,
    ];

    private static readonly ImmutableArray<Fact> Measures =
    [
        WindowFacts.WidthTop, WindowFacts.WidthMiddle, WindowFacts.WidthBottom, WindowFacts.HeightLeft, WindowFacts.HeightMiddle, WindowFacts.HeightRight,
    ];

    private static readonly ImmutableArray<Fact> OfTheBox = [UnitFacts.BoxLabel, UnitFacts.DeliveredWidth, UnitFacts.DeliveredHeight, UnitFacts.Serial];

    private readonly IReadOnlyDictionary<Phase, CheckInfo> _byPhase;

    /// <summary>The rule.</summary>
    public DatesRunBackwards() => _byPhase = Info.InEachPhase();

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("dates-run-backwards", "Dates are out of order", Severity.Caution, Phase.WalkThrough,
        new Source(Source.CommonPractice, "framing, drywall, paint, handover; demonstrated, accepted, warranty; measures, sheet; " +
            "order, box; first loop, second loop; " +
            "sheet, box, shown; sheet, service; seal, drywall; panel connected, shown; done <= day on which that was written + 1"));

    internal override IEnumerable<string> SubjectIds(House house) => Subjects.Walkers.Ids(house);

    internal override Subject Find(House house, string id) => Subjects.Walkers.Find(house, id);

    internal override IEnumerable<CheckResult> RunOn(Subject subject)
    {
        var outcomes = Of(subject).Where(o => o.Outcome is not Outcome.DoesNotApply).ToLookup(o => o.Phase, o => o.Outcome);
        return outcomes.Select(o => new CheckResult(_byPhase[o.Key], subject.Item, Together([.. o])));
    }

    private static ImmutableArray<(Phase Phase, Outcome Outcome)> Of(Subject subject) => subject switch
    {
        Unit unit => [OfUnit(unit), OfBox(unit), .. OfOrder(unit), .. OfSeals(unit), OfLoops(unit), .. OfServices(unit)],
        Panel panel => [.. OfPanel(panel)],
        JobItself => [.. OfHouse(subject), .. Pairs.Select(p => InOrder(subject, p.First, subject, p.Then)), .. NotYet(subject),
            .. OfOtherServices(subject.House)],
        _ => [],
    };

    private static Outcome Together(ImmutableArray<Outcome> outcomes) =>
        outcomes.OfType<Outcome.Found>().ToList() is [var first, ..] found
            ? new Outcome.Found(All.With(Arg.All(found.Select(f => (Arg)f.Message), " ")), first.Mend, first.Mends)
            : outcomes.FirstOrDefault(o => o is Outcome.NotChecked) ?? outcomes[0];

    private static IEnumerable<(Phase Phase, Outcome Outcome)> OfHouse(Subject house)
    {
        foreach (var order in Orders)
        {
            for (var later = 1; later < order.Length; later++)
            {
                if (house.Item.Get(order[later]) is not { } on)
                    continue;
                var before = order.Take(later).LastOrDefault(f => house.Item.Get(f) is not null);
                yield return (order[later].Phase!.Value, before is null ? NotChecked.Of(house, order[later - 1]) : house.Item.Get(before) <= on
                    ? new Outcome.Fine()
                    : Found(BeforeDate.With(Arg.Label(order[later], small: false), Day(order[later], on), Arg.Label(before),
                        Day(before, house.Item.Get(before)!.Value)).StandingFor(order.Skip(later + 1)
                            .Where(f => house.Item.Get(f) < house.Item.Get(before)).Select(f => Arg.Label(f))), house, order[later]));
            }
        }
    }

    private static IEnumerable<(Phase Phase, Outcome Outcome)> OfOrder(Unit unit)
    {
        var job = new JobItself(unit.House);
        return
        [
            InOrder(unit, UnitFacts.OrderedOn, job, HouseFacts.DemonstratedOn, unit),
            InOrder(unit, UnitFacts.OrderedOn, job, HouseFacts.HandoverOn, unit),
            InOrder(unit, UnitFacts.OrderedOn, unit, UnitFacts.ExpectedOn),
            InOrder(unit, UnitFacts.OrderedOn, unit, UnitFacts.ReorderedOn),
            .. NotYet(unit),
        ];
    }

    /// <summary>Whether what was done to a unit in service was done after the unit was ordered.</summary>
    private static IEnumerable<(Phase Phase, Outcome Outcome)> OfServices(Unit unit) =>
        Service.Of(unit.House, unit.Item).SelectMany(s => NotYet(s).Prepend(InOrder(unit, UnitFacts.OrderedOn, s, ServiceFacts.On)));

    /// <summary>What was done to the house, its hubs and its remotes; what was done to a unit or a panel is judged there.</summary>
    private static IEnumerable<(Phase Phase, Outcome Outcome)> OfOtherServices(House house) =>
        house.Services.Where(s => s.About is not { Kind: ItemKind.Unit or ItemKind.Panel }).SelectMany(NotYet);

    private static IEnumerable<(Phase Phase, Outcome Outcome)> OfSeals(Unit unit) => unit.Run is not { } run ? []
        : run.Legs.Where(l => l.ThroughFireBarrier == true).SelectMany(l =>
            NotYet(l).Prepend(InOrder(l, LegFacts.SealSeenOn, new JobItself(unit.House), HouseFacts.DrywallOn, l)));

    private static IEnumerable<(Phase Phase, Outcome Outcome)> OfPanel(Panel panel)
    {
        var job = new JobItself(panel.House);
        var services = Service.Of(panel.House, panel.Item).ToList();
        var swap = services.LastOrDefault(s => s is { Kind: ServiceKind.Replaced, On: not null });
        // Who connects the panel that was put in its place after the house was shown or handed over comes after that too.
        var shown = new[] { HouseFacts.DemonstratedOn, HouseFacts.HandoverOn }.Where(day => swap is null || !(job.Item.Get(day) < swap.On));
        return
        [
            InOrder(job, HouseFacts.FramingOn, panel, PanelFacts.ConnectedOn),
            .. swap is null ? [] : new[] { InOrder(swap, ServiceFacts.On, panel, PanelFacts.ConnectedOn) },
            .. shown.Select(day => InOrder(panel, PanelFacts.ConnectedOn, job, day, panel)),
            .. NotYet(panel),
            .. services.SelectMany(NotYet),
        ];
    }

    /// <summary>Whether a day comes no later than another one; nothing to say while one of them is not known.</summary>
    /// <param name="before">What the first is a day of.</param>
    /// <param name="first">The one that comes first.</param>
    /// <param name="after">What the other is a day of.</param>
    /// <param name="then">The other.</param>
    /// <param name="mends">Of the two, the one whose day is asked about; the later one where none is given.</param>
    private static (Phase Phase, Outcome Outcome) InOrder(Subject before, Fact<DateOnly> first, Subject after, Fact<DateOnly> then, Subject? mends = null)
    {
        var (field, subject) = ReferenceEquals(mends, before) ? (first, before) : (then, after);
        return (PhaseOf(field), (before.Item.Get(first), after.Item.Get(then)) is not ({ } early, { } late) ? new Outcome.DoesNotApply()
            : early <= late ? new Outcome.Fine()
            : Found(BeforeDate.With(Arg.Label(then, small: false), Day(then, late), Arg.Label(first), Day(first, early)), subject, field));
    }

    /// <summary>Whether what is said to be done was done when that was written, by the clock of the device; a day to either side is no matter.</summary>
    private static IEnumerable<(Phase Phase, Outcome Outcome)> NotYet(Subject subject)
    {
        foreach (var fact in DoneOn)
        {
            if (fact.Subject == subject.Item.Kind && subject.Item.Latest(fact) is { Value: DateOnly on } head)
            {
                var written = DateOnly.FromDateTime(head.At.DateTime);
                yield return (PhaseOf(fact), on <= written.AddDays(1)
                    ? new Outcome.Fine()
                    : Found(StillToCome.With(Arg.Label(fact, small: false), Day(fact, on), Day(fact, written)), subject, fact));
            }
        }
    }

    /// <summary>The phase of a day; what is done in service comes after the last one.</summary>
    private static Phase PhaseOf(Fact fact) => fact.Phase ?? Phase.Handover;

    private static (Phase Phase, Outcome Outcome) OfUnit(Unit unit)
    {
        if (unit.Item.Get(UnitFacts.OrderedOn) is not { } frozen)
            return (Phase.Order, new Outcome.DoesNotApply());
        if (FirstTyped(unit.Window.Item, Measures) is not { } measured)
            return (Phase.Order, NotChecked.Of(unit.Window, WindowFacts.WidthTop));
        return (Phase.Order, frozen >= measured || FirstTyped(unit.Item, [UnitFacts.OrderedOn]) <= measured
            ? new Outcome.Fine()
            : Found(FrozenBeforeMeasure.With(Arg.Label(UnitFacts.OrderedOn, small: false), Day(UnitFacts.OrderedOn, frozen),
                Day(UnitFacts.OrderedOn, measured)), unit, UnitFacts.OrderedOn));
    }

    /// <summary>Whether it was ordered before its box was read; a day that was typed before that is held against the day of typing.</summary>
    private static (Phase Phase, Outcome Outcome) OfBox(Unit unit) =>
        (Phase.Order, unit.Item.Get(UnitFacts.OrderedOn) is not { } ordered || FirstTyped(unit.Item, OfTheBox) is not { } read ? new Outcome.DoesNotApply()
            : ordered <= read || FirstTyped(unit.Item, [UnitFacts.OrderedOn]) <= read ? new Outcome.Fine()
            : Found(FrozenAfterBox.With(Arg.Label(UnitFacts.OrderedOn, small: false), Day(UnitFacts.OrderedOn, ordered), Day(UnitFacts.OrderedOn, read)),
                unit, UnitFacts.OrderedOn));

    /// <summary>Whether the loop was read for the first time before it was read after the drywall; a reading that was put right is no first one.</summary>
    private static (Phase Phase, Outcome Outcome) OfLoops(Unit unit) =>
        (Phase.CloseIn, unit.Run is not { } run || run.Item.Latest(RunFacts.FirstLoop) is not { Stored: not null, Before: null } first
            || run.Item.Latest(RunFacts.SecondLoop) is not { Stored: not null } second ? new Outcome.DoesNotApply()
            : DayOf(first) <= DayOf(second) ? new Outcome.Fine()
            : new Outcome.Found(FirstAfterSecond.With(Arg.Label(RunFacts.FirstLoop, small: false), Day(UnitFacts.OrderedOn, DayOf(first)),
                Arg.Label(RunFacts.SecondLoop), Day(UnitFacts.OrderedOn, DayOf(second))), ReadSecondAgain, FieldRef.To(run.Item, RunFacts.SecondLoop)));

    private static DateOnly DayOf(Head head) => DateOnly.FromDateTime(head.At.DateTime);

    /// <summary>The first day on which one of them was typed, by the clock of the device; null while none is there.</summary>
    private static DateOnly? FirstTyped(Item item, ImmutableArray<Fact> facts)
    {
        DateOnly? first = null;
        foreach (var fact in facts)
        {
            if (item.Latest(fact) is { Stored: not null } head && DateOnly.FromDateTime(head.At.DateTime) is var on && (first is null || on < first))
                first = on;
        }
        return first;
    }

    private static Arg Day(Fact fact, DateOnly day) => Arg.Value(fact, day);

    private static Outcome.Found Found(Sentence message, Subject subject, Fact field) => new(message, PutRight, FieldRef.To(subject.Item, field));
}
