using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Plans.Parts;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Plans.Visits;

/// <summary>Why a planned visit can't take place on its day, held against the other days of its house: common practice, no published source.</summary>
public static class VisitDoubt
{
    private static readonly Message AfterLastDay = new("It is after {0}, the last day to order: to be here on {1}.");
    private static readonly Message ComesFirst = new("{0}, a phase before it, is planned for {1}.");
    private static readonly Message NoBoxYet = new("No box can be here by then: the first one comes on {0}.");
    private static readonly Message TooLateToFit = new("Fitting takes {0} days before the handover on {1}: begin by {2}.");

    /// <summary>What speaks against the day of a visit; nothing for one that is not planned, has no day or no phase, or comes after the acceptance.</summary>
    /// <param name="visit">The visit.</param>
    /// <remarks>
    /// Measuring and ordering are over on the last day to order; the first visit of an earlier phase is not later, and before the handover none is;
    /// a box comes on its day, or the days that orders take after its order, and one that is not ordered after the first visit to order; whoever begins to
    /// hang has the days that fitting takes.
    /// </remarks>
    public static IEnumerable<Sentence> Of(Visit visit)
    {
        var house = visit.House;
        if (visit is not { State: VisitState.Planned, On: { } on, Phase: { } phase } || on > house.Job.Get(HouseFacts.AcceptedOn))
            yield break;
        if (phase is Phase.Measure or Phase.Order && VisitPlan.Order(house) is { } due && on > due.By)
            yield return AfterLastDay.With(Day(due.By), Day(due.Needed));
        // What comes first of all that is planned too late; a phase of which a visit was made has begun, and another one may finish it.
        foreach (var earlier in PhaseNames.All.Where(p => p < phase))
        {
            // The handover is the end of each phase, of the others only the beginning comes first.
            var last = phase != Phase.Handover ? null
                : house.Visits.Where(v => v.Phase == earlier && v is { State: VisitState.Planned, On: not null }).MaxBy(v => v.On);
            if (last?.On > on)
                yield return ComesFirst.With(Arg.Name(last), Day(last.On!.Value));
            else if (VisitPlan.FirstVisit(house, earlier) is { } other && other.On > on
                && !house.Visits.Any(v => v.Phase == earlier && v.State == VisitState.Done))
                yield return ComesFirst.With(Arg.Name(other), Day(other.On!.Value));
        }
        if (phase == Phase.Receive && FirstBox(house) is { } comes && comes > on)
            yield return NoBoxYet.With(Day(comes));
        if (phase == Phase.Hang && VisitPlan.FirstVisit(house, phase)?.Id == visit.Id && house.Job.Get(HouseFacts.HandoverOn) is { } handover
            && house.Job.Get(HouseFacts.FittingDays) is { } days && days <= handover.DayNumber && on > handover.AddDays(-days))
            yield return TooLateToFit.With(days, Day(handover), Day(handover.AddDays(-days)));
    }

    /// <summary>The first day on which a box can be at the house; null where one is here, or where that can't be said of each.</summary>
    private static DateOnly? FirstBox(House house)
    {
        var units = house.Units;
        if (units.IsEmpty || units.Any(u => u.BoxIsHere || AlreadyHere.Hangs(u)))
            return null;
        var ordered = VisitPlan.FirstVisit(house, Phase.Order)?.On;
        var days = units.Select(u => VisitPlan.Comes(u, VisitPlan.IsOrdered(u) ? null : ordered)).ToList();
        return days.Exists(d => d is null) ? null : days.Min();
    }

    private static Arg Day(DateOnly day) => Arg.Value(VisitFacts.On, day);
}
