using System.Security.Cryptography;
using TrimOut.Core;
using TrimOut.HouseFile.Files;

namespace TrimOut.HouseFile.Photos;

/// <summary>The folder beside a house file that pictures are copied into. Nothing in it is ever written over, and nothing is moved.</summary>
public sealed class PhotoFolder
{
    /// <summary>The most bytes of a picture that is taken in: 64 MiB.</summary>
    public const long Largest = 64 << 20;

    private const string AlsoInNames = " -_.()";

    private readonly string _beside;
    private readonly string _name;

    /// <summary>The folder of a house.</summary>
    /// <param name="house">The house file.</param>
    public PhotoFolder(string house) => (_beside, _name) = (
        Path.GetDirectoryName(Path.GetFullPath(house))!, NameAnywhere.Freed($"{Clean(Path.GetFileNameWithoutExtension(house))}-photos"));

    /// <summary>Where it is, whether it is there yet or not.</summary>
    public string Where => Path.Combine(_beside, _name);

    /// <summary>What names the contents of a picture: two that have it are the same, byte for byte (SHA-256, FIPS 180-4).</summary>
    public static string Print(ReadOnlySpan<byte> bytes) => Convert.ToHexString(SHA256.HashData(bytes));

    /// <summary>The path that a picture would be noted by, beside the house file, as long as no other one has the name.</summary>
    public string PathOf(string name) => $"{_name}/{Clean(Path.GetFileName(name))}";

    /// <summary>
    /// Copies a picture into the folder, so that it stands on the disk before anything is noted. One that is there already is not copied again.
    /// </summary>
    /// <param name="name">What its file is called; another name is made of it where a different picture has that one.</param>
    /// <param name="bytes">The picture, all of its file.</param>
    /// <returns>Its path beside the house file, or why it could not be written: then nothing of it is left there.</returns>
    public Result<string> Keep(string name, byte[] bytes)
    {
        try
        {
            Make();
            var clean = Clean(Path.GetFileName(name));
            var (stem, ending) = (Path.GetFileNameWithoutExtension(clean), Path.GetExtension(clean));
            for (var n = 1; ; n++)
            {
                var file = n == 1 ? clean : string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{stem}-{n}{ending}");
                var there = Path.Combine(Where, file);
                if (Path.Exists(there) ? IsSame(there, bytes) : Write(there, bytes))
                    return $"{_name}/{file}";
            }
        }
        catch (Exception failed) when (failed is IOException or UnauthorizedAccessException)
        {
            return new Refusal(PlainFile.WhyNotWritten(Where, failed));
        }
    }

    private void Make()
    {
        if (Directory.Exists(Where))
            return;
        Directory.CreateDirectory(Where);
        FolderFlush.Of(_beside);
    }

    private static bool IsSame(string file, byte[] bytes) =>
        PlainFile.NameOf(file) is null && new FileInfo(file).Length == bytes.Length && PlainFile.ReadAll(file, Largest).AsSpan().SequenceEqual(bytes);

    /// <summary>Writes a new file, or nothing at all; false where one of that name came meanwhile.</summary>
    private bool Write(string file, byte[] bytes)
    {
        var next = Path.Combine(Where, $".{Path.GetRandomFileName()}.part");
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
