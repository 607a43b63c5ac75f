using System.Security.Cryptography;
using TrimOut.Core.History;
using TrimOut.HouseFile.Durable;
using TrimOut.HouseFile.Files;

namespace TrimOut.HouseFile.Kept;

/// <summary>The file in which the fold of a house's history is kept.</summary>
/// <remarks>
/// It begins with the SHA-256 of the rest, and says which program made it, of which house, of which very bytes of the house file, and up to which change
/// by its number and seal. Where any of that is not so it is as if it were not there. It lies with the user's own files and not beside the
/// house, so that nobody hands one on; it is not flushed, for what a power cut leaves of it does not fit its sum.
/// </remarks>
/// <param name="Count">How many changes of the house it holds.</param>
/// <param name="Seal">The seal of the last of them.</param>
/// <param name="Fold">What they make, by <see cref="KeptFold"/>.</param>
internal sealed record KeptFile(long Count, string Seal, byte[] Fold)
{
    private const string Ending = ".fold";
    private const int HousesAtMost = 8;

    private static readonly Guid Program = typeof(KeptFile).Module.ModuleVersionId;

    /// <summary>The name of it for a house.</summary>
    public static string NameOf(string folder, HouseFileNames names) => Path.Combine(folder, names.Place + Ending);

    /// <summary>Reads what was kept of a house.</summary>
    /// <param name="here">The disk.</param>
    /// <param name="names">The house.</param>
    /// <param name="folder">Where it is kept.</param>
    /// <param name="trailer">The house file's last page; whether the file holds what that says is for the caller to see.</param>
    /// <returns>Null where there is nothing, or nothing that is of this house file and this program and whole.</returns>
    public static KeptFile? Read(Surroundings here, HouseFileNames names, string folder, Trailer trailer)
    {
        var bytes = Bytes(here.Files, NameOf(folder, names));
        if (bytes.Length < SHA256.HashSizeInBytes || !SHA256.HashData(bytes.AsSpan(SHA256.HashSizeInBytes)).AsSpan().SequenceEqual(
            bytes.AsSpan(0, SHA256.HashSizeInBytes)))
            return null;
        using var from = new BinaryReader(new MemoryStream(bytes, SHA256.HashSizeInBytes, bytes.Length - SHA256.HashSizeInBytes));
        return new Guid(from.ReadBytes(16)) == KeptFold.Program && new Guid(from.ReadBytes(16)) == Program && from.ReadString() == trailer.House
            && from.ReadString() == trailer.Sha256
            ? new KeptFile(from.ReadInt64(), from.ReadString(), from.ReadBytes(from.ReadInt32()))
            : null;
    }

    /// <summary>Keeps it; where it can't be written nothing is kept.</summary>
    public void Write(Surroundings here, HouseFileNames names, string folder, Trailer trailer)
    {
        using var body = new MemoryStream();
        using (var to = new BinaryWriter(body))
        {
            to.Write(KeptFold.Program.ToByteArray());
            to.Write(Program.ToByteArray());
            to.Write(trailer.House);
            to.Write(trailer.Sha256);
            to.Write(Count);
            to.Write(Seal);
            to.Write(Fold.Length);
            to.Write(Fold);
        }
        var path = NameOf(folder, names);
        try
        {
            using (var file = here.Files.Create(path + ".new"))
            {
                file.Write(0, SHA256.HashData(body.ToArray()));
                file.Write(SHA256.HashSizeInBytes, body.ToArray());
            }
            here.Files.Rename(path + ".new", path);
            foreach (var old in Directory.GetFiles(folder, "*" + Ending).OrderByDescending(File.GetLastWriteTimeUtc).Skip(HousesAtMost))
                here.Files.Delete(old);
        }
        catch (Exception failed) when (Faults.OfDisk(failed))
        {
            // It only spares time.
        }
    }

    /// <summary>What a kept file holds; nothing where it is not there or can't be read.</summary>
    public static byte[] Bytes(IFileLayer files, string path)
    {
        try
        {
            return files.Exists(path) ? files.Read(path) : [];
        }
        catch (Exception failed) when (Faults.OfDisk(failed))
        {
            return [];
        }
    }

    /// <summary>Whether a house has the change up to which it was kept, under its number.</summary>
    /// <param name="trailer">The house file's last page.</param>
    /// <param name="journal">The journal's entries.</param>
    public bool IsUpTo(Trailer trailer, IReadOnlyList<Entry> journal) => Count == trailer.Count ? Seal == trailer.Seal
        : Count > trailer.Count && Count - trailer.Count <= journal.Count && journal[(int)(Count - trailer.Count) - 1].Seal == Seal;
}
