using TrimOut.Core;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Screens.Cables;
using TrimOut.Screens.InService;
using TrimOut.Screens.JobSheet;
using TrimOut.Screens.Photos;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.Sheets;

/// <summary>Keys of a sheet of facts.</summary>
internal static class SheetKeys
{
    public static readonly IReadOnlyList<IKeyAction> All =
    [
        new KeyAction<SheetScreen>("enter", "Edit", "Edits the detail under the cursor; what is refused stays to be fixed.", (s, context) => Edit(s, context))
            { Disabled = NoFact },
        new KeyAction<SheetScreen>("delete", "Clear", "Clears the value.",
            (s, context) => Transition.Save(s, SetFact.Typed(context.House, s.Current!.Item!, s.Current.Fact!, "", s.Current.Key)))
            { Disabled = NoFact, Also = ["backspace"] },
        new KeyAction<SheetScreen>("e", "Next missing", "Goes to the next detail that has no value; after the last one to the first.",
            NextMissing),
        new KeyAction<SheetScreen>("f", "Findings", "Goes to the next field that fixes a finding.", (s, context) => NextFinding(s, context)),
        new KeyAction<SheetScreen>("space", "Mark next step", "Marks the unit's next step done; evidence is asked for first.",
            MarkNext) { Disabled = NoUnit, OnBar = false },
        new KeyAction<SheetScreen>("l", LegsEntry.Name, LegsEntry.Help,
            (s, context) => Transition.Type(s, LegsEntry.For(s, UnitOf(s, context)!.Run!, OnNewLeg)))
            { Disabled = (s, context) => UnitOf(s, context)?.Run is null ? "Only a unit that a panel feeds has a home run with legs." : null },
        new KeyAction<SheetScreen>("+", "One more unit", "Adds a unit to this window, with what it shares with the one beside it.",
            (s, context) => Transition.Save(s, AddItems.Unit(context.House, UnitOf(s, context)!.Window.Id)))
            { Disabled = NoUnit, OnBar = false },
        new KeyAction<SheetScreen>("right", "Next unit", "The next unit on the walk.", (s, context) => new Transition(Other(s, context, 1)))
            { Disabled = NoUnit },
        new KeyAction<SheetScreen>("left", "Unit before", "The unit before on the walk.", (s, context) => new Transition(Other(s, context, -1)))
            { Disabled = NoUnit },
        new KeyAction<SheetScreen>("\"", "As before", "Takes for the detail under the cursor what the unit before has; a reading is read on each.",
            AsBefore) { Disabled = NoFact, OnBar = false },
        new KeyAction<SheetScreen>("c", "Checked", "Says that this kit value was checked against the maker's sheet, or not.",
            (s, context) => Transition.Save(s, KitCheck.Toggle(context.House, s.Current!.Item!, s.Current.Fact!)))
            { Disabled = NoKitValue, OnBar = false },
        new KeyAction<SheetScreen>("E", "In your editor",
            "Opens the note under the cursor in the editor that VISUAL or EDITOR names, and takes what is left there.",
            (s, context) => new Transition(s, new Ask.Edit(s.Current!.Shown(context.House), (text, now) => Edited(s, now, text))))
            { Disabled = NoNote, OnBar = false },
        new KeyAction<SheetScreen>("X", "Remove", "Takes the window, unit, leg or other item under the cursor out of the house; it can be brought back.",
            (s, context) => AskRemove(s, context))
            { Disabled = (s, context) => s.Current?.Item is null or { Kind: ItemKind.House } ? "The house itself stays." : null, OnBar = false },
        ServiceKeys.Opening<SheetScreen>((s, context) => UnitOf(s, context)?.Item
            ?? (s.Of is OfItem of && context.House.Find(of.ItemId) is { Kind: ItemKind.Panel or ItemKind.Hub or ItemKind.Remote } item ? item : null)),
        UnitPhotosKeys.Opening<SheetScreen>(),
        Filtering.Key<SheetScreen>("details", "words of the label, or of the phase; Enter goes there"),
        .. Moves.Through<SheetScreen>("detail", (s, _, by) => s.Move(by)),
    ];

    private static Transition MarkNext(SheetScreen s, ScreenContext context)
    {
        var unit = UnitOf(s, context)!;
        return Progress.Next(unit, context.Steps) is { } step
            ? NextMark.AskedBeforeRunningAhead(s, unit, step, Marking.Mark(s, context, unit, step, (screen, _) => new Transition(screen)))
            : Transition.Say(s, $"Every step of {unit.Tag} is done.");
    }

    private static string? NoFact(SheetScreen s, ScreenContext context) => s.Current is null ? "Move to a detail first." : null;

    private static string? NoNote(SheetScreen s, ScreenContext context) => s.Current?.Fact is Fact<string> fact && fact.Options(context.House).Count == 0
        ? context.ReadOnlyBecause is { } why ? $"This house is open for reading only: {why}" : null
        : "Only a note, or another detail in words, is opened in your editor.";

    /// <summary>What came back from the editor is saved; what can't be taken stands in the field, to be fixed.</summary>
    private static Transition Edited(SheetScreen s, ScreenContext context, string text)
    {
        var row = s.Current!;
        var line = ShownText.Kept(text.Trim());
        var draft = FactEntry.Draft(context, row.Item!, row.Fact!, line, row.Key);
        if (draft.Ok)
            return draft.Value is { } changed ? new Transition(s, new Ask.Save(changed)) : Transition.Say(s, "Not changed.");
        return Transition.Type(s, FactEntry.For(s, context.House, row.Item!, row.Fact!, row.Key) with
        {
            InPlace = row.Place,
            Initial = line,
            Warning = draft.Reason,
        });
    }

