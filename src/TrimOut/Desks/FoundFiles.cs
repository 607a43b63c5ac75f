using TrimOut.HouseFile;

namespace TrimOut.Desks;

/// <summary>Where files are looked for that somebody may want to take in: the user's folders, and what can be pulled out.</summary>
internal static class FoundFiles
{
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

    /// <summary>When a file was changed last; null where that can't be seen.</summary>
    public static DateTimeOffset? Changed(string path) => Quietly<DateTimeOffset?>(() => new DateTimeOffset(new FileInfo(path).LastWriteTime), null);

    /// <summary>The files of a folder with such names.</summary>
    public static string[] In(string folder, string pattern) => Quietly(() => Directory.Exists(folder) ? Directory.GetFiles(folder, pattern) : [], []);

    /// <summary>The folders in a folder.</summary>
    public static string[] Folders(string folder) => Quietly(() => Directory.Exists(folder) ? Directory.GetDirectories(folder) : [], []);

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
