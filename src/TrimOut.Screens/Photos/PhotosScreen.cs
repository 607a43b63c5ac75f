using System.Collections.Immutable;
using TrimOut.Core;
using TrimOut.Core.Decisions;
using TrimOut.Core.Plans.Photos;
using TrimOut.Core.Units;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.Photos;

/// <summary>A picture of a folder: where it belongs, and whether it is to be taken in.</summary>
/// <param name="File">Its file.</param>
/// <param name="Placement">Where it belongs, and why.</param>
/// <param name="Take">Whether it is to be taken in.</param>
internal sealed record PhotoRow(PhotoFile File, PhotoPlacement Placement, bool Take);

/// <summary>Where the photos of a folder belong, before any is taken in.</summary>
/// <param name="From">The folder.</param>
/// <param name="All">The photos: those that are placed, those that are only offered, those that are not placed.</param>
/// <param name="Remarks">What else is to be said of the folder.</param>
/// <param name="Selected">The row under the cursor.</param>
internal sealed record PhotosScreen(string From, ImmutableArray<PhotoRow> All, ImmutableArray<string> Remarks, int Selected) : IFiltered, ITable
{
    private const int Detail = 4;
    private const int Names = 24;
    private const int Tags = 8;

    public static readonly Sign Taken = new(g => g.Done, "is taken in");

    public static readonly Sign Offered = new(_ => "?", "it is not sure where it belongs, or what it shows: Space takes it");

    public static readonly Sign NotPlaced = new(g => g.Nothing, "is not taken in");

    public string Title => "Where photos belong";

    public IReadOnlyList<IKeyAction> Keys => PhotosKeys.All;

    public IReadOnlyList<Sign> Signs { get; } = [Taken, Offered, NotPlaced];

    public string Search { get; init; } = "";

    /// <summary>The photos that are shown.</summary>
    public ImmutableArray<PhotoRow> Rows => Search.Length == 0 ? All
        : [.. All.Where(r => Filtering.Fits($"{r.File.Photo.Name} {Tag(r)} {Shows(r)} {r.Placement.Why}", Search))];

    public (int Shown, int All) Count(ScreenContext context) => (Rows.Length, All.Length);

    public IScreen Searching(string search, ScreenContext context)
    {
        var to = this with { Search = search };
        return to with { Selected = Filtering.Keep(Rows, Selected, to.Rows, r => r.File.Path) };
    }

    public PhotoRow? Current => Rows is var rows && Selected < rows.Length ? rows[Selected] : null;

    /// <summary>Those that are to be taken in.</summary>
    public ImmutableArray<PhotoRow> Chosen => [.. All.Where(r => r.Take && r.Placement.Place is not null)];

    /// <summary>Begins with what is sure chosen.</summary>
    public static PhotosScreen Of(string from, PhotosRead read, IReadOnlyList<PhotoPlacement> placed) => new(from,
    [
        .. read.Files.Zip(placed, (f, p) => new PhotoRow(f, p, p.IsSure)).OrderBy(r => r.Take ? 0 : r.Placement.Place is not null ? 1 : 2)
            .ThenBy(r => r.Placement.Place?.Of.Name, StringComparer.OrdinalIgnoreCase).ThenBy(r => r.File.Photo.Taken),
    ], read.Remarks, 0);

    /// <summary>The same with another row in the place of the one under the cursor.</summary>
    public PhotosScreen With(PhotoRow row) => this with { All = [.. All.Select(r => r.File.Path == row.File.Path ? row : r)] };

    public IEnumerable<IReadOnlyList<string>> Table(ScreenContext context) =>
        Rows.Select(r => (IReadOnlyList<string>)[r.File.Photo.Name, r.Take ? "taken in" : "", Tag(r), Shows(r), r.Placement.Why]);

    public void Draw(Area area, ScreenContext context, Typing? typing)
    {
        var (offered, lost) = (All.Count(r => !r.Take && r.Placement.Place is not null), All.Count(r => r.Placement.Place is null));
        var y = area.PutWrapped(1, 0, 2, Chosen.IsEmpty ? "None would be taken in yet. t types the tag of a photo, Space takes one that is offered."
            : $"{NumberText.Counted(Chosen.Length, "photo")} would be copied beside this house and noted. Enter takes them in; "
                + "nothing was changed yet.", Tone.Strong);
        y = area.PutWrapped(1, y, 2, $"From {From}: {NumberText.Plain(offered)} offered, {NumberText.Plain(lost)} not placed."
            + string.Concat(Remarks.Select(r => $" {r}")), Tone.Dim);
        var rows = Rows;
        var list = area.Rows(y + 1, area.Height - y - 1 - Detail);
        foreach (var (line, at) in Paging.Rows(list, rows.Length, Selected, at => this with { Selected = at }))
        {
            var (row, tone) = (rows[at], at == Selected ? Tone.Selected : rows[at].Placement.Place is null ? Tone.Caution : Tone.Text);
            list.PutFit(0, line, list.Width, "", tone);
            list.Put(1, line, SignOf(row).Drawn(context.Glyphs), tone);
            list.PutFit(3, line, Names, row.File.Photo.Name, tone);
            list.PutFit(Names + 4, line, Tags, Tag(row), tone);
            list.PutFit(Names + Tags + 5, line, list.Width - Names - Tags - 5,
                row.Placement.Place is null ? row.Placement.Why : $"{Shows(row)}; {row.Placement.Why}", tone);
        }
        if (All.IsEmpty)
            list.Put(1, 0, "No photo is in it.", Tone.Dim);
        var detail = area.Rows(area.Height - Detail, Detail);
        for (var column = 0; column < detail.Width; column++)
            detail.Put(column, 0, context.Glyphs.Across, Tone.Dim);
        if (Current is { } current)
        {
            detail.PutWrapped(1, 1, Detail - 1, $"{current.File.Photo.Name}: "
                + (current.Placement.Place is { } place ? $"{place.Of.Name}, {place.Shows}; {current.Placement.Why}."
                    : $"not placed: {current.Placement.Why}."), Tone.Text);
        }
    }