    private static string? NoKitValue(SheetScreen s, ScreenContext context) =>
        s.Current?.Item is { } item && FactTable.IsKit(item.Kind) ? null : "Only values of the kit are checked against a maker's sheet.";

    private static string? NoUnit(SheetScreen s, ScreenContext context) => UnitOf(s, context) is null ? "This sheet is about no unit." : null;

    private static Unit? UnitOf(SheetScreen s, ScreenContext context) => s.Of is OfUnit of ? context.House.FindUnit(of.UnitId) : null;

    private static Transition Edit(SheetScreen screen, ScreenContext context)
    {
        var row = screen.Current!;
        return Transition.Type(screen, FactEntry.For(screen, context.House, row.Item!, row.Fact!, row.Key) with
        {
            InPlace = row.Place,
            AcceptAndNext = (text, now) =>
                EditionEntry.For(screen, now.House, row.Item!, row.Fact!, text, (s, after) => Next((SheetScreen)s, after)) is { } which
                ? Transition.Type(screen, which)
                : FactEntry.Draft(now, row.Item!, row.Fact!, text, row.Key).Then<Transition>(draft =>
                draft is null ? Next(screen, now) : new Transition(screen, new Ask.Save(draft, (s, after) => Next((SheetScreen)s, after)))),
        });
    }

    /// <summary>What the unit before has, and the next detail.</summary>
    private static Transition AsBefore(SheetScreen s, ScreenContext context)
    {
        var row = s.Current!;
        return row.Item!.Latest(row.Field)?.Stored is not null ? Transition.Say(s, $"{row.Label} has a value. Enter edits it.")
            : row.Key is not null || Offers.AsBefore(context.House, row.Item, row.Fact!) is not { } before
            ? Transition.Say(s, row.Fact!.IsReading ? $"{row.Label} is read on each one." : $"No unit before has {row.Label} to be taken over.")
            : new Transition(s, new Ask.Save(SetFact.Typed(context.House, row.Item, row.Fact!, row.Fact!.ShowStored(before.Stored, context.House), null)
                .Then<Core.History.Draft>(d => d with { What = $"{d.What}, as {before.Of}" }), (screen, _) => new Transition(((SheetScreen)screen).Move(1))));
    }

    private static Transition OnNewLeg(IScreen screen, ScreenContext context) =>
        new(((SheetScreen)screen).On($"{UnitOf((SheetScreen)screen, context)!.Run!.Legs[^1].Id}/{LegFacts.Direction.Name}"));

    private static Transition Next(SheetScreen screen, ScreenContext context) => Edit(screen.Move(1), context);

    private static Transition NextMissing(SheetScreen s, ScreenContext context)
    {
        var missing = Enumerable.Range(1, s.Rows.Count).Select(by => (s.Selected + by) % s.Rows.Count)
            .Where(at => s.Rows[at].IsFact && s.Rows[at].Shown(context.House).Length == 0).ToList();
        return missing.Count == 0 ? Transition.Say(s, "Every detail here has a value.")
            : missing[0] == s.Selected ? Transition.Say(s, "This is the only detail here that has no value.")
            : missing[0] < s.Selected ? Transition.Say(s with { Selected = missing[0] }, "That was the last one: on from the top.")
            : new Transition(s with { Selected = missing[0] });
    }

    private static Transition NextFinding(SheetScreen s, ScreenContext context)
    {
        var places = context.Report.Findings.Where(f => f.Open).Select(f => $"{f.Found.Mends.Item}/{f.Found.Mends.Field}").ToHashSet();
        foreach (var at in Enumerable.Range(1, s.Rows.Count).Select(by => (s.Selected + by) % s.Rows.Count))
        {
            if (s.Rows[at].IsFact && places.Contains(s.Rows[at].Place))
                return new Transition(s with { Selected = at });
        }
        return Transition.Say(s, $"No field here would fix a finding.{(context.Report.Waiting.None ? "" : $" {context.Report.Waiting}: m lists them.")}");
    }

    private static SheetScreen Other(SheetScreen s, ScreenContext context, int by)
    {
        var units = context.House.Units;
        var at = units.IndexOf(UnitOf(s, context)!);
        var other = SheetScreen.OfUnit(units[(at + by + units.Length) % units.Length]);
        return other with { Selected = Math.Min(s.Selected, other.Rows.Count - 1) };
    }

    private static Transition AskRemove(SheetScreen s, ScreenContext context)
    {
        var item = s.Current!.Item!;
        if (item.Kind == ItemKind.Run)
            return Transition.Say(s, "A home run goes with its unit. Say that the unit's power is not a panel instead.");
        var what = $"{context.House.NameOf(item)} ({KebabCase.Of(item.Kind)})";
        var serial = item.Kind == ItemKind.Service ? ServiceKeys.SerialBefore(new Service(context.House, item)) : "";
        var used = RemoveItems.UsedBy(context.House, item) is { Length: > 0 } by ? $" It is {by[2..]}. What uses it goes without it then." : "";
        return new Transition(s, new Ask.Confirm($"Remove {what}?{serial}{used} X removes it (undo brings it back), any other key keeps it.", "X",
            Transition.Save(s, RemoveItems.Remove(context.House, item))));
    }
}
