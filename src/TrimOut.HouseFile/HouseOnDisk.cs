using System.Globalization;
using System.Text;
using TrimOut.Core.History;
using TrimOut.HouseFile.Durable;
using TrimOut.HouseFile.Files;

namespace TrimOut.HouseFile;

/// <summary>One house file, open. What <see cref="Append"/> has returned from is on the disk.</summary>
/// <remarks>
/// The file itself is a whole, sealed database that is only ever replaced by a rename. While the house is worked on, each
/// change is one sealed line of a journal beside it; closing folds the journal in. docs/house-file.md describes both.
/// </remarks>
public sealed partial class HouseOnDisk : IHouseStore, IDisposable
{
    private readonly Surroundings _here;
    private readonly HouseFileNames _names;
    private readonly HouseLock? _lock;
    private readonly List<(Entry Entry, Change Change)> _sinceFile = [];
    private readonly IReadOnlyList<Change>? _opened;
    private Trailer _trailer;
    private string _lastSeal;
    private IOpenFile? _journal;
    private long _journalEnd;
    private long _journalRoom;
    private ReachedNote? _reached;
    private bool _journalIsCut;
    private bool _closed;

    private HouseOnDisk(Surroundings here, HouseFileNames names, HouseLock? held, Trailer trailer, IReadOnlyList<Change>? opened, string? readOnlyBecause,
        string? remark, LeftJournal? left = null, IEnumerable<(Entry Entry, Change Change)>? late = null)
    {
        _here = here;
        _names = names;
        _lock = held;
        _trailer = trailer;
        _lastSeal = trailer.Seal;
        _opened = opened;
        ReadOnlyBecause = readOnlyBecause;
        Remark = remark;
        if (left is not null)
            GoOn(left, late!);
        HoldNames();
    }

    /// <inheritdoc/>
    public string Where => _names.Main;

    /// <inheritdoc/>
    public string Device => _trailer.Device;

    /// <inheritdoc/>
    public string? ReadOnlyBecause { get; private set; }

    /// <summary>What sort of thing <see cref="ReadOnlyBecause"/> is.</summary>
    public StoreFault ReadOnlyFault { get; private init; } = StoreFault.NoRights;

    /// <summary>What the user should know about how the house was found; null when all was well.</summary>
    public string? Remark { get; }

    /// <summary>What was left out because the journal is damaged; null when nothing was.</summary>
    public string? LeftOut { get; private init; }

    /// <summary>How many saves were left out at the least; 0 where nobody knows how many, null where nothing was.</summary>
    public long? InDoubt { get; private init; }

    /// <inheritdoc/>
    public IReadOnlyList<Change> Opened => _opened ?? Kept!.Changes;

    /// <summary>The name that all copies of this house share.</summary>
    public string House => _trailer.House;

    /// <summary>How many changes are in the file that only a newer program can read; they are not among <see cref="Opened"/>.</summary>
    public int Newer { get; private init; }

    /// <inheritdoc/>
    public void Append(Change change)
    {
        if (ReadOnlyBecause is { } because)
            throw new HouseStoreException($"Not saved: {because}");
        var entry = SealOne(_here, House, _lastSeal, _trailer.Count + _sinceFile.Count, change);
        try
        {
            if (_journal is null)
            {
                RequireNames();
                _journal = BeginJournal();
                HoldNames();
            }
            if (!IsJournalAsLeft())
                throw WithoutJournal();
            var line = Journal.Line(_trailer.Journal!, entry);
            MakeRoom(_journalEnd + line.Length);
            _journal.Write(_journalEnd, line);
            _journal.FlushToDisk();
            RequireNames();
            if (_journal.Length != _journalRoom)
                throw WithoutJournal();
            _journalEnd += line.Length - Journal.EndMark.Length;
        }
        catch (Exception failed) when (Faults.OfDisk(failed) || failed is HouseStoreException)
        {
            var fault = failed as HouseStoreException ?? Faults.Saving(_names.Main, failed);
            TakeBack(fault);
            throw fault;
        }
        _sinceFile.Add((entry, change));
        _lastSeal = entry.Seal;
        _reached?.Set(entry.Number);
    }

