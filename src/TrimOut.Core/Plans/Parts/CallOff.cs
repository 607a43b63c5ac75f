using System.Collections.Immutable;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Plans.Visits;

namespace TrimOut.Core.Plans.Parts;

/// <summary>Whether a line of a parts list is still to be ordered.</summary>
public enum CallOffState
{
    /// <summary>Nobody ordered it yet, or not for all units.</summary>
    Open,

    /// <summary>It was ordered.</summary>
    CalledOff,

    /// <summary>There is nothing to order: none is taken, or the phase that it is for is over.</summary>
    Nothing,

    /// <summary>All of it is in the house already, by the marks of the work.</summary>
    Here,
}

/// <summary>By when a line of a parts list is needed and must be ordered.</summary>
/// <param name="Line">The line.</param>
/// <param name="NeededBy">The day to have it by; null while no visit and no date of the house says one.</param>
/// <param name="OrderBy">The last day to order it on; null while the day or the days that it takes are not known.</param>
/// <param name="State">Whether it is still to be ordered.</param>
/// <param name="OrderedOn">The day on which it was ordered; of units the last one. Null while it is to be ordered.</param>
/// <param name="NotOrdered">
/// Tags of the units that it is made for and that are not ordered; names of what came into the house after the order, or of what is not there while other is.
/// </param>
public sealed record CallOff(
    PartLine Line, DateOnly? NeededBy, DateOnly? OrderBy, CallOffState State, DateOnly? OrderedOn, ImmutableArray<string> NotOrdered)
{
    /// <summary>So many days before the last one something is called off: time to ask what it costs; common practice, no published source.</summary>
    public const int DaysAhead = 14;

    /// <summary>The call-offs of a parts list, line by line.</summary>
    /// <param name="house">The house.</param>
    /// <param name="changes">Its history, which says when each thing came into it.</param>
    /// <param name="lines">Its parts list.</param>
    /// <param name="steps">The list of steps; this program's where none is given.</param>
    public static ImmutableArray<CallOff> Of(House house, IEnumerable<Change> changes, IEnumerable<PartLine> lines, StepList? steps = null)
    {
        var added = AddedBy(changes);
        var phases = new Dictionary<Phase, (DateOnly? Needed, DateOnly? Ordered, bool Over)>();
        return [.. lines.Select(line =>
        {
            if (!phases.TryGetValue(line.NeededIn, out var phase))
            {
                phases.Add(line.NeededIn, phase = (VisitPlan.Needed(house, line.NeededIn), OrderDay(house, line.NeededIn),
                    Progress.Of(house, line.NeededIn, steps).Complete));
            }
            var lead = house.Job.Get(line.MadeFor.IsEmpty ? HouseFacts.PartsLead : HouseFacts.OrderLead);
            var orderBy = lead is { } days ? phase.Needed?.AddDays(-days) : null;
            if (line.Count == 0)
                return new CallOff(line, phase.Needed, orderBy, CallOffState.Nothing, null, []);
            if (!line.MadeFor.IsEmpty)
            {
                var waiting = line.MadeFor.Where(u => !VisitPlan.IsOrdered(u)).ToList();
                return waiting.Count > 0 ? Open(waiting.Select(u => u.Tag), line.Count * waiting.Count / line.MadeFor.Length)
                    : line.MadeFor.All(u => u.BoxIsHere) ? new CallOff(line, phase.Needed, orderBy, CallOffState.Here, null, [])
                    : line.MadeFor.Max(u => u.Item.Get(UnitFacts.OrderedOn)) is { } last
                        ? new CallOff(line, phase.Needed, orderBy, CallOffState.CalledOff, last, [])
                    : new CallOff(line, phase.Needed, orderBy, CallOffState.Here, null, []);
            }
            if (phase.Ordered is { } on)
            {
                var since = OrderedFact(line.NeededIn) is { } fact && house.Job.Latest(fact) is { } noted
                    ? CountedFrom(house, line).Where(c => added.TryGetValue(c.Item.Id, out var came) && CameAfter(came, on, noted)
                        && !AlreadyHere.Is(house, c.Item, line.NeededIn)).ToList() : [];
                return since.Count == 0 ? new CallOff(line, phase.Needed, orderBy, CallOffState.CalledOff, on, [])
                    : Open(Names(since), line.Items.IsEmpty ? line.Count : Sum(since));
            }
            var wanted = line.Items.Where(c => !AlreadyHere.Is(house, c.Item, line.NeededIn)).ToList();
            if (wanted.Count == 0 && !line.Items.IsEmpty)
                return new CallOff(line, phase.Needed, orderBy, CallOffState.Here, null, []);
            return phase.Over ? new CallOff(line, phase.Needed, orderBy, CallOffState.Nothing, null, [])
                : wanted.Count < line.Items.Length ? Open(Names(wanted), Sum(wanted)) : Open([], line.Count);

            CallOff Open(IEnumerable<string> names, decimal? left) =>
                new(line, phase.Needed, orderBy, CallOffState.Open, null, [.. names.Distinct()]) { Left = left };

            IEnumerable<string> Names(IEnumerable<CountedItem> of) => of.Select(c => house.NameOf(c.Item));
        })];
    }

    /// <summary>
    /// What is to be called off now, the most pressing first: whose last day is not far or past; and where no day is known, or of what a maker
    /// makes not how long that takes, what the phase after the furthest one that was begun takes.
    /// </summary>
    /// <param name="house">The house.</param>
    /// <param name="all">Its call-offs.</param>
    /// <param name="today">The day on which it is looked at.</param>
    /// <param name="steps">The list of steps; this program's where none is given.</param>
    public static ImmutableArray<CallOff> Now(House house, IEnumerable<CallOff> all, DateOnly today, StepList? steps = null)
    {
        var begun = PhaseNames.All.LastOrDefault(p => Progress.Of(house, p, steps).Done > 0, Phase.WalkThrough);
        return [.. all.Where(c => c.State == CallOffState.Open
            && (c.LastDay <= today.AddDays(DaysAhead)
                || (c.OrderedIn <= begun + 1 && (c.LastDay is null || (c.OrderBy is null && !c.Line.MadeFor.IsEmpty)))))
            .OrderBy(c => c.LastDay ?? DateOnly.MaxValue).ThenBy(c => c.OrderedIn)];
    }

    /// <summary>How much of the line is still to be ordered, in what it counts; null where that can't be counted yet, and where nothing is.</summary>
    public decimal? Left { get; private init; }

    /// <summary>The last day to order it on as far as it is known: where nobody said how long it takes, the day to have it by.</summary>
    public DateOnly? LastDay => OrderBy ?? NeededBy;

    /// <summary>The phase in which it is ordered: of what the maker makes that of the order sheet.</summary>
    public Phase OrderedIn => Line.MadeFor.IsEmpty ? Line.NeededIn : Phase.Order;

    /// <summary>The day on which the parts of a phase were ordered; a day that was still to come when it was written is none yet.</summary>
    /// <param name="house">The house.</param>
    /// <param name="phase">The phase.</param>
    public static DateOnly? OrderDay(House house, Phase phase) =>
        OrderedFact(phase) is { } fact && house.Job.Latest(fact) is { Value: DateOnly on } head && on <= DateOnly.FromDateTime(head.At.DateTime).AddDays(1)
            ? on : null;

    /// <summary>Those of some things that came into the house after what a phase takes was ordered.</summary>
    internal static IEnumerable<Item> CameAfterOrder(House house, IEnumerable<Change> changes, IEnumerable<Item> items, Phase phase)
    {
        if (OrderDay(house, phase) is not { } on || OrderedFact(phase) is not { } fact || house.Job.Latest(fact) is not { } noted)
            return [];
        var added = AddedBy(changes);
        return items.Where(i => added.TryGetValue(i.Id, out var came) && CameAfter(came, on, noted));
    }

    /// <summary>The change by which each thing came into the house.</summary>
    private static Dictionary<string, Change> AddedBy(IEnumerable<Change> changes)
    {
        var added = new Dictionary<string, Change>(StringComparer.Ordinal);
        foreach (var change in changes)
        {
            foreach (var add in change.Edits.OfType<Edit.Add>())
                added.TryAdd(add.Item, change);
        }
        return added;
    }

    /// <summary>
    /// Whether something came into the house after the day of an order, and after that day was noted: what was there when somebody said that all is ordered
    /// was ordered, also where the whole house was typed later.
    /// </summary>
    private static bool CameAfter(Change added, DateOnly ordered, Head noted) =>
        DateOnly.FromDateTime(added.SaidAt.DateTime) > ordered && Change.Order(added.Stamp, added.Id, noted.Stamp, noted.Id) > 0;

    /// <summary>What a line is counted from; where the line does not say, all that parts of its phase are for. Spares are so many, whatever comes.</summary>
    private static IEnumerable<CountedItem> CountedFrom(House house, PartLine line) => line.Group == PartGroup.Spares ? []
        : !line.Items.IsEmpty ? line.Items
        : line.NeededIn switch
        {
            Phase.RoughIn or Phase.Power => house.Runs.Select(r => new CountedItem(r.Item)),
            Phase.Hang => house.Units.Select(u => new CountedItem(u.Item)),
            _ => [],
        };

    private static decimal? Sum(List<CountedItem> items) => items.TrueForAll(c => c.Takes is null) ? null : Math.Ceiling(items.Sum(c => c.Takes ?? 0));

    private static Fact<DateOnly>? OrderedFact(Phase phase) => phase switch
    {
        Phase.RoughIn => HouseFacts.RoughInPartsOn,
        Phase.Hang => HouseFacts.HangPartsOn,
        Phase.Power => HouseFacts.PowerPartsOn,
        Phase.Pair => HouseFacts.PairPartsOn,
        _ => null,
    };
}
