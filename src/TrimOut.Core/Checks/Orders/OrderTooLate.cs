using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Plans.Visits;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Orders;

/// <summary>A unit can be ordered, and is, so many days before it is hung as the order takes.</summary>
/// <remarks>
/// <para>Why: what is made to measure can't be ordered before paint is dry and the openings are measured; a date of the handover that leaves the maker no time
/// is known months before, and moved then without a word to anybody.</para>
/// <para>To clear: measure the openings that can be first, ask the maker for a shorter time, or move the visit to hang. Whether the last day is near or past
/// today is said where the house is opened and on the screen of people and dates, which know what day it is; here the days count that are written.</para>
/// </remarks>
public sealed class OrderTooLate : UnitCheck
{
    private static readonly Message NobodyCanMeasure =
        new("It must be ordered by {0} to be here on {1}, and before {2}, on {3}, nobody can measure it.", "before");
    private static readonly Message NotOrdered =
        new("It was to be ordered by {0} to be here on {1}; on {2} it was worked on, and it is not ordered yet.", "past");
    private static readonly Message OrderedAfter =
        new("It was ordered on {0}: to be here on {1} it had to be by {2}.", "ordered");
    private static readonly Message MakeRoom = new("Measure and order first what can be, ask the maker for a shorter time, or move the visit to hang.");
    private static readonly Message OrderNow = new("Order it now, ask by when it can be here, and move the visit to hang; other rooms can be hung first.");
    private static readonly Message AskForDay =
        new("Ask the maker for the day on which its box comes and write it; move the visit to hang where that is later.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("order-too-late", "Ordered too late to be here in time", Severity.Caution, Phase.Order,
        new Source(Source.CommonPractice, "last day = first planned visit to hang, else handover less the days that fitting takes, less "
            + "the days that the order takes; ordered on, paint, visit to measure and marks of measure and order <= last day"));

    /// <inheritdoc/>
    public override Outcome Judge(Unit subject)
    {
        var house = subject.House;
        if (house.Job.Get(HouseFacts.OrderLead) is not { } lead || subject.BoxIsHere || subject.BoxExpectedOn is not null || subject.BoxDidNotCome)
            return new Outcome.DoesNotApply();
        if (VisitPlan.Needed(house, Phase.Hang) is not { } needed)
            return NotChecked.Of(new JobItself(house), HouseFacts.HandoverOn);
        var last = needed.AddDays(-lead);
        if (VisitPlan.IsOrdered(subject))
        {
            return subject.Item.Get(UnitFacts.OrderedOn) is { } ordered && ordered > last
                ? new Outcome.Found(OrderedAfter.With(Day(ordered), Day(needed), Day(last)), AskForDay, FieldRef.To(subject.Item, UnitFacts.ExpectedOn))
                : new Outcome.Fine();
        }
        if (WorkedOn(subject) is { } marked && marked > last)
            return new Outcome.Found(NotOrdered.With(Day(last), Day(needed), Day(marked)), OrderNow, FieldRef.To(subject.Item, UnitFacts.OrderedOn));
        return Measurable(house) is { On: var on, By: var by } && on > last
            ? new Outcome.Found(NobodyCanMeasure.With(Day(last), Day(needed), by, Day(on)), MakeRoom, FieldRef.To(house.Job, HouseFacts.OrderLead))
            : new Outcome.Fine();
    }

    /// <summary>The last day on which something of measuring or ordering it was marked.</summary>
    private static DateOnly? WorkedOn(Unit unit) => StepList.All.Where(s => s is { Subject: ItemKind.Unit, Phase: Phase.Measure or Phase.Order })
        .Select(s => unit.Item.Latest(s.Field)).Where(m => m?.Stored is not null).Select(m => (DateOnly?)DateOnly.FromDateTime(m!.At.DateTime)).Max();

    /// <summary>From which day on the openings can be measured, by the paint or by the first visit for it, whichever is later.</summary>
    private static (DateOnly On, Arg By)? Measurable(House house)
    {
        var visit = house.Visits.FirstOrDefault(v => v is { State: VisitState.Planned, Phase: Phase.Measure, On: not null });
        var painted = house.Job.Get(HouseFacts.PaintedOn);
        return visit?.On is { } on && (painted is null || on >= painted) ? (on, Arg.Name(visit))
            : painted is { } dry ? (dry, Arg.Label(HouseFacts.PaintedOn)) : null;
    }

    private static Arg Day(DateOnly day) => Arg.Value(UnitFacts.OrderedOn, day);
}
