using TrimOut.Core.Checks;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.HouseFile.Texts;
using TrimOut.Testing;

namespace TrimOut.Tests.SampleJobs;

/// <summary>One of the invented houses that come with the program.</summary>
internal sealed class SampleJob
{
    private SampleJob(string folder)
    {
        Folder = folder;
        HistoryLines = File.ReadAllText(Path.Combine(folder, HistoryText.FileName));
        Log = HistoryText.Read(HistoryLines).Value;
        Report = CheckReport.Of(Log.House);
    }

    public static string Home { get; } = Path.Combine(Repository.Root, "sample-jobs");

    public static IEnumerable<string> Names => Directory.GetDirectories(Home).Select(f => Path.GetFileName(f)!).Order(StringComparer.Ordinal);

    public string Folder { get; }

    public string HistoryLines { get; }

    public HouseLog Log { get; }

    public House House => Log.House;

    public CheckReport Report { get; }

    /// <summary>What the checks find, one finding a line: severity, check, subject, message.</summary>
    public string Findings => string.Concat(Report.Findings.Select(f =>
        $"{KebabCase.Of(f.Check.Severity)}{(f.Open ? "" : ", waived")} | {f.Check.Id} | {House.NameOf(f.Subject)} | {f.Found.Message.In(House)}\n"));

    public static SampleJob Open(string name) => new(Path.Combine(Home, name));

    public string In(string file) => Path.Combine(Folder, file);
}
