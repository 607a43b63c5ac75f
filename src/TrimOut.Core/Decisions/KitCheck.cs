using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;

namespace TrimOut.Core.Decisions;

/// <summary>Says that kit values were held against the maker's sheet.</summary>
public static class KitCheck
{
    /// <summary>Says that one value was held against the sheet, or that it was not after all.</summary>
    public static Result<Draft> Toggle(House house, Item sheet, Fact fact)
    {
        if (!FactTable.IsKit(sheet.Kind))
            return new Refusal("Only values of the kit are held against a maker's sheet.");
        if (sheet.Latest(fact.Name)?.Stored is null)
            return new Refusal($"{fact.Label} has no value yet.");
        var field = Companion.Checked(fact.Name);
        var was = sheet.Latest(field)?.Stored is not null;
        return new Draft($"{house.NameOf(sheet)}: {fact.Label} {(was ? "not held" : "held")} against the maker's sheet")
            .PutStored(sheet.Id, field, was ? null : "yes");
    }

    /// <summary>Says that every value of a part was held against the sheet.</summary>
    public static Result<Draft> All(House house, Item sheet)
    {
        if (!FactTable.IsKit(sheet.Kind))
            return new Refusal("Only values of the kit are held against a maker's sheet.");
        var draft = new Draft($"{house.NameOf(sheet)}: all values held against the maker's sheet");
        foreach (var fact in FactTable.Of(sheet.Kind)
            .Where(f => sheet.Latest(f.Name)?.Stored is not null && sheet.Latest(Companion.Checked(f.Name))?.Stored is null))
            draft = draft.PutStored(sheet.Id, Companion.Checked(fact.Name), "yes");
        return draft.Edits.IsEmpty ? new Refusal("Every value was held against the maker's sheet already.") : draft;
    }
}
