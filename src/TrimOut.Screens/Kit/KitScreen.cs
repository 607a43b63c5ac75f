using System.Globalization;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;
using TrimOut.Core.Units;
using TrimOut.Screens.Drawings;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Sheets;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.Kit;

/// <summary>The parts of this house: how many of their values are blank, how many nobody checked against the maker's sheet, and how many checks wait.</summary>
internal sealed record KitScreen(int Selected) : IFiltered, ITable
{
    public static readonly IReadOnlyList<ItemKind> Kinds = [.. Enum.GetValues<ItemKind>().Where(FactTable.IsKit)];

    public string Title => "Kit";

    public IReadOnlyList<IKeyAction> Keys => KitKeys.All;

    public IReadOnlyList<Sign> Signs => FindingSigns.All;

    public IEnumerable<IReadOnlyList<string>> Table(ScreenContext context) =>
        [["Sort", "Part", "State"], .. Shown(context).Select(p => (IReadOnlyList<string>)
            [KebabCase.Of(p.Kind).Replace('-', ' '), context.House.NameOf(p), Said(p, context).Said])];

    public static KitScreen At(ScreenContext context) => new(0);

    public static IReadOnlyList<Item> Parts(ScreenContext context) => [.. Kinds.SelectMany(context.House.ItemsOf)];

    public string Search { get; init; } = "";

    /// <summary>The parts that are shown.</summary>
    public IReadOnlyList<Item> Shown(ScreenContext context) => Search.Length == 0 ? Parts(context)
        : [.. Parts(context).Where(p => Filtering.Fits($"{SortOf(p)} {context.House.NameOf(p)} {Said(p, context).Said}", Search))];

    public (int Shown, int All) Count(ScreenContext context) => (Shown(context).Count, Parts(context).Count);

    public IScreen Searching(string search, ScreenContext context)
    {
        var to = this with { Search = search };
        return to with { Selected = Filtering.Keep(Shown(context), Selected, to.Shown(context), p => p.Id) };
    }

    public Item? Current(ScreenContext context) => Shown(context) is var parts && Selected < parts.Count ? parts[Selected] : null;

    public IScreen Fit(ScreenContext context) => this with { Selected = Paging.Move(Selected, 0, Shown(context).Count) };

    /// <summary>With the cursor on a part; all are shown where the filter hides it.</summary>
    public KitScreen On(string part, ScreenContext context)
    {
        var shown = Shown(context).Any(p => p.Id == part) ? this : this with { Search = "" };
        return shown with { Selected = Math.Max(0, shown.Shown(context).ToList().FindIndex(p => p.Id == part)) };
    }

    private static string SortOf(Item part) => KebabCase.Of(part.Kind).Replace('-', ' ');

    public void Draw(Area area, ScreenContext context, Typing? typing)
    {
        var (list, card) = Wide.Split(area, context.Glyphs);
        DrawList(list, context);
        if (card is { } beside && Current(context) is { } part)
            PartCard.Draw(beside, part, context);
    }

    private void DrawList(Area area, ScreenContext context)
    {
        area.PutWrapped(1, 0, 2,
            "What the makers' sheets say governs. With the sheet of a part in hand, s goes through it value by value; a blank is not checked, and never " +
                "a pass.",
            Tone.Text);
        var rows = area.Rows(3, area.Height - 3);
        var parts = Shown(context);
        foreach (var (y, at) in Paging.Rows(rows, parts.Count, Selected, at => this with { Selected = at }))
        {
            var part = parts[at];
            var tone = at == Selected ? Tone.Selected : Tone.Text;
            rows.PutFit(0, y, rows.Width, "", tone);
            FindingSigns.Put(rows, 0, y, context.Report.About(part), context.Glyphs, tone);
            rows.PutFit(2, y, 14, SortOf(part), tone);
            rows.PutFit(17, y, 24, context.House.NameOf(part), tone);
            var (said, open) = Said(part, context);
            rows.PutFit(41, y, rows.Width - 41, said, open && at != Selected ? Tone.Caution : tone);
        }
    }

    private static (string Said, bool Open) Said(Item part, ScreenContext context)
    {
        if (SheetValues.IsNoCover(context.House, part))
            return ("no part, no sheet", false);
        var (blank, unheld) = (SheetValues.BlankIn(part).Count(), SheetValues.NotHeldIn(part).Count());
        var waiting = context.Report.MissingOf(part).Count() + context.Report.UnreadOf(part).Count();
        string?[] parts =
        [
            blank > 0 ? $"{Number(blank)} blank" : null, unheld > 0 ? $"{Number(unheld)} not checked" : null,
            waiting > 0 ? $"{Number(waiting)} check{(waiting == 1 ? " waits" : "s wait")}" : null,
        ];
        return parts.OfType<string>().ToList() is { Count: > 0 } open ? (string.Join(", ", open), true)
            : part.Latest(AboutSheet.Of(part.Kind, AboutSheet.Sheet))?.Stored is null ? ("every value checked; which sheet is not said", true)
            : ("every value checked against the sheet", false);
    }

    private static string Number(int n) => n.ToString(CultureInfo.InvariantCulture);
}

