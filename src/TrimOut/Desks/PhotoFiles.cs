using System.Collections.Concurrent;
using TrimOut.HouseFile.Files;
using TrimOut.HouseFile.Photos;
using TrimOut.Papers.Photos;

namespace TrimOut.Desks;

/// <summary>The pictures of a house, by the paths that were typed: beside the house file, or anywhere where a whole path was typed.</summary>
/// <param name="folder">The folder that paths begin in.</param>
internal sealed class PhotoFiles(string folder)
{
    private readonly ConcurrentDictionary<string, Photo> _read = new(StringComparer.Ordinal);

    /// <summary>Those of a house file, or of a folder that holds a history.</summary>
    public static PhotoFiles Of(string house) =>
        new(Directory.Exists(house) ? Path.GetFullPath(house) : Path.GetDirectoryName(Path.GetFullPath(house)) ?? ".");

    /// <summary>Where the file of a picture is, whether it is there or not.</summary>
    public string FileOf(string path) => In(folder, path);

    /// <summary>Whether the file of a picture is there; it is not read.</summary>
    public bool Has(string path) => File.Exists(In(folder, path));

    // A laptop with another system wrote the other sign between folders.
    private static string In(string folder, string typed) => Path.Combine(folder, OperatingSystem.IsWindows() ? typed : typed.Replace('\\', '/'));

    /// <summary>A picture, shrunk; each file is read once.</summary>
    public Photo Read(string path) => _read.GetOrAdd(path, static (typed, folder) =>
    {
        try
        {
            var file = In(folder, typed);
            return !File.Exists(file) && PlainFile.NameOf(file) is null ? Photo.Not(PhotoState.Missing)
                : new FileInfo(file) is { Exists: true, Length: > PhotoFolder.Largest } ? Photo.Not(PhotoState.TooLarge)
                : PhotoShrinker.Read(PlainFile.ReadAll(file, PhotoFolder.Largest));
        }
        catch (Exception failed) when (failed is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return Photo.Not(PhotoState.Unreadable);
        }
    }, folder);
}
