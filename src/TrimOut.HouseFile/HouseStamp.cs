using System.Globalization;
using TrimOut.HouseFile.Durable;
using TrimOut.HouseFile.Files;

namespace TrimOut.HouseFile;

/// <summary>What tells whether a house changed since something was worked out from it, without opening it.</summary>
/// <remarks>
/// The house file's length, time and last page, which holds the hash of all before it, and the length and time of the journal beside it, where there is one.
/// Whoever writes the house changes one of them; who copies another house over it with the same length and time changes the last page.
/// </remarks>
public static class HouseStamp
{
    /// <summary>The stamp of a house file as it is now.</summary>
    /// <param name="path">The house file.</param>
    /// <exception cref="IOException">It is not there or can't be read.</exception>
    /// <exception cref="UnauthorizedAccessException">There is no right to read it.</exception>
    public static string Of(string path)
    {
        var names = HouseFileNames.Of(path);
        using var file = PlainFile.OpenRead(names.Main);
        var page = new byte[Math.Min(Trailer.Size, file.Length)];
        file.Seek(-page.Length, SeekOrigin.End);
        file.ReadExactly(page);
        var journal = new FileInfo(names.Journal);
        return string.Create(CultureInfo.InvariantCulture, $"{file.Length} {File.GetLastWriteTimeUtc(names.Main).Ticks} {Trailer.Hash(page)[..32]} ")
            + (journal.Exists ? string.Create(CultureInfo.InvariantCulture, $"{journal.Length} {journal.LastWriteTimeUtc.Ticks}") : "-");
    }

    /// <summary>A name for what is kept of a house file elsewhere than beside it: two names of one file have two.</summary>
    /// <param name="path">The house file.</param>
    public static string PlaceOf(string path) => HouseFileNames.Of(path).Place;
}
