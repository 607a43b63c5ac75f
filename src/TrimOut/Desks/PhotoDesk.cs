using System.Collections.Immutable;
using System.Globalization;
using System.Runtime.InteropServices;
using TrimOut.Core;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Plans.Photos;
using TrimOut.HouseFile.Files;
using TrimOut.HouseFile.Photos;
using TrimOut.Papers.Photos;
using TrimOut.Screens.Photos;

namespace TrimOut.Desks;

/// <summary>Photos for the screens and the command line: found, read, copied beside the house file.</summary>
internal static class PhotoDesk
{
    /// <summary>No more pictures are read of one folder.</summary>
    private const int Most = 2000;

    private static readonly string[] Endings = [".jpg", ".jpeg", ".jfif", ".png", ".webp", ".gif", ".bmp"];

    /// <summary>Pictures as some phones keep them, which nothing here reads.</summary>
    private static readonly string[] OtherEndings = [".heic", ".heif", ".avif", ".dng", ".tif", ".tiff"];

    private static readonly string[] Films = [".mp4", ".m4v", ".mov", ".avi", ".mkv", ".webm", ".3gp", ".mts"];

    /// <summary>Folders with pictures, the latest first; that of the house itself is none of them.</summary>
    public static IReadOnlyList<PhotoFolderChoice> Folders(string house, IEnumerable<string> folders)
    {
        var own = new PhotoFolder(house).Where;
        var pictures = Environment.GetFolderPath(Environment.SpecialFolder.MyPictures);
        return
        [
            .. folders.Prepend(Path.GetDirectoryName(house) ?? "").Append(pictures).Where(f => f.Length > 0)
                .SelectMany(f => FoundFiles.Folders(f).SelectMany(d => Path.GetFileName(d) == "DCIM" ? FoundFiles.Folders(d).Prepend(d) : [d]).Prepend(f))
                .Distinct(StringComparer.Ordinal).Where(f => f != own)
                .Select(f => (Folder: f, Pictures: FoundFiles.In(f, "*").Where(IsPicture).ToList())).Where(f => f.Pictures.Count > 0)
                .Select(f => new PhotoFolderChoice(f.Folder, f.Pictures.Count, f.Pictures.Max(FoundFiles.Changed))).OrderByDescending(f => f.Latest),
        ];
    }

    /// <summary>The pictures of a folder and of those in it, with what each says of itself and whether the house has it.</summary>
    /// <param name="log">The house with its history.</param>
    /// <param name="where">Its file.</param>
    /// <param name="folder">The folder, or one picture.</param>
    /// <param name="says">Told how far it is.</param>
    /// <param name="stop">Stops between two pictures.</param>
    public static Result<PhotosRead> Read(HouseLog log, string where, string folder, Action<string> says, CancellationToken stop)
    {
        if (!Directory.Exists(folder) && (!File.Exists(folder) || PlainFile.NameOf(folder) is not null))
            return new Refusal($"There is no folder {folder}.");
        try
        {
            var found = File.Exists(folder) ? new PhotoSearch([folder], [])
                : PhotoSearch.In(folder, new PhotoFolder(where).Where, f => IsPicture(f) || HasEnding(f, Films), Most);
            var had = Had(log.House, where);
            var count = 0;
            var read = found.Files.AsParallel().AsOrdered().WithCancellation(stop).Select(f =>
            {
                var one = Look(f);
                says(string.Create(CultureInfo.InvariantCulture, $"{Interlocked.Increment(ref count)} of {found.Files.Count}"));
                return one;
            }).ToList();
            return new PhotosRead(
                OncePerPicture(read.ConvertAll(f => f with { Photo = f.Photo with { TakenInAs = had.TakenInAs(f) } }), new PhotoPlan(log)), found.Remarks);
        }
        catch (Exception failed) when (failed is IOException or UnauthorizedAccessException)
        {
            return new Refusal(PlainFile.WhyNotRead(folder, failed));
        }
    }

    /// <summary>Copies pictures beside the house file, as <see cref="Screens.Shell.IDesk.CopyPhotos"/> says.</summary>
    public static IReadOnlyList<Result<string>> Copy(House house, string where, IReadOnlyList<(PhotoFile File, PhotoPlace Place)> photos, Action<string> says,
        CancellationToken stop)
    {
        var to = new PhotoFolder(where);
        var room = TakePhotos.HaveRoom(house, [.. photos.Select(p => (p.Place, to.PathOf(p.File.Path, p.File.Print)))]);
        var copied = new List<Result<string>>();
        foreach (var (at, (file, place)) in photos.Index())
        {
            says(string.Create(CultureInfo.InvariantCulture, $"{at + 1} of {photos.Count}"));
            copied.Add(stop.IsCancellationRequested ? new Refusal("stopped before it was copied.")
                : !room[at] ? new Refusal(place.Holder.Get(place.Fact) is null && !TakePhotos.HaveRoom(house, [(place, to.PathOf(file.Path, file.Print))])[0]
                    ? "the name of the house file is so long that no path to a photo beside it can be noted: give it a shorter one."
                    : $"{place.Of.Name} has so many photos noted that there is no room for one more.")
                : Copy(to, file));
        }
        return copied;
    }

