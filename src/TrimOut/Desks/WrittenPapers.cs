using System.Globalization;
using System.Security.Cryptography;
using System.Text;

namespace TrimOut.Desks;

/// <summary>Remembers what TrimOut wrote where: only that is written over without being asked.</summary>
/// <param name="list">The file with the list: a line each, the SHA-256 of what was written, the path, and behind a tab of which house it was.</param>
internal sealed class WrittenPapers(string list)
{
    private const int LongestList = 4 << 20;

    /// <summary>The file with the list.</summary>
    public string List => list;

    /// <summary>What was written for this user.</summary>
    public static WrittenPapers OfUser => new(Path.Combine(UserFolder.Path, "papers-written"));

    /// <summary>Throws where files can't be put in their places.</summary>
    /// <param name="folder">The folder that they go to; it was named by the user, and may be a link.</param>
    /// <param name="files">Their paths below it, and what will stand in them.</param>
    /// <param name="over">Whether the user said that a file, by its full path, is written over though it is not TrimOut's.</param>
    /// <param name="house">Of which house they are: what all its copies share.</param>
    /// <exception cref="NotOverwrittenException">Something that is not TrimOut's, or is of another house, has the name of one, or one is read-only.</exception>
    public void Require(string folder, IReadOnlyList<(string Name, byte[] Bytes)> files, Func<string, bool> over, string house)
    {
        var ofAnother = false;
        HashSet<string>? written = null;
        var notOurs = new List<string>();
        foreach (var (name, bytes) in files)
        {
            for (var part = name; part.Length > 0; part = Path.GetDirectoryName(part) ?? "")
            {
                if (new FileInfo(Path.Combine(folder, part)).LinkTarget is { } target)
                    throw new NotOverwrittenException(
                        $"{Path.Combine(folder, part)} is a link to {target}, and nothing is written through a link. Remove it, or write to another folder.");
            }
            var path = Path.GetFullPath(Path.Combine(folder, name));
            if (Directory.Exists(path))
                throw new NotOverwrittenException($"{path} is a folder. Rename it, or write to another folder.");
            if (HouseFile.Files.PlainFile.NameOf(path) is { } other)
                throw new NotOverwrittenException($"{path} is {other}, not a file. Remove it, or write to another folder.");
            if (!File.Exists(path))
                continue;
            var there = HouseFile.Files.PlainFile.ReadAll(path);
            if (there.AsSpan().SequenceEqual(bytes))
                continue;
            if (File.GetAttributes(path).HasFlag(FileAttributes.ReadOnly))
                throw new NotOverwrittenException($"{path} is marked read-only. Take the mark away, rename it, or write to another folder.");
            if (over(path))
                continue;
            written ??= Read();
            // Lists of before do not say of which house a paper was.
            if (written.Contains(Line(path, there)) || written.Contains(Line(path, there, house)))
                continue;
            ofAnother |= written.Any(l => l.StartsWith(Line(path, there) + "\t", StringComparison.Ordinal));
            notOurs.Add(path);
        }
        if (notOurs is [var first, ..])
        {
            throw new NotOverwrittenException($"{first} is there already, and is {(ofAnother ? "a paper of another house, or over other houses"
                : "not as TrimOut wrote it here")}. Rename it, write to another folder, or " +
                $"write over it with --overwrite.")
            {
                NotOurs = notOurs,
            };
        }
    }

    /// <summary>Remembers files that are about to be written.</summary>
    /// <exception cref="IOException">The list is something else than a file, or can't be written.</exception>
    public void Add(string folder, IEnumerable<(string Name, byte[] Bytes)> files, string house)
    {
        UserFolder.Make(Path.GetDirectoryName(list)!);
        HouseFile.Files.PlainFile.Check(list);
        if (!File.Exists(list))
            OwnFile.Write(list, []);
        else if (new FileInfo(list).Length > LongestList)
            OwnFile.Write(list, Encoding.UTF8.GetBytes(string.Join('\n', Lines().TakeLast(5_000)) + "\n"));
        File.AppendAllText(list, string.Concat(files.Select(f => Line(Path.GetFullPath(Path.Combine(folder, f.Name)), f.Bytes, house) + "\n")));
    }

    /// <summary>Remembers how far the history was seen when a page was written.</summary>
    /// <param name="page">The page; it is there already.</param>
    /// <param name="extent">How far.</param>
    public void Note(string page, string extent)
    {
        HouseFile.Files.PlainFile.Check(Dates);
        var kept = File.Exists(Dates) ? DateLines() : [];
        var path = Path.GetFullPath(page);
        var when = File.GetLastWriteTimeUtc(path).ToString("O", CultureInfo.InvariantCulture);
        OwnFile.Write(Dates, Encoding.UTF8.GetBytes(string.Concat(
            kept.Where(l => l.Split('\t')[0] != path).TakeLast(MostDates).Append($"{path}\t{when}\t{extent}").Select(l => l + "\n"))));
    }

    /// <summary>When pages were written, as far as they are there still, and how far the history was seen then.</summary>
    /// <param name="pages">Their paths.</param>
    public IReadOnlyDictionary<string, (DateTimeOffset At, string Extent)> When(IEnumerable<string> pages)
    {
        var wanted = pages.ToHashSet(StringComparer.Ordinal);
        var found = new Dictionary<string, (DateTimeOffset, string)>(StringComparer.Ordinal);
        try
        {
            foreach (var line in File.Exists(Dates) ? DateLines() : [])
            {
                if (line.Split('\t') is [var page, var when, var extent] && wanted.Contains(page) && File.Exists(page)
                    && DateTimeOffset.TryParse(when, CultureInfo.InvariantCulture, DateTimeStyles.RoundtripKind, out var at))
                    found[page] = (at.ToLocalTime(), extent);
            }
        }
        catch (Exception failed) when (failed is IOException or UnauthorizedAccessException)
        {
            // Nobody knows when, then.
        }
        return found;
    }

    private const int MostDates = 2_000;

    private string Dates => list + "-when";

    private string[] DateLines() => Encoding.UTF8.GetString(HouseFile.Files.PlainFile.ReadAll(Dates)).Split('\n', StringSplitOptions.RemoveEmptyEntries);

    private HashSet<string> Read() => File.Exists(list) ? Lines().ToHashSet(StringComparer.Ordinal) : [];

    private string[] Lines() => Encoding.UTF8.GetString(HouseFile.Files.PlainFile.ReadAll(list)).Split('\n', StringSplitOptions.RemoveEmptyEntries);

    private static string Line(string path, byte[] bytes) => $"{Convert.ToHexStringLower(SHA256.HashData(bytes))} {path}";

    private static string Line(string path, byte[] bytes, string house) => $"{Line(path, bytes)}\t{house}";
}

/// <summary>A paper was not written, because something that is not TrimOut's has its name.</summary>
internal sealed class NotOverwrittenException(string message) : IOException(message)
{
    /// <summary>The files that may be written over when the user says so; none where nothing may be written in any case.</summary>
    public IReadOnlyList<string> NotOurs { get; init; } = [];
}
