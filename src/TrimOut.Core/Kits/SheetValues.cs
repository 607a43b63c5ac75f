using System.Collections.Frozen;
using System.Collections.Immutable;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;

namespace TrimOut.Core.Kits;

/// <summary>Which facts of a part stand on its maker's sheet: not its name, nor what a house has of it, nor what is said about the sheet itself.</summary>
public static class SheetValues
{
    private static readonly FrozenSet<Fact> NotOnSheet =
        FactTable.All.Where(f => FactTable.IsKit(f.Subject) && (f.Name == "name" || f == CableTypeFacts.OnHand || AboutSheet.Is(f))).ToFrozenSet();

    private static readonly Fact[] OnlyRolled = [CoveringKindFacts.Tube, CoveringKindFacts.FabricThickness, CoveringKindFacts.ExtraFabric];

    private static readonly Fact[] OnlyStacked = [CoveringKindFacts.StackFixed, CoveringKindFacts.StackShare];

    private static readonly ImmutableArray<Fact>[] ByKind =
        [.. Enum.GetValues<ItemKind>().Select(k => FactTable.IsKit(k) ? FactTable.Of(k).Where(f => !NotOnSheet.Contains(f)).ToImmutableArray() : [])];

    /// <summary>The values of a sort of part, in the order in which sheets say them.</summary>
    public static ImmutableArray<Fact> Of(ItemKind kind) => ByKind[(int)kind];

    /// <summary>
    /// The values of a part in that order, without those that it can't have: what rolls up has no stack, what stacks has no tube, and what never needs a
    /// center support has none that is so wide.
    /// </summary>
    public static IEnumerable<Fact> Of(Item part) => Of(part.Kind).Where(f => !(part.Get(CoveringKindFacts.RaisedForm) switch
    {
        RaisedForm.Roll => OnlyStacked,
        RaisedForm.Stack => OnlyRolled,
        _ => [],
    }).Contains(f) && (f != CoveringKindFacts.CentreBracket || part.Get(CoveringKindFacts.CentreFrom) != CoveringKindFacts.None));

    /// <summary>The values of a part that its sheet was not read for yet.</summary>
    public static IEnumerable<Fact> BlankIn(Item part) => Of(part).Where(f => part.Latest(f)?.Stored is null);

    /// <summary>The blanks of a part that somebody looked for on the edition of the sheet that is said of it, and that do not stand there.</summary>
    public static IEnumerable<Fact> NotOnSheetIn(Item part) => BlankIn(part).Where(f => SheetMark.Holds(part, f));

    /// <summary>The values of a part that are there, and that nobody checked against its sheet, or only against an older edition.</summary>
    public static IEnumerable<Fact> NotHeldIn(Item part) =>
        Of(part).Where(f => part.Latest(f)?.Stored is not null && !SheetMark.Holds(part, f));

    /// <summary>How many values of all parts of a house are blank; a part that is no part, such as no head cover, has none.</summary>
    public static int Blanks(House house) =>
        house.Items.Values.Where(i => FactTable.IsKit(i.Kind) && !i.Removed && !IsNoCover(house, i)).Sum(i => BlankIn(i).Count());

    /// <summary>How many values of all parts of a house nobody checked, without what a blank kit begins with.</summary>
    public static int NotHeld(House house) =>
        house.Items.Values.Where(i => FactTable.IsKit(i.Kind) && !i.Removed && BlankKit.IsMore(i)).Sum(i => NotHeldIn(i).Count());

    /// <summary>Whether a part stands for no head cover.</summary>
    public static bool IsNoCover(House house, Item part) => part.Kind == ItemKind.HeadCover && new HeadCover(house, part).IsNone;
}
