using System.Globalization;
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

/// <summary>The files of the user's kit folder, with what each would change in this house before it is taken; last those that can't be read.</summary>
internal sealed record KitFolderScreen(string Folder, IReadOnlyList<KeptPart> Kept, int Selected) : IFiltered
{
    public string Title => "Kit folder";

    public IReadOnlyList<IKeyAction> Keys => KitFolderKeys.All;

    public static KitFolderScreen Of(string folder, IReadOnlyList<KeptPart> found) =>
        new(folder, [.. found.OrderBy(p => !p.Part.Ok)], 0);

    public string Search { get; init; } = "";

    /// <summary>The files that are shown.</summary>
    public IReadOnlyList<KeptPart> Shown => Search.Length == 0 ? Kept : [.. Kept.Where(k => Filtering.Fits(TextOf(k), Search))];

    public (int Shown, int All) Count(ScreenContext context) => (Shown.Count, Kept.Count);

    public IScreen Searching(string search, ScreenContext context)
    {
        var to = this with { Search = search };
        return to with { Selected = Filtering.Keep(Shown, Selected, to.Shown, p => p) };
    }

    /// <summary>The file under the cursor; null where there is none.</summary>
    public KeptPart? CurrentFile => Shown is var files && Selected < files.Count ? files[Selected] : null;

    /// <summary>The part under the cursor; null where there is none, or its file can't be read.</summary>
    public PartSheet? Current => CurrentFile is { Part: { Ok: true } part } ? part.Value : null;

    private static string TextOf(KeptPart kept) => kept.Part is { Ok: true, Value: var part } ? $"{SortOf(part)} {part.Name} {Held(part)}"
        : $"{NotRead} {kept.Part.Reason}";

    private static string SortOf(PartSheet part) => KebabCase.Of(part.Kind).Replace('-', ' ');

    public void Draw(Area area, ScreenContext context, Typing? typing)
    {
        var y = area.PutWrapped(1, 0, 2,
            !Kept.Any(k => k.Part.Ok) ? $"No part is kept in {Folder} yet. On the kit k keeps one." : $"Kept in {Folder}. Enter takes a part.", Tone.Text);
        if (Kept.Count(k => !k.Part.Ok) is > 0 and var unread)
        {
            y = area.PutWrapped(1, y, 2, $"{NumberText.Counted(unread, "file of it", "files of it")} can't be read: "
                + $"{(unread == 1 ? "it stands" : "they stand")} last, each with its reason.", Tone.Caution);
        }
        var detail = Math.Max(area.Height / 2, area.Height - y - 2 - Shown.Count);
        var rows = area.Rows(y + 1, area.Height - y - 1 - detail);
        var parts = Shown;
        foreach (var (line, at) in Paging.Rows(rows, parts.Count, Selected, at => this with { Selected = at }))
        {
            var tone = at == Selected ? Tone.Selected : parts[at].Part.Ok ? Tone.Text : Tone.Caution;
            if (!parts[at].Part.Ok)
            {
                rows.PutFit(0, line, 15, NotRead, tone);
                rows.PutFit(16, line, rows.Width - 16, parts[at].Part.Reason!, tone);
                continue;
            }
            var part = parts[at].Part.Value;
            rows.PutFit(0, line, 15, SortOf(part), tone);
            rows.PutFit(16, line, 22, part.Name, tone);
            rows.PutFit(39, line, rows.Width - 39, (parts[at].Older ? "older: " : "") + OfWhich(parts[at]) + Held(part.Beside(context.House)), tone);
        }
        if (CurrentFile is not { } current)
            return;
        var below = area.Rows(area.Height - detail, detail);
        for (var x = 0; x < below.Width; x++)
            below.Put(x, 0, context.Glyphs.Across, Tone.Dim);
        if (current.Part is { Ok: true, Value: var chosen })
            DrawDetail(below, chosen.Beside(context.House), context);
        else
            below.PutWrapped(1, 1, Math.Max(1, detail - 1), $"{current.Part.Reason} Put the file right, or take it out of the folder; nothing of it is taken.",
                Tone.Caution);
    }

    private const string NotRead = "can't be read";

    /// <summary>What tells a file from another one of the same part: the edition in it, and its name where there is another one.</summary>
    private string OfWhich(KeptPart kept)
    {
        var others = Kept.Count(k => k.Part.Ok && k.Part.Value.Kind == kept.Part.Value.Kind
            && SameName.Comparer.Equals(k.Part.Value.Name, kept.Part.Value.Name)) > 1;
        return $"{(kept.Part.Value.Edition is { } e ? $"edition {e}, " : others ? "no edition, " : "")}{(others ? $"{kept.File}, " : "")}";
    }

    private static string Held(PartSheet part)
    {
        string? Said(string name) => part.About.GetValueOrDefault(name);
        string?[] parts = [part.WhyNoneCounts is null ? null
                : part.IsHeldLater ? "checked on a day to come: check again"
                : part.HeldAgainstUnknown is { } unknown ? $"no known {unknown}: check again"
                : $"{(part.IsHeldAgainstOtherSheet ? "another sheet" : "another edition")}: check again",
            Said(AboutSheet.Sheet),
            string.Create(CultureInfo.InvariantCulture,
                $"{part.Values.Count(v => v.Held)} of {NumberText.Counted(part.Values.Length, "value")} checked")
                + (Said(AboutSheet.HeldBy) is { } by ? $" by {by}" : ""), Said(AboutSheet.HeldOn)];
        return string.Join(", ", parts.OfType<string>());
    }

