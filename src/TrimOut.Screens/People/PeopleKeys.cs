using TrimOut.Core;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Screens.Hours;
using TrimOut.Screens.Sheets;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.People;

/// <summary>Keys of people and dates.</summary>
internal static class PeopleKeys
{
    private const string Name = "People, dates";

    private const string Help = "Contacts with their numbers, visits with who is expected, and boxes that are not here.";

    public static readonly IReadOnlyList<IKeyAction> All =
    [
        new KeyAction<PeopleScreen>("enter", "Open", "All details of the contact or visit, or the day on which the box is expected.", Open)
            { Disabled = NoRow },
        new KeyAction<PeopleScreen>("n", "New contact", "Adds somebody by one line: name, part in the job, number.",
            (s, context) => Transition.Type(s, New("New contact", "name, then part and number, such as Ash Example, crew, 555 0101",
                (house, text, _) => QuickPeople.Contact(house, text)))),
        new KeyAction<PeopleScreen>("N", "New visit", "Adds a visit by one line: day, what is done, and who is expected after @.",
            (s, context) => Transition.Type(s, New("New visit", $"day, what is done, who after @, such as {Example(context)}",
                (house, text, today) => QuickPeople.Visit(house, text, today, addUnknown: true)))),
        new KeyAction<PeopleScreen>("space", "Done", "Says that the visit took place, or not after all; that the box is here.",
            (s, context) => Transition.Save(s, s.Current(context) switch
            {
                { Visit: { } visit } => Deliver.Done(visit, context.Today),
                { Box.Unit: { } unit } => Deliver.Came(unit),
                _ => new Refusal("Move to a visit or a box first."),
            })) { Disabled = NoRow },
        new KeyAction<PeopleScreen>("-", "Not coming", "Says that the visit is called off, or that the box did not arrive when it was expected.",
            (s, context) => Transition.Save(s, s.Current(context) switch
            {
                { Visit: { } visit } => Deliver.CallOff(visit),
                { Box.Unit: { } unit } => Deliver.DidNotCome(unit),
                _ => new Refusal("Move to a visit or a box first."),
            })) { Disabled = NoRow },
        new KeyAction<PeopleScreen>("w", "Write calendar", "Writes the visits beside the house file, as a calendar of any sort takes them in (.ics).",
            (s, context) => new Transition(s, Calendar(context)))
            { Disabled = (_, context) => context.House.Visits.Any(v => v.On is not null) ? null : "No visit has a day yet. N adds one.", OnBar = false },
        new KeyAction<PeopleScreen>("T", "Hours", "What each phase took, typed or by the marks, and what is likely by the houses before.",
            (s, context) => new Transition(s, HoursScreen.Read(context))),
        new KeyAction<PeopleScreen>("X", "Remove", "Takes the contact or visit out of the house; it can be brought back by undo.", AskRemove)
            { Disabled = (s, context) => s.Current(context) is { Box: null, Due: null } ? null : "Move to a contact or a visit first.", OnBar = false },
        Filtering.Key<PeopleScreen>("rows", "name, part in the job, number, day, tag"),
        .. Moves.Through<PeopleScreen>("row", (s, context, by) => s.Moved(context, by)),
    ];

    /// <summary>The key that opens the screen, wherever it does.</summary>
    public static KeyAction<T> Opening<T>()
        where T : IScreen => new("P", Name, Help, (s, context) => Transition.Open(s, PeopleScreen.On(null, context))) { OnBar = false };

    private static Ask.Beside Calendar(ScreenContext context) => new("Writing the visits", (desk, _, _) =>
        desk.WriteCalendar(context.Log, context.Where).Then<Ask>(file => new Ask.Say($"Written: {file}. Taken in again, it changes the same entries.")));

    private static string? NoRow(PeopleScreen s, ScreenContext context) => s.Current(context) switch
    {
        null => "Nobody is noted yet. n adds a contact, N a visit.",
        { Due: not null } => "That is worked out. Move to a contact, a visit or a box first.",
        _ => null,
    };

    private static string Example(ScreenContext context) => string.Create(System.Globalization.CultureInfo.InvariantCulture,
        $"{context.Today:yyyy-MM-dd} Hang upstairs @{context.House.Contacts.FirstOrDefault()?.Name ?? "Ash"}");

    private static Transition Open(PeopleScreen s, ScreenContext context)
    {
        var row = s.Current(context)!;
        return Transition.Open(s, row.Box is { } box
            ? SheetScreen.OfUnit(box.Unit).On($"{box.Unit.Id}/{(box.Reorder ? UnitFacts.ReorderedOn : UnitFacts.ExpectedOn).Name}")
            : SheetScreen.At(new OfItem(row.Id), context.House));
    }

    private static Entry New(string label, string hint, Func<House, string, DateOnly, Result<Draft>> read) => new(label, "", hint,
        (text, now) => read(now.House, text, now.Today).Then<Transition>(draft => new Transition(PeopleScreen.On(null, now), new Ask.Save(draft, Newest))))
    {
        Echo = (text, now) => text.Trim().Length == 0 ? hint : read(now.House, text, now.Today).Then<string>(d => Understood(d, now)),
    };

    /// <summary>What was understood of the line so far.</summary>
    private static string Understood(Draft draft, ScreenContext context)
    {
        var house = HouseLog.Preview(context.House, draft, context.Now);
        var added = house.Items.Values.Where(i => context.House.Find(i.Id) is null).OrderBy(i => i.Place).ToList();
        var item = added[0];
        var facts = FactTable.Of(item.Kind).Where(f => !f.IsKeyed).Select(f => f.ShowOf(item, house)).Where(t => t.Length > 0);
        var who = new Visit(house, item).Expected.Select(c => added.Any(a => a.Id == c.Id) ? $"{c.Name} (new contact)" : c.Name);
        return string.Join(", ", item.Kind == ItemKind.Visit ? facts.Concat(who) : facts);
    }

    private static Transition Newest(IScreen screen, ScreenContext context) =>
        new(PeopleScreen.On(
        // A visit that brought a contact with it is what was typed.
        context.Log.Changes[^1].Edits.OfType<Edit.Add>().FirstOrDefault()?.Item, context));

    private static Transition AskRemove(PeopleScreen s, ScreenContext context)
    {
        var item = (s.Current(context) switch { { Contact: { } c } => c.Item, { Visit: { } v } => v.Item, _ => null })!;
        return new Transition(s, new Ask.Confirm($"Remove {context.House.NameOf(item)}? X removes it (undo brings it back), any other key keeps it.", "X",
            Transition.Save(s, RemoveItems.Remove(context.House, item))));
    }
}
