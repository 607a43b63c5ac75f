using LiteDB;
using LiteDB.Engine;
using TrimOut.Core.History;

namespace TrimOut.HouseFile.Durable;

/// <summary>Entries as rows of a LiteDB database. Rows are only ever inserted.</summary>
/// <remarks>A row is <c>{ _id: "device:seq", house, n, after, seal, stamp, v, json }</c>: our own text, because the database's mapper loses offsets of
/// times and stores class names. The database's engine is asked itself: its other entrance brings the mapper along, which makes code as it runs.</remarks>
internal static class EntryTable
{
    private const string Name = "changes";
    private const int BegunAt = 68;
    private const int RowsAtOnce = 20_000;

    /// <summary>A database with these entries.</summary>
    /// <param name="before">The database to add them to; empty for a new one.</param>
    /// <param name="house">The house's name.</param>
    /// <param name="added">The entries to add, with their changes.</param>
    public static ReadOnlyMemory<byte> With(ReadOnlySpan<byte> before, string house, IEnumerable<(Entry Entry, Change Change)> added)
    {
        using var data = new MemoryStream();
        data.Write(before);
        data.Position = 0;
        using (var log = new MemoryStream())
        using (var database = new LiteEngine(new EngineSettings { DataStream = data, LogStream = log }))
        {
            // Piece by piece: else its log, and what it keeps of it in memory, become as large as all that is added.
            foreach (var piece in added.Chunk(RowsAtOnce).DefaultIfEmpty([]))
            {
                database.Insert(Name, piece.Select(a => Row(house, a.Entry, a.Change)), BsonAutoId.ObjectId);
                database.Checkpoint();
            }
        }
        data.TryGetBuffer(out var bytes);
        // The day on which the database was begun is of no use: without it the same changes make the same file.
        if (before.IsEmpty)
            bytes.AsSpan(BegunAt, sizeof(long)).Clear();
        return bytes;
    }

    /// <summary>The entries of a sound file, in their order.</summary>
    /// <param name="file">The file, whose contents are what was written.</param>
    /// <param name="trailer">Its last page.</param>
    /// <returns>The entries; null when they are not, one by one and each tied to the one before, what the last page says.</returns>
    public static List<Entry>? Read(byte[] file, Trailer trailer) => FromPages(file, trailer) ?? Chained(FromDatabase(file[..^Trailer.Size]), trailer);

    /// <summary>
    /// The entries straight from the database's pages, which takes a fraction of the time; null where these are not, one by one
    /// and each tied to the one before, what the last page says.
    /// </summary>
    internal static List<Entry>? FromPages(byte[] file, Trailer trailer)
    {
        var entries = new List<Entry>();
        foreach (var document in RowPages.Documents(file))
        {
            if (RowPages.ToRow(document.Span) is { } row)
                entries.Add(row.Entry);
        }
        entries.Sort((a, b) => a.Number.CompareTo(b.Number));
        return Chained(entries, trailer);
    }

    private static List<Entry>? Chained(List<Entry> entries, Trailer trailer)
    {
        if (entries.Count != trailer.Count)
            return null;
        var seal = Seal.First(trailer.House);
        for (var at = 0; at < entries.Count; at++)
        {
            if (entries[at].Number != at + 1 || entries[at].After != seal)
                return null;
            seal = entries[at].Seal;
        }
        return seal == trailer.Seal ? entries : null;
    }

    /// <summary>The entries by way of the database itself.</summary>
    internal static List<Entry> FromDatabase(byte[] database)
    {
        using var data = new MemoryStream(database, writable: false);
        using var log = new MemoryStream();
        using var opened = new LiteEngine(new EngineSettings { DataStream = data, LogStream = log });
        using var rows = opened.Query(Name, new Query());
        var entries = new List<Entry>();
        while (rows.Read())
            entries.Add(new Entry(rows["n"].AsInt64, rows["after"].AsString, rows["seal"].AsString, rows["json"].AsString));
        entries.Sort((a, b) => a.Number.CompareTo(b.Number));
        return entries;
    }

    /// <summary>The row of an entry.</summary>
    internal static BsonDocument Row(string house, Entry entry, Change change) => new()
    {
        ["_id"] = change.Id.ToString(),
        ["house"] = house,
        ["n"] = entry.Number,
        ["after"] = entry.After,
        ["seal"] = entry.Seal,
        ["stamp"] = change.Stamp,
        ["v"] = ChangeJson.Version,
        ["json"] = entry.Json,
    };
}
