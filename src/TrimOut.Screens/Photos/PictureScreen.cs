using System.Collections.Immutable;
using TrimOut.Core;
using TrimOut.Core.Units;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.Photos;

/// <summary>A picture to be looked at.</summary>
/// <param name="Of">What it is of, in words.</param>
/// <param name="Path">Its file: beside the house file as it was noted, or whole.</param>
internal sealed record PictureOf(string Of, string Path);

/// <summary>One picture in the terminal's cells, with where its file is for whoever wants to see it as it is.</summary>
/// <param name="All">The pictures of the list that it was opened from.</param>
/// <param name="At">Which of them is seen.</param>
/// <param name="Where">Where its file is.</param>
/// <param name="Picture">The picture, or why it can't be shown.</param>
internal sealed record PictureScreen(ImmutableArray<PictureOf> All, int At, string Where, Result<CellPicture> Picture) : IScreen
{
    public string Title => "Photo";

    public IReadOnlyList<IKeyAction> Keys => PictureKeys.All;

    /// <summary>Reads one of several pictures beside the keys: a stick may be slow.</summary>
    /// <param name="context">The house.</param>
    /// <param name="all">The pictures.</param>
    /// <param name="at">Which of them.</param>
    /// <param name="inPlace">Whether it takes the place of the picture that is seen.</param>
    public static Ask.Beside Look(ScreenContext context, ImmutableArray<PictureOf> all, int at, bool inPlace = false) =>
        new($"Reading {System.IO.Path.GetFileName(all[at].Path)}", (desk, _, _) =>
            new Ask.Open(new PictureScreen(all, at, desk.FileOf(context.Where, all[at].Path), desk.Picture(context.Where, all[at].Path)), inPlace));

    public void Draw(Area area, ScreenContext context, Typing? typing)
    {
        var many = All.Length > 1 ? $" ({NumberText.Plain(At + 1)} of {NumberText.Plain(All.Length)})" : "";
        area.PutFit(1, 0, area.Width - 1, $"{All[At].Of}{many}", Tone.Strong);
        var below = Math.Min(2, Math.Max(1, TextWidth.Wrap(Where, area.Width - 1).Count()));
        area.PutWrapped(1, area.Height - below, below, Where, Tone.Dim);
        if (Picture.Ok)
            PictureInCells.Draw(area.Rows(1, area.Height - 1 - below), Picture.Value, context.Glyphs);
        else
            area.PutWrapped(1, 2, 4, $"It can't be shown here: {Picture.Reason}", Tone.Caution);
    }
}

/// <summary>Keys of a picture that is looked at.</summary>
internal static class PictureKeys
{
    public static readonly IReadOnlyList<IKeyAction> All =
    [
        new KeyAction<PictureScreen>("right", "Next photo", "The next picture of the list.", (s, context) => Turned(s, context, 1)),
        new KeyAction<PictureScreen>("left", "Photo before", "The picture before.", (s, context) => Turned(s, context, -1)),
    ];

    private static Transition Turned(PictureScreen s, ScreenContext context, int by) => s.All.Length == 1 ? Transition.Say(s, "This is the only one.")
        : new Transition(s, PictureScreen.Look(context, s.All, (s.At + by + s.All.Length) % s.All.Length, inPlace: true));
}
