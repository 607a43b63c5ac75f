using TrimOut.Core.History;
using TrimOut.HouseFile.Durable;
using TrimOut.HouseFile.Files;

namespace TrimOut.HouseFile;

/// <summary>One house file, open. What <see cref="Append"/> has returned from is on the disk.</summary>
/// <remarks>
/// The file itself is a whole, sealed database that is only ever replaced by a rename. While the house is worked on, each
/// change is one sealed line of a journal beside it; closing folds the journal in. docs/house-file.md describes both.
/// </remarks>
public sealed class HouseOnDisk : IHouseStore, IDisposable
{
    private readonly Surroundings _here;
    private readonly HouseFileNames _names;
    private readonly HouseLock? _lock;
    private readonly List<(Entry Entry, Change Change)> _sinceFile = [];
    private Trailer _trailer;
    private string _lastSeal;
    private IOpenFile? _journal;
    private long _journalEnd;
    private bool _closed;

    private HouseOnDisk(Surroundings here, HouseFileNames names, HouseLock? held, Trailer trailer, IReadOnlyList<Change> opened, string? readOnlyBecause, string? remark)
    {
        _here = here;
        _names = names;
        _lock = held;
        _trailer = trailer;
        _lastSeal = trailer.Seal;
        Opened = opened;
        ReadOnlyBecause = readOnlyBecause;
        Remark = remark;
    }

    /// <inheritdoc/>
    public string Where => _names.Main;

    /// <inheritdoc/>
    public string Device => _trailer.Device;

    /// <inheritdoc/>
    public string? ReadOnlyBecause { get; private set; }

    /// <summary>What the user should know about how the house was found; null when all was well.</summary>
    public string? Remark { get; }

    /// <inheritdoc/>
    public IReadOnlyList<Change> Opened { get; }

    /// <summary>The name that all copies of this house share.</summary>
    public string House => _trailer.House;

    /// <summary>How many changes are in the file that only a newer program can read; they are not among <see cref="Opened"/>.</summary>
    public int Newer { get; private init; }

    /// <summary>Begins a house file.</summary>
    /// <param name="path">Where; nothing may be there yet.</param>
    /// <param name="clock">The clock.</param>
    /// <param name="changes">A history to begin with, in any order.</param>
    /// <exception cref="HouseStoreException">There is a file already, or it can't be written.</exception>
    public static HouseOnDisk Create(string path, TimeProvider clock, IReadOnlyList<Change>? changes = null) => Create(Surroundings.Here(clock), path, changes);

