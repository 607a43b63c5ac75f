using TrimOut.Core.History;

namespace TrimOut.HouseFile.Durable;

/// <summary>Writes a house file anew beside itself and renames it into place: whatever happens, either the old or the new one is there, whole.</summary>
internal static class FileWriter
{
    /// <summary>Writes a file with these contents.</summary>
    /// <param name="here">The disk and the clock.</param>
    /// <param name="names">The files.</param>
    /// <param name="database">The contents.</param>
    /// <param name="trailer">The last page; which form it is, when the file was born and what it must hold are put in here.</param>
    /// <param name="asRead">Whether these are the contents that the last page already is of.</param>
    /// <returns>Its last page.</returns>
    public static Trailer Write(Surroundings here, HouseFileNames names, ReadOnlySpan<byte> database, Trailer trailer, bool asRead = false)
    {
        try
        {
            using var file = here.Files.Create(names.Next, like: names.Main);
            var (form, sha) = (Math.Max(trailer.Form, Trailer.CurrentForm), asRead ? trailer.Sha256 : Trailer.Hash(database));
            trailer = trailer with { Form = form, Sha256 = sha, Born = here.Files.BirthOf(names.Next), Place = names.Place };
            file.Write(0, database);
            file.Write(database.Length, trailer.ToPage());
            file.FlushToDisk();
        }
        catch (Exception failed) when (Faults.OfDisk(failed))
        {
            GiveBackRoom(here, names);
            throw;
        }
        here.Files.Rename(names.Next, names.Main);
        here.Files.FlushFolderOf(names.Main);
        return trailer;
    }

    /// <summary>Says in the file that a journal goes on from it.</summary>
    /// <param name="here">The disk and the clock.</param>
    /// <param name="names">The files.</param>
    /// <param name="file">The file as it is, by <see cref="Unchanged"/>.</param>
    /// <param name="trailer">Its last page.</param>
    /// <param name="journal">The journal's name.</param>
    public static Trailer Mark(Surroundings here, HouseFileNames names, byte[] file, Trailer trailer, string journal) =>
        Write(here, names, file.AsSpan(0, file.Length - Trailer.Size), trailer with { Journal = journal }, asRead: true);

    /// <summary>Takes the journal's entries into the file, and only then takes the journal away.</summary>
    /// <param name="here">The disk and the clock.</param>
    /// <param name="names">The files.</param>
    /// <param name="trailer">The file's last page.</param>
    /// <param name="late">The journal's entries.</param>
    /// <param name="keepJournalAs">The name to keep the journal under, because it has bytes that could not be read; null when it has none.</param>
    public static Trailer Fold(Surroundings here, HouseFileNames names, Trailer trailer, IReadOnlyList<(Entry Entry, Change Change)> late,
        string? keepJournalAs = null)
    {
        var file = Unchanged(here, names, trailer);
        var database = file.AsSpan(0, file.Length - Trailer.Size);
        var folded = trailer with { Count = trailer.Count + late.Count, Seal = late.Count == 0 ? trailer.Seal : late[^1].Entry.Seal, Journal = null };
        folded = Write(here, names, late.Count == 0 ? database : EntryTable.With(database, trailer.House, late).Span, folded);
        if (keepJournalAs is not null)
            here.Files.Rename(names.Journal, keepJournalAs);
        else
            here.Files.Delete(names.Journal);
        return folded;
    }

    /// <summary>A file that was begun and can't be ended would fill up what is left of a full disk.</summary>
    private static void GiveBackRoom(Surroundings here, HouseFileNames names)
    {
        try
        {
            here.Files.Delete(names.Next);
        }
        catch (Exception failed) when (Faults.OfDisk(failed))
        {
            // What is left of it means nothing, and the next writing takes it away.
        }
    }

    /// <summary>The file, when it is still there and as it was opened.</summary>
    /// <exception cref="HouseStoreException">Another program changed it.</exception>
    /// <exception cref="IOException">It is gone, or can't be read.</exception>
    public static byte[] Unchanged(Surroundings here, HouseFileNames names, Trailer trailer)
    {
        var file = here.Files.Read(names.Main);
        var found = Sound.CheckFile(names, file);
        return found.Seal == trailer.Seal && found.Count == trailer.Count && found.House == trailer.House && found.Journal == trailer.Journal
            ? file
            : throw new HouseStoreException(StoreFault.Disk,
                $"Not saved: {names.Main} was changed by another program since it was opened. Save a copy somewhere else, and merge the two.");
    }
}