/// <summary>Keys of the kit.</summary>
internal static class KitKeys
{
    public static readonly IReadOnlyList<IKeyAction> All =
    [
        new KeyAction<KitScreen>("enter", "Open", "All values of the part.",
            (s, context) => Transition.Open(s, SheetScreen.At(new OfItem(s.Current(context)!.Id), context.House))) { Disabled = NoPart },
        new KeyAction<KitScreen>("s", "Sheet in hand", "Goes through the maker's sheet of the part, value by value in the order of sheets.",
            (s, context) => Transition.Open(s, SheetInHandScreen.At(s.Current(context)!, context.House))) { Disabled = NoPart },
        new KeyAction<KitScreen>("k", "Keep", "Keeps the part in your own kit folder, to be used again in other houses.",
            (s, context) => Keep(s, [s.Current(context)!], context)) { Disabled = NoPart },
        new KeyAction<KitScreen>("K", "Keep all",
            "Keeps every part of this house that something was read of in your own kit folder, and says which are left out.",
            (s, context) => Keep(s, KitScreen.Parts(context), context)) { Disabled = NoPart, OnBar = false },
        new KeyAction<KitScreen>("O", "From folder", "Opens your own kit folder: what each part there would change in this house, before it is taken.",
            (s, _) => new Transition(s, new Ask.Beside("Reading the kit folder", (desk, _, _) => new Ask.Open(KitFolderScreen.Of(desk.KitFolder, desk.Kit))))),
        new KeyAction<KitScreen>("C", "All checked", "Says that every value of the part was checked against the maker's sheet, after a question.", AskAll)
            { Disabled = NoPart },
        new KeyAction<KitScreen>("n", "New part", "Adds a part of the same sort.",
            (s, context) => Transition.Type(s, NewPart(s, s.Current(context)!.Kind))) { Disabled = NoPart },
        Filtering.Key<KitScreen>("parts", "sort, name, or what is said of it, such as blank"),
        .. Moves.Through<KitScreen>("part", (s, context, by) => s with { Selected = Paging.Move(s.Selected, by, s.Shown(context).Count) }),
    ];

    private static Transition Keep(KitScreen s, IEnumerable<Item> parts, ScreenContext context)
    {
        var read = parts.ToLookup(BlankKit.IsWorthKeeping);
        List<PartSheet> sheets = [.. read[true].Select(p => PartSheet.Of(context.House, p))];
        List<string> left = [.. read[false].Where(p => !SheetValues.IsNoCover(context.House, p)).Select(context.House.NameOf)];
        var not = (sheets.Where(p => p.Values.All(v => !v.Held)).Select(p => p.Name).ToList() is { Count: > 0 } open
                ? $" Kept, though nobody checked a value of it: {string.Join(", ", open)}." : "")
            + (left.Count == 0 ? "" : $" Not kept, for no value is there: {string.Join(", ", left)}.");
        return sheets.Count == 0 ? Transition.Say(s, $"There is no value to keep yet.{not}")
            : new Transition(s, new Ask.Beside("Looking at the kit folder", (desk, _, _) => desk.Weaker(sheets) is { Count: > 0 } weaker
                ? new Ask.Confirm($"The folder has values of {string.Join(", ", weaker)} that were checked against the sheet; here they were not, or "
                    + "against none that is named. y keeps these, and the others as older ones beside them; any other key leaves the folder as it is.",
                    Ask.Confirm.AlsoYes, new Transition(s, Keeping(sheets, not)))
                : Kept(desk, sheets, not)));
    }

    private static Ask.Beside Keeping(List<PartSheet> sheets, string not) => new("Keeping parts", (desk, _, _) => Kept(desk, sheets, not));

    private static Core.Result<Ask> Kept(IDesk desk, List<PartSheet> sheets, string not) => desk.Keep(sheets).Then<Ask>(files =>
        new Ask.Say($"Kept: {(files.Count == 1 ? files[0] : $"{NumberText.Plain(files.Count)} parts in {desk.KitFolder}")}.{not}"));

    private static Transition AskAll(KitScreen s, ScreenContext context)
    {
        var part = s.Current(context)!;
        var all = KitCheck.All(context.House, part);
        if (!all.Ok)
            return Transition.Say(s, all.Reason!);
        var sheet = AboutSheet.Of(part.Kind, AboutSheet.Sheet);
        if (part.Latest(sheet)?.Stored is null && part.Latest(AboutSheet.Edition)?.Stored is null)
        {
            return Transition.Type(s, FactEntry.For(s, context.House, part, sheet, then: (screen, after) => AskAll((KitScreen)screen, after)) with
            {
                Note = "Which sheet that is nobody said yet. Type its title or number, then say that its values were checked.",
            });
        }
        var said = SheetValues.NotHeldIn(part).GroupBy(f => SheetMark.OlderEdition(part, f) is { } older ? $"checked against edition {older} alone"
            : SheetMark.IsChangedSince(part, f) ? "changed since checked" : "not checked")
            .OrderBy(g => g.Key, StringComparer.Ordinal).Select(g => $"{NumberText.Counted(g.Count(), "value")} {g.Key}");
        return new Transition(s, new Ask.Confirm($"{context.House.NameOf(part)} has {string.Join(", and ", said)}. Did you check each against the sheet in hand"
            + $"{(part.Latest(AboutSheet.Of(part.Kind, AboutSheet.Edition))?.Stored is { } now ? $", edition {now}" : "")}? "
            + "y says so, any other key leaves it.", Ask.Confirm.AlsoYes, Transition.Save(s, all)));
    }

    private static Entry NewPart(KitScreen s, ItemKind kind) => new($"Name of the {KebabCase.Of(kind).Replace('-', ' ')}", "", "what the crew calls it",
        (text, now) => AddItems.Named(now.House, kind, text).Then<Transition>(d => new Transition(s, new Ask.Save(d,
            (screen, after) => new Transition(((KitScreen)screen).On(after.House.ItemsOf(kind).MaxBy(p => p.Place)!.Id, after))))))
    {
        Doubt = (text, _) => NameDoubt.Of(text, "a part"),
    };

    private static string? NoPart(KitScreen s, ScreenContext context) => s.Current(context) is null ? "This house has no kit." : null;
}
