using TrimOut.Core;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;
using TrimOut.Core.Units;
using TrimOut.Screens.Drawings;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.Kit;

/// <summary>The parts of the user's kit folder, with what each would change in this house before it is taken.</summary>
internal sealed record KitFolderScreen(string Folder, IReadOnlyList<PartSheet> Parts, IReadOnlyList<string> Unread, int Selected) : IFiltered
{
    public string Title => "Kit folder";

    public IReadOnlyList<IKeyAction> Keys => KitFolderKeys.All;

    public static KitFolderScreen Of(string folder, IReadOnlyList<Result<PartSheet>> found) =>
        new(folder, [.. found.Where(p => p.Ok).Select(p => p.Value)], [.. found.Where(p => !p.Ok).Select(p => p.Reason!)], 0);

    public string Search { get; init; } = "";

    /// <summary>The parts that are shown.</summary>
    public IReadOnlyList<PartSheet> Shown => Search.Length == 0 ? Parts : [.. Parts.Where(p => Filtering.Fits($"{SortOf(p)} {p.Name} {Held(p)}", Search))];

    public (int Shown, int All) Count(ScreenContext context) => (Shown.Count, Parts.Count);

    public IScreen Searching(string search, ScreenContext context)
    {
        var to = this with { Search = search };
        return to with { Selected = Filtering.Keep(Shown, Selected, to.Shown, p => p) };
    }

    public PartSheet? Current => Shown is var parts && Selected < parts.Count ? parts[Selected] : null;

    private static string SortOf(PartSheet part) => KebabCase.Of(part.Kind).Replace('-', ' ');

    public void Draw(Area area, ScreenContext context, Typing? typing)
    {
        var y = area.PutWrapped(1, 0, 2,
            Parts.Count == 0 ? $"No part is kept in {Folder} yet. On the kit k keeps one." : $"Kept in {Folder}. Enter takes a part.", Tone.Text);
        foreach (var reason in Unread.Take(3))
            y = area.PutWrapped(1, y, 2, reason, Tone.Caution);
        var detail = area.Height / 2;
        var rows = area.Rows(y + 1, area.Height - y - 1 - detail);
        var parts = Shown;
        foreach (var (line, at) in Paging.Rows(rows, parts.Count, Selected, at => this with { Selected = at }))
        {
            var (part, tone) = (parts[at], at == Selected ? Tone.Selected : Tone.Text);
            rows.PutFit(0, line, 15, SortOf(part), tone);
            rows.PutFit(16, line, 22, part.Name, tone);
            rows.PutFit(39, line, rows.Width - 39, Held(part), tone);
        }
        if (Current is { } current)
            DrawDetail(area.Rows(area.Height - detail, detail), current, context);
    }

    private static string Held(PartSheet part)
    {
        string? Said(string name) => part.About.GetValueOrDefault(name);
        string?[] parts = [Said(AboutSheet.Sheet), Said(AboutSheet.Edition) is { } e ? $"edition {e}" : null,
            Said(AboutSheet.HeldBy) is { } by ? $"checked by {by}" : null, Said(AboutSheet.HeldOn)];
        return parts.OfType<string>().ToList() is { Count: > 0 } some ? string.Join(", ", some) : "checked against no sheet";
    }

    private static void DrawDetail(Area area, PartSheet part, ScreenContext context)
    {
        for (var x = 0; x < area.Width; x++)
            area.Put(x, 0, context.Glyphs.Across, Tone.Dim);
        var changes = TakePart.Changes(context.House, part);
        var draft = TakePart.Into(context.House, part);
        if (!draft.Ok)
        {
            area.PutWrapped(1, 1, 2, draft.Reason!, Tone.Text);
            return;
        }
        var effect = TakePart.Effect(context.Report, draft.Value);
        var there = part.In(context.House) is not null;
        var y = area.PutWrapped(1, 1, 2, $"{(there ? NumberText.Counted(changes.Length, "value changes", "values change") : "A new part")}; "
            + effect, Tone.Strong);
        var lost = TakePart.NotInEdition(context.House, part);
        if (lost.Length > 0)
            y = area.PutWrapped(1, y, 3, NotInEdition(lost), Tone.Caution);
        foreach (var change in (there ? TakePart.AboutChanges(context.House, part) : []).Concat(there ? changes.Take(5) : []))
            y = area.PutWrapped(3, y, 1,
                $"{change.Fact.Label}: {(change.Was.Length == 0 ? "blank" : change.Was)} {context.Glyphs.Arrow} {change.Becomes}", Tone.Text);
        if (there && changes.Length > 5)
            y = area.PutWrapped(3, y, 1, $"and {NumberText.Plain(changes.Length - 5)} more", Tone.Dim);
        foreach (var finding in effect.Come.Concat(effect.Reopen).TakeWhile(_ => y < area.Height))
            y = UnitCard.Put(area, y, finding, context, named: true);
    }

    /// <summary>Which values of the house are not in another edition of the sheet, and what becomes of them.</summary>
    public static string NotInEdition(IReadOnlyCollection<Fact> lost) =>
        $"Not in this edition: {string.Join(", ", lost.Select(f => f.Label))}. "
        + $"{(lost.Count == 1 ? "It stays as it is, and counts" : "They stay as they are, and count")} as not checked.";
}

/// <summary>Keys of the kit folder.</summary>
internal static class KitFolderKeys
{
    public static readonly IReadOnlyList<IKeyAction> All =
    [
        new KeyAction<KitFolderScreen>("enter", "Take", "Takes the part into this house: what is shown is what changes, and one undo takes it back.",
            Take)
            { Disabled = (s, _) => s.Current is null ? "There is no part here." : null },
        Filtering.Key<KitFolderScreen>("parts", "sort, name, sheet, or who checked it"),
        .. Moves.Through<KitFolderScreen>("part", (s, _, by) => s with { Selected = Paging.Move(s.Selected, by, s.Shown.Count) }),
    ];

    private static Transition Take(KitFolderScreen s, ScreenContext context)
    {
        var take = TakePart.Into(context.House, s.Current!);
        return take.Ok && TakePart.NotInEdition(context.House, s.Current!) is { IsEmpty: false } lost
            ? new Transition(s, new Ask.Confirm($"{KitFolderScreen.NotInEdition(lost)} Take the part all the same? y takes it, any other key leaves it.",
                Ask.Confirm.AlsoYes,
                Transition.Save(s, take)))
            : Transition.Save(s, take);
    }
}
