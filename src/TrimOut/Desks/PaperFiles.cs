using System.Globalization;
using System.Text;
using TrimOut.Core;
using TrimOut.Papers;
using TrimOut.Papers.Templates;
using TrimOut.Screens.Shell;

namespace TrimOut.Desks;

/// <summary>The papers as files: Markdown with its drawings beside it, one HTML page, a table where there is one, and a PDF where asked for.</summary>
internal static class PaperFiles
{
    private const string LabelsPaper = "labels";

    /// <summary>The papers, for the screens.</summary>
    public static IReadOnlyList<PaperChoice> Choices { get; } =
        [.. PaperList.All.Select(p => new PaperChoice(p.Id, p.Title, p.Reader) { OnLabels = p.Id == LabelsPaper })];

    /// <summary>The same with when each was written beside a house file.</summary>
    public static IReadOnlyList<PaperChoice> WrittenBeside(string house, WrittenPapers written)
    {
        var pages = Choices.ToDictionary(c => c.Id, c => Path.Combine(Path.GetDirectoryName(Path.GetFullPath(house))!, $"{StemOf(house)}-{c.Id}.html"));
        var when = written.When(pages.Values);
        return [.. Choices.Select(c => when.TryGetValue(pages[c.Id], out var at) ? c with { Written = new PaperWriting(at.At, at.Extent) } : c)];
    }

    /// <summary>The paper with that id.</summary>
    public static Result<Paper> Find(string id) => PaperList.Find(id) is { } paper
        ? paper
        : new Refusal($"There is no paper {id}. There are: {string.Join(", ", PaperList.All.Select(p => p.Id))}.");

    /// <summary>Writes a paper: it is made whole first, then its files are put in their places, the page last.</summary>
    /// <param name="paper">The paper.</param>
    /// <param name="data">What it is written from; its files' names are in it.</param>
    /// <param name="template">The template to write it by; null for TrimOut's own.</param>
    /// <param name="folder">The folder to write to, made when it is not there.</param>
    /// <param name="before">What was written before.</param>
    /// <param name="over">Whether a file, by its full path, is written over though TrimOut did not write it; null for none.</param>
    /// <param name="pdf">Makes a PDF of it; null for none.</param>
    /// <returns>The files.</returns>
    /// <exception cref="OperationCanceledException">It was stopped before any file was touched.</exception>
    /// <exception cref="NotOverwrittenException">Something that is not TrimOut's has the name of a file; none was touched.</exception>
    public static IReadOnlyList<string> Write(Paper paper, PaperData data, PaperTemplate? template, string folder, WrittenPapers before,
        Func<string, bool>? over = null, Func<WrittenPaper, byte[]>? pdf = null)
    {
        var written = paper.Write(data, template);
        var stem = $"{data.FilesOf}-{written.Id}";
        var files = written.Drawings.Select(d => (Name: Uri.UnescapeDataString(d.Key), Bytes: Encoding.UTF8.GetBytes(d.Value))).ToList();
        if (paper.Csv is { } csv)
            files.Add((stem + ".csv", Encoding.UTF8.GetBytes(csv(data))));
        if (paper.Xlsx is { } xlsx)
            files.Add((stem + ".xlsx", xlsx(data)));
        files.Add((stem + ".md", Encoding.UTF8.GetBytes(written.Markdown)));
        files.Add((stem + ".html", Encoding.UTF8.GetBytes(written.ToHtml())));
        if (pdf is not null)
            files.Add((stem + ".pdf", pdf(written)));
        data.Stop.ThrowIfCancellationRequested();
        // The first change is in every copy of the house, and in no other house.
        Put(files, folder, before, over, data.Log.Changes.Count > 0 ? data.Log.Changes[0].Id.ToString() : "");
        InWords(before.List, () => before.Note(Path.Combine(folder, stem + ".html"), data.Log.Extent));
        return [.. files.Select(f => Path.Combine(folder, f.Name)).OrderBy(f => f.EndsWith(".svg", StringComparison.Ordinal))];
    }

