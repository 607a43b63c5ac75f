using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;
using TrimOut.Core.Units;

namespace TrimOut.Core.Decisions;

/// <summary>Puts what a person typed to a fact, or says why it can't be.</summary>
public static class SetFact
{
    /// <summary>The change that typing a value makes; an empty text takes the value away.</summary>
    /// <param name="house">The house.</param>
    /// <param name="item">The item that has the fact.</param>
    /// <param name="fact">The fact.</param>
    /// <param name="typed">What was typed.</param>
    /// <param name="key">For a keyed fact, which of its values.</param>
    /// <param name="today">Which day it is, for a day that is said from there; null where that is not known.</param>
    public static Result<Draft> Typed(House house, Item item, Fact fact, string typed, string? key = null, DateOnly? today = null)
    {
        var field = fact.Field(key);
        var name = $"{house.NameOf(item)}: {fact.Label}{(key is not null && house.Find(key) is { } of ? $" ({house.NameOf(of)})" : "")}";
        if (item.Kind != fact.Subject)
            return new Refusal($"{name} is not a detail of this item.");
        if (string.IsNullOrWhiteSpace(typed))
        {
            return item.Latest(field)?.Stored is null ? new Refusal("There is no value to clear.")
                : fact == WindowFacts.Tag ? new Refusal("A window keeps a tag. Type another one.")
                : fact == RoomFacts.Floor && RoomNames.Refuse(house, house.NameOf(item), null, item.Id) is { } twice ? twice
                : new Draft($"{name} cleared").PutStored(item.Id, field, null);
        }
        return fact.ReadTyped(typed, house, today)
            .Then(stored => Rules(house, item, fact, stored, today))
            .Then<Draft>(stored =>
                WithCompanions(Put(new Draft($"{name}: {Shown(fact, stored, house)}"), item, fact, field, stored), house, item, fact, field));
    }

    private static Draft Put(Draft draft, Item item, Fact fact, string field, string stored) =>
        fact == UnitFacts.HeadCover && stored == HeadCover.NoCoverToCome
            ? draft.WithNoCover(out var none).PutStored(item.Id, field, none) : draft.PutStored(item.Id, field, stored);

    private static Result<string> Rules(House house, Item item, Fact fact, string stored, DateOnly? today)
    {
        if (fact == VisitFacts.State && stored == KebabCase.Of(VisitState.Done) && Deliver.Done(new Visit(house, item), today) is { Ok: false } early)
            return new Refusal(early.Reason!);
        // The day of a visit that took place is past as well.
        if (fact == VisitFacts.On && item.Get(VisitFacts.State) == VisitState.Done && today is { } now
            && fact.DecodeAny(stored) is { Ok: true, Value: DateOnly on } && on > now)
            return new Refusal($"{house.NameOf(item)} took place, and that day is still to come. Say first that it is planned again.");
        if (fact == VisitFacts.Worked && item.Get(VisitFacts.On) is { } planned && planned > today)
        {
            return new Refusal($"{house.NameOf(item)} is on {VisitFacts.On.Show(planned, house)}, which is still to come: nobody can have worked on it. "
                + "Type the day on which it took place first.");
        }
        if (fact == ServiceFacts.On && fact.DecodeAny(stored) is { Ok: true, Value: DateOnly done } && RecordService.RefuseDay(house, done, today) is { } ahead)
            return ahead;
        if (fact == WindowFacts.Tag && Tags.Refuse(house, stored, item.Id) is { } duplicate)
            return duplicate;
        return fact == RoomFacts.Name && RoomNames.Refuse(house, stored, item.Get(RoomFacts.Floor), item.Id) is { } named ? named
            : fact == RoomFacts.Floor && RoomNames.Refuse(house, house.NameOf(item), stored, item.Id) is { } there ? there
            : OwnNames.Has(fact) && OwnNames.Refuse(house, item.Kind, stored, item.Id) is { } taken ? taken
            : stored;
    }

    private static Draft WithCompanions(Draft draft, House house, Item item, Fact fact, string field)
    {
        if (fact.IsReading && house.Job.Get(HouseFacts.Meter) is { } meter)
            draft = draft.PutStored(item.Id, Companion.Meter(field), meter);
        if (fact is Fact<Resistance> { IsReading: true })
        {
            draft = Beside(draft, Companion.Leads(field), house.Job.Latest(HouseFacts.MeterLeads.Name)?.Stored);
            draft = Beside(draft, Companion.CableAt(field), house.Job.Latest(HouseFacts.CableAtTest.Name)?.Stored);
            draft = Beside(draft, Companion.MeterStep(field), house.Job.Latest(HouseFacts.MeterStep.Name)?.Stored);
        }
        if (AboutSheet.Is(fact) && fact.Name == AboutSheet.Edition && draft.Edits[0] is Edit.Put { Value: { } edition })
            draft = OtherEdition(draft, item, edition);
        if (AboutSheet.Is(fact) && fact.Name == AboutSheet.Sheet && draft.Edits[0] is Edit.Put { Value: { } sheet })
            draft = OtherSheet(draft, item, sheet);
        if (fact == WindowFacts.Covered && draft.Edits[0] is Edit.Put { Value: var covered } && covered == KebabCase.Of(YesNo.Yes))
            draft = LeaveOut.WithoutReason(draft, item);
        // A place among the windows of one room is none among those of another.
        if (fact == WindowFacts.Room && item.Latest(WindowFacts.PlaceInRoom)?.Stored is not null)
            draft = draft.PutStored(item.Id, WindowFacts.PlaceInRoom.Name, null);
        if (FactTable.IsKit(item.Kind) && item.Latest(Companion.Checked(field))?.Stored is not null)
            draft = draft.PutStored(item.Id, Companion.Checked(field), null);
        return draft;

        // A reading taken without leads or temperature said must not keep those of the one before it.
        Draft Beside(Draft to, string companion, string? value) =>
            value is null && item.Latest(companion)?.Stored is null ? to : to.PutStored(item.Id, companion, value);
    }

    /// <summary>
    /// What was checked against the edition before says so in its mark, and waits to be checked against the other one; what was checked while none was named
    /// was checked against an unknown one.
    /// </summary>
    private static Draft OtherEdition(Draft draft, Item part, string edition)
    {
        var waiting = SheetMark.Waiting(part, edition).ToList();
        foreach (var fact in waiting.Where(f => SheetMark.Of(part, f) != SheetMark.OfBefore(part, f)))
            draft = draft.PutStored(part.Id, Companion.Checked(fact.Name), SheetMark.OfBefore(part, fact));
        return Waits(draft, part, waiting);
    }

    /// <summary>What was checked against another sheet was not checked against this one, whatever edition that was.</summary>
    private static Draft OtherSheet(Draft draft, Item part, string sheet)
    {
        var waiting = SheetMark.WaitingForSheet(part, sheet).ToList();
        return waiting.Count == 0 ? draft : Waits(SheetValues.Of(part.Kind).Where(f => SheetMark.Of(part, f) is not null)
            .Aggregate(draft, (d, f) => d.PutStored(part.Id, Companion.Checked(f.Name), null)), part, waiting);
    }

    private static Draft Waits(Draft draft, Item part, IEnumerable<Fact> waiting) => waiting.Count(f => part.Latest(f)?.Stored is not null) is var count
        && count == 0 ? draft
        : draft with { What = $"{draft.What}; {NumberText.Counted(count, "value waits", "values wait")} to be checked against it" };

    private static string Shown(Fact fact, string stored, House house) =>
        fact.DecodeAny(stored) is { Ok: true } value ? fact.Show(value.Value, house) : stored;
}
