using TrimOut.Core.History;
using TrimOut.HouseFile.Durable;
using TrimOut.HouseFile.Files;
using TrimOut.HouseFile.Kept;

namespace TrimOut.HouseFile;

/// <content>How a house file is begun and opened.</content>
public sealed partial class HouseOnDisk
{
    /// <summary>Begins a house file.</summary>
    /// <param name="path">Where; nothing of a house may have that name yet.</param>
    /// <param name="clock">The clock.</param>
    /// <param name="changes">A history to begin with, in any order.</param>
    /// <param name="brief">What is kept of it.</param>
    /// <param name="house">The name that it shares with other copies, where it is made of one; null gives it a name of its own.</param>
    /// <exception cref="HouseStoreException">There is a file already, or a journal without its file, or it can't be written.</exception>
    public static HouseOnDisk Create(string path, TimeProvider clock, IReadOnlyList<Change>? changes = null, BriefWork? brief = null, string? house = null) =>
        Create(Surroundings.Here(clock), path, changes, brief, house);

    /// <summary>Begins a house file in the place of what is there, which is kept beside it under a dated name, its journal too.</summary>
    /// <param name="path">Where.</param>
    /// <param name="clock">The clock.</param>
    /// <param name="changes">The history to begin with.</param>
    /// <param name="brief">What is kept of it.</param>
    /// <param name="house">The name that it shares with other copies; null gives it a name of its own.</param>
    /// <returns>The house, and the name that what was there has now.</returns>
    /// <exception cref="HouseStoreException">Another program has it open, or it can't be written; all is as it was then.</exception>
    public static (HouseOnDisk House, string Aside) CreateInstead(string path, TimeProvider clock, IReadOnlyList<Change> changes, BriefWork? brief = null,
        string? house = null)
    {
        var here = Surroundings.Here(clock);
        var names = HouseFileNames.Of(path);
        var aside = names.Aside(here);
        try
        {
            using (HouseLock.Take(here, names))
                Move(names, aside);
            try
            {
                return (Create(here, names.Main, changes, brief, house), aside.Main);
            }
            catch
            {
                Move(aside, names);
                throw;
            }
        }
        catch (Exception failed) when (Faults.OfDisk(failed))
        {
            throw Faults.Saving(names.Main, failed);
        }

        void Move(HouseFileNames from, HouseFileNames to)
        {
            if (here.Files.Exists(from.Journal))
                here.Files.Rename(from.Journal, to.Journal);
            if (here.Files.Exists(from.Main))
                here.Files.Rename(from.Main, to.Main);
            here.Files.FlushFolderOf(to.Main);
        }
    }

    /// <summary>
    /// The name that all copies of one house share, by the last page of a file or its journal's head alone; null where neither can be read. Nothing else of
    /// it is read.
    /// </summary>
    public static string? HouseOf(string path)
    {
        var here = Surroundings.Here(TimeProvider.System);
        var names = HouseFileNames.Of(path);
        try
        {
            if (here.Files.Exists(names.Main))
            {
                using var file = PlainFile.OpenRead(names.Main);
                var page = new byte[Math.Min(Trailer.Size, file.Length)];
                file.Seek(-page.Length, SeekOrigin.End);
                file.ReadExactly(page);
                if (page.Length == Trailer.Size && Trailer.Read(page) is { } trailer)
                    return trailer.House;
            }
            if (!here.Files.Exists(names.Journal))
                return null;
            using var journal = here.Files.OpenToRead(names.Journal);
            return Journal.Heads(journal).Select(h => h.House).FirstOrDefault(h => h.Length > 0);
        }
        catch (Exception failed) when (Faults.OfDisk(failed))
        {
            return null;
        }
    }

    /// <summary>Whether a house file can be made under a name: nothing of a house has it.</summary>
    public static bool IsFree(string path) => FreeName.IsFree(Surroundings.Here(TimeProvider.System), new HouseFileNames(Path.GetFullPath(path)));

    internal static HouseOnDisk Create(Surroundings here, string path, IReadOnlyList<Change>? changes = null, BriefWork? brief = null,
        string? house = null)
    {
        var names = new HouseFileNames(Path.GetFullPath(path));
        FreeName.Require(here, names);
        HouseLock? held = null;
        try
        {
            held = HouseLock.Take(here, names);
            house ??= here.FreshName();
            var entries = SealAll(here, house, Seal.First(house), 0, changes ?? []);
            var trailer = new Trailer(Trailer.CurrentForm, house, entries.Count, entries.Count == 0 ? Seal.First(house) : entries[^1].Entry.Seal, "",
                here.FreshDevice(), here.Machine, null, null);
            trailer = FileWriter.Write(here, names, EntryTable.With([], house, entries).Span, trailer);
            return new HouseOnDisk(here, names, held, trailer, [.. changes ?? []], null, null) { Brief = brief };
        }
        catch (Exception failed)
        {
            held?.Dispose();
            if (Faults.OfDisk(failed))
                throw Faults.Saving(names.Main, failed);
            throw;
        }
    }

    /// <summary>Opens a house file, for reading only where it can't be written.</summary>
    /// <param name="path">The file.</param>
    /// <param name="clock">The clock.</param>
    /// <exception cref="HouseStoreException">It is not there, is no house file, is damaged, or another program has it open.</exception>
    public static HouseOnDisk Open(string path, TimeProvider clock) => Open(Surroundings.Here(clock), path);

