using TrimOut.HouseFile;
using TrimOut.HouseFile.Texts;

namespace TrimOut.Desks;

/// <summary>The sample jobs that come with the program, as text.</summary>
internal static class SampleJobs
{
    /// <summary>Their folders, by name.</summary>
    public static IEnumerable<string> Folders => Directory.Exists(Home)
        ? Directory.GetDirectories(Home).Where(f => File.Exists(Path.Combine(f, HistoryText.FileName))).Order(StringComparer.Ordinal)
        : [];

    private static string Home => Path.Combine(AppContext.BaseDirectory, "sample-jobs");

    /// <summary>The first line of a sample's own words about itself, below the heading.</summary>
    public static string About(string folder)
    {
        var words = Path.Combine(folder, "README.md");
        return File.Exists(words) ? File.ReadLines(words).FirstOrDefault(l => l.Length > 0 && l[0] != '#') ?? "" : "";
    }

    /// <summary>The house file that a sample job is worked on in: the user's own copy, made the first time.</summary>
    /// <returns>The file, and whether it was made now.</returns>
    public static (string File, bool Made) Copy(string folder)
    {
        var file = Path.Combine(UserFolder.Houses, Path.GetFileName(Path.TrimEndingDirectorySeparator(Path.GetFullPath(folder))) + ".trimout");
        if (File.Exists(file))
            return (file, false);
        var log = HouseSource.ReadText(Path.Combine(folder, HistoryText.FileName));
        UserFolder.Make(UserFolder.Houses);
        HouseOnDisk.Create(file, TimeProvider.System, log.Changes).Dispose();
        return (file, true);
    }
}
