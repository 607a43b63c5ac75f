namespace TrimOut.Desks;

/// <summary>Where this user's houses and settings are kept when nothing else is said.</summary>
/// <remarks>By the XDG base directory specification: an unset, empty or relative path is passed over.</remarks>
internal static class UserFolder
{
    /// <summary>The folder; it may not be there yet.</summary>
    public static string Path => Environment.GetEnvironmentVariable("XDG_DATA_HOME") is { Length: > 0 } data && System.IO.Path.IsPathFullyQualified(data)
        ? System.IO.Path.Combine(data, "trimout")
        : OperatingSystem.IsWindows() || OperatingSystem.IsMacOS()
            ? System.IO.Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData), "trimout")
            : System.IO.Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.UserProfile), ".local", "share", "trimout");

    /// <summary>The folder that new houses and copies of sample jobs go to.</summary>
    public static string Houses => System.IO.Path.Combine(Path, "houses");

    /// <summary>The folder that papers over several houses go to, when the screens write them.</summary>
    public static string PapersOverHouses => System.IO.Path.Combine(Path, "papers");

    /// <summary>The folder with the parts of kits that are used again.</summary>
    public static string Kit => System.IO.Path.Combine(Path, "kit");

    /// <summary>The file with the look and the houses opened lately.</summary>
    public static string Settings => System.IO.Path.Combine(Path, "settings.json");

    /// <summary>Makes a folder that only this user may look into, where there is none.</summary>
    public static void Make(string folder)
    {
        if (OperatingSystem.IsWindows())
            Directory.CreateDirectory(folder);
        else
            Directory.CreateDirectory(folder, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
    }
}
