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
            .. folders.Prepend(Path.GetDirectoryName(house) ?? "").Where(f => f.Length > 0).Distinct(StringComparer.Ordinal).SelectMany(Files)
                .Where(f => f != house).Distinct(StringComparer.Ordinal).Take(Most).Select(f => Choice(f, name))
                .OrderByDescending(c => c.Same == true).ThenByDescending(c => c.Changed),
        ];
    }

    /// <summary>The folders of this user, and the top of each stick with the folders in it.</summary>
    public static IEnumerable<string> UsualFolders()
    {
        var home = Environment.GetFolderPath(Environment.SpecialFolder.UserProfile);
        string[] own = [UserFolder.Houses, home, Path.Combine(home, "Desktop"), Path.Combine(home, "Documents"), Path.Combine(home, "Downloads")];
        string[] mounts = [Path.Combine("/media", LoginName.Now), Path.Combine("/run/media", LoginName.Now), "/media", "/mnt", "/Volumes"];
        var sticks = OperatingSystem.IsWindows()
            ? DriveInfo.GetDrives().Where(d => d is { DriveType: DriveType.Removable, IsReady: true }).Select(d => d.RootDirectory.FullName)
            : mounts.SelectMany(Folders);
        return [.. own, .. sticks.SelectMany(s => Folders(s).Prepend(s))];
    }

    private static CopyChoice Choice(string path, string? house)
    {
        var of = HouseOnDisk.HouseOf(path);
        return new(path, Path.GetFileNameWithoutExtension(path), Changed(path), of is null ? null : of == house);
    }

    private static DateTimeOffset? Changed(string path) => Quietly<DateTimeOffset?>(() => new DateTimeOffset(new FileInfo(path).LastWriteTime), null);

    private static string[] Files(string folder) => Quietly(() => Directory.Exists(folder) ? Directory.GetFiles(folder, Pattern) : [], []);

    private static string[] Folders(string folder) => Quietly(() => Directory.Exists(folder) ? Directory.GetDirectories(folder) : [], []);

    /// <summary>A folder that may not be looked into, or a stick that is pulled out meanwhile, has nothing.</summary>
    private static T Quietly<T>(Func<T> look, T otherwise)
    {
        try
        {
            return look();
        }
        catch (Exception failed) when (failed is IOException or UnauthorizedAccessException)
        {
            return otherwise;
        }
    }
}
