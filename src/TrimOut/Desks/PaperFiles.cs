using System.Text;
using TrimOut.Core;
using TrimOut.Papers;
using TrimOut.Papers.Templates;
using TrimOut.Screens.Shell;

namespace TrimOut.Desks;

/// <summary>The papers as files: Markdown with its drawings beside it, one HTML page, and a table where there is one.</summary>
internal static class PaperFiles
{
    /// <summary>The papers, for the screens.</summary>
    public static IReadOnlyList<PaperChoice> Choices { get; } = [.. PaperList.All.Select(p => new PaperChoice(p.Id, p.Title, p.Reader))];

    /// <summary>The paper with that id.</summary>
    public static Result<Paper> Find(string id) => PaperList.Find(id) is { } paper
        ? paper
        : new Refusal($"There is no paper {id}. There are: {string.Join(", ", PaperList.All.Select(p => p.Id))}.");

    /// <summary>Writes a paper.</summary>
    /// <param name="paper">The paper.</param>
    /// <param name="data">What it is written from.</param>
    /// <param name="template">The template to write it by; null for TrimOut's own.</param>
    /// <param name="folder">The folder to write to, made when it is not there.</param>
    /// <param name="house">What the files' names begin with.</param>
    /// <returns>The files.</returns>
    public static IReadOnlyList<string> Write(Paper paper, PaperData data, PaperTemplate? template, string folder, string house)
    {
        var written = paper.Write(data, template);
        var stem = $"{house}-{written.Id}";
        Directory.CreateDirectory(folder);
        var files = new List<(string Name, string Text)> { (stem + ".md", written.Markdown), (stem + ".html", written.ToHtml()) };
        if (paper.Csv is { } csv)
            files.Add((stem + ".csv", csv(data)));
        files.AddRange(written.Drawings.Select(d => (d.Key, d.Value)));
        return [.. files.Select(f => Write(Path.Combine(folder, f.Name), f.Text))];
    }

    /// <summary>The name of a house's file or folder, without its ending.</summary>
    public static string StemOf(string path) => Path.GetFileNameWithoutExtension(Path.TrimEndingDirectorySeparator(Path.GetFullPath(path)));

    private static string Write(string path, string text)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(Path.GetFullPath(path))!);
        OwnFile.Write(path, Encoding.UTF8.GetBytes(text));
        return path;
    }
}
