using TrimOut.Core.History;
using TrimOut.HouseFile.Durable;

namespace TrimOut.HouseFile.Backups;

/// <summary>The dated copies of one house.</summary>
/// <param name="path">The folder; made with the first backup.</param>
public sealed class BackupFolder(string path)
{
    /// <summary>The folder.</summary>
    public string Path { get; } = path;

    /// <summary>The backups, the one that was saved last first.</summary>
    public IReadOnlyList<Backup> All => Directory.Exists(Path)
        ? [.. Directory.GetFiles(Path, "*" + HouseFileNames.Ending).Select(Backup.Read).OfType<Backup>().OrderDescending(Backup.BySaving)]
        : [];

    /// <summary>Makes a backup when the house has changed since the last one, and lets those go that the rule does not keep.</summary>
    /// <param name="house">The house file, open or not.</param>
    /// <param name="clock">The clock.</param>
    /// <param name="onceADay">Whether one of this day is enough that holds the file as it stands, whatever was saved in its journal since.</param>
    /// <returns>The backup; null when the last one still holds all.</returns>
    /// <exception cref="HouseStoreException">It could not be made, or the house is damaged.</exception>
    public Backup? Keep(string house, TimeProvider clock, bool onceADay = false)
    {
        var here = Surroundings.Here(clock);
        try
        {
            var last = All.Count == 0 ? null : All[0];
            var now = here.Clock.GetUtcNow().UtcDateTime;
            if (onceADay && last?.MadeAt.Date == now.Date && EndOf(here, last.Path) is { } end
                && EndOf(here, HouseFileNames.Of(house).Main) is { } file && end.House == file.House && end.Count >= file.Count)
                return null;
            var old = last is null ? null : SoundTrailer(here, last);
            // A closed house says by its last page alone whether the backup holds all of it.
            if (old is not null && EndOf(here, HouseFileNames.Of(house).Main) is { Journal: null } closed
                && Holds(old, closed))
                return null;
            var copy = Copy(here, house, goOn: false);
            if (old is not null && Holds(old, copy.Trailer))
                return null;
            MakeFolder();
            var order = (last?.Order ?? 0) + 1;
            var made = new Backup(System.IO.Path.Combine(Path, Backup.NameOf(now, order, copy.Trailer.Seal)), now, order);
            Write(here, made.Path, copy);
            foreach (var gone in BackupRule.ToDrop(All))
                here.Files.Delete(gone.Path);
            return made;
        }
        catch (Exception failed) when (Faults.OfDisk(failed))
        {
            throw new HouseStoreException(StoreFault.Disk, $"No backup could be made in {Path}: {failed.Message}", failed);
        }
    }

    /// <summary>How many changes a backup holds, by its last page alone; null where that can't be read.</summary>
    public static long? ChangesIn(Backup backup)
    {
        try
        {
            return EndOf(Surroundings.Here(TimeProvider.System), backup.Path)?.Count;
        }
        catch (Exception failed) when (Faults.OfDisk(failed))
        {
            return null;
        }
    }

    /// <summary>Copies a house, open or not, whole and as of now.</summary>
    /// <param name="house">The house file, or a link to it.</param>
    /// <param name="to">The copy; nothing may be there yet.</param>
    /// <param name="clock">The clock.</param>
    /// <param name="goOn">Whether a house with a damaged journal is copied as far as that is sound, rather than refused.</param>
    /// <exception cref="HouseStoreException">It could not be copied, or is damaged.</exception>
    public static void Copy(string house, string to, TimeProvider clock, bool goOn = false)
    {
        var here = Surroundings.Here(clock);
        FreeName.Require(here, new HouseFileNames(System.IO.Path.GetFullPath(to)));
        try
        {
            Write(here, System.IO.Path.GetFullPath(to), Copy(here, house, goOn));
        }
        catch (Exception failed) when (Faults.OfDisk(failed))
        {
            throw Faults.Saving(to, failed);
        }
    }

    private static (byte[] Database, Trailer Trailer) Copy(Surroundings here, string house, bool goOn)
    {
        var names = HouseFileNames.Of(house);
        if (!here.Files.Exists(names.Main))
            throw Faults.NotThere(here, names);
        // Of a closed house the file says by itself whether it is what was written.
        Sound.Recognise(here, names);
        var file = here.Files.Read(names.Main);
        if (Sound.CheckFile(names, file) is { Journal: null } closed && !here.Files.Exists(names.Journal))
            return (file[..^Trailer.Size], closed);
        var sound = Sound.Read(here, names, goOn);
        var late = sound.Entries.Skip((int)sound.Trailer.Count).Select(e => (e, ChangeJson.Read(e.Json).Value)).ToList();
        var database = late.Count == 0 ? sound.Database : EntryTable.With(sound.Database.Span, sound.Trailer.House, late);
        return (database.ToArray(), sound.Trailer with { Count = sound.Entries.Count, Seal = sound.LastSeal, Journal = null });
    }

    private static void Write(Surroundings here, string to, (byte[] Database, Trailer Trailer) copy) =>
        // A copy has another birth, so whoever opens it to work on it gets a device name of its own.
        FileWriter.Write(here, new HouseFileNames(to), copy.Database, copy.Trailer with { Device = here.FreshDevice() });

    private static Trailer? EndOf(Surroundings here, string path) => Trailer.Read(here.Files.ReadEnd(path, Trailer.Size));

    private static bool Holds(Trailer backup, Trailer house) => backup.House == house.House && backup.Seal == house.Seal;

    /// <summary>The last page of a backup; null when the backup is damaged, and so holds nothing for certain.</summary>
    private static Trailer? SoundTrailer(Surroundings here, Backup backup)
    {
        try
        {
            var names = new HouseFileNames(backup.Path);
            Sound.Recognise(here, names);
            return Sound.CheckFile(names, here.Files.Read(backup.Path));
        }
        catch (HouseStoreException)
        {
            return null;
        }
    }

    private void MakeFolder()
    {
        if (OperatingSystem.IsWindows())
            Directory.CreateDirectory(Path);
        else
            Directory.CreateDirectory(Path, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
    }
}
