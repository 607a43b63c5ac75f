using TrimOut.Core.Houses;
using TrimOut.Core.Plans.Photos;
using TrimOut.Papers.Drawings;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.Inline;
using static TrimOut.Papers.Writing.MarkdownWriter;

namespace TrimOut.Papers.Photos;

/// <summary>Pictures on a paper: shown in a row as far as they can be, then listed with path, day, and why one is not shown.</summary>
internal static class PhotoPages
{
    /// <summary>The most that pictures add to one paper, in bytes as they are embedded; what comes after is listed only.</summary>
    public const long MostBytes = 24 << 20;

    private const double Wide = 320;
    private const double High = 240;

    /// <summary>Writes pictures in their order; nothing where there is none.</summary>
    /// <param name="to">The paper.</param>
    /// <param name="data">What it is written from.</param>
    /// <param name="pictures">What each is of, for its file's name and as it reads, and its path as it was noted.</param>
    public static void Write(MarkdownWriter to, PaperData data, IEnumerable<(string About, Inline Of, string Path)> pictures)
    {
        // One picture may show the walls of several units.
        List<(string About, Inline Of, string Path)> photos = [.. pictures.Distinct().GroupBy(p => p.Path, StringComparer.Ordinal)
            .Select(g => (g.First().About, Join(", ", [.. g.Select(p => p.Of)]), g.Key))];
        if (photos.Count == 0)
            return;
        if (data.Photos is not { } read)
        {
            to.Say($"Pictures: {Join("; ", [.. photos.Select(p => Ours($"{p.Of}: {p.Path}"))])}");
            return;
        }
        var (shown, rows, bytes) = (new List<Inline>(), new List<Inline[]>(), to.PictureBytes);
        var unread = new List<(PhotoState State, Inline Of, string Path)>();
        foreach (var (about, of, path) in photos)
        {
            data.Stop.ThrowIfCancellationRequested();
            var photo = read(path);
            var size = (photo.Jpeg.Length + 2L) / 3 * 4;
            var fits = bytes + size <= MostBytes;
            if (photo.State == PhotoState.Read && fits)
            {
                bytes += size;
                shown.Add(to.Drawing(about, Describe(of, photo), words => Draw(of, photo, words)));
            }
            if (photo.State == PhotoState.Read)
            {
                rows.Add(Row(of, path, photo.TakenOn is { } day ? day.OnPaper() : Dash,
                    fits ? Why(photo.State) : Ours("not shown: the pictures before it fill the page")));
            }
            else
            {
                unread.Add((photo.State, of, path));
            }
        }
        // Of many that nobody took along one row says so.
        rows.AddRange(unread.GroupBy(u => u.State).Select(g =>
            Row(Join(", ", [.. g.Select(u => u.Of)]), Join(", ", [.. g.Select(u => (Inline)u.Path)]), Dash, Why(g.Key))));
        if (shown.Count > 0)
            to.Say(Beside(shown));
        to.Filled(["Of", "Picture", "Taken on", "Not shown because"], rows);
    }

    /// <summary>Writes the pictures of punch items; nothing where there is none.</summary>
    public static void WritePunch(MarkdownWriter to, PaperData data, IEnumerable<PunchItem> items) => Write(to, data,
        items.SelectMany(HousePhotos.Of, (p, photo) => ("punch", p.About is { } about ? Ours($"{NameOf(data.House, about)}: {p.Name}") : p.Name, photo.Path)));

    private static Inline Describe(Inline of, Photo photo) =>
        photo.TakenOn is { } day ? Ours($"Picture of {of}, taken on {day.OnPaper()}") : Ours($"Picture of {of}");

    private static Svg Draw(Inline of, Photo photo, Words words)
    {
        var scale = Math.Min(Wide / photo.Wide, High / photo.High);
        var (wide, high) = (photo.Wide * scale, photo.High * scale);
        return new Svg(Math.Max(wide, Wide * 0.75), high + 4 + Svg.LegendLine).Jpeg(0, 0, wide, high, photo.Jpeg.Span)
            .Legend(0, high + Svg.LegendLine, Describe(of, photo).Plain(words));
    }

    private static Inline Why(PhotoState state) => state switch
    {
        PhotoState.Missing => Ours("there is no such file"),
        PhotoState.Unreadable => Ours("the file can't be read"),
        PhotoState.TooLarge => Ours("it is too large"),
        PhotoState.NoPicture => Ours("the file is no picture of a known kind"),
        PhotoState.Damaged => Ours("the picture is damaged"),
        _ => Dash,
    };
}
