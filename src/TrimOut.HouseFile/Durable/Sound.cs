using System.Text;
using TrimOut.Core.History;
using TrimOut.HouseFile.Files;

namespace TrimOut.HouseFile.Durable;

/// <summary>A house file and its journal as they were found, held against their seals.</summary>
/// <param name="Trailer">The house file's last page.</param>
/// <param name="Entries">All entries: the house file's, then the journal's.</param>
/// <param name="Journal">The journal that goes on from the house file; null when none does.</param>
internal sealed record Sound(Trailer Trailer, IReadOnlyList<Entry> Entries, JournalContents? Journal)
{
    private static readonly byte[] DatabaseMark = Encoding.ASCII.GetBytes("** This is a LiteDB file **");

    /// <summary>Bytes after the last sound entry: a save that never ended.</summary>
    public int Unread => Journal?.Unread ?? 0;

    /// <summary>The seal of the last entry.</summary>
    public string LastSeal => Entries.Count == 0 ? Trailer.Seal : Entries[^1].Seal;

    /// <summary>Reads a house file and its journal.</summary>
    /// <exception cref="HouseStoreException">It is no house file, or a damaged one.</exception>
    /// <exception cref="IOException">The disk failed.</exception>
    public static Sound Read(IFileLayer files, HouseFileNames names, SealMaker seal)
    {
        for (var attempt = 0; ; attempt++)
        {
            var file = files.Read(names.Main);
            var trailer = CheckFile(names, file);
            var journal = files.Exists(names.Journal) ? files.Read(names.Journal) : null;
            // Another program may have closed the house between the two readings; then the file is complete by now.
            if (trailer.Journal is not null && journal is null && attempt < 3)
                continue;
            var entries = EntryTable.Read(file, trailer);
            return Join(names, trailer, entries, journal, seal);
        }
    }

    /// <summary>Holds a file against its last page.</summary>
    public static Trailer CheckFile(HouseFileNames names, ReadOnlySpan<byte> file)
    {
        var trailer = Recognise(names, file);
        return trailer.Form > Trailer.CurrentForm || Trailer.Hash(file[..^Trailer.Size]) == trailer.Sha256
            ? trailer
            : throw Faults.Damaged(names.Main, "its contents are not what was written.");
    }

    /// <summary>The last page of a house file, without a look at its contents.</summary>
    /// <exception cref="HouseStoreException">It is no house file.</exception>
    public static Trailer Recognise(HouseFileNames names, ReadOnlySpan<byte> file)
    {
        if (file.IsEmpty)
            throw new HouseStoreException(StoreFault.Foreign, $"{names.Main} is empty: it is no house file. Nothing was changed.");
        if (Trailer.Read(file) is not { } trailer)
        {
            throw file.IndexOf(DatabaseMark) is >= 0 and < 64
                ? Faults.Damaged(names.Main, "its last page is missing or can't be read.")
                : new HouseStoreException(StoreFault.Foreign, $"{names.Main} is no house file. Nothing was changed.");
        }
        return trailer;
    }

    private static Sound Join(HouseFileNames names, Trailer trailer, List<Entry> entries, byte[]? bytes, SealMaker seal)
    {
        if (bytes is null)
        {
            return trailer.Journal is null
                ? new Sound(trailer, entries, null)
                : throw Faults.Damaged(names.Main, $"the changes since it was last opened are in {names.Journal}, which is missing. Put it back beside the house file.");
        }
        var journal = Durable.Journal.Read(bytes, seal);
        if (trailer.Journal is null)
        {
            // Begun and never used, or folded in and not yet taken away: either way all of it is in the file.
            return journal.Head is { } stale && IsIn(entries, stale, journal.Entries.Count == 0 ? null : journal.Entries[^1])
                ? new Sound(trailer, entries, null)
                : throw Faults.Damaged(names.Main, $"{names.Journal} beside it is another house's, or of another copy. If the house file is right, move that file away.");
        }
        if (journal.Head is null || journal.Head.Id != trailer.Journal || journal.Head.Start != trailer.Count || journal.Head.After != trailer.Seal)
            throw Faults.Damaged(names.Main, $"{names.Journal} beside it is not the one that goes on from it.");
        if (journal.Fault is { } fault)
            throw Faults.Damaged(names.Journal, fault);
        return new Sound(trailer, [.. entries, .. journal.Entries], journal);
    }

    /// <summary>Whether a file holds all of a journal.</summary>
    private static bool IsIn(List<Entry> entries, JournalHead head, Entry? last)
    {
        var (number, seal) = last is null ? (head.Start, head.After) : (last.Number, last.Seal);
        return number <= entries.Count && (number == 0 ? entries.Count == 0 || entries[0].After == seal : entries[(int)number - 1].Seal == seal);
    }
}
