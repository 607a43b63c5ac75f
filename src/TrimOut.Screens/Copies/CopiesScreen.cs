using System.Globalization;
using TrimOut.Core;
using TrimOut.Core.History;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.Copies;

/// <summary>House files that may be copies of this house: beside it, in the user's folders, on sticks.</summary>
internal sealed record CopiesScreen(IReadOnlyList<CopyChoice> Found, int Selected) : IFiltered
{
    private const int Names = 30;

    public string Title => "Other copies";

    public IReadOnlyList<IKeyAction> Keys => CopiesKeys.All;

    public string Search { get; init; } = "";

    /// <summary>The files that are shown.</summary>
    public IReadOnlyList<CopyChoice> Shown => Search.Length == 0 ? Found : [.. Found.Where(c => Filtering.Fits($"{c.Name} {c.Path} {Said(c)}", Search))];

    public (int Shown, int All) Count(ScreenContext context) => (Shown.Count, Found.Count);

    public IScreen Searching(string search, ScreenContext context)
    {
        var to = this with { Search = search };
        return to with { Selected = Filtering.Keep(Shown, Selected, to.Shown, c => c) };
    }

    public CopyChoice? Current => Shown is var copies && Selected < copies.Count ? copies[Selected] : null;

    /// <summary>Looks for them beside the keys: a stick may be slow.</summary>
    public static Ask.Beside Find(ScreenContext context) =>
        new("Looking for copies", (desk, _, _) => new Ask.Open(new CopiesScreen(desk.Copies(context.Where), 0)));

    public void Draw(Area area, ScreenContext context, Typing? typing)
    {
        var y = area.PutWrapped(1, 0, 3,
            "Enter shows what would come in from a copy, before anything is taken in. The copy itself is only read. O takes any file by its path.", Tone.Text);
        if (Found.Count == 0)
        {
            area.PutWrapped(1, y + 1, 3,
                "No other house file was found beside this one, in your folders or on a stick. Plug it in and come back, or type its path: O.", Tone.Strong);
            return;
        }
        var list = area.Rows(y + 1, area.Height - y - 4);
        var copies = Shown;
        foreach (var (line, at) in Paging.Rows(list, copies.Count, Selected, at => this with { Selected = at }))
        {
            var (copy, tone) = (copies[at], at == Selected ? Tone.Selected : Tone.Text);
            list.PutFit(0, line, list.Width, "", tone);
            list.PutFit(1, line, Names, copy.Name, tone);
            list.PutFit(Names + 2, line, 17, copy.Changed is { } when ? when.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture) : "", tone);
            list.PutFit(Names + 20, line, list.Width - Names - 20, Said(copy), at == Selected ? tone : copy.Same == true ? Tone.Strong : Tone.Dim);
        }
        if (Current is { } current)
            area.PutWrapped(1, area.Height - 2, 2, current.Path, Tone.Dim);
    }

    private static string Said(CopyChoice copy) => copy.Same switch
    {
        true => "a copy of this house",
        false => "begun as another house",
        _ => "no house file that can be read",
    };
}

/// <summary>Keys of the other copies.</summary>
internal static class CopiesKeys
{
    public static readonly IReadOnlyList<IKeyAction> All =
    [
        new KeyAction<CopiesScreen>("enter", "Look at it", "Shows what would come in from the copy, by whom and when, and what the two disagree about.",
            (s, context) => new Transition(s, Look(context, s.Current!.Path)))
            { Disabled = (s, _) => s.Current is null ? "There is no copy here. O takes a file by its path." : null },
        new KeyAction<CopiesScreen>("O", "Open a path", "Shows what would come in from a house file, or from a folder or file with a history as text.",
            (s, context) => Transition.Type(s, new Entry("The other copy", "", "a .trimout file, or a folder or file with its history as text",
                (text, now) => text.Trim().Length == 0 ? new Refusal("Type the path of the other copy.") : new Transition(s, Look(now, text.Trim()))))),
        Filtering.Key<CopiesScreen>("files", "name, folder, or what is said of it"),
        .. Moves.Through<CopiesScreen>("copy", (s, _, by) => s with { Selected = Paging.Move(s.Selected, by, s.Shown.Count) }),
    ];

    /// <summary>Reads a copy and holds it against this house, beside the keys.</summary>
    private static Ask.Beside Look(ScreenContext context, string path) => new($"Reading {Path.GetFileName(path)}", (desk, _, _) =>
        desk.ReadCopy(path).Then(copy => Merge.Of(context.Log, copy.Log).Then<Ask>(merge => new Ask.Open(MergeScreen.Of(context.Log, copy, merge, path)))));
}
