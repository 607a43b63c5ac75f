namespace TrimOut.Printing;

/// <summary>Finds a browser of the Chromium family on this machine.</summary>
internal static class BrowserSearch
{
    private static readonly string[] Names = ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable", "chrome", "microsoft-edge", "msedge"];

    private static readonly string[] OnMac =
    [
        "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome", "/Applications/Chromium.app/Contents/MacOS/Chromium",
        "/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge",
    ];

    private static readonly string[] OnWindows =
        ["Google/Chrome/Application/chrome.exe", "Microsoft/Edge/Application/msedge.exe", "Chromium/Application/chrome.exe"];

    private static readonly Environment.SpecialFolder[] Programs =
        [Environment.SpecialFolder.ProgramFiles, Environment.SpecialFolder.ProgramFilesX86, Environment.SpecialFolder.LocalApplicationData];

    /// <summary>The first that there is; null where there is none.</summary>
    public static string? Find() => Find(Environment.GetEnvironmentVariable("PATH") ?? "", File.Exists);

    /// <summary>The first that there is: on the search path, then where browsers are installed.</summary>
    /// <param name="searchPath">The folders of the search path, as the system writes them.</param>
    /// <param name="exists">Whether a file is there.</param>
    public static string? Find(string searchPath, Func<string, bool> exists) =>
        OnPath(searchPath).Concat(Installed).FirstOrDefault(exists);

    private static IEnumerable<string> OnPath(string searchPath) =>
        from folder in searchPath.Split(Path.PathSeparator, StringSplitOptions.RemoveEmptyEntries)
        where Path.IsPathFullyQualified(folder)
        from name in Names
        select Path.Combine(folder, OperatingSystem.IsWindows() ? name + ".exe" : name);

    private static string[] Installed => OperatingSystem.IsMacOS() ? OnMac : !OperatingSystem.IsWindows() ? []
        : [.. from folder in Programs from path in OnWindows select Path.Combine(Environment.GetFolderPath(folder), path)];
}
