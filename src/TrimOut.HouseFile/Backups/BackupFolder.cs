using System.Globalization;
using TrimOut.Core.History;
using TrimOut.HouseFile.Durable;

namespace TrimOut.HouseFile.Backups;

/// <summary>A backup: a whole house file under the moment when it was made.</summary>
/// <param name="Path">The file.</param>
/// <param name="MadeAt">When, in universal time.</param>
public sealed record Backup(string Path, DateTime MadeAt);

/// <summary>The dated copies of one house.</summary>
/// <param name="path">The folder; made with the first backup.</param>
public sealed class BackupFolder(string path)
{
    private const string Dated = "yyyy-MM-dd'T'HHmmss'Z'";

    /// <summary>The folder.</summary>
    public string Path { get; } = path;

    /// <summary>The backups, the latest first.</summary>
    public IReadOnlyList<Backup> All => Directory.Exists(Path)
        ? [.. Directory.GetFiles(Path, "*" + HouseFileNames.Ending).Select(Read).OfType<Backup>().OrderByDescending(b => b.MadeAt)]
        : [];

    /// <summary>Makes a backup when the house has changed since the last one, and lets those go that the rule does not keep.</summary>
    /// <param name="house">The house file, open or not.</param>
    /// <param name="clock">The clock.</param>
    /// <returns>The backup; null when the last one still holds all.</returns>
    /// <exception cref="HouseStoreException">It could not be made.</exception>
    public Backup? Keep(string house, TimeProvider clock)
    {
        var here = Surroundings.Here(clock);
        var names = new HouseFileNames(System.IO.Path.GetFullPath(house));
        try
        {
            var copy = Copy(here, names);
            if (All.FirstOrDefault() is { } last && Trailer.Read(here.Files.Read(last.Path)) is { } old && old.House == copy.Trailer.House && old.Seal == copy.Trailer.Seal)
                return null;
            MakeFolder();
            var now = here.Clock.GetUtcNow().UtcDateTime;
            var made = new Backup(System.IO.Path.Combine(Path, now.ToString(Dated, CultureInfo.InvariantCulture) + HouseFileNames.Ending), now);
            Write(here, made.Path, copy);
            var drop = BackupRule.ToDrop(All.Select(b => b.MadeAt), now).ToHashSet();
            foreach (var old2 in All.Where(b => drop.Contains(b.MadeAt)))
                here.Files.Delete(old2.Path);
            return made;
        }
        catch (Exception failed) when (Faults.OfDisk(failed))
        {
            throw new HouseStoreException(StoreFault.Disk, $"No backup could be made in {Path}: {failed.Message}", failed);
        }
    }

    /// <summary>Copies a house, open or not, whole and as of now.</summary>
    /// <param name="house">The house file.</param>
    /// <param name="to">The copy; nothing may be there yet.</param>
    /// <param name="clock">The clock.</param>
    /// <exception cref="HouseStoreException">It could not be copied.</exception>
    public static void Copy(string house, string to, TimeProvider clock)
    {
        var here = Surroundings.Here(clock);
        if (here.Files.Exists(to))
            throw new HouseStoreException(StoreFault.AlreadyThere, $"{to} is there already. Choose another name.");
        try
        {
            Write(here, System.IO.Path.GetFullPath(to), Copy(here, new HouseFileNames(System.IO.Path.GetFullPath(house))));
        }
        catch (Exception failed) when (Faults.OfDisk(failed))
        {
            throw Faults.Saving(to, failed);
        }
    }

    private static (byte[] Database, Trailer Trailer) Copy(Surroundings here, HouseFileNames names)
    {
        var file = here.Files.Exists(names.Main) ? here.Files.Read(names.Main) : throw Faults.NotThere(names.Main);
        var sound = Sound.Read(here.Files, names, here.Seal);
        var late = sound.Entries.Skip((int)sound.Trailer.Count).Select(e => (e, ChangeJson.Read(e.Json).Value)).ToList();
        var database = late.Count == 0 ? file[..^Trailer.Size] : EntryTable.With(file.AsSpan(0, file.Length - Trailer.Size), late);
        return (database, sound.Trailer with { Count = sound.Entries.Count, Seal = sound.LastSeal, Journal = null });
    }

    private static void Write(Surroundings here, string to, (byte[] Database, Trailer Trailer) copy) =>
        // A copy has another birth, so whoever opens it to work on it gets a device name of its own.
        FileWriter.Write(here, new HouseFileNames(to), copy.Database, copy.Trailer with { Device = here.FreshDevice() });

    private static Backup? Read(string file) =>
        DateTime.TryParseExact(System.IO.Path.GetFileNameWithoutExtension(file), Dated, CultureInfo.InvariantCulture, DateTimeStyles.AdjustToUniversal | DateTimeStyles.AssumeUniversal, out var at)
            ? new Backup(file, at)
            : null;

    private void MakeFolder()
    {
        if (OperatingSystem.IsWindows())
            Directory.CreateDirectory(Path);
        else
            Directory.CreateDirectory(Path, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
    }
}
