using System.Collections.Immutable;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Plans.Parts;

namespace TrimOut.Core.Plans.Visits;

/// <summary>What must be ready before a visit, and by when the order must go out.</summary>
public static class VisitPlan
{
    /// <summary>Phases of a house in which something is still to be done, in their order. It goes through every step of every unit.</summary>
    /// <param name="house">The house.</param>
    /// <param name="steps">The list of steps; this program's where none is given.</param>
    public static ImmutableArray<OpenPhase> Open(House house, StepList? steps = null) =>
    [
        .. PhaseNames.All
            .Select(p => new OpenPhase(p, [.. Progress.Walkers(house).Where(s => !Progress.Of(s, p, steps).Complete).Select(s => s.Name)]))
            .Where(o => !o.Who.IsEmpty),
    ];

    /// <summary>What of that must be ready before a planned visit: the phases before its own; nothing for a visit of no phase.</summary>
    /// <param name="visit">The visit.</param>
    /// <param name="open">What is open in its house.</param>
    /// <remarks>Each phase builds on those before: a unit that does not hang needs no power (common practice, no published source).</remarks>
    public static IEnumerable<OpenPhase> Before(Visit visit, ImmutableArray<OpenPhase> open) =>
        visit is { State: VisitState.Planned, Phase: { } phase } ? open.TakeWhile(o => o.Phase < phase) : [];

    /// <summary>Why a visit that is still planned may be done already, so that it is asked; null where nothing says so.</summary>
    /// <param name="visit">The visit.</param>
    /// <param name="open">What is open in its house.</param>
    /// <param name="today">The day on which it is looked at; null where only the house is to speak.</param>
    /// <param name="steps">The list of steps; this program's where none is given.</param>
    public static MayBeDone? IsItDone(Visit visit, ImmutableArray<OpenPhase> open, DateOnly? today, StepList? steps = null) =>
        visit.State != VisitState.Planned ? null
        : visit.On < today ? MayBeDone.DayIsPast
        // Where nobody walks through a phase nothing of it was done; and whoever comes after the acceptance comes for something else.
        : visit.On > visit.House.Job.Get(HouseFacts.AcceptedOn) ? null
        : visit.Phase is { } phase && open.All(o => o.Phase != phase) && visit.House.Units.Any() && Progress.Of(visit.House, phase, steps).Total > 0
            ? MayBeDone.StepsAreMarked
        : null;

    /// <summary>Whether a unit was ordered, or is here: its box came, or it hangs.</summary>
    public static bool IsOrdered(Unit unit) => unit.Item.Get(UnitFacts.OrderedOn) is not null
        || unit.Item.Get(UnitFacts.Serial) is not null || unit.BoxIsHere || AlreadyHere.Hangs(unit);

    /// <summary>What a visit that is planned lacks for what goes by visits: its day, its phase, who comes. Nothing after the acceptance but the day.</summary>
    /// <param name="visit">The visit.</param>
    /// <remarks>Without a phase it is before and after nothing: no order, no call-off and no hours go by it.</remarks>
    public static IEnumerable<Fact> Lacks(Visit visit)
    {
        if (visit.State != VisitState.Planned)
            yield break;
        if (visit.On is null)
            yield return VisitFacts.On;
        if (visit.Phase is null && visit.House.Job.Get(HouseFacts.AcceptedOn) is null)
            yield return VisitFacts.Phase;
        if (!visit.Expected.Any())
            yield return VisitFacts.Expects;
    }

    /// <summary>The day on which what a phase takes must be at the house; null while neither a visit nor a date of the house says one.</summary>
    /// <param name="house">The house.</param>
    /// <param name="phase">The phase.</param>
    /// <remarks>
    /// The day of the first planned visit of that phase; else at the latest that on which drywall starts, or behind it that of the handover, less the days that
    /// fitting takes where somebody noted them.
    /// </remarks>
    public static DateOnly? Needed(House house, Phase phase) => FirstVisit(house, phase)?.On
        ?? (phase <= Phase.RoughIn ? house.Job.Get(HouseFacts.DrywallOn)
            : house.Job.Get(HouseFacts.HandoverOn) is { } handover && phase < Phase.Handover
                ? Back(handover, house.Job.Get(HouseFacts.FittingDays) ?? 0)
            : house.Job.Get(HouseFacts.HandoverOn));

    /// <summary>The first planned visit of a phase that has a day; null where there is none.</summary>
    public static Visit? FirstVisit(House house, Phase phase) =>
        house.Visits.Where(v => v is { State: VisitState.Planned, On: not null } && v.Phase == phase).MinBy(v => v.On);

    /// <summary>By when each open phase must be done, going back from the handover; a phase of which no day can be said is left out.</summary>
    /// <param name="house">The house.</param>
    /// <param name="open">What is open in it.</param>
    /// <remarks>
    /// The first of these days: the first planned visit of a later phase; of what is in the walls that on which drywall starts; of all up to the order the last
    /// day to order; of all before hanging the day on which the boxes must be there; the handover (common practice, no published source).
    /// </remarks>
    public static IEnumerable<PhaseDue> ReadyBy(House house, ImmutableArray<OpenPhase> open)
    {
        var (order, boxes) = (Order(house)?.By, Needed(house, Phase.Hang));
        foreach (var phase in open)
        {
            DateOnly?[] days =
            [
                .. house.Visits.Where(v => v.State == VisitState.Planned && v.Phase > phase.Phase).Select(v => v.On),
                phase.Phase <= Phase.RoughIn ? house.Job.Get(HouseFacts.DrywallOn) : null,
                phase.Phase <= Phase.Order ? order : null,
                phase.Phase < Phase.Hang ? boxes : null,
                house.Job.Get(HouseFacts.HandoverOn),
            ];
            if (days.Min() is { } by)
                yield return new PhaseDue(phase, by);
        }
    }

