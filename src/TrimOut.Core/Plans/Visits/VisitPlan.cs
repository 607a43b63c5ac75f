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

    /// <summary>The day on which what a phase takes must be at the house; null while neither a visit nor a date of the house says one.</summary>
    /// <param name="house">The house.</param>
    /// <param name="phase">The phase.</param>
    /// <remarks>The day of the first planned visit of that phase; else at the latest that on which drywall starts, or behind it that of the handover.</remarks>
    public static DateOnly? Needed(House house, Phase phase) =>
        house.Visits.Where(v => v is { State: VisitState.Planned, On: not null } && v.Phase == phase).Select(v => v.On).Min()
        ?? house.Job.Get(phase <= Phase.RoughIn ? HouseFacts.DrywallOn : HouseFacts.HandoverOn);

    /// <summary>The last day on which what is not ordered yet can be, so that its boxes come in time; null while that can't be said, or all is.</summary>
    /// <remarks>The day of the first planned visit to hang, else that of the handover, less the days that the order takes.</remarks>
    public static OrderDue? Order(House house)
    {
        var job = new JobItself(house);
        var units = house.Units.Where(u => !IsOrdered(u)).Select(u => u.Tag).ToImmutableArray();
        return units.IsEmpty || Needed(house, Phase.Hang) is not { } needed || job.Item.Get(HouseFacts.OrderLead) is not { } lead
            ? null : new OrderDue(needed.AddDays(-lead), needed, units);
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
}
