using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Plans.Visits;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Boxes;

/// <summary>
/// A unit's box comes before the visit on which it is hung, or else before the handover; one that did not come, or came wrong, is ordered again.
/// </summary>
/// <remarks>
/// <para>Why: a crew on site without the boxes costs a day, and a box that nobody misses until handover costs weeks.</para>
/// <para>To clear: chase the supplier, put the new day that was agreed, move the visit, or say on which day it was reordered. Whether a box is overdue
/// today stands on the receiving list and on the screen of people and dates, which know what day it is.</para>
/// </remarks>
public sealed class BoxLate : UnitCheck
{
    private static readonly Message DidNotCome = new("Its box did not arrive, and nobody reordered it.");
    private static readonly Message ReadAllTheSame = new("Its box is said not to have arrived, and its label, its size or its serial is written.", "read");
    private static readonly Message NoDayKnown = new("It was ordered again on {0}, and nobody has written on which day it is expected now.");
    private static readonly Message SayWhich = new("See whether it is here: say that it arrived, or clear what was written of another box.");
    private static readonly Message AskForDay = new("Ask the supplier for the day and write it; write what stands on the new box once it is here.");
    private static readonly Message AfterVisit = new("Its box is expected on {0}; {1} is on {2}.");
    private static readonly Message AfterHandover = new("Its box is expected on {0}; handover is on {1}.");
    private static readonly Message NoTimeToFit = new("Its box is expected on {0}; to be fitted before handover it must be here on {1}.", "fit");
    private static readonly Message ChaseIt = new("Call the supplier; reorder it and note the day, and note when it is expected now.");
    private static readonly Message MoveOne = new("Call the supplier for an earlier day, or move the visit; a part of the house can be hung first.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("box-late", "Box not here in time", Severity.Caution, Phase.Receive,
        new Source(Source.CommonPractice, "expected on <= first planned visit to hang, or where there is none handover less the days that fitting takes; " +
            "ordered again = not here until something is written of the new box"));

    /// <inheritdoc/>
    public override Outcome Judge(Unit subject)
    {
        if (subject.BoxIsHere)
        {
            return subject.Item.Get(UnitFacts.Arrival) == Arrival.NotArrived && subject.BoxIsRead
                ? new Outcome.Found(ReadAllTheSame.With(), SayWhich, FieldRef.To(subject.Item, UnitFacts.Arrival))
                : new Outcome.Fine();
        }
        if (subject.BoxDidNotCome)
            return new Outcome.Found(DidNotCome.With(), ChaseIt, FieldRef.To(subject.Item, UnitFacts.ReorderedOn));
        var again = subject.ComesAgain ? subject.Item.Get(UnitFacts.ReorderedOn) : null;
        if (subject.BoxExpectedOn is not { } expected || expected < again)
        {
            return again is { } on
                ? new Outcome.Found(NoDayKnown.With(Arg.Value(UnitFacts.ReorderedOn, on)).StandingFor(Around(subject)), AskForDay,
                    FieldRef.To(subject.Item, UnitFacts.ExpectedOn))
                : new Outcome.DoesNotApply();
        }
        var here = FieldRef.To(subject.Item, UnitFacts.ExpectedOn);
        if (subject.House.Visits.FirstOrDefault(v => v is { Phase: Phase.Hang, State: VisitState.Planned, On: not null }) is { On: { } hung } visit)
        {
            return expected <= hung ? new Outcome.Fine()
                : new Outcome.Found(Since(subject, again, AfterVisit.With(Day(expected), Arg.Name(visit), Day(hung))), MoveOne, here);
        }
        return subject.House.Job.Get(HouseFacts.HandoverOn) is not { } handover ? NotChecked.Of(new JobItself(subject.House), HouseFacts.HandoverOn)
            : VisitPlan.Needed(subject.House, Phase.Hang) is not { } needed || expected <= needed ? new Outcome.Fine()
            : new Outcome.Found(Since(subject, again, expected > handover ? AfterHandover.With(Day(expected), Day(handover))
                : NoTimeToFit.With(Day(expected), Day(needed))), MoveOne, here);
    }

    /// <summary>Whoever lets a box be late did not let the one be late that was ordered again.</summary>
    private static Sentence Since(Unit unit, DateOnly? again, Sentence late) => again is not { } on ? late
        : late.StandingFor(unit.Item.Get(UnitFacts.Arrival) is { } arrival
            ? [Arg.Value(UnitFacts.ReorderedOn, on), Arg.Value(UnitFacts.Arrival, arrival)]
            : [Arg.Value(UnitFacts.ReorderedOn, on)]);

    /// <summary>What else is said of a box whose day nobody knows: another word of it is told anew.</summary>
    private static IEnumerable<Arg> Around(Unit unit)
    {
        if (unit.Item.Get(UnitFacts.Arrival) is { } arrival)
            yield return Arg.Value(UnitFacts.Arrival, arrival);
        if (unit.BoxExpectedOn is { } expected)
            yield return Day(expected);
        if (unit.House.Visits.FirstOrDefault(v => v is { Phase: Phase.Hang, State: VisitState.Planned, On: not null }) is { On: { } hung })
            yield return Day(hung);
        if (unit.House.Job.Get(HouseFacts.HandoverOn) is { } handover)
            yield return Day(handover);
    }

    private static Arg Day(DateOnly day) => Arg.Value(UnitFacts.ExpectedOn, day);
}