    /// <summary>Opens a house file for a short piece of work, or with regard to what such work left, for reading only where it can't be written.</summary>
    /// <param name="path">The file.</param>
    /// <param name="clock">The clock.</param>
    /// <param name="brief">What is left and kept of it.</param>
    /// <exception cref="HouseStoreException">It is not there, is no house file, is damaged, or another program has it open.</exception>
    public static HouseOnDisk Open(string path, TimeProvider clock, BriefWork brief) => Open(Surroundings.Here(clock), path, brief);

    /// <summary>Opens a house file for reading only, whoever else has it open.</summary>
    /// <param name="path">The file.</param>
    /// <param name="clock">The clock.</param>
    /// <param name="goOn">Whether a house with a damaged journal is shown as far as that is sound, rather than refused; <see cref="LeftOut"/> says so.</param>
    /// <exception cref="HouseStoreException">It is not there, is no house file, or is damaged.</exception>
    public static HouseOnDisk OpenToRead(string path, TimeProvider clock, bool goOn = false) => OpenToRead(Surroundings.Here(clock), path, goOn);

    internal static HouseOnDisk OpenToRead(Surroundings here, string path, bool goOn = false) => Read(here, HouseFileNames.Of(path),
        "you chose only to look.", goOn);

    internal static HouseOnDisk Open(Surroundings here, string path, BriefWork? brief = null)
    {
        var names = HouseFileNames.Of(path);
        HouseLock? held = null;
        try
        {
            if (!here.Files.Exists(names.Main))
                throw Faults.NotThere(here, names);
            if (here.Files.ReadOnlyBecause(names.Main) is { } because)
                return Read(here, names, because);
            Sound.Recognise(here, names);
            try
            {
                held = HouseLock.Take(here, names);
            }
            catch (Exception failed) when (Faults.OfDisk(failed))
            {
                return Read(here, names, Faults.NothingBeside(names.Main, failed), fault: Faults.Saving(names.Main, failed).Fault);
            }
            return (brief is not { IsBrief: true } ? null : FromKept(here, names, held, brief)) ?? OpenHeld(here, names, held, brief);
        }
        catch (Exception failed)
        {
            held?.Dispose();
            if (Faults.OfDisk(failed))
                throw Faults.Opening(names.Main, failed);
            throw;
        }
    }

    private static HouseOnDisk OpenHeld(Surroundings here, HouseFileNames names, HouseLock held, BriefWork? brief)
    {
        var sound = Sound.Read(here, names);
        var read = EntryReader.Changes(names, sound.Entries);
        if (read.Newer > 0 || sound.Trailer.Form > Trailer.CurrentForm)
        {
            held.Dispose();
            var (newer, remark) = (EntryReader.NewerBecause(read.Newer), EntryReader.RemarkOn(sound, null));
            return new HouseOnDisk(here, names, null, sound.Trailer, read.Changes, newer, remark) { Newer = read.Newer };
        }
        var trailer = sound.Trailer;
        var unread = sound.Unread == 0 ? null : names.Unread(here);
        var late = sound.Entries.Skip((int)trailer.Count).Zip(read.Changes.Skip((int)trailer.Count)).ToList();
        var isOurs = IsOurs(here, names, trailer)
            && (trailer.Journal is null || brief?.KeptIn is not { } folder || LeftMark.Read(here, names, folder, trailer)?.IsIn(0, sound.Entries) != false);
        if (brief is not null && sound.Unread == 0 && isOurs && Left(here, names, trailer, brief, sound.Database.Length) is { } left)
            return new HouseOnDisk(here, names, held, trailer, read.Changes, null, null, left, late) { Brief = brief };
        // Before the file is written anew, and with that becomes what its last page says.
        if (!isOurs)
            trailer = trailer with { Device = here.FreshDevice(), Machine = here.Machine };
        if (sound.Trailer.Journal is not null)
        {
            try
            {
                trailer = FileWriter.Fold(here, names, trailer, late, keepJournalAs: unread);
            }
            catch (Exception failed) when (Faults.OfDisk(failed))
            {
                held.Dispose();
                return Read(here, names, Faults.NothingBeside(names.Main, failed), fault: Faults.Saving(names.Main, failed).Fault);
            }
        }
        else
        {
            here.Files.Delete(names.Journal);
        }
        return new HouseOnDisk(here, names, held, trailer, read.Changes, null, EntryReader.RemarkOn(sound, unread)) { Brief = brief };
    }

    /// <summary>Whether a file is the one that its last page was written for, so that its device's name can go on.</summary>
    /// <remarks>A second name of the same file goes its own way with the first save: whichever is opened gets a device of its own.</remarks>
    private static bool IsOurs(Surroundings here, HouseFileNames names, Trailer trailer) => trailer.Machine == here.Machine && trailer.Born is not null
        && trailer.Born == here.Files.BirthOf(names.Main) && trailer.Place == names.Place && here.Files.NamesOf(names.Main) is (null or 1);

    private static HouseOnDisk Read(Surroundings here, HouseFileNames names, string because, bool goOn = false,
        StoreFault fault = StoreFault.NoRights)
    {
        try
        {
            if (!here.Files.Exists(names.Main))
                throw Faults.NotThere(here, names);
            var sound = Sound.Read(here, names, goOn);
            var read = EntryReader.Changes(names, sound.Entries);
            return new HouseOnDisk(here, names, null, sound.Trailer, read.Changes, read.Newer > 0 ? EntryReader.NewerBecause(read.Newer)
                : because, EntryReader.RemarkOn(sound, null))
            {
                ReadOnlyFault = fault,
                Newer = read.Newer,
                LeftOut = sound.Damage?.Message,
                InDoubt = sound.Damage?.InDoubt,
            };
        }
        catch (Exception failed) when (Faults.OfDisk(failed))
        {
            throw Faults.Opening(names.Main, failed);
        }
    }
}
