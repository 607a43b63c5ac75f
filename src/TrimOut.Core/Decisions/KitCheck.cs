using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;

namespace TrimOut.Core.Decisions;

/// <summary>Says that kit values were checked against the maker's sheet.</summary>
public static class KitCheck
{
    private const string OnlyKit = "Only values of the kit are checked against a maker's sheet.";

    /// <summary>Says that one value was checked against the sheet, or that it was not after all.</summary>
    public static Result<Draft> Toggle(House house, Item sheet, Fact fact)
    {
        if (!SheetValues.Of(sheet.Kind).Contains(fact))
            return new Refusal(OnlyKit);
        if (sheet.Latest(fact.Name)?.Stored is null)
            return new Refusal($"{fact.Label} has no value yet.");
        var field = Companion.Checked(fact.Name);
        var was = SheetMark.Holds(sheet, fact);
        return new Draft($"{house.NameOf(sheet)}: {fact.Label} {(was ? "not checked" : "checked")} against the maker's sheet")
            .PutStored(sheet.Id, field, was ? null : SheetMark.For(sheet));
    }

    /// <summary>Says that every value of a part was checked against the sheet. Blanks stay blank: what is not there was not held against anything.</summary>
    public static Result<Draft> All(House house, Item sheet)
    {
        if (!FactTable.IsKit(sheet.Kind))
            return new Refusal(OnlyKit);
        var draft = SheetValues.NotHeldIn(sheet).Aggregate(new Draft($"{house.NameOf(sheet)}: all values checked against the maker's sheet"),
            (d, f) => d.PutStored(sheet.Id, Companion.Checked(f.Name), SheetMark.For(sheet)));
        return draft.Edits.IsEmpty ? new Refusal("Every value that is there was checked against the maker's sheet already.") : draft;
    }

    /// <summary>Puts a value that was read off the sheet in hand: it is checked against the sheet by being read there.</summary>
    public static Result<Draft> ReadOff(House house, Item sheet, Fact fact, string typed) => !SheetValues.Of(sheet.Kind).Contains(fact)
        ? new Refusal(OnlyKit)
        : SetFact.Typed(house, sheet, fact, typed).Then<Draft>(d =>
            string.IsNullOrWhiteSpace(typed) ? d : Held(d with { What = d.What + ", off the sheet" }, sheet, fact));

    /// <summary>Says that a value was looked for on the sheet in hand, and does not stand there: it stays blank, and nobody need look again.</summary>
    public static Result<Draft> NotFound(House house, Item sheet, Fact fact) => !SheetValues.Of(sheet.Kind).Contains(fact) ? new Refusal(OnlyKit)
        : sheet.Latest(fact)?.Stored is not null ? new Refusal($"{fact.Label} has a value.")
        : new Draft($"{house.NameOf(sheet)}: {fact.Label} not found on the maker's sheet")
            .PutStored(sheet.Id, Companion.Checked(fact.Name), SheetMark.For(sheet));

    /// <summary>
    /// The values, and the blanks that do not stand on the sheet, that count as checked and would wait were another sheet or edition typed of a part, or one
    /// for the first time; none for any other fact.
    /// </summary>
    public static IReadOnlyList<Fact> WaitFor(House house, Item sheet, Fact fact, string typed) =>
        !AboutSheet.Is(fact) || fact.ReadTyped(typed, house) is not { Ok: true } said ? []
        : fact.Name == AboutSheet.Edition ? [.. SheetMark.Waiting(sheet, said.Value)]
        : fact.Name == AboutSheet.Sheet ? [.. SheetMark.WaitingForSheet(sheet, said.Value)] : [];

    /// <summary>
    /// Puts the name or the edition of a sheet that the values were checked against: one that was mistyped, or that nobody named yet. What was checked stays
    /// checked, for the sheet is the same one.
    /// </summary>
    public static Result<Draft> SameSheet(House house, Item sheet, Fact fact, string typed)
    {
        if (!FactTable.IsKit(sheet.Kind) || !AboutSheet.Is(fact))
            return new Refusal(OnlyKit);
        var why = sheet.Latest(fact)?.Stored is null ? "what was checked was checked against it"
            : "the one before was mistyped, and what was checked stays checked";
        return fact.ReadTyped(typed, house).Then<Draft>(stored => (fact.Name == AboutSheet.Edition ? SheetMark.Waiting(sheet, stored) : [])
            .Where(f => SheetMark.Of(sheet, f) != SheetMark.For((string?)null))
            .Aggregate(new Draft($"{house.NameOf(sheet)}: {fact.Label}: {stored}; {why}")
                .PutStored(sheet.Id, fact.Name, stored), (d, f) => d.PutStored(sheet.Id, Companion.Checked(f.Name), SheetMark.For(stored))));
    }

    private static Draft Held(Draft draft, Item sheet, Fact fact)
    {
        var field = Companion.Checked(fact.Name);
        return (draft with { Edits = [.. draft.Edits.Where(e => e is not Edit.Put put || put.Field != field)] })
            .PutStored(sheet.Id, field, SheetMark.For(sheet));
    }
}