    /// <summary>Writes several papers of one house, each whole before the next begins.</summary>
    /// <param name="papers">The papers.</param>
    /// <param name="data">What they are written from; what takes long is worked out once for all.</param>
    /// <param name="folder">The folder to write to.</param>
    /// <param name="says">Told what is being written.</param>
    /// <param name="before">What was written before.</param>
    /// <param name="over">Whether a file, by its full path, is written over though TrimOut did not write it; null for none.</param>
    /// <param name="template">The template to write each by; null for TrimOut's own.</param>
    /// <param name="pdf">Makes a PDF of each; null for none.</param>
    /// <returns>The files.</returns>
    /// <exception cref="OperationCanceledException">It was stopped: the papers before are whole, the others untouched.</exception>
    /// <exception cref="NotOverwrittenException">
    /// Something that is not TrimOut's has the name of a file: the papers before are whole, the others untouched.
    /// </exception>
    public static IEnumerable<string> WriteAll(IReadOnlyList<Paper> papers, PaperData data, string folder, Action<string> says, WrittenPapers before,
        Func<string, bool>? over = null, Func<Paper, PaperTemplate?>? template = null, Func<WrittenPaper, byte[]>? pdf = null)
    {
        for (var at = 0; at < papers.Count; at++)
        {
            data.Stop.ThrowIfCancellationRequested();
            says(string.Create(CultureInfo.InvariantCulture, $"{at + 1} of {papers.Count}, {papers[at].Title}"));
            foreach (var file in Write(papers[at], data, template?.Invoke(papers[at]), folder, before, over, pdf))
                yield return file;
        }
    }

    /// <summary>Writes a paper over several houses, as Markdown and as one HTML page.</summary>
    /// <param name="written">The paper.</param>
    /// <param name="stem">What its files are called, without their endings.</param>
    /// <param name="folder">The folder to write to, made when it is not there.</param>
    /// <param name="before">What was written before.</param>
    /// <param name="over">Whether a file, by its full path, is written over though TrimOut did not write it.</param>
    /// <param name="places">Over the houses of which places it is, as one word.</param>
    /// <returns>The files.</returns>
    /// <exception cref="NotOverwrittenException">
    /// Something that is not TrimOut's, or is over the houses of other places, has the name of a file; none was touched.
    /// </exception>
    public static IReadOnlyList<string> WriteOverHouses(WrittenPaper written, string stem, string folder, WrittenPapers before, Func<string, bool> over,
        string places)
    {
        List<(string Name, byte[] Bytes)> files =
            [(stem + ".md", Encoding.UTF8.GetBytes(written.Markdown)), (stem + ".html", Encoding.UTF8.GetBytes(written.ToHtml()))];
        Put(files, folder, before, over, places);
        return [.. files.Select(f => Path.Combine(folder, f.Name))];
    }

    private static void Put(List<(string Name, byte[] Bytes)> files, string folder, WrittenPapers before, Func<string, bool>? over, string house)
    {
        before.Require(folder, files, over ?? (_ => false), house);
        InWords(folder, () => Directory.CreateDirectory(folder));
        // Remembered first: what is killed in between was TrimOut's, and may be written over.
        InWords(before.List, () => before.Add(folder, files, house));
        foreach (var file in files)
            InWords(Path.Combine(folder, file.Name), () => Write(Path.Combine(folder, file.Name), file.Bytes));
    }

    /// <summary>The name of a house's file or folder, without its ending.</summary>
    public static string StemOf(string path) => Path.GetFileNameWithoutExtension(Path.TrimEndingDirectorySeparator(Path.GetFullPath(path)));

    /// <summary>Writes something; what the system says of a full or read-only disk is put into the user's words.</summary>
    private static void InWords(string path, Action write)
    {
        try
        {
            write();
        }
        catch (UnauthorizedAccessException failed)
        {
            throw new UnauthorizedAccessException(HouseFile.Files.PlainFile.WhyNotWritten(path, failed), failed);
        }
        catch (IOException failed)
        {
            throw new IOException(HouseFile.Files.PlainFile.WhyNotWritten(path, failed), failed);
        }
    }

    private static void Write(string path, byte[] bytes)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(Path.GetFullPath(path))!);
        OwnFile.Write(path, bytes);
    }
}
