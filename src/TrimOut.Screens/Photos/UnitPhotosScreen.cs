using System.Collections.Immutable;
using System.Globalization;
using TrimOut.Core.Decisions;
using TrimOut.Core.Houses;
using TrimOut.Core.Plans.Photos;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.Photos;

/// <summary>The pictures of one unit: of its window, of itself, and of the open wall.</summary>
/// <param name="UnitId">The unit.</param>
/// <param name="Selected">The row under the cursor.</param>
internal sealed record UnitPhotosScreen(string UnitId, int Selected) : IFiltered, IAsked
{
    private const int Names = 34;

    public string Title => "Photos of a unit";

    public IReadOnlyList<IKeyAction> Keys => UnitPhotosKeys.All;

    public string Search { get; init; } = "";

    public Unit? UnitAt(ScreenContext context) => context.House.FindUnit(UnitId);

    /// <summary>The pictures that are shown.</summary>
    public ImmutableArray<HousePhoto> Rows(ScreenContext context) =>
        [.. All(context).Where(p => Search.Length == 0 || Filtering.Fits($"{p.Path} {p.Shows}", Search))];

    public (int Shown, int All) Count(ScreenContext context) => (Rows(context).Length, All(context).Length);

    public IScreen Searching(string search, ScreenContext context)
    {
        var to = this with { Search = search };
        return to with { Selected = Filtering.Keep(Rows(context), Selected, to.Rows(context), p => (p.Holder.Id, p.Path)) };
    }

    public IScreen Fit(ScreenContext context) => this with { Selected = Paging.Move(Selected, 0, Rows(context).Length) };

    public void Draw(Area area, ScreenContext context, Typing? typing)
    {
        if (UnitAt(context) is not { } unit)
            return;
        var rows = Rows(context);
        area.PutWrapped(1, 0, 2, All(context).IsEmpty
            ? $"No picture of {unit.Tag} is noted. B on the job sheet takes pictures in from a folder or a stick."
            : $"{unit.Tag}: Enter shows a picture as well as this terminal can, with where its file is.", Tone.Text);
        var list = area.Rows(2, area.Height - 4);
        foreach (var (line, at) in Paging.Rows(list, rows.Length, Selected, at => this with { Selected = at }))
        {
            var tone = at == Selected ? Tone.Selected : Tone.Text;
            list.PutFit(0, line, list.Width, "", tone);
            list.PutFit(1, line, Names, System.IO.Path.GetFileName(rows[at].Path), tone);
            list.PutFit(Names + 2, line, list.Width - Names - 2, $"{rows[at].Shows} {rows[at].Of}", tone);
        }
        if (Selected < rows.Length)
        {
            var photo = rows[Selected];
            var noted = photo.NotedIn(context.Log);
            area.PutWrapped(1, area.Height - 2, 2, string.Create(CultureInfo.InvariantCulture,
                $"{photo.Path}, noted by {noted.By}, {noted.SaidAt:yyyy-MM-dd HH:mm}"), Tone.Dim);
        }
    }

    private ImmutableArray<HousePhoto> All(ScreenContext context) => UnitAt(context) is { } unit ? HousePhotos.Of(unit) : [];
}

/// <summary>Keys of the pictures of a unit.</summary>
internal static class UnitPhotosKeys
{
    private const string Name = "Photos";

    private const string Help = "The pictures of the unit: its list, and each as well as this terminal shows it.";

    public static readonly IReadOnlyList<IKeyAction> All =
    [
        new KeyAction<UnitPhotosScreen>("enter", "Look at it", "Shows the picture, and where its file is.",
            (s, context) => new Transition(s, PictureScreen.Look(context,
                [.. s.Rows(context).Select(p => new PictureOf($"{p.Shows} {p.Of}", p.Path))], s.Selected)))
            { Disabled = NoPicture },
        new KeyAction<UnitPhotosScreen>("t", "Type the tag", "Notes the picture at what you type instead: a tag, and perhaps a word for what it shows.",
            (s, context) => Transition.Type(s, Tag(s, s.Rows(context)[s.Selected]))) { Disabled = NoPicture },
        new KeyAction<UnitPhotosScreen>("X", "Remove", "Notes the picture no longer at this unit or window; its file stays.",
            (s, context) => new Transition(s, Removing(s, s.Rows(context)[s.Selected]))) { Disabled = NoPicture, OnBar = false },
        Filtering.Key<UnitPhotosScreen>("pictures", "path, or what is shown"),
        .. Moves.Through<UnitPhotosScreen>("picture", (s, context, by) => s with { Selected = Paging.Move(s.Selected, by, s.Rows(context).Length) }),
    ];

    private static string? NoPicture(UnitPhotosScreen s, ScreenContext context) => s.Selected < s.Rows(context).Length ? null : "There is no picture here.";

    private static Entry Tag(UnitPhotosScreen s, HousePhoto photo) => new($"{System.IO.Path.GetFileName(photo.Path)} is of", "",
        "a tag, and perhaps wall, box, brackets, finished or the like",
        (text, now) => PutPhotoRight.Move(now.Log, photo, text).Then<Transition>(draft => Transition.Save(s, draft)));

    private static Ask.Confirm Removing(UnitPhotosScreen s, HousePhoto photo) => new(
        $"Note {System.IO.Path.GetFileName(photo.Path)} no longer at {photo.Of}? Its file stays. X does (undo brings it back), any other key keeps it.", "X",
        Transition.Save(s, PutPhotoRight.Remove(photo)));

    /// <summary>The key that opens the pictures of the unit under the cursor of another screen.</summary>
    public static KeyAction<T> Opening<T>()
        where T : IAsked, IScreen => new("z", Name, Help, (s, context) => Transition.Open(s, new UnitPhotosScreen(s.UnitAt(context)!.Id, 0)))
        { OnBar = false, Disabled = (s, context) => s.UnitAt(context) is null ? "No unit is under the cursor." : null };
}
