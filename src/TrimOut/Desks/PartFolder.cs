using TrimOut.Core;
using TrimOut.Core.Kits;
using TrimOut.HouseFile.Files;

namespace TrimOut.Desks;

/// <summary>Parts of kits as files, one part a file.</summary>
internal static class PartFolder
{
    /// <summary>The end of a part's file name.</summary>
    public const string Ending = ".part.txt";

    /// <summary>The largest file that is read as a part.</summary>
    public const long MostBytes = 1 << 20;

    /// <summary>The parts in a folder by the names of their files; one that can't be read with the reason.</summary>
    public static IReadOnlyList<(string File, Result<PartSheet> Part)> In(string folder) => Directory.Exists(folder)
        ? [.. Directory.GetFiles(folder, "*" + Ending).Order(StringComparer.Ordinal).Select(f => (f, Read(f)))]
        : [];

    /// <summary>The texts in a folder that another text of their part took the place of.</summary>
    public static IReadOnlyList<(string File, Result<PartSheet> Part)> OlderIn(string folder) => Directory.Exists(folder)
        ? [.. Directory.GetFiles(folder, $"*{Ending}.{Older}*").Order(StringComparer.Ordinal).Select(f => (f, Read(f)))]
        : [];

    /// <summary>What the name of an older text ends with, before its number.</summary>
    public const string Older = "older-";

    /// <summary>Reads a part.</summary>
    public static Result<PartSheet> Read(string file)
    {
        try
        {
            return PartText.Read(PlainFile.ReadAll(file, MostBytes)) is var read && read.Ok
                ? read
                : new Refusal($"{Path.GetFileName(file)}: {read.Reason}");
        }
        catch (Exception failed) when (failed is IOException or UnauthorizedAccessException)
        {
            return new Refusal(PlainFile.WhyNotRead(file, failed).Replace(file, Path.GetFileName(file), StringComparison.Ordinal));
        }
    }
}
