using System.Collections.Immutable;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;

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

    /// <summary>The last day on which what is not ordered yet can be, so that its boxes come in time; null while that can't be said, or all is.</summary>
    /// <remarks>The day of the first planned visit to hang, else that of the handover, less the days that the order takes.</remarks>
    public static OrderDue? Order(House house)
    {
        var job = new JobItself(house);
        var units = house.Units.Where(u => u.Item.Get(UnitFacts.OrderedOn) is null && u.Item.Get(UnitFacts.Serial) is null)
            .Select(u => u.Tag).ToImmutableArray();
        var hang = house.Visits.Where(v => v is { State: VisitState.Planned, Phase: Phase.Hang, On: not null }).Select(v => v.On).Min();
        return units.IsEmpty || (hang ?? job.Item.Get(HouseFacts.HandoverOn)) is not { } needed || job.Item.Get(HouseFacts.OrderLead) is not { } lead
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
public sealed record OrderDue(DateOnly By, DateOnly Needed, ImmutableArray<string> Units);
