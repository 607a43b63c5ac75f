using System.Text;
using TrimOut.Core.Checks;
using TrimOut.Core.Houses;
using TrimOut.Papers;
using TrimOut.Screens.Shell;

namespace TrimOut.Desks;

/// <summary>The papers that can be written, and their files.</summary>
internal static class PaperFiles
{
    private static readonly (PaperChoice Choice, Func<House, DateOnly, CheckReport, string> Markdown, Func<House, DateOnly, CheckReport, string> Html)[] All =
    [
        (new("binder", "Owner's binder", "the owner"), Binder.Markdown, Binder.Html),
    ];

    /// <summary>The papers.</summary>
    public static IReadOnlyList<PaperChoice> Choices { get; } = [.. All.Select(p => p.Choice)];

    /// <summary>A paper as Markdown.</summary>
    public static string Markdown(string paper, House house, DateOnly date) => Find(paper).Markdown(house, date, CheckReport.Of(house));

    /// <summary>Writes a paper as Markdown and as one HTML page.</summary>
    /// <param name="paper">The paper's short name.</param>
    /// <param name="house">The house.</param>
    /// <param name="date">The day that stands on it.</param>
    /// <param name="folder">The folder to write to.</param>
    /// <param name="stem">What the files' names begin with.</param>
    /// <returns>The files.</returns>
    public static IReadOnlyList<string> Write(string paper, House house, DateOnly date, string folder, string stem)
    {
        var report = CheckReport.Of(house);
        var (_, markdown, html) = Find(paper);
        Directory.CreateDirectory(folder);
        var path = Path.Combine(folder, $"{stem}-{paper}");
        return [Write(path + ".md", markdown(house, date, report)), Write(path + ".html", html(house, date, report))];
    }

    private static (PaperChoice Choice, Func<House, DateOnly, CheckReport, string> Markdown, Func<House, DateOnly, CheckReport, string> Html) Find(string paper) =>
        All.First(p => p.Choice.Id == paper);

    private static string Write(string path, string text)
    {
        OwnFile.Write(path, Encoding.UTF8.GetBytes(text));
        return path;
    }
}
