using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;

namespace TrimOut.Core.Decisions;

/// <summary>Says that visits took place or not, and that boxes came or not.</summary>
public static class Deliver
{
    /// <summary>A visit took place, or is still to come after all. Refused for one whose day is still to come.</summary>
    /// <param name="visit">The visit.</param>
    /// <param name="today">Which day it is; null where that is not known.</param>
    public static Result<Draft> Done(Visit visit, DateOnly? today = null) => visit.State == VisitState.Done
        ? new Draft($"{visit.Name} is planned again").Put(visit.Id, VisitFacts.State, VisitState.Planned)
        : visit.On > today ? new Refusal($"{visit.Name} is on {VisitFacts.On.Show(visit.On.Value, visit.House)}, which is still to come: it can't have "
            + "taken place. Type the day on which it did first, or call it off.")
        : new Draft($"{visit.Name} took place").Put(visit.Id, VisitFacts.State, VisitState.Done);

    /// <summary>A visit does not take place.</summary>
    public static Result<Draft> CallOff(Visit visit) => visit.State == VisitState.CalledOff
        ? new Refusal($"{visit.Name} is called off already.")
        : new Draft($"{visit.Name} called off").Put(visit.Id, VisitFacts.State, VisitState.CalledOff);

    /// <summary>The box of a unit came; what stands on it is read when the box is opened.</summary>
    public static Result<Draft> Came(Unit unit) => unit.BoxIsHere
        ? new Refusal($"The box of {unit.Tag} is here already.")
        : new Draft($"Box of {unit.Tag} arrived").Put(unit.Id, UnitFacts.Arrival, Arrival.Arrived);

    /// <summary>The box of a unit was to come and did not; a day on which it was reordered before that counts no more.</summary>
    public static Result<Draft> DidNotCome(Unit unit)
    {
        if (unit.BoxIsHere)
            return new Refusal($"The box of {unit.Tag} is here. What is wrong with it is typed on the unit's sheet.");
        if (unit.BoxDidNotCome)
            return new Refusal($"That the box of {unit.Tag} did not arrive is noted already.");
        var draft = new Draft($"Box of {unit.Tag} did not arrive").Put(unit.Id, UnitFacts.Arrival, Arrival.NotArrived);
        return unit.Item.Get(UnitFacts.ReorderedOn) is null ? draft : draft.PutStored(unit.Id, UnitFacts.ReorderedOn.Name, null);
    }

    /// <summary>What did not come, or came wrong, was ordered again on a day.</summary>
    public static Draft Reordered(Unit unit, DateOnly on) => new Draft($"Box of {unit.Tag} reordered").Put(unit.Id, UnitFacts.ReorderedOn, on);
}
