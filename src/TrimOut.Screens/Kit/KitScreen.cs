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

    public static KitScreen At(Sight sight) => new(0);

    public static IReadOnlyList<Item> Parts(Sight sight) => [.. Kinds.SelectMany(sight.House.ItemsOf)];

    public Item? Current(Sight sight) => Parts(sight) is var parts && Selected < parts.Count ? parts[Selected] : null;

    public IScreen Fit(Sight sight) => this with { Selected = Paging.Move(Selected, 0, Parts(sight).Count) };

    public void Draw(Area area, Sight sight, Typing? typing)
    {
        area.PutWrapped(1, 0, 2, "What the makers' sheets say governs. Hold every value against the sheet of the part you have, then say so: c on the value, C for the whole part.", Tone.Text);
        var rows = area.Rows(3, area.Height - 3);
        var parts = Parts(sight);
        foreach (var (y, at) in Paging.Rows(rows, parts.Count, Selected))
        {
            var part = parts[at];
            var tone = at == Selected ? Tone.Selected : Tone.Text;
            var values = FactTable.Of(part.Kind).Where(f => part.Latest(f.Name)?.Stored is not null).ToList();
            var held = values.Count(f => part.Latest(Companion.Checked(f.Name))?.Stored is not null);
            rows.PutFit(1, y, 16, KebabCase.Of(part.Kind).Replace('-', ' '), tone);
            rows.PutFit(17, y, 24, sight.House.NameOf(part), tone);
            rows.PutFit(41, y, rows.Width - 41, held == values.Count
                ? "every value checked against the maker's sheet"
                : string.Create(CultureInfo.InvariantCulture, $"{held} of {values.Count} checked against the sheet"), held == values.Count ? tone : at == Selected ? tone : Tone.Caution);
        }
    }
}

/// <summary>Keys of the kit.</summary>
internal static class KitKeys
{
    public static readonly IReadOnlyList<IKeyAction> All =
    [
        new KeyAction<KitScreen>("enter", "Open", "All values of the part.", (s, sight) => Turn.Open(s, SheetScreen.At(new OfItem(s.Current(sight)!.Id), sight.House))) { Disabled = NoPart },
        new KeyAction<KitScreen>("C", "All checked", "Says that every value of the part was held against the maker's sheet.", (s, sight) => Turn.Save(s, KitCheck.All(sight.House, s.Current(sight)!))) { Disabled = NoPart },
        new KeyAction<KitScreen>("n", "New part", "Adds a part of the same sort.", (s, sight) => Turn.Type(s, new Entry($"Name of the {KebabCase.Of(s.Current(sight)!.Kind).Replace('-', ' ')}", "", "what the crew calls it",
            (text, now) => AddItems.Named(now.House, s.Current(now)!.Kind, text).Then<Turn>(d => Turn.Save(s, d))))) { Disabled = NoPart },
        .. Moves.Through<KitScreen>("part", (s, sight, by) => s with { Selected = Paging.Move(s.Selected, by, KitScreen.Parts(sight).Count) }),
    ];

    private static string? NoPart(KitScreen s, Sight sight) => s.Current(sight) is null ? "This house has no kit." : null;
}