    internal static HouseOnDisk Create(Surroundings here, string path, IReadOnlyList<Change>? changes = null)
    {
        var names = new HouseFileNames(Path.GetFullPath(path));
        if (here.Files.Exists(names.Main))
            throw new HouseStoreException(StoreFault.AlreadyThere, $"{names.Main} is there already. Choose another name, or open it.");
        HouseLock? held = null;
        try
        {
            held = HouseLock.Take(here, names);
            var house = here.FreshName();
            var entries = SealAll(here, Seal.First(house), 0, changes ?? []);
            var trailer = new Trailer(Trailer.CurrentForm, house, entries.Count, entries.Count == 0 ? Seal.First(house) : entries[^1].Entry.Seal, "", here.FreshDevice(), here.Machine, null, null);
            trailer = FileWriter.Write(here, names, EntryTable.With([], entries), trailer);
            return new HouseOnDisk(here, names, held, trailer, [.. changes ?? []], null, null);
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

    /// <summary>Opens a house file for reading only, whoever else has it open.</summary>
    /// <param name="path">The file.</param>
    /// <param name="clock">The clock.</param>
    /// <exception cref="HouseStoreException">It is not there, is no house file, or is damaged.</exception>
    public static HouseOnDisk OpenToRead(string path, TimeProvider clock) => Read(Surroundings.Here(clock), Names(path), "it was opened for reading only.");

    internal static HouseOnDisk Open(Surroundings here, string path)
    {
        var names = Names(path);
        HouseLock? held = null;
        try
        {
            if (!here.Files.Exists(names.Main))
                throw Faults.NotThere(names.Main);
            if (here.Files.ReadOnlyBecause(names.Main) is { } because)
                return Read(here, names, because);
            if (Trailer.Read(here.Files.ReadEnd(names.Main, Trailer.Size)) is null)
                Sound.Recognise(names, here.Files.Read(names.Main));
            try
            {
                held = HouseLock.Take(here, names);
            }
            catch (Exception failed) when (Faults.OfDisk(failed))
            {
                return Read(here, names, Faults.NothingBeside(names.Main, failed));
            }
            return OpenHeld(here, names, held);
        }
        catch (Exception failed)
        {
            held?.Dispose();
            if (Faults.OfDisk(failed))
                throw Faults.Opening(names.Main, failed);
            throw;
        }
    }

    /// <inheritdoc/>
    public void Append(Change change)
    {
        if (ReadOnlyBecause is { } because)
            throw new HouseStoreException($"Not saved: {because}");
        var entry = SealOne(_here, _lastSeal, _trailer.Count + _sinceFile.Count, change);
        try
        {
            _journal ??= BeginJournal();
            var line = Journal.Line(_trailer.Journal!, entry);
            _journal.Write(_journalEnd, line);
            _journal.FlushToDisk();
            _journalEnd = Journal.EndOf(_journalEnd + line.Length);
        }
        catch (Exception failed) when (Faults.OfDisk(failed))
        {
            var fault = Faults.Saving(_names.Main, failed);
            TakeBack(fault);
            throw fault;
        }
        _sinceFile.Add((entry, change));
        _lastSeal = entry.Seal;
    }

    /// <summary>Takes in changes that another copy of the house has and this one has not: all of them, or none.</summary>
    /// <param name="changes">The changes, in their order.</param>
    /// <exception cref="HouseStoreException">They could not be saved; none was.</exception>
    public void Take(IReadOnlyList<Change> changes)
    {
        if (ReadOnlyBecause is { } because)
            throw new HouseStoreException(StoreFault.NoRights, $"Not saved: {because}");
        var taken = SealAll(_here, _lastSeal, _trailer.Count + _sinceFile.Count, changes);
        try
        {
            _trailer = FileWriter.Fold(_here, _names, _trailer, [.. _sinceFile, .. taken]);
        }
        catch (Exception failed) when (Faults.OfDisk(failed))
        {
            throw Faults.Saving(_names.Main, failed);
        }
        _journal?.Dispose();
        _journal = null;
        _sinceFile.Clear();
        _lastSeal = _trailer.Seal;
    }

    /// <summary>Puts another history in the place of this one, whole, or leaves all as it was. What is to be kept of this one must be backed up before.</summary>
    /// <param name="changes">The other history, in its order.</param>
    /// <exception cref="HouseStoreException">It could not be saved.</exception>
    public void Replace(IReadOnlyList<Change> changes)
    {
        if (ReadOnlyBecause is { } because)
            throw new HouseStoreException(StoreFault.NoRights, $"Not saved: {because}");
        var entries = SealAll(_here, Seal.First(_trailer.House), 0, changes);
        try
        {
            // The journal goes for certain before the history that it belongs to does.
            if (_sinceFile.Count > 0)
                _trailer = FileWriter.Fold(_here, _names, _trailer, _sinceFile);
            _here.Files.FlushFolderOf(_names.Main);
            // A device of its own: the one before may have numbered changes that are not in this history.
            _trailer = FileWriter.Write(_here, _names, EntryTable.With([], entries), _trailer with
            {
                Count = entries.Count,
                Seal = entries.Count == 0 ? Seal.First(_trailer.House) : entries[^1].Entry.Seal,
                Device = _here.FreshDevice(),
                Journal = null,
            });
        }
        catch (Exception failed) when (Faults.OfDisk(failed))
        {
            throw Faults.Saving(_names.Main, failed);
        }
        _journal?.Dispose();
        _journal = null;
        _sinceFile.Clear();
        _lastSeal = _trailer.Seal;
    }

    /// <summary>Closes the house: folds the journal into the file and lets go of it. What can't be folded in now stays in the journal, and is at the next opening.</summary>
    public void Dispose()
    {
        if (_closed)
            return;
        _closed = true;
        try
        {
            _journal?.Dispose();
            if (_sinceFile.Count > 0 && ReadOnlyBecause is null)
                FileWriter.Fold(_here, _names, _trailer, _sinceFile);
        }
        catch (Exception failed) when (Faults.OfDisk(failed) || failed is HouseStoreException)
        {
            // All is in the journal, flushed; the next opening folds it in.
        }
        finally
        {
            _lock?.Dispose();
        }
    }

    private static HouseOnDisk OpenHeld(Surroundings here, HouseFileNames names, HouseLock held)
    {
        var sound = Sound.Read(here.Files, names, here.Seal);
        var read = EntryReader.Changes(names, sound);
        if (read.Newer > 0 || sound.Trailer.Form > Trailer.CurrentForm)
        {
            held.Dispose();
            return new HouseOnDisk(here, names, null, sound.Trailer, read.Changes, EntryReader.NewerBecause(read.Newer), null) { Newer = read.Newer };
        }
        var trailer = sound.Trailer;
        var unread = sound.Unread == 0 ? null : names.Unread(here.Clock.GetUtcNow());
        if (sound.Trailer.Journal is not null)
        {
            var late = sound.Entries.Skip((int)trailer.Count).Zip(read.Changes.Skip((int)trailer.Count)).ToList();
            try
            {
                trailer = FileWriter.Fold(here, names, trailer, late, keepJournalAs: unread);
            }
            catch (Exception failed) when (Faults.OfDisk(failed))
            {
                held.Dispose();
                return Read(here, names, Faults.NothingBeside(names.Main, failed));
            }
        }
        else
        {
            here.Files.Delete(names.Journal);
        }
        if (trailer.Machine != here.Machine || trailer.Born is null || trailer.Born != here.Files.BirthOf(names.Main))
            trailer = trailer with { Device = here.FreshDevice(), Machine = here.Machine };
        return new HouseOnDisk(here, names, held, trailer, read.Changes, null, unread is null ? null : EntryReader.RemarkOn(sound, unread));
    }

    private static HouseOnDisk Read(Surroundings here, HouseFileNames names, string because)
    {
        try
        {
            if (!here.Files.Exists(names.Main))
                throw Faults.NotThere(names.Main);
            var sound = Sound.Read(here.Files, names, here.Seal);
            var read = EntryReader.Changes(names, sound);
            return new HouseOnDisk(here, names, null, sound.Trailer, read.Changes, read.Newer > 0 ? EntryReader.NewerBecause(read.Newer) : because, null) { Newer = read.Newer };
        }
        catch (Exception failed) when (Faults.OfDisk(failed))
        {
            throw Faults.Opening(names.Main, failed);
        }
    }

    /// <summary>Begins a journal, and only then says in the file that there is one.</summary>
    private IOpenFile BeginJournal()
    {
        // First of all a look at the file: where a stick was pulled out, nothing is to be left in the empty folder.
        var file = FileWriter.Unchanged(_here, _names, _trailer);
        var head = new JournalHead(_here.FreshName(), _trailer.Count, _trailer.Seal);
        var bytes = Journal.Begin(head);
        var journal = _here.Files.Create(_names.JournalNext, like: _names.Main);
        try
        {
            journal.Write(0, bytes);
            journal.FlushToDisk();
            _here.Files.Rename(_names.JournalNext, _names.Journal);
            _here.Files.FlushFolderOf(_names.Main);
            _trailer = FileWriter.Mark(_here, _names, file, _trailer, head.Id);
            _journalEnd = Journal.EndOf(bytes.Length);
            return journal;
        }
        catch
        {
            journal.Dispose();
            throw;
        }
    }

    /// <summary>After a failed save: leaves the journal as it was before, or saves nothing more.</summary>
    private void TakeBack(HouseStoreException fault)
    {
        if (_journal is null)
            return;
        try
        {
            var end = "end\n"u8;
            _journal.Write(_journalEnd, end);
            _journal.Cut(_journalEnd + end.Length);
            _journal.FlushToDisk();
        }
        catch (Exception again) when (Faults.OfDisk(again))
        {
            ReadOnlyBecause = fault.Message.Replace("Not saved: ", "", StringComparison.Ordinal);
        }
    }

    private static HouseFileNames Names(string path)
    {
        var full = Path.GetFullPath(path);
        return new HouseFileNames(File.Exists(full) ? File.ResolveLinkTarget(full, returnFinalTarget: true)?.FullName ?? full : full);
    }

    private static Entry SealOne(Surroundings here, string after, long before, Change change)
    {
        var json = ChangeJson.Write(change);
        return new Entry(before + 1, after, here.Seal(after, json), json);
    }

    private static List<(Entry Entry, Change Change)> SealAll(Surroundings here, string after, long before, IReadOnlyList<Change> changes)
    {
        var entries = new List<(Entry Entry, Change Change)>();
        foreach (var change in changes)
        {
            var entry = SealOne(here, after, before + entries.Count, change);
            entries.Add((entry, change));
            after = entry.Seal;
        }
        return entries;
    }
}