    /// <inheritdoc/>
    public void Take(IReadOnlyList<Change> changes)
    {
        if (ReadOnlyBecause is { } because)
            throw new HouseStoreException(ReadOnlyFault, $"Not saved: {because}");
        var taken = SealAll(_here, House, _lastSeal, _trailer.Count + _sinceFile.Count, changes);
        try
        {
            RequireNames();
            _trailer = FileWriter.Fold(_here, _names, _trailer, [.. _sinceFile, .. taken]);
        }
        catch (Exception failed) when (Faults.OfDisk(failed))
        {
            throw Faults.Saving(_names.Main, failed);
        }
        LeaveJournal();
        HoldNames();
        _logAtClosing = null;
        _sinceFile.Clear();
        _lastSeal = _trailer.Seal;
    }

    /// <summary>
    /// Puts another history in the place of this one, whole, or leaves all as it was. What is to be kept of this one must be backed up before.
    /// </summary>
    /// <param name="changes">The other history, in its order.</param>
    /// <exception cref="HouseStoreException">It could not be saved.</exception>
    public void Replace(IReadOnlyList<Change> changes)
    {
        if (ReadOnlyBecause is { } because)
            throw new HouseStoreException(ReadOnlyFault, $"Not saved: {because}");
        var entries = SealAll(_here, House, Seal.First(House), 0, changes);
        try
        {
            RequireNames();
            // The journal goes for certain before the history that it belongs to does.
            if (_sinceFile.Count > 0)
                _trailer = FileWriter.Fold(_here, _names, _trailer, _sinceFile);
            _here.Files.FlushFolderOf(_names.Main);
            // A device of its own: the one before may have numbered changes that are not in this history.
            _trailer = FileWriter.Write(_here, _names, EntryTable.With([], House, entries).Span, _trailer with
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
        LeaveJournal();
        HoldNames();
        _logAtClosing = null;
        _sinceFile.Clear();
        _lastSeal = _trailer.Seal;
    }

    /// <summary>
    /// Closes the house: folds the journal into the file and lets go of it. What can't be folded in now stays in the journal, and is at the next
    /// opening.
    /// </summary>
    public void Dispose()
    {
        if (_closed)
            return;
        _closed = true;
        var notHeld = NotHeldNow();
        try
        {
            if (notHeld is null && LeavesJournal())
            {
                KeepFold(isFileNew: false);
                return;
            }
            var keepJournalAs = notHeld is null ? null : _names.Unread(_here);
            LeaveJournal();
            var folds = _sinceFile.Count > 0 && ReadOnlyBecause is null;
            if (folds)
                RequireNames();
            else
                NotKeptBecause = notHeld;
            LetNamesGo();
            if (folds)
                _trailer = FileWriter.Fold(_here, _names, _trailer, _sinceFile, keepJournalAs);
            if (folds)
                _sinceFile.Clear();
            KeepFold(folds);
        }
        catch (Exception failed) when (Faults.OfDisk(failed) || failed is HouseStoreException)
        {
            // All is in the journal, flushed; the next opening folds it in. Where it is not, or can't go into the file that lies there now, that is to be said.
            NotKeptBecause = notHeld ?? (failed is not HouseStoreException ? null
                : $"{_names.Main} is not the file any more that was opened. All that was saved lies in {_names.Journal}. "
                    + $"To bring it out: trimout rescue {ShellWord.Of(_names.Main)} NEW.trimout");
        }
        finally
        {
            LeaveJournal();
            LetNamesGo();
            _lock?.Dispose();
        }
    }

    /// <summary>Begins a journal, and only then says in the file that there is one.</summary>
    private IOpenFile BeginJournal()
    {
        // First of all a look at the file: where a stick was pulled out, nothing is to be left in the empty folder.
        var file = FileWriter.Unchanged(_here, _names, _trailer);
        var head = new JournalHead(2, _here.FreshName(), House, _trailer.Count, _trailer.Seal);
        var bytes = Journal.Begin(head);
        var journal = _here.Files.Create(_names.JournalNext, like: _names.Main);
        try
        {
            journal.Write(0, bytes);
            journal.FlushToDisk();
            _here.Files.Rename(_names.JournalNext, _names.Journal);
            _here.Files.FlushFolderOf(_names.Main);
            _trailer = FileWriter.Mark(_here, _names, file, _trailer, head.Id);
            _journalEnd = Journal.EndOf(head);
            _journalRoom = bytes.Length;
            _reached = ReachedNote.Begin(_here, _names, file.Length, head.Id);
            return journal;
        }
        catch
        {
            journal.Dispose();
            throw;
        }
    }

    /// <summary>Whether the journal is as the last save left it: somebody may have cut or emptied it, or written over its end.</summary>
    private bool IsJournalAsLeft() =>
        _journal!.Length == _journalRoom && _journal.Read(_journalEnd, Journal.EndMark.Length).AsSpan().SequenceEqual(Journal.EndMark);

    /// <summary>
    /// Where something else cut the journal or wrote into it: all that was saved is written from memory into the house file, and what lies in the
    /// journal is kept beside it. The save that found it out is not done.
    /// </summary>
    private HouseStoreException WithoutJournal()
    {
        const string found = "was cut or written to by something else while the house was open";
        var kept = _names.Unread(_here);
        _journalIsCut = true;
        try
        {
            RequireNames();
            _trailer = FileWriter.Fold(_here, _names, _trailer, _sinceFile, keepJournalAs: kept);
        }
        catch (Exception failed) when (Faults.OfDisk(failed))
        {
            return new HouseStoreException(StoreFault.Disk, $"Not saved: {_names.Journal} {found}. Save a copy somewhere else.", failed);
        }
        LeaveJournal();
        HoldNames();
        _sinceFile.Clear();
        _journalIsCut = false;
        return new HouseStoreException(StoreFault.Disk,
            $"Not saved: {_names.Journal} {found}. All that was saved before is in {_names.Main} again, and what lay in the journal in {kept}. Save again.");
    }

    /// <summary>After a failed save: leaves the journal as it was before, or saves nothing more.</summary>
    private void TakeBack(HouseStoreException fault)
    {
        if (_journal is null || _journalIsCut)
            return;
        try
        {
            _journal.Write(_journalEnd, Journal.EndMark);
            _journal.Cut(_journalEnd + Journal.EndMark.Length);
            _journal.FlushToDisk();
            _journalRoom = _journalEnd + Journal.EndMark.Length;
        }
        catch (Exception again) when (Faults.OfDisk(again))
        {
            ReadOnlyBecause = fault.Message.Replace("Not saved: ", "", StringComparison.Ordinal);
        }
    }

    /// <summary>Takes room for what will be written, on the disk before anything is written into it: so a torn save is told from a journal that was
    /// cut.</summary>
    private void MakeRoom(long end)
    {
        if (end < _journalRoom)
            return;
        var room = Journal.RoomFor(end);
        // After a save that was taken back it ends at its mark. It grows at once to a whole room: a length between the two is a cut.
        if (_journalRoom % Journal.Room != 0)
            _journal!.Cut(room);
        _journal!.Write(_journalRoom, new byte[room - _journalRoom]);
        _journal.FlushToDisk();
        _reached?.FlushToDisk();
        _journalRoom = room;
    }

    private void LeaveJournal()
    {
        _journal?.Dispose();
        _journal = null;
        _reached?.Dispose();
        _reached = null;
    }

    private static Entry SealOne(Surroundings here, string house, string after, long before, Change change)
    {
        var json = ChangeJson.Write(change);
        if (Encoding.UTF8.GetByteCount(json) > Entry.LongestJson)
            throw new HouseStoreException(StoreFault.Foreign, string.Create(CultureInfo.InvariantCulture,
                $"Not saved: change {change.Id} alone has more than {Entry.LongestJson} bytes, and no house file can hold so large a change."));
        return new Entry(before + 1, after, here.Seal(house, before + 1, after, json), json);
    }

    private static List<(Entry Entry, Change Change)> SealAll(Surroundings here, string house, string after, long before, IReadOnlyList<Change> changes)
    {
        var entries = new List<(Entry Entry, Change Change)>();
        foreach (var change in changes)
        {
            var entry = SealOne(here, house, after, before + entries.Count, change);
            entries.Add((entry, change));
            after = entry.Seal;
        }
        return entries;
    }
}
