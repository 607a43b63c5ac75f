using System.Globalization;
using System.Text;
using TrimOut.Core;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;
using TrimOut.HouseFile.Files;

namespace TrimOut.Desks;

/// <summary>Parts of kits as files, one part a file.</summary>
internal static class PartFolder
{
    /// <summary>The end of a part's file name.</summary>
    public const string Ending = ".part.txt";

    private const long MostBytes = 1 << 20;

    /// <summary>The parts in a folder by the names of their files; one that can't be read with the reason.</summary>
    public static IReadOnlyList<(string File, Result<PartSheet> Part)> In(string folder) => Directory.Exists(folder)
        ? [.. Directory.GetFiles(folder, "*" + Ending).Order(StringComparer.Ordinal).Select(f => (f, Read(f)))]
        : [];

    /// <summary>Reads a part.</summary>
    public static Result<PartSheet> Read(string file)
    {
        try
        {
            return PartText.Read(Encoding.UTF8.GetString(PlainFile.ReadAll(file, MostBytes))) is var read && read.Ok
                ? read
                : new Refusal($"{Path.GetFileName(file)}: {read.Reason}");
        }
        catch (Exception failed) when (failed is IOException or UnauthorizedAccessException)
        {
            return new Refusal(PlainFile.WhyNotRead(file, failed));
        }
    }

    /// <summary>Writes a part into a folder, under its sort and name. Another text that is there already is kept under another name, as it was.</summary>
    /// <returns>The file.</returns>
    public static Result<string> Write(string folder, PartSheet part)
    {
        var name = new string([.. part.Name.Trim().Select(c => char.IsLetterOrDigit(c) || c is '-' or '_' ? char.ToLowerInvariant(c) : '-')]);
        var file = Path.Combine(folder, $"{KebabCase.Of(part.Kind)}-{name}{Ending}");
        var bytes = Encoding.UTF8.GetBytes(PartText.Write(part));
        try
        {
            UserFolder.Make(folder);
            if (File.Exists(file) && !bytes.AsSpan().SequenceEqual(PlainFile.ReadAll(file, MostBytes)))
                File.Move(file, Enumerable.Range(1, 9999).Select(n => string.Create(CultureInfo.InvariantCulture, $"{file}.older-{n}"))
                    .First(f => !File.Exists(f)));
            OwnFile.Write(file, bytes);
            return file;
        }
        catch (Exception failed) when (failed is IOException or UnauthorizedAccessException)
        {
            return new Refusal(failed.Message);
        }
    }
}