    /// <summary>The page of what would change that is shown, from 0.</summary>
    public int Page { get; init; }

    private void DrawDetail(Area area, PartSheet part, ScreenContext context)
    {
        var lines = Detail(part, context).SelectMany(l => TextWidth.Wrap(l.Text, area.Width - l.Indent - 1).Select(t => (t, l.Tone, l.Indent))).ToList();
        var room = area.Height - 1;
        // The last line says that there is more.
        var each = lines.Count <= room ? room : room - 1;
        var pages = Math.Max(1, (lines.Count + each - 1) / each);
        var page = Page % pages;
        foreach (var (y, (text, tone, indent)) in lines.Skip(page * each).Take(each).Index())
            area.PutFit(indent, y + 1, area.Width - indent, text, tone);
        if (pages > 1)
            area.PutFit(1, area.Height - 1, area.Width - 1, $"{NumberText.Plain(page + 1)} of {NumberText.Plain(pages)}: Right shows more of it.", Tone.Dim);
    }

    /// <summary>What taking a part comes to: old and new values first, then what the checks say otherwise.</summary>
    private static IEnumerable<(string Text, Tone Tone, int Indent)> Detail(PartSheet part, ScreenContext context)
    {
        var changes = TakePart.Changes(context.House, part);
        var draft = TakePart.Into(context.House, part);
        var effect = draft.Ok ? TakePart.Effect(context.Report, draft.Value) : null;
        var there = part.In(context.House) is not null;
        yield return effect is null ? (draft.Reason!, Tone.Text, 1)
            : ($"{(there ? NumberText.Counted(changes.Length, "value changes", "values change") : "A new part")}; {effect}", Tone.Strong, 1);
        if (part.WhyNoneCounts is { } why)
            yield return (why, Tone.Caution, 1);
        if (effect is null)
            yield break;
        foreach (var change in there ? TakePart.AboutChanges(context.House, part).Concat(changes) : [])
            yield return ($"{change.Fact.Label}: {(change.Was.Length == 0 ? "blank" : change.Was)} {context.Glyphs.Arrow} {change.Becomes}", Tone.Text, 3);
        if (!there)
        {
            foreach (var line in OfNew(part, context.House))
                yield return line;
        }
        foreach (var (becomes, finding, said) in effect.Told)
            yield return ($"{becomes}: {UnitCard.WordOf(finding.Check.Severity)} {said}", UnitCard.ToneOf(finding.Check.Severity), 3);
        if (TakePart.NotInEdition(context.House, part) is { Length: > 0 } lost)
            yield return (NotInEdition(lost), Tone.Caution, 1);
    }

    /// <summary>What a new part brings: its values, which of them nobody checked, and what its sheet was not read for.</summary>
    private static IEnumerable<(string Text, Tone Tone, int Indent)> OfNew(PartSheet part, House house)
    {
        var values = TakePart.Changes(house, part).Select(c => $"{(part.Values.Any(v => v.Held && v.Fact == c.Fact) ? "" : "? ")}{c.Fact.Label} {c.Becomes}");
        yield return (part.Values.IsEmpty ? "It has no value." : string.Join("; ", values), Tone.Text, 3);
        var (blank, open) = (SheetValues.Of(part.Kind).Count(f => part.Values.All(v => v.Fact != f)), part.Values.Count(v => !v.Held));
        yield return ($"{NumberText.Plain(blank)} blank, {NumberText.Plain(open)} not checked (?)", Tone.Dim, 3);
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
            { Disabled = (s, _) => s.Current is not null ? null : s.CurrentFile is null ? "There is no part here." : "This file can't be read." },
        Filtering.Key<KitFolderScreen>("files", "sort, name, sheet, who checked it, or why it can't be read"),
        new KeyAction<KitFolderScreen>("right", "More", "More of what the part would change, where that is longer than the screen; then its beginning again.",
            (s, _) => new Transition(s with { Page = s.Page + 1 })) { Disabled = (s, _) => s.Current is null ? "There is no part here." : null },
        .. Moves.Through<KitFolderScreen>("part", (s, _, by) => s with { Selected = Paging.Move(s.Selected, by, s.Shown.Count), Page = 0 }),
    ];

    private static Transition Take(KitFolderScreen s, ScreenContext context)
    {
        var take = TakePart.Into(context.House, s.Current!);
        if (!take.Ok)
            return Transition.Save(s, take);
        var (lost, open) = (TakePart.NotInEdition(context.House, s.Current!), TakePart.LosesChecked(context.House, s.Current!));
        var becomes = TakePart.Changes(context.House, s.Current!).ToDictionary(c => c.Fact, c => $"{c.Fact.Label} {c.Was} {context.Glyphs.Arrow} {c.Becomes}");
        var why = lost.IsEmpty ? "" : KitFolderScreen.NotInEdition(lost) + " ";
        var other = open.Where(f => !lost.Contains(f)).ToList();
        if (other.Count > 0)
            why += $"Checked now, and then no longer: {string.Join(", ", other.Select(f => becomes.GetValueOrDefault(f, f.Label)))}. ";
        return why.Length == 0 ? Transition.Save(s, take)
            : new Transition(s, new Ask.Confirm($"{why}Take the part all the same? y takes it, any other key leaves it.", Ask.Confirm.AlsoYes,
                Transition.Save(s, take)));
    }
}