    private static Sign SignOf(PhotoRow row) => row.Placement.Place is null ? NotPlaced : row.Take ? Taken : row.Placement.IsSure ? NotPlaced : Offered;

    private static string Tag(PhotoRow row) => row.Placement.Place?.Of.Name ?? "";

    private static string Shows(PhotoRow row) => row.Placement.Place?.Shows ?? "";
}

/// <summary>Keys of the photos of a folder.</summary>
internal static class PhotosKeys
{
    public static readonly IReadOnlyList<IKeyAction> All =
    [
        new KeyAction<PhotosScreen>("enter", "Take", "Copies the chosen photos beside this house and notes them, after a question; one undo takes that back.",
            (s, context) => new Transition(s, new Ask.Confirm(
                $"Take in {NumberText.Counted(s.Chosen.Length, "photo")}? y copies and notes them (undo takes the notes back), "
                    + "any other key leaves this house as it is.", Ask.Confirm.AlsoYes, new Transition(s, Taking(s, context)))))
            { Disabled = NotBecause },
        new KeyAction<PhotosScreen>("space", "Take or leave", "Chooses the photo, or leaves it out; then the next one.",
            (s, _) => new Transition(Moved(s.With(s.Current! with { Take = !s.Current!.Take }), 1)))
            { Disabled = (s, _) => s.Current?.Placement.Place is null ? "This one is not placed. t types its tag." : null },
        new KeyAction<PhotosScreen>("t", "Type the tag", "Says what the photo is of: a tag, and perhaps a word for what it shows.",
            (s, _) => Transition.Type(s, Tag(s)))
            { Disabled = (s, _) => s.Current is null ? "There is no photo here." : null },
        new KeyAction<PhotosScreen>("z", "Photos", "Shows the photo as well as this terminal can.",
            (s, context) => new Transition(s, PictureScreen.Look(context,
            [.. s.Rows.Select(r => new PictureOf($"{r.File.Photo.Name}", r.File.Path))], s.Selected)))
            { Disabled = (s, _) => s.Current is null ? "There is no photo here." : null },
        Filtering.Key<PhotosScreen>("photos", "name, tag, what it shows, or why"),
        .. Moves.Through<PhotosScreen>("photo", (s, _, by) => Moved(s, by)),
    ];

    private static PhotosScreen Moved(PhotosScreen s, int by) => s with { Selected = Paging.Move(s.Selected, by, s.Rows.Length) };

    private static string? NotBecause(PhotosScreen s, ScreenContext context) => context.ReadOnlyBecause is { } why
        ? $"This house is open for reading only: {why}"
        : s.Chosen.IsEmpty ? "No photo is chosen. t types the tag of one, Space takes one that is offered." : null;

    private static Entry Tag(PhotosScreen s) => new($"{s.Current!.File.Photo.Name} is of", s.Current.Placement.Place?.Of.Name ?? "",
        "a tag, and perhaps wall, box, brackets, finished or the like",
        (text, now) => new PhotoPlan(now.Log, now.Steps).Place(s.Current.File.Photo, text)
            .Then<Transition>(placed => new Transition(Moved(s.With(new PhotoRow(s.Current.File, placed, true)), 1))));

    private static Ask.Beside Taking(PhotosScreen s, ScreenContext context) => new("Copying photos", (desk, says, stop) =>
    {
        var rows = s.Chosen;
        var came = desk.CopyPhotos(context.Log, context.Where, [.. rows.Select(r => (r.File, r.Placement.Place!))], says, stop);
        var noted = rows.Zip(came).Where(c => c.Second.Ok).Select(c => (c.First.Placement.Place!, c.Second.Value)).ToList();
        var lost = rows.Zip(came).Where(c => !c.Second.Ok).Select(c => $"{c.First.File.Photo.Name}: {c.Second.Reason}").ToList();
        if (noted.Count == 0)
            return new Refusal($"None was taken in. {string.Join(" ", lost.Take(2))}");
        // The house may have gone on while the files were copied.
        return new Ask.Action(new KeyAction<IScreen>("enter", "Take", "Notes what was copied.", (screen, now) => new Transition(screen,
            new Ask.Save(TakePhotos.Draft(now.House, now.Report, now.Steps, noted), (_, after) => lost.Count == 0
                ? new Transition(JobSheet.JobSheetScreen.At(after))
                : Transition.Say(JobSheet.JobSheetScreen.At(after),
                    $"{NumberText.Counted(noted.Count, "photo")} saved. Not taken in: {string.Join(" ", lost)}")))));
    });
}
