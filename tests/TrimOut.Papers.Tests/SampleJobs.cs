using TrimOut.Core.Facts;
using TrimOut.Core.History;

namespace TrimOut.Papers.Tests;

/// <summary>The sample jobs of the repository.</summary>
internal static class SampleJobs
{
    /// <summary>The top folder of the repository.</summary>
    public static readonly string Root = Find();

    private static readonly string Folder = Path.Combine(Root, "sample-jobs");

    /// <summary>Their names, in order.</summary>
    public static string[] Names { get; } = [.. Directory.GetDirectories(Folder).Select(d => Path.GetFileName(d)!).Order(StringComparer.Ordinal)];

    /// <summary>What papers of one are written from, on a fixed day.</summary>
    public static PaperData Data(string name) => PaperData.Of(HouseLog.Of(Changes(name)).Value, FinishedHouse.Day);

    /// <summary>Serials that were ever written in one: a finding may tell of one that stands there no more.</summary>
    public static IEnumerable<string> Serials(string name) => Changes(name).SelectMany(c => c.Edits).OfType<Edit.Put>()
        .Where(p => p.Field == UnitFacts.Serial.Name).Select(p => p.Value).OfType<string>();

    private static IEnumerable<Change> Changes(string name) =>
        File.ReadLines(Path.Combine(Folder, name, "history.jsonl")).Where(l => l.Length > 0).Select(l => ChangeJson.Read(l).Value);

    private static string Find()
    {
        for (var at = new DirectoryInfo(AppContext.BaseDirectory); at is not null; at = at.Parent)
        {
            if (Directory.Exists(Path.Combine(at.FullName, "sample-jobs")))
                return at.FullName;
        }
        throw new DirectoryNotFoundException("sample-jobs");
    }
}
