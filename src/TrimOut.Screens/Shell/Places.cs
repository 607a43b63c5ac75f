using TrimOut.Screens.JobSheet;
using TrimOut.Screens.Papers;
using TrimOut.Screens.People;
using TrimOut.Screens.Rooms;
using TrimOut.Screens.Sheets;

namespace TrimOut.Screens.Shell;

/// <summary>What is in a house, to be found by its name: units and windows, rooms, people, panels, remotes, parts, papers, and the details of a unit.</summary>
internal static class Places
{
    /// <summary>Each with what opens it; the details are those of the unit under the cursor, or of the sheet that is open.</summary>
    public static IEnumerable<IKeyAction> Of(IScreen here, ScreenContext context)
    {
        var house = context.House;
        return
        [
            .. house.Units.Select(u => To(u.Tag, $"All details of {u.Tag}, {u.Window.Room?.FullName ?? "no room yet"}.", c => OfUnit(c, u.Id))),
            .. house.Windows.Where(w => w.LeftOut).Select(w => To($"{w.Tag} (left out)", JobSheetRows.LeftOutText(w) + ".", c => Item(c, w.Id))),
            .. house.Rooms.Select(r => To($"{r.FullName} (room)", "The room with its windows.", c => RoomsScreen.On(r.Id, c))),
            .. house.Contacts.Select(p => To($"{p.Name} (contact)", "Their number and their part in the job.", c => PeopleScreen.On(p.Id, c))),
            .. house.Panels.Select(p => To($"{p.Name} (panel)", "All details of the panel.", c => Item(c, p.Id))),
            .. house.Remotes.Select(r => To($"{r.Name} (remote)", "All details of the remote.", c => Item(c, r.Id))),
            .. context.Papers.Select((p, at) => To($"{p.Title} (paper)", $"For {p.For}.", _ => new PapersScreen(at))),
            .. Details(here, context),
        ];
    }

    private static IEnumerable<IKeyAction> Details(IScreen here, ScreenContext context)
    {
        var sheet = here as SheetScreen ?? ((here as IAsked)?.UnitAt(context) is { } unit ? SheetScreen.OfUnit(unit) : null);
        return sheet is null ? [] : sheet.Of.Rows(context.House).Where(r => r.IsFact)
            .Select(r => To($"{r.Label} ({sheet.Title})", r.Fact!.Help, c => SheetScreen.At(sheet.Of, c.House).On(r.Place)));
    }

    private static SheetScreen OfUnit(ScreenContext context, string id) =>
        context.House.FindUnit(id) is { } unit ? SheetScreen.OfUnit(unit) : SheetScreen.OfHouse(context.House);

    private static SheetScreen Item(ScreenContext context, string id) => SheetScreen.At(new OfItem(id), context.House);

    private static KeyAction<IScreen> To(string name, string help, Func<ScreenContext, IScreen> open) => new("", name, help,
        (s, context) =>
        {
            var there = open(context);
            return new Transition(s, new Ask.Open(there, InPlace: there is SheetScreen sheet && s is SheetScreen on && on.Of == sheet.Of));
        });
}
