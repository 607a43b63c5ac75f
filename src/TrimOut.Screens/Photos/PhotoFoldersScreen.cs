using System.Globalization;
using TrimOut.Core;
using TrimOut.Core.Plans.Photos;
using TrimOut.Core.Units;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.Photos;

/// <summary>Folders with pictures in them: beside the house, in the user's folders, on sticks.</summary>
internal sealed record PhotoFoldersScreen(IReadOnlyList<PhotoFolderChoice> Found, int Selected) : IFiltered
{
    private const int Names = 40;

    public string Title => "Folders with photos";

    public IReadOnlyList<IKeyAction> Keys => PhotoFoldersKeys.All;

    public string Search { get; init; } = "";

    /// <summary>The folders that are shown.</summary>
    public IReadOnlyList<PhotoFolderChoice> Shown => Search.Length == 0 ? Found : [.. Found.Where(f => Filtering.Fits(f.Path, Search))];

    public (int Shown, int All) Count(ScreenContext context) => (Shown.Count, Found.Count);

    public IScreen Searching(string search, ScreenContext context)
    {
        var to = this with { Search = search };
        return to with { Selected = Filtering.Keep(Shown, Selected, to.Shown, f => f) };
    }

    public PhotoFolderChoice? Current => Shown is var folders && Selected < folders.Count ? folders[Selected] : null;

    /// <summary>Looks for them beside the keys: a stick may be slow.</summary>
    public static Ask.Beside Find(ScreenContext context) =>
        new("Looking for photos", (desk, _, _) => new Ask.Open(new PhotoFoldersScreen(desk.PhotoFolders(context.Where), 0)));

    public void Draw(Area area, ScreenContext context, Typing? typing)
    {
        var y = area.PutWrapped(1, 0, 3, "Enter shows where each photo belongs: by a label seen in it, by a tag in its name, by its time. Nothing is taken in "
            + "before you say so. O takes any folder by its path.", Tone.Text);
        if (Found.Count == 0)
        {
            area.PutWrapped(1, y + 1, 3, "No folder with photos was found beside this house, in your folders or on a stick. Plug it in and come back, or type "
                + "its path: O.", Tone.Strong);
            return;
        }
        var list = area.Rows(y + 1, area.Height - y - 4);
        var folders = Shown;
        foreach (var (line, at) in Paging.Rows(list, folders.Count, Selected, at => this with { Selected = at }))
        {
            var (folder, tone) = (folders[at], at == Selected ? Tone.Selected : Tone.Text);
            list.PutFit(0, line, list.Width, "", tone);
            list.PutFit(1, line, Names, Path.GetFileName(folder.Path), tone);
            list.PutFit(Names + 2, line, list.Width - Names - 2, $"{NumberText.Counted(folder.Pictures, "photo")}"
                + (folder.Latest is { } when ? when.ToString(", 'the latest 'yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture) : ""), tone);
        }
        if (Current is { } current)
            area.PutWrapped(1, area.Height - 2, 2, current.Path, Tone.Dim);
    }
}

/// <summary>Keys of the folders with pictures.</summary>
internal static class PhotoFoldersKeys
{
    public static readonly IReadOnlyList<IKeyAction> All =
    [
        new KeyAction<PhotoFoldersScreen>("enter", "Look at it", "Shows where each of its photos belongs and why, and what could not be placed.",
            (s, context) => new Transition(s, Look(context, s.Current!.Path)))
            { Disabled = (s, _) => s.Current is null ? "There is no folder here. O takes one by its path." : null },
        new KeyAction<PhotoFoldersScreen>("O", "Open a path", "Shows where the photos of a folder belong that is found by its path.",
            (s, _) => Transition.Type(s, new Entry("The folder", "", "a folder with photos; those in it count too",
                (text, now) => text.Trim().Length == 0 ? new Refusal("Type the path of the folder.") : new Transition(s, Look(now, text.Trim()))))),
        Filtering.Key<PhotoFoldersScreen>("folders", "name or path"),
        .. Moves.Through<PhotoFoldersScreen>("folder", (s, _, by) => s with { Selected = Paging.Move(s.Selected, by, s.Shown.Count) }),
    ];

    private static Ask.Beside Look(ScreenContext context, string path) => new("Reading photos", (desk, says, stop) =>
        desk.ReadPhotos(context.Log, context.Where, path, says, stop).Then<Ask>(read =>
        {
            var plan = new PhotoPlan(context.Log, context.Steps);
            return new Ask.Open(PhotosScreen.Of(path, read, [.. read.Files.Select(f => plan.Place(f.Photo))]));
        }));
}
