using TrimOut.Core.History;
using TrimOut.HouseFile.Durable;
using TrimOut.HouseFile.Kept;

namespace TrimOut.HouseFile;

/// <content>A short piece of work on a large house: what is left beside it and kept of it, and how that is opened.</content>
public sealed partial class HouseOnDisk
{
    /// <inheritdoc/>
    public HouseLog? Kept { get; private init; }

    /// <summary>Whether it goes on with a journal that was left beside it, so that the file itself was not written anew.</summary>
    public bool WentOn { get; private set; }

    private BriefWork? Brief { get; init; }

    private Func<HouseLog>? _logAtClosing;

    /// <summary>Has what the history makes kept at closing, where the house is large by then. Where it can't be kept nothing happens.</summary>
    /// <param name="log">Gives the log of all that was there and was appended since.</param>
    public void KeepAtClosing(Func<HouseLog> log) => _logAtClosing = log;

    private void KeepFold(bool isFileNew)
    {
        if (Brief is not { KeptIn: { } folder } || ReadOnlyBecause is not null || _logAtClosing is null || _here.Files.LengthOf(_names.Main) < Brief.LargeFrom)
            return;
        var log = _logAtClosing();
        var isKept = !isFileNew && (Kept is not null ? log.SinceFolded <= BriefWork.BehindAtMost
            : !WentOn && KeptFile.Read(_here, _names, folder, _trailer) is not null);
        // Whoever opens a history with holes is told of them, and that takes all of it.
        if (!isKept && (Kept is not null || NumberGaps.In(log.Changes).IsEmpty) && KeptFold.Write(log) is { } fold)
            new KeptFile(_trailer.Count + _sinceFile.Count, _lastSeal, fold).Write(_here, _names, folder, _trailer);
    }

    /// <summary>Opens a house by the fold that was kept of it.</summary>
    /// <remarks>
    /// Everything is read and held against its seals as by <see cref="Sound"/>: the whole file, the journal, the notes. Only what a sound history
    /// makes is taken over instead of being worked out again. Whatever is not just as closing leaves it is left to the plain way.
    /// </remarks>
    /// <returns>Null where it can't be.</returns>
    private static HouseOnDisk? FromKept(Surroundings here, HouseFileNames names, HouseLock held, BriefWork brief)
    {
        if (Trailer.Read(here.Files.ReadEnd(names.Main, Trailer.Size)) is not { Form: Trailer.CurrentForm } trailer || !IsOurs(here, names, trailer)
            || brief.KeptIn is not { } folder || KeptFile.Read(here, names, folder, trailer) is not { } kept)
            return null;
        var file = Task.Run(() => here.Files.HashWithout(names.Main, Trailer.Size));
        var left = trailer.Journal is null ? null : Left(here, names, trailer, brief, here.Files.LengthOf(names.Main));
        var entries = left?.Contents.Entries ?? [];
        var (late, newer) = EntryReader.Changes(names, entries);
        var isAsLeft = trailer.Journal is null ? !here.Files.Exists(names.Journal) : left is not null;
        var log = newer == 0 && isAsLeft && kept.IsUpTo(trailer, entries)
            && (left is null || LeftMark.Read(here, names, folder, trailer)?.IsIn(trailer.Count, entries) != false)
            ? With(KeptFold.Read(kept.Fold, () => First(here, names, kept)), late.Skip((int)(kept.Count - trailer.Count))) : null;
        if (file.GetAwaiter().GetResult() == trailer.Sha256 && log is not null)
            return new HouseOnDisk(here, names, held, trailer, null, null, null, left, entries.Zip(late)) { Brief = brief, Kept = log };
        left?.File.Dispose();
        return null;
    }

    /// <summary>A log and some more changes; null where one of them is there already, which takes a look at all.</summary>
    private static HouseLog? With(HouseLog log, IEnumerable<Change> more)
    {
        foreach (var change in more)
        {
            if (log.Find(change.Id) is not null)
                return null;
            log = log.With(change);
        }
        return log;
    }

    /// <summary>The changes that a kept fold was made of.</summary>
    private static IReadOnlyList<Change> First(Surroundings here, HouseFileNames names, KeptFile kept)
    {
        var entries = Sound.Read(here, names).Entries;
        return entries.Count >= kept.Count && kept.Count > 0 && entries[(int)kept.Count - 1].Seal == kept.Seal
            ? EntryReader.Changes(names, [.. entries.Take((int)kept.Count)]).Changes
            : throw Faults.Damaged(names.Main, "it is another one than when it was opened.");
    }

    /// <summary>The journal that was left beside a house file, where the work can go on with it.</summary>
    private static LeftJournal? Left(Surroundings here, HouseFileNames names, Trailer trailer, BriefWork brief, long file)
    {
        if (!here.Files.Exists(names.Journal) || !brief.LeavesJournal(file, here.Files.LengthOf(names.Journal) - Journal.Room))
            return null;
        var left = LeftJournal.Open(here, names, trailer);
        if (left is null || brief.LeavesJournal(file, left.End))
            return left;
        left.File.Dispose();
        return null;
    }

    private void GoOn(LeftJournal left, IEnumerable<(Entry Entry, Change Change)> late)
    {
        (_journal, _journalEnd, _journalRoom) = (left.File, left.End, left.Room);
        _sinceFile.AddRange(late);
        _lastSeal = _sinceFile.Count == 0 ? _trailer.Seal : _sinceFile[^1].Entry.Seal;
        _reached = ReachedNote.Begin(_here, _names, _here.Files.LengthOf(_names.Main), _trailer.Journal!);
        WentOn = true;
    }

    /// <summary>Leaves the journal beside a large house, with the note of how far it got on the disk.</summary>
    /// <returns>Whether it was left.</returns>
    private bool LeavesJournal()
    {
        if (Brief is null || _journal is null || ReadOnlyBecause is not null || !Brief.LeavesJournal(_here.Files.LengthOf(_names.Main), _journalEnd))
            return false;
        _reached?.FlushToDisk();
        if (Brief.KeptIn is { } folder)
            new LeftMark(_trailer.Count + _sinceFile.Count, _lastSeal).Write(_here, _names, folder, _trailer);
        return true;
    }
}
