using System.Text;
using TrimOut.HouseFile.Files;

namespace TrimOut.HouseFile.Durable;

/// <summary>Journals that lie under another name than their house file gives them, as after the house file alone was renamed.</summary>
internal static class LooseJournals
{
    private const int MostToLookAt = 200;
    private static readonly byte[] Start = Encoding.ASCII.GetBytes(Journal.Kind + " ");

    /// <summary>Whether a file is a journal by its first bytes, whatever it is called.</summary>
    public static bool IsOne(Surroundings here, string path)
    {
        try
        {
            return here.Files.Exists(path) && here.Files.ReadStart(Path.GetFullPath(path), Start.Length).AsSpan().SequenceEqual(Start);
        }
        catch (Exception failed) when (Faults.OfDisk(failed))
        {
            return false;
        }
    }

    /// <summary>The journals beside a house file that are the one that goes on from it, by the names in their heads.</summary>
    /// <param name="id">The journal that goes on from the file.</param>
    /// <param name="names">The files of the house.</param>
    public static IReadOnlyList<string> Of(string id, HouseFileNames names)
    {
        try
        {
            return Path.GetDirectoryName(names.Main) is { } folder && Directory.Exists(folder)
                ? [.. Directory.EnumerateFiles(folder, "*.journal").Take(MostToLookAt).Where(f => f != names.Journal && IsOf(f, id))
                    .Order(StringComparer.Ordinal)]
                : [];
        }
        catch (Exception failed) when (Faults.OfDisk(failed))
        {
            return [];
        }
    }

    private static bool IsOf(string path, string id)
    {
        try
        {
            using var file = PlainFile.OpenRead(path);
            var first = new byte[Start.Length + id.Length + 8];
            var read = Encoding.UTF8.GetString(first, 0, file.ReadAtLeast(first, first.Length, throwOnEndOfStream: false));
            return read.Split(' ') is [Journal.Kind, _, var its, ..] && its == id;
        }
        catch (Exception failed) when (Faults.OfDisk(failed))
        {
            return false;
        }
    }
}
