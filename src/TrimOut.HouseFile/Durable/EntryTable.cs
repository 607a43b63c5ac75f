using LiteDB;
using TrimOut.Core.History;

namespace TrimOut.HouseFile.Durable;

/// <summary>Entries as rows of a LiteDB database. Rows are only ever inserted.</summary>
/// <remarks>A row is <c>{ _id: "device:seq", n, after, seal, stamp, v, json }</c>: our own text, because the database's mapper loses offsets of times and stores class names.</remarks>
internal static class EntryTable
{
    private const string Name = "changes";

    /// <summary>A database with these entries.</summary>
    /// <param name="before">The database to add them to; empty for a new one.</param>
    /// <param name="added">The entries to add, with their changes.</param>
    public static byte[] With(ReadOnlySpan<byte> before, IEnumerable<(Entry Entry, Change Change)> added)
    {
        using var data = new MemoryStream();
        data.Write(before);
        data.Position = 0;
        using (var log = new MemoryStream())
        using (var database = new LiteDatabase(data, new BsonMapper(), log))
        {
            database.GetCollection(Name).InsertBulk(added.Select(a => Row(a.Entry, a.Change)));
            database.Checkpoint();
        }
        return data.ToArray();
    }

    /// <summary>The entries of a sound database, in their order.</summary>
    public static List<Entry> Read(byte[] database)
    {
        using var data = new MemoryStream(database, writable: false);
        using var log = new MemoryStream();
        using var opened = new LiteDatabase(data, new BsonMapper(), log);
        var entries = new List<Entry>();
        foreach (var row in opened.GetCollection(Name).FindAll())
            entries.Add(ToEntry(row));
        entries.Sort((a, b) => a.Number.CompareTo(b.Number));
        return entries;
    }

    /// <summary>The entry of a row.</summary>
    /// <exception cref="InvalidCastException">It is no row of ours.</exception>
    public static Entry ToEntry(BsonDocument row) => new(row["n"].AsInt64, row["after"].AsString, row["seal"].AsString, row["json"].AsString);

    private static BsonDocument Row(Entry entry, Change change) => new()
    {
        ["_id"] = change.Id.ToString(),
        ["n"] = entry.Number,
        ["after"] = entry.After,
        ["seal"] = entry.Seal,
        ["stamp"] = change.Stamp,
        ["v"] = ChangeJson.Version,
        ["json"] = entry.Json,
    };
}
