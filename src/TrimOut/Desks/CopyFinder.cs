using TrimOut.HouseFile;
using TrimOut.Screens.Shell;

namespace TrimOut.Desks;

/// <summary>Looks for house files that may be copies of one: beside it, in the user's folders, and on what can be pulled out.</summary>
internal static class CopyFinder
{
    private const string Pattern = "*.trimout";

    /// <summary>So many are listed at the most: a list that nobody reads helps nobody.</summary>
    private const int Most = 200;

    /// <summary>What was found, copies of the house first, the latest first.</summary>
    /// <param name="house">The house file.</param>
    /// <param name="folders">Folders to look into besides those that are always looked into; a folder that is not there is passed over.</param>
    public static IReadOnlyList<CopyChoice> Of(string house, IEnumerable<string> folders)
    {
        var name = HouseOnDisk.HouseOf(house);
        return
        [
            .. folders.Prepend(Path.GetDirectoryName(house) ?? "").Where(f => f.Length > 0).Distinct(StringComparer.Ordinal)
                .SelectMany(f => FoundFiles.In(f, Pattern))
                .Where(f => f != house).Distinct(StringComparer.Ordinal).Take(Most).Select(f => Choice(f, name))
                .OrderByDescending(c => c.Same == true).ThenByDescending(c => c.Changed),
        ];
    }

    private static CopyChoice Choice(string path, string? house)
    {
        var of = HouseOnDisk.HouseOf(path);
        return new(path, Path.GetFileNameWithoutExtension(path), FoundFiles.Changed(path), of is null ? null : of == house);
    }
}
