using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Screens.Sheets;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.InService;

/// <summary>Keys of what is in service.</summary>
internal static class ServiceKeys
{
    /// <summary>The key that opens the screen, wherever it does.</summary>
    public const string Stroke = "H";

    private const string Name = "In service";

    private const string Help = "What is due once a house was handed over, and what was replaced, repaired and looked at.";

    public static readonly IReadOnlyList<IKeyAction> All =
    [
        new KeyAction<ServiceScreen>("enter", "Open", "All details of what was done.",
            (s, context) => Transition.Open(s, SheetScreen.At(new OfItem(s.Current(context)!.Id), context.House))) { Disabled = NoRow },
        new KeyAction<ServiceScreen>("n", "New service",
            "Records by one line what was done, to what, when and by whom; the steps that are to be done again are asked for, and nothing else.",
            (s, context) => Transition.Type(s, New(s, context))),
        new KeyAction<ServiceScreen>("X", "Remove",
            "Takes the record out of the house; steps that were asked again stay to be done. The unit has its serial from before again.",
            AskRemove)
            { Disabled = NoRow, OnBar = false },
        Filtering.Key<ServiceScreen>("rows", "tag, what was done, who, cause, serial, claim"),
        .. Moves.Through<ServiceScreen>("row", (s, context, by) => s.Moved(context, by)),
    ];

    /// <summary>The key that opens the screen from another one.</summary>
    /// <param name="about">What is under the cursor there; null where that is nothing that is in service.</param>
    public static KeyAction<T> Opening<T>(Func<T, ScreenContext, Item?> about)
        where T : IScreen => new(Stroke, Name, Help, (s, context) => Transition.Open(s, ServiceScreen.About(about(s, context), context))) { OnBar = false };

    private static string? NoRow(ServiceScreen s, ScreenContext context) =>
        s.Current(context) is not null ? null : context.House.Services.Any() ? "Move to something that was done first."
        : "Nothing is recorded yet. n records what was done.";

    private static Entry New(ServiceScreen s, ScreenContext context) => new("New service",
        s.AboutId is { } id && context.House.Find(id) is { } about ? $"{QuickService.Called(context.House, about)} " : "",
        $"what it was done to, what was done ({ServiceFacts.Kind.Hint}), day, @who, serial, claim, cause; such as {Example}",
        (text, now) => QuickService.Read(now.House, text, now.Today).Then<Transition>(draft => new Transition(s, new Ask.Save(draft, Newest))))
    {
        Echo = (text, now) => QuickService.Read(now.House, text, now.Today).Then<string>(d => d.What),
    };

    private const string Example = "W03 replaced today @Ash, serial R-2291, claim C-17, motor grinds";

    private static Transition Newest(IScreen screen, ScreenContext context) => new(((ServiceScreen)screen with
    {
        RowId = context.Log.Changes[^1].Edits.OfType<Edit.Add>().FirstOrDefault()?.Item,
    }).Fit(context));

    /// <summary>Which serial a unit has once a record is removed, as a sentence with a space before it; empty where that changes nothing.</summary>
    public static string SerialBefore(Service service) => RecordService.SerialAfterRemoval(service) is not (var unit, var before) ? ""
        : $" {service.House.NameOf(unit)} has {(before is null ? "no serial then, to be read again" : $"the serial {before} again")}.";

    private static Transition AskRemove(ServiceScreen s, ScreenContext context)
    {
        var service = s.Current(context)!;
        return new Transition(s, new Ask.Confirm(
            $"Remove {service.Name}? What it asked again stays to be done.{SerialBefore(service)} "
                + "X removes it (undo brings it back), any other key keeps it.", "X",
            Transition.Save(s, RemoveItems.Remove(context.House, service.Item))));
    }
}