    /// <summary>
    /// Units whose boxes are not here and come after the day on which they must be: that of the first planned visit to hang, else the handover less the days
    /// that fitting takes. Where no day is noted for a box, it can't be here before its order and the days that orders take.
    /// </summary>
    /// <param name="house">The house.</param>
    /// <param name="today">The day on which it is looked at: what is not here does not come before it; null where only the house is to speak.</param>
    public static IEnumerable<BoxTooLate> BoxesTooLate(House house, DateOnly? today = null)
    {
        if (Needed(house, Phase.Hang) is not { } needed)
            return [];
        return house.Units.Where(u => !u.BoxIsHere && !AlreadyHere.Hangs(u)).Select(u => (Unit: u, Comes: Earliest(u)))
            .Where(b => b.Comes > needed).Select(b => new BoxTooLate(b.Unit, b.Comes!.Value, needed));

        DateOnly? Earliest(Unit unit) => Comes(unit) is { } noted ? noted < today ? today : noted
            : unit.Item.Get(UnitFacts.OrderedOn) is not null ? today : null;
    }

    /// <summary>The first day on which a box can be here: its own, else that of the order and the days that orders take; null while unknown.</summary>
    /// <param name="unit">The unit.</param>
    /// <param name="toBeOrdered">The day on which it is to be ordered, for one that is not ordered yet; null where none is known.</param>
    internal static DateOnly? Comes(Unit unit, DateOnly? toBeOrdered = null) =>
        unit.BoxExpectedOn ?? (unit.House.Job.Get(HouseFacts.OrderLead) is { } lead && (unit.Item.Get(UnitFacts.OrderedOn) ?? toBeOrdered) is { } ordered
            && ordered.DayNumber + lead <= DateOnly.MaxValue.DayNumber ? ordered.AddDays(lead) : null);

    private static DateOnly Back(DateOnly day, int days) => DateOnly.FromDayNumber(Math.Max(0, day.DayNumber - days));

    /// <summary>The last day on which what is not ordered yet can be, so that its boxes come in time; null while that can't be said, or all is.</summary>
    /// <remarks>
    /// The day of the first planned visit to hang, else that on which the boxes must be there before the handover, less the days that the order takes.
    /// </remarks>
    public static OrderDue? Order(House house)
    {
        var job = new JobItself(house);
        var units = house.Units.Where(u => !IsOrdered(u)).Select(u => u.Tag).ToImmutableArray();
        return units.IsEmpty || Needed(house, Phase.Hang) is not { } needed || job.Item.Get(HouseFacts.OrderLead) is not { } lead
            ? null : new OrderDue(Back(needed, lead), needed, units);
    }
}

/// <summary>Why a visit that is planned may be done already.</summary>
public enum MayBeDone
{
    /// <summary>Its day is past.</summary>
    DayIsPast,

    /// <summary>Every step of its phase is marked.</summary>
    StepsAreMarked,
}

/// <summary>A phase in which something is still to be done.</summary>
/// <param name="Phase">The phase.</param>
/// <param name="Who">Units and panels, and the house, that are not through it.</param>
public sealed record OpenPhase(Phase Phase, ImmutableArray<string> Who);

/// <summary>By when a phase must be done.</summary>
/// <param name="Open">The phase and who is not through it.</param>
/// <param name="By">The last day.</param>
public sealed record PhaseDue(OpenPhase Open, DateOnly By);

/// <summary>A box that comes after the day on which it must be there.</summary>
/// <param name="Unit">The unit.</param>
/// <param name="Comes">The day on which it is expected; where none is noted, or it is past, the first on which it can be here.</param>
/// <param name="Needed">The day on which it must be there.</param>
public sealed record BoxTooLate(Unit Unit, DateOnly Comes, DateOnly Needed);

/// <summary>By when an order must go out.</summary>
/// <param name="By">The last day.</param>
/// <param name="Needed">The day on which the boxes must be there.</param>
/// <param name="Units">Tags of the units that are not ordered.</param>
public sealed record OrderDue(DateOnly By, DateOnly Needed, ImmutableArray<string> Units)
{
    /// <summary>So many days before the last one it is said when the house is opened; common practice, no published source.</summary>
    public const int DaysAhead = 14;

    /// <summary>Whether the last day is near or past.</summary>
    /// <param name="today">The day on which it is looked at.</param>
    public bool IsPressing(DateOnly today) => By <= today.AddDays(DaysAhead);

    /// <summary>Whether it can't be here in time any more.</summary>
    /// <param name="today">The day on which it is looked at.</param>
    public bool IsTooLate(DateOnly today) => By < today;
}
