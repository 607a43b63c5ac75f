using System.Security.Cryptography;
using System.Text;

namespace TrimOut.Desks;

/// <summary>Remembers what TrimOut wrote where: only that is written over without being asked.</summary>
/// <param name="list">The file with the list: a line each, the SHA-256 of what was written and the path.</param>
internal sealed class WrittenPapers(string list)
{
    private const int LongestList = 4 << 20;

    /// <summary>What was written for this user.</summary>
    public static WrittenPapers OfUser => new(Path.Combine(UserFolder.Path, "papers-written"));

    /// <summary>Why files can't be put in their places; null when they can.</summary>
    /// <param name="folder">The folder that they go to; it was named by the user, and may be a link.</param>
    /// <param name="files">Their paths below it, and what will stand in them.</param>
    /// <param name="overAnything">Whether the user asked to have others' files written over too.</param>
    public string? Refuse(string folder, IReadOnlyList<(string Name, byte[] Bytes)> files, bool overAnything)
    {
        HashSet<string>? written = null;
        foreach (var (name, bytes) in files)
        {
            for (var part = name; part.Length > 0; part = Path.GetDirectoryName(part) ?? "")
            {
                if (new FileInfo(Path.Combine(folder, part)).LinkTarget is { } target)
                    return $"{Path.Combine(folder, part)} is a link to {target}, and nothing is written through a link. Remove it, or write to another folder.";
            }
            var path = Path.GetFullPath(Path.Combine(folder, name));
            if (Directory.Exists(path))
                return $"{path} is a folder. Rename it, or write to another folder.";
            if (overAnything || !File.Exists(path))
                continue;
            if (HouseFile.Files.PlainFile.NameOf(path) is { } other)
                return $"{path} is {other}, not a file. Remove it, or write to another folder.";
            var there = HouseFile.Files.PlainFile.ReadAll(path);
            if (!there.AsSpan().SequenceEqual(bytes) && !(written ??= Read()).Contains(Line(path, there)))
                return $"{path} is there already, and is not as TrimOut wrote it here. Rename it, write to another folder, or write over it with " +
                    $"--overwrite on the command line.";
        }
        return null;
    }

    /// <summary>Remembers files that are about to be written.</summary>
    public void Add(string folder, IEnumerable<(string Name, byte[] Bytes)> files)
    {
        UserFolder.Make(Path.GetDirectoryName(list)!);
        if (!File.Exists(list))
            OwnFile.Write(list, []);
        else if (new FileInfo(list).Length > LongestList)
            OwnFile.Write(list, Encoding.UTF8.GetBytes(string.Join('\n', File.ReadLines(list).Reverse().Take(5_000).Reverse()) + "\n"));
        File.AppendAllText(list, string.Concat(files.Select(f => Line(Path.GetFullPath(Path.Combine(folder, f.Name)), f.Bytes) + "\n")));
    }

    private HashSet<string> Read() => File.Exists(list) ? File.ReadLines(list).ToHashSet(StringComparer.Ordinal) : [];

    private static string Line(string path, byte[] bytes) => $"{Convert.ToHexStringLower(SHA256.HashData(bytes))} {path}";
}

/// <summary>A paper was not written, because something that is not TrimOut's has its name.</summary>
internal sealed class NotOverwrittenException(string message) : IOException(message);
