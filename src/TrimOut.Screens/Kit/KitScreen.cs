using System.Globalization;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Sheets;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.Kit;

/// <summary>The parts of this house with how much of each sheet was held against the maker's.</summary>
internal sealed record KitScreen(int Selected) : IScreen
{
    public static readonly IReadOnlyList<ItemKind> Kinds = [.. Enum.GetValues<ItemKind>().Where(FactTable.IsKit)];

    public string Title => "Kit";

    public IReadOnlyList<IKeyAction> Keys => KitKeys.All;

    public static KitScreen At(ScreenContext context) => new(0);

    public static IReadOnlyList<Item> Parts(ScreenContext context) => [.. Kinds.SelectMany(context.House.ItemsOf)];

    public Item? Current(ScreenContext context) => Parts(context) is var parts && Selected < parts.Count ? parts[Selected] : null;

    public IScreen Fit(ScreenContext context) => this with { Selected = Paging.Move(Selected, 0, Parts(context).Count) };

    public void Draw(Area area, ScreenContext context, Typing? typing)
    {
        area.PutWrapped(1, 0, 2,
            "What the makers' sheets say governs. Hold every value against the sheet of the part you have, then say so: c on the value, C for the whole part.",
            Tone.Text);
        var rows = area.Rows(3, area.Height - 3);
        var parts = Parts(context);
        foreach (var (y, at) in Paging.Rows(rows, parts.Count, Selected))
        {
            var part = parts[at];
            var tone = at == Selected ? Tone.Selected : Tone.Text;
            var values = FactTable.Of(part.Kind).Where(f => part.Latest(f.Name)?.Stored is not null).ToList();
            var held = values.Count(f => part.Latest(Companion.Checked(f.Name))?.Stored is not null);
            rows.PutFit(1, y, 16, KebabCase.Of(part.Kind).Replace('-', ' '), tone);
            rows.PutFit(17, y, 24, context.House.NameOf(part), tone);
            rows.PutFit(41, y, rows.Width - 41, held == values.Count
                ? "every value checked against the maker's sheet"
                : string.Create(CultureInfo.InvariantCulture, $"{held} of {values.Count} checked against the sheet"), held == values.Count
                    ? tone
                    : at == Selected
                    ? tone
                    : Tone.Caution);
        }
    }
}

/// <summary>Keys of the kit.</summary>
internal static class KitKeys
{
    public static readonly IReadOnlyList<IKeyAction> All =
    [
        new KeyAction<KitScreen>("enter", "Open", "All values of the part.",
            (s, context) => Transition.Open(s, SheetScreen.At(new OfItem(s.Current(context)!.Id), context.House))) { Disabled = NoPart },
        new KeyAction<KitScreen>("C", "All checked", "Says that every value of the part was held against the maker's sheet.",
            (s, context) => Transition.Save(s, KitCheck.All(context.House, s.Current(context)!))) { Disabled = NoPart },
        new KeyAction<KitScreen>("n", "New part", "Adds a part of the same sort.",
            (s, context) => Transition.Type(s, NewPart(s, s.Current(context)!.Kind))) { Disabled = NoPart },
        .. Moves.Through<KitScreen>("part", (s, context, by) => s with { Selected = Paging.Move(s.Selected, by, KitScreen.Parts(context).Count) }),
    ];

    private static Entry NewPart(KitScreen s, ItemKind kind) => new($"Name of the {KebabCase.Of(kind).Replace('-', ' ')}", "", "what the crew calls it",
        (text, now) => AddItems.Named(now.House, kind, text).Then<Transition>(d => Transition.Save(s, d)));

    private static string? NoPart(KitScreen s, ScreenContext context) => s.Current(context) is null ? "This house has no kit." : null;
}
