using System.Text;
using TrimOut.Core.History;
using TrimOut.HouseFile.Files;

namespace TrimOut.HouseFile.Durable;

/// <summary>A house file and its journal as they were found, held against their seals.</summary>
/// <param name="Trailer">The house file's last page.</param>
/// <param name="Database">The house file without its last page.</param>
/// <param name="Entries">All sound entries: the house file's, then the journal's.</param>
/// <param name="Unread">Bytes after the last sound entry: a save that never ended.</param>
/// <param name="Damage">What is wrong with the journal, for the user; null when nothing is.</param>
/// <param name="Ended">Whether the journal's end mark stands, so that what is unread lies behind it.</param>
internal sealed record Sound(Trailer Trailer, ReadOnlyMemory<byte> Database, IReadOnlyList<Entry> Entries, int Unread = 0,
    HouseStoreException? Damage = null, bool Ended = false)
{
    private const int ReadAtMost = 20;
    private const int MarkWithin = 63;
    private static readonly byte[] DatabaseMark = Encoding.ASCII.GetBytes("** This is a LiteDB file **");
    private static readonly TimeSpan OneWrite = TimeSpan.FromMilliseconds(5);

    /// <summary>The seal of the last entry.</summary>
    public string LastSeal => Entries.Count == 0 ? Trailer.Seal : Entries[^1].Seal;

    /// <summary>Reads a house file and its journal: the one way in for everything that reads a house.</summary>
    /// <param name="here">The disk.</param>
    /// <param name="names">The files.</param>
    /// <param name="goOn">Whether a damaged journal is read as far as it is sound, rather than refused.</param>
    /// <exception cref="HouseStoreException">It is no house file, or a damaged one.</exception>
    /// <exception cref="IOException">The disk failed.</exception>
    public static Sound Read(Surroundings here, HouseFileNames names, bool goOn = false)
    {
        (string File, string? Journal)? before = null;
        Recognise(here, names);
        for (var attempt = 1; ; attempt++)
        {
            var file = here.Files.Read(names.Main);
            var sound = Join(here, names, file);
            if (sound.Damage is null && sound.Unread == 0)
                return sound;
            // Another program may be in the middle of a save or of closing the house: what it is really like stays the same.
            var now = (Trailer.Hash(file), OfJournal(here.Files, names, _ => here.Files.HashWithout(names.Journal, 0)));
            if (attempt == ReadAtMost || before == now)
                return sound.Damage is null || goOn ? sound : throw sound.Damage;
            before = now;
            if (here.Files.Exists(names.InUse))
                Thread.Sleep(OneWrite);
        }
    }

    /// <summary>Holds a file against its last page.</summary>
    public static Trailer CheckFile(HouseFileNames names, ReadOnlySpan<byte> file)
    {
        var trailer = Recognise(names, file, file);
        return trailer.Form > Trailer.CurrentForm || Trailer.Hash(file[..^Trailer.Size]) == trailer.Sha256
            ? trailer
            : throw Faults.Damaged(names.Main, "its contents are not what was written.");
    }

    /// <summary>The last page of a house file, without a look at its contents: what is no house file is refused however long it is.</summary>
    /// <exception cref="HouseStoreException">It is no house file, or a damaged one.</exception>
    /// <exception cref="IOException">The disk failed.</exception>
    public static Trailer Recognise(Surroundings here, HouseFileNames names) =>
        Recognise(names, here.Files.ReadStart(names.Main, MarkWithin + DatabaseMark.Length), here.Files.ReadEnd(names.Main, Trailer.Size));

    private static Trailer Recognise(HouseFileNames names, ReadOnlySpan<byte> start, ReadOnlySpan<byte> end)
    {
        if (end.IsEmpty)
            throw new HouseStoreException(StoreFault.Foreign, $"{names.Main} is empty: it is no house file. Nothing was changed.") { House = names.Main };
        if (Trailer.Read(end) is not { } trailer)
        {
            throw start[..Math.Min(start.Length, MarkWithin + DatabaseMark.Length)].IndexOf(DatabaseMark) >= 0
                ? Faults.Damaged(names.Main, "its last page is missing or can't be read.")
                : new HouseStoreException(StoreFault.Foreign, $"{names.Main} is no house file. Nothing was changed.") { House = names.Main };
        }
        return trailer;
    }

    /// <summary>Does something with the journal; null where there is none, or none any more.</summary>
    private static T? OfJournal<T>(IFileLayer files, HouseFileNames names, Func<IReadFile, T> what)
        where T : class
    {
        try
        {
            if (!files.Exists(names.Journal))
                return null;
            using var journal = files.OpenToRead(names.Journal);
            return what(journal);
        }
        catch (FileNotFoundException)
        {
            return null;
        }
    }

    private static Sound Join(Surroundings here, HouseFileNames names, byte[] file)
    {
        var trailer = CheckFile(names, file);
        var entries = EntryTable.Read(file, trailer) ?? throw Faults.Damaged(names.Main, "its rows are not those that its last page says.");
        var database = file.AsMemory(0, file.Length - Trailer.Size);
        if (trailer.NotesDamaged)
            return Only(Faults.JournalDamaged(names, "The note in it of how far its journal had got can't be read.", null));
        var known = trailer.Reached is { } reached ? reached.Number - trailer.Count : (long?)null;
        if (OfJournal(here.Files, names, j => Durable.Journal.Read(j, trailer.House, here.Seal)) is not { } journal)
        {
            return trailer.Journal is null
                ? new Sound(trailer, database, entries)
                : Only(Faults.JournalDamaged(names,
                    $"The changes since it was last opened are in {names.Journal}, which is missing. Put it back beside the house file.", known,
                    trailer.Journal));
        }
        if (trailer.Journal is null)
        {
            // Begun and never used, or folded in and not yet taken away: either way all of it is in the file.
            return journal.Head is { } stale && journal.Fault is null && IsIn(entries, stale, journal.Entries.Count == 0 ? null : journal.Entries[^1])
                ? new Sound(trailer, database, entries)
                : Only(Faults.JournalDamaged(names,
                    $"{names.Journal} beside it is another house's, of another copy, or damaged. If the house file is right, move that file away.", null));
        }
        if (journal.Head is null || journal.Head.Id != trailer.Journal || journal.Head.Start != trailer.Count || journal.Head.After != trailer.Seal)
            return Only(Faults.JournalDamaged(names, $"{names.Journal} beside it is not the one that goes on from it.", known, trailer.Journal));
        var sound = new Sound(trailer, database, [.. entries, .. journal.Entries], journal.Unread, Ended: journal.Ended);
        if (trailer.Reached is { } note && journal.Last < note.Number)
        {
            var what = journal.Fault ?? $"{names.Journal} is an older one, or a part of it is missing.";
            return sound with { Unread = 0, Damage = Faults.JournalDamaged(names, what, note.Number - journal.Last) };
        }
        return journal.Fault is { } fault ? sound with { Unread = 0, Damage = Faults.JournalDamaged(names, fault, journal.InDoubt) } : sound;

        Sound Only(HouseStoreException damage) => new(trailer, database, entries, 0, damage);
    }

    /// <summary>Whether a file holds all of a journal.</summary>
    private static bool IsIn(List<Entry> entries, JournalHead head, Entry? last)
    {
        var (number, seal) = last is null ? (head.Start, head.After) : (last.Number, last.Seal);
        return number <= entries.Count && (number == 0 ? entries.Count == 0 || entries[0].After == seal : entries[(int)number - 1].Seal == seal);
    }
}
