using System.Collections.Immutable;
using TrimOut.Core;
using TrimOut.Core.Units;

namespace TrimOut.Desks;

/// <summary>The pictures in a folder and in those in it; what is passed over is said.</summary>
/// <param name="Files">Their files, in the order of their paths.</param>
/// <param name="Remarks">What was not looked into, each in a sentence.</param>
internal sealed record PhotoSearch(IReadOnlyList<string> Files, ImmutableArray<string> Remarks)
{
    /// <summary>Folders lie no deeper in each other on any stick that somebody sorted by hand.</summary>
    private const int Deepest = 12;

    private static readonly EnumerationOptions Plain = new() { IgnoreInaccessible = true };

    /// <summary>Looks through a folder. A link to another folder is not followed: it may lead back.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="leftOut">A folder in it that is passed over without a word.</param>
    /// <param name="isPicture">Whether a file is one that is wanted.</param>
    /// <param name="most">No more files are found.</param>
    public static PhotoSearch In(string folder, string leftOut, Func<string, bool> isPicture, int most)
    {
        var (files, tooDeep, links, more) = (new List<string>(), new List<string>(), new List<string>(), false);
        Look(folder, 0);
        return new PhotoSearch(files,
        [
            .. more ? [$"Only {NumberText.Plain(most)} of its photos were read: split the folder."] : Array.Empty<string>(),
            .. Passed(tooDeep, "lies too deep and was not looked into", "lie too deep and were not looked into"),
            .. Passed(links, "is a link to another folder and was not followed", "are links to other folders and were not followed"),
        ]);

        void Look(string at, int depth)
        {
            foreach (var file in Directory.EnumerateFiles(at, "*", Plain).Where(isPicture).Order(StringComparer.Ordinal))
            {
                if (files.Count == most)
                {
                    more = true;
                    return;
                }
                files.Add(file);
            }
            foreach (var inner in Directory.EnumerateDirectories(at, "*", Plain).Where(d => d != leftOut).Order(StringComparer.Ordinal))
            {
                if (more)
                    return;
                if (new DirectoryInfo(inner).LinkTarget is not null)
                    links.Add(inner);
                else if (depth == Deepest)
                    tooDeep.Add(inner);
                else
                    Look(inner, depth + 1);
            }
        }

        IEnumerable<string> Passed(List<string> folders, string one, string several)
        {
            if (folders.Count == 0)
                yield break;
            var what = folders.Count == 1 ? one : $"and {NumberText.Plain(folders.Count - 1)} more {several}";
            yield return $"{ShownText.Line(Path.GetRelativePath(folder, folders[0]))} {what}: give that folder by its own path.";
        }
    }
}
