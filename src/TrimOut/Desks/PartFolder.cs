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

    /// <summary>Ends where a folder may not be looked into: what is in it is not known, and it is not empty for that.</summary>
    /// <param name="folder">The folder; nothing happens where there is none.</param>
    /// <exception cref="UnauthorizedAccessException">There is no right to read it; the message says what to do.</exception>
    public static void EndIfClosed(string folder)
    {
        try
        {
            _ = Directory.EnumerateFileSystemEntries(folder).Any();
        }
        catch (UnauthorizedAccessException failed)
        {
            throw new UnauthorizedAccessException($"{folder} may not be read: you need the right to read it and to go through the folders above it.", failed);
        }
        catch (IOException)
        {
            // No folder, or none that can be looked into: who asks says so.
        }
    }

    /// <summary>The texts in a folder that another text of their part took the place of.</summary>
    public static IReadOnlyList<(string File, Result<PartSheet> Part)> OlderIn(string folder) => Directory.Exists(folder)
        ? [.. Directory.GetFiles(folder, $"*{Ending}.{Older}*").Order(StringComparer.Ordinal).Select(f => (f, Read(f)))]
        : [];

    /// <summary>What the name of an older text ends with, before its number.</summary>
    public const string Older = "older-";

    /// <summary>Reads a part as it counts today.</summary>
    public static Result<PartSheet> Read(string file)
    {
        try
        {
            return PartText.Read(PlainFile.ReadAll(file, MostBytes)) is var read && read.Ok
                ? read.Then<PartSheet>(part => part.On(DateOnly.FromDateTime(TimeProvider.System.GetLocalNow().DateTime)))
                : new Refusal($"{Path.GetFileName(file)}: {read.Reason}");
        }
        catch (Exception failed) when (failed is IOException or UnauthorizedAccessException)
        {
            return new Refusal(PlainFile.WhyNotRead(file, failed).Replace(file, Path.GetFileName(file), StringComparison.Ordinal));
        }
    }
}