    /// <summary>A picture for cells, or why it can't be shown.</summary>
    public static Result<CellPicture> Picture(Photo photo) => PhotoPixels.Of(photo) is var (wide, high, rgb)
        ? new CellPicture(wide, high, ImmutableCollectionsMarshal.AsImmutableArray(rgb)) : new Refusal($"{Why(photo.State) ?? "the picture is damaged"}.");

    /// <summary>Of files that are one picture the one that says best where it belongs is kept, the first of several that do; the others name it.</summary>
    private static List<PhotoFile> OncePerPicture(List<PhotoFile> read, PhotoPlan plan)
    {
        var best = read.Where(f => f.Print.Length > 0).GroupBy(f => f.Print, StringComparer.Ordinal).Where(g => g.Skip(1).Any())
            .ToDictionary(g => g.Key, g => g.Select(f => (File: f, Placed: plan.Place(f.Photo))).OrderBy(f => !f.Placed.IsSure).ThenBy(f => f.Placed.By)
                .First().File, StringComparer.Ordinal);
        return read.ConvertAll(f => best.TryGetValue(f.Print, out var one) && one != f ? f with { Photo = f.Photo with { SameAs = one.Photo.Name } } : f);
    }

    private static Result<string> Copy(PhotoFolder to, PhotoFile file)
    {
        try
        {
            var bytes = PlainFile.ReadAll(file.Path, PhotoFolder.Largest);
            return PhotoFolder.Print(bytes) == file.Print ? to.Keep(file.Path, bytes) : new Refusal("it is another picture than it was when it was looked at.");
        }
        catch (Exception failed) when (failed is IOException or UnauthorizedAccessException)
        {
            return new Refusal(PlainFile.WhyNotRead(file.Path, failed));
        }
    }

    private static PhotoFile Look(string file)
    {
        var name = Path.GetFileName(file);
        if (HasEnding(file, Films))
            return new PhotoFile(file, "", Not(name, "a film; only photos are taken in"));
        if (HasEnding(file, OtherEndings))
            return new PhotoFile(file, "", Not(name, "a kind of picture that can't be read here; have the phone save JPEG"));
        try
        {
            var bytes = PlainFile.ReadAll(file, PhotoFolder.Largest);
            var seen = PhotoSeen.In(bytes);
            return new PhotoFile(file, PhotoFolder.Print(bytes), new FoundPhoto(name, seen.Taken, seen.Labels)
            { FromUtc = seen.FromUtc, Unreadable = Why(seen.State) });
        }
        catch (Exception failed) when (failed is IOException or UnauthorizedAccessException)
        {
            return new PhotoFile(file, "", Not(name, PlainFile.WhyNotRead(file, failed).TrimEnd('.')));
        }
    }

    private static FoundPhoto Not(string name, string why) => new(name, null, []) { Unreadable = why };

    private static string? Why(PhotoState state) => state switch
    {
        PhotoState.Read => null,
        PhotoState.Missing => "there is no such file",
        PhotoState.TooLarge => "it is too large",
        PhotoState.NoPicture => "the file is no picture of a known kind",
        PhotoState.Damaged => "the picture is damaged",
        _ => "the file can't be read",
    };

    private static bool IsPicture(string file) => HasEnding(file, Endings) || HasEnding(file, OtherEndings);

    private static bool HasEnding(string file, string[] endings) =>
        Path.GetFileName(file)[0] != '.' && endings.Contains(Path.GetExtension(file), StringComparer.OrdinalIgnoreCase);

    private static HadPhotos Had(House house, string where) => new(PhotoFiles.Of(where), HousePhotos.Of(house).Select(p => p.Path));
}

/// <summary>The pictures that a house names and that are there, to be compared byte for byte.</summary>
internal sealed class HadPhotos
{
    private readonly ILookup<long, (string Path, string File)> _bySize;
    private readonly Dictionary<string, string> _prints = new(StringComparer.Ordinal);

    public HadPhotos(PhotoFiles files, IEnumerable<string> paths) => _bySize = paths.Distinct(StringComparer.Ordinal).Where(files.Has)
        .Select(p => (Path: p, File: files.FileOf(p))).ToLookup(p => new FileInfo(p.File).Length);

    /// <summary>The path by which the house names the same picture; null where it has none.</summary>
    public string? TakenInAs(PhotoFile file) => file.Print.Length == 0 ? null
        : _bySize[new FileInfo(file.Path) is { Exists: true } there ? there.Length : -1]
            .Where(p => PrintOf(p.File) == file.Print).Select(p => p.Path).FirstOrDefault();

    private string PrintOf(string file)
    {
        if (_prints.TryGetValue(file, out var known))
            return known;
        try
        {
            return _prints[file] = PhotoFolder.Print(PlainFile.ReadAll(file, PhotoFolder.Largest));
        }
        catch (Exception failed) when (failed is IOException or UnauthorizedAccessException)
        {
            return _prints[file] = "";
        }
    }
}
