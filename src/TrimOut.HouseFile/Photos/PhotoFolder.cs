using System.Security.Cryptography;
using TrimOut.Core;
using TrimOut.HouseFile.Files;

namespace TrimOut.HouseFile.Photos;

/// <summary>The folder beside a house file that pictures are copied into. Nothing in it is ever written over, and nothing is moved.</summary>
public sealed class PhotoFolder
{
    /// <summary>The most bytes of a picture that is taken in: 64 MiB.</summary>
    public const long Largest = 64 << 20;

    /// <summary>So many figures of a print stand in a name: 40 bits, so that of a million pictures of one name hardly two have the same.</summary>
    private const int FiguresOfPrint = 10;

    /// <summary>No more signs of a picture's own name are kept, so that several paths have room in a detail.</summary>
    private const int MostOfName = 40;

    private const string Unfinished = ".part";
    private const string AlsoInNames = " -_.()";

    private readonly string _beside;
    private readonly string _name;
    private bool _isCleared;

    /// <summary>The folder of a house.</summary>
    /// <param name="house">The house file.</param>
    public PhotoFolder(string house) => (_beside, _name) = (
        Path.GetDirectoryName(Path.GetFullPath(house))!, NameAnywhere.Freed($"{Clean(Path.GetFileNameWithoutExtension(house))}-photos"));

    /// <summary>Where it is, whether it is there yet or not.</summary>
    public string Where => Path.Combine(_beside, _name);

    /// <summary>What names the contents of a picture: two that have it are the same, byte for byte (SHA-256, FIPS 180-4).</summary>
    public static string Print(ReadOnlySpan<byte> bytes) => Convert.ToHexString(SHA256.HashData(bytes));

    /// <summary>
    /// The path that a picture is noted by, beside the house file. Part of its print stands in it: two laptops that take in different pictures of one name
    /// never note them by one path, and a path that is noted names one picture for ever.
    /// </summary>
    /// <param name="name">What its file is called; a long name is cut.</param>
    /// <param name="print">What names its contents, as <see cref="Print"/> gives it.</param>
    public string PathOf(string name, string print) => $"{_name}/{FileOf(name, print, FiguresOfPrint)}";

    /// <summary>
    /// Copies a picture into the folder, so that it stands on the disk before anything is noted. One that is there already is not copied again.
    /// </summary>
    /// <param name="name">What its file is called.</param>
    /// <param name="bytes">The picture, all of its file.</param>
    /// <returns>Its path beside the house file, or why it could not be written: then nothing of it is left there.</returns>
    public Result<string> Keep(string name, byte[] bytes)
    {
        try
        {
            Make();
            var print = Print(bytes);
            for (var figures = FiguresOfPrint; ; figures = print.Length)
            {
                var file = FileOf(name, print, figures);
                var there = Path.Combine(Where, file);
                if (Path.Exists(there) ? IsSame(there, bytes) : Write(there, bytes))
                    return $"{_name}/{file}";
                if (figures == print.Length)
                    return new Refusal($"{there} is another picture than its name says: move it elsewhere.");
            }
        }
        catch (Exception failed) when (failed is IOException or UnauthorizedAccessException)
        {
            return new Refusal(PlainFile.WhyNotWritten(Where, failed));
        }
    }

    private static string FileOf(string name, string print, int figures)
    {
        var clean = Clean(Path.GetFileName(name));
        var (stem, ending, part) = (Path.GetFileNameWithoutExtension(clean), Path.GetExtension(clean), print[..figures].ToLowerInvariant());
        // One that comes from the folder of another laptop has its print already.
        if (stem.Length <= MostOfName + 1 + figures && stem.EndsWith($"-{part}", StringComparison.Ordinal))
            return clean;
        var length = Math.Min(stem.Length, MostOfName);
        if (length < stem.Length && char.IsHighSurrogate(stem[length - 1]))
            length--;
        return $"{stem[..length].TrimEnd()}-{part}{ending}";
    }

    private void Make()
    {
        if (Directory.Exists(Where))
        {
            ClearUnfinished();
            return;
        }
        Directory.CreateDirectory(Where);
        FolderFlush.Of(_beside);
    }

    /// <summary>Removes what a copy that was ended midway left: nothing names it, and only the one program that has the house open copies here.</summary>
    private void ClearUnfinished()
    {
        if (_isCleared)
            return;
        _isCleared = true;
        foreach (var file in Directory.EnumerateFiles(Where, $".*{Unfinished}", new EnumerationOptions { AttributesToSkip = FileAttributes.None }))
        {
            try
            {
                File.Delete(file);
            }
            catch (Exception kept) when (kept is IOException or UnauthorizedAccessException)
            {
                // It takes room, and harms nothing.
            }
        }
    }

    private static bool IsSame(string file, byte[] bytes) =>
        PlainFile.NameOf(file) is null && new FileInfo(file).Length == bytes.Length && PlainFile.ReadAll(file, Largest).AsSpan().SequenceEqual(bytes);

    /// <summary>Writes a new file, or nothing at all; false where one of that name came meanwhile.</summary>
    private bool Write(string file, byte[] bytes)
    {
        var next = Path.Combine(Where, $".{Path.GetRandomFileName()}{Unfinished}");
        try
        {
            using (var stream = new FileStream(next, FileMode.CreateNew, FileAccess.Write))
            {
                stream.Write(bytes);
                stream.Flush(flushToDisk: true);
            }
            if (Path.Exists(file))
                return false;
            File.Move(next, file, overwrite: false);
            FolderFlush.Of(Where);
            return true;
        }
        finally
        {
            if (File.Exists(next))
                File.Delete(next);
        }
    }

    /// <summary>A name that is one on every system, and that is noted as it stands.</summary>
    private static string Clean(string name) => NameAnywhere.Freed(
        new string([.. ComposedText.Of(ShownText.Kept(name)).Trim().Select(c => char.IsLetterOrDigit(c) || AlsoInNames.Contains(c, StringComparison.Ordinal)
            ? c : '-')]));
}
