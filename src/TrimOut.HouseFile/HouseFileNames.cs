using System.Globalization;

namespace TrimOut.HouseFile;

/// <summary>The files of one house: the house file itself, and what stands beside it while it is open.</summary>
internal sealed record HouseFileNames(string Main)
{
    /// <summary>The ending of a house file's name.</summary>
    public const string Ending = ".trimout";

    /// <summary>The files of the house that somebody means who names a path; a link stands for what it leads to.</summary>
    public static HouseFileNames Of(string path)
    {
        var full = Path.GetFullPath(path);
        return new HouseFileNames(File.Exists(full) ? File.ResolveLinkTarget(full, returnFinalTarget: true)?.FullName ?? full : full);
    }

    /// <summary>The house file being written anew.</summary>
    public string Next => Main + ".new";

    /// <summary>The changes since the house file was last written.</summary>
    public string Journal => JournalAt ?? Main + ".journal";

    /// <summary>Where the journal lies when it has another name than the house file gives it; null where it has that.</summary>
    public string? JournalAt { get; init; }

    /// <summary>A journal being begun.</summary>
    public string JournalNext => Main + ".journal.new";

    /// <summary>Held by the program that has the house open.</summary>
    public string Lock => Main + ".lock";

    /// <summary>Says who that is.</summary>
    public string InUse => Main + ".in-use";

    /// <summary>
    /// The house file's whole name, as a seal of it: two names of one file have two, and nobody reads a folder's name from a file that was handed on.
    /// </summary>
    public string Place => Durable.Trailer.Hash(System.Text.Encoding.UTF8.GetBytes(Main))[..16];

    /// <summary>A journal with bytes that could not be read, kept.</summary>
    public string Unread(Surroundings here) => Dated(here, "unread");

    /// <summary>A house file that another one takes the place of, kept; its journal lies beside it under the name that it has as a house.</summary>
    public HouseFileNames Aside(Surroundings here) => new(Dated(here, "aside"));

    private const int LongestName = 255;
    private const int RoomForMore = 48;

    /// <summary>A name that stays short enough for a disk with a date and endings behind it: most take 255 bytes.</summary>
    private static string Short(string path)
    {
        var name = Path.GetFileName(path);
        while (System.Text.Encoding.UTF8.GetByteCount(name) > LongestName - RoomForMore)
        {
            var stem = Path.GetFileNameWithoutExtension(name);
            name = stem[..^(char.IsLowSurrogate(stem[^1]) ? 2 : 1)] + Path.GetExtension(name);
        }
        return Path.Combine(Path.GetDirectoryName(path) ?? "", name);
    }

    /// <summary>A name with the date, that nothing has yet.</summary>
    private string Dated(Surroundings here, string what)
    {
        var name = $"{Short(Main)}.{what}-{here.Clock.GetUtcNow().UtcDateTime.ToString("yyyyMMdd-HHmmss", CultureInfo.InvariantCulture)}";
        return Enumerable.Range(1, int.MaxValue).Select(n => n == 1 ? name : string.Create(CultureInfo.InvariantCulture, $"{name}-{n}"))
            .First(n => FreeName.IsFree(here, new HouseFileNames(n)));
    }
}
