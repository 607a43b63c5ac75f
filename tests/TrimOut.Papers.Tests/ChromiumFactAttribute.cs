namespace TrimOut.Papers.Tests;

/// <summary>A test that prints pages with a browser, and says so where there is none.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class ChromiumFactAttribute : FactAttribute
{
    /// <summary>The browser; null where there is none.</summary>
    public static string? Browser { get; } =
        (from folder in (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator, StringSplitOptions.RemoveEmptyEntries)
         from name in (string[])["chromium", "chromium-browser", "google-chrome"]
         let path = Path.Combine(folder, name)
         where File.Exists(path)
         select path).FirstOrDefault();

    public ChromiumFactAttribute()
    {
        if (Browser is null)
            Skip = "No chromium or chrome on the path: nothing prints the pages that are counted here.";
    }
}
