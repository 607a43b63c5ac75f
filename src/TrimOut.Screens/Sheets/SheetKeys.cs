using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.Sheets;

/// <summary>Keys of a sheet of facts.</summary>
internal static class SheetKeys
{
    public static readonly IReadOnlyList<IKeyAction> All =
    [
        new KeyAction<SheetScreen>("enter", "Edit", "Edits the fact under the cursor; what is refused stays to be mended.", (s, sight) => Edit(s, sight)) { Disabled = NoFact },
        new KeyAction<SheetScreen>("delete", "Take away", "Takes the value away.", (s, sight) => Turn.Save(s, SetFact.Typed(sight.House, s.Current!.Item!, s.Current.Fact!, "", s.Current.Key))) { Disabled = NoFact, Also = ["backspace"] },
        new KeyAction<SheetScreen>("n", "Next missing", "Goes to the next fact that has no value.", (s, sight) => new Turn(NextMissing(s, sight))),
        new KeyAction<SheetScreen>("f", "Next finding", "Goes to the next field that mends a finding.", (s, sight) => NextFinding(s, sight)),
        new KeyAction<SheetScreen>("l", "One more leg", "Adds a leg to the home run.", (s, sight) => new Turn(s, new Ask.Save(AddItems.Leg(UnitOf(s, sight)!.Run!), OnNewLeg)))
            { Disabled = (s, sight) => UnitOf(s, sight)?.Run is null ? "Only a unit that a panel feeds has a home run with legs." : null },
        new KeyAction<SheetScreen>("+", "One more unit", "Adds a unit to this window.", (s, sight) => Turn.Save(s, AddItems.Unit(sight.House, UnitOf(s, sight)!.Window.Id)))
            { Disabled = NoUnit, OnBar = false },
        new KeyAction<SheetScreen>("]", "Next unit", "The next unit on the walk.", (s, sight) => new Turn(Other(s, sight, 1))) { Disabled = NoUnit },
        new KeyAction<SheetScreen>("[", "Unit before", "The unit before on the walk.", (s, sight) => new Turn(Other(s, sight, -1))) { Disabled = NoUnit },
        new KeyAction<SheetScreen>("c", "Checked", "Says that this kit value was held against the maker's sheet, or not.", (s, sight) => Turn.Save(s, KitCheck.Turn(sight.House, s.Current!.Item!, s.Current.Fact!)))
            { Disabled = (s, _) => s.Current?.Item is { } item && FactTable.IsKit(item.Kind) ? null : "Only values of the kit are held against a maker's sheet." , OnBar = false },
        new KeyAction<SheetScreen>("X", "Remove", "Takes the window, unit, leg or other item under the cursor out of the house; it can be brought back.", (s, sight) => AskRemove(s, sight))
            { Disabled = (s, sight) => s.Current?.Item is null or { Kind: ItemKind.House } ? "The house itself stays." : null, OnBar = false },
        .. Moves.Through<SheetScreen>("fact", (s, _, by) => s.Move(by)),
    ];

    private static string? NoFact(SheetScreen s, Sight sight) => s.Current is null ? "Move to a fact first." : null;

    private static string? NoUnit(SheetScreen s, Sight sight) => UnitOf(s, sight) is null ? "This sheet is about no unit." : null;

    private static Unit? UnitOf(SheetScreen s, Sight sight) => s.Of is OfUnit of ? sight.House.FindUnit(of.UnitId) : null;

    private static Turn Edit(SheetScreen screen, Sight sight)
    {
        var row = screen.Current!;
        return Turn.Type(screen, FactEntry.For(screen, sight.House, row.Item!, row.Fact!, row.Key) with
        {
            InPlace = row.Place,
            AcceptAndNext = (text, now) => FactEntry.Draft(now.House, row.Item!, row.Fact!, text, row.Key).Then<Turn>(draft =>
                draft is null ? Next(screen, now) : new Turn(screen, new Ask.Save(draft, (s, after) => Next((SheetScreen)s, after)))),
        });
    }

    private static Turn OnNewLeg(IScreen screen, Sight sight) =>
        new(((SheetScreen)screen).On($"{UnitOf((SheetScreen)screen, sight)!.Run!.Legs[^1].Id}/{LegFacts.Direction.Name}"));

    private static Turn Next(SheetScreen screen, Sight sight) => Edit(screen.Move(1), sight);

    private static SheetScreen NextMissing(SheetScreen s, Sight sight)
    {
        var order = Enumerable.Range(1, s.Rows.Count).Select(by => (s.Selected + by) % s.Rows.Count);
        foreach (var at in order.Where(at => s.Rows[at].IsFact && s.Rows[at].Shown(sight.House).Length == 0))
            return s with { Selected = at };
        return s;
    }

    private static Turn NextFinding(SheetScreen s, Sight sight)
    {
        var places = sight.Report.Findings.Where(f => f.Open).Select(f => $"{f.Found.Mends.Item}/{f.Found.Mends.Field}").ToHashSet();
        foreach (var at in Enumerable.Range(1, s.Rows.Count).Select(by => (s.Selected + by) % s.Rows.Count))
        {
            if (s.Rows[at].IsFact && places.Contains(s.Rows[at].Place))
                return new Turn(s with { Selected = at });
        }
        return Turn.Say(s, "No field here would mend a finding.");
    }

    private static SheetScreen Other(SheetScreen s, Sight sight, int by)
    {
        var units = sight.House.Units;
        var at = units.IndexOf(UnitOf(s, sight)!);
        var other = SheetScreen.OfUnit(units[(at + by + units.Length) % units.Length]);
        return other with { Selected = Math.Min(s.Selected, other.Rows.Count - 1) };
    }

    private static Turn AskRemove(SheetScreen s, Sight sight)
    {
        var item = s.Current!.Item!;
        if (item.Kind == ItemKind.Run)
            return Turn.Say(s, "A home run goes with its unit. Say that the unit's power is not a panel instead.");
        return new Turn(s, new Ask.Confirm($"Remove {sight.House.NameOf(item)} ({KebabCase.Of(item.Kind)})? X removes it (undo brings it back), any other key keeps it.", "X",
            Turn.Save(s, RemoveItems.Remove(sight.House, item))));
    }
}
