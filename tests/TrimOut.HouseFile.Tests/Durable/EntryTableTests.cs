using LiteDB;
using TrimOut.Core.History;
using TrimOut.HouseFile.Durable;
using TrimOut.HouseFile.Tests.Crashes;

namespace TrimOut.HouseFile.Tests.Durable;

public class EntryTableTests
{
    private static readonly Lazy<byte[]> File = new(Written);

    private static byte[] Written()
    {
        var files = new RecordingFiles();
        new ScriptedJob(files).Run(days: 5, savesADay: 12);
        HouseOnDisk.Open(ScriptedJob.Here(files), ScriptedJob.Path).Dispose();
        return files.Read(ScriptedJob.Path);
    }

    [Fact]
    public void RowsReadFromThePagesAreThoseThatTheDatabaseReads()
    {
        var read = EntryTable.FromPages(File.Value, Trailer.Read(File.Value)!);
        Assert.Equal(EntryTable.FromDatabase(File.Value[..^Trailer.Size]), read);
        Assert.Contains(read!, e => e.Json.Length > 8192);
    }

    /// <summary>
    /// What is compiled ahead has no code made as it runs, which the database's mapper does: rows go in and out by the engine alone. A program that
    /// goes by the mapper reads them all the same.
    /// </summary>
    [Fact]
    public void RowsWrittenByTheEngineAloneAreReadByTheWholeDatabase()
    {
        using var data = new MemoryStream(File.Value[..^Trailer.Size], writable: false);
        using var log = new MemoryStream();
        using var database = new LiteDatabase(data, new BsonMapper(), log);
        var rows = database.GetCollection("changes").FindAll()
            .Select(r => new Entry(r["n"].AsInt64, r["after"].AsString, r["seal"].AsString, r["json"].AsString)).OrderBy(e => e.Number);
        Assert.Equal(EntryTable.FromPages(File.Value, Trailer.Read(File.Value)!)!, rows);
        Assert.Equal(["changes"], database.GetCollectionNames());
    }

    [Fact]
    public void TheEngineAloneWritesTheRowsThatTheWholeDatabaseWritesToTheByte()
    {
        var trailer = Trailer.Read(File.Value)!;
        var rows = EntryTable.FromPages(File.Value, trailer)!.Select(e => (Entry: e, Change: ChangeJson.Read(e.Json).Value)).ToList();
        using var data = new MemoryStream();
        using (var log = new MemoryStream())
        using (var database = new LiteDatabase(data, new BsonMapper(), log))
        {
            database.GetCollection("changes").Insert(rows.Select(r => EntryTable.Row(trailer.House, r.Entry, r.Change)));
            database.Checkpoint();
        }
        // The levels of the index are rolled, so the files are not the same, and the rows are.
        var (whole, alone) = (Rows(data.ToArray()), Rows(EntryTable.With([], trailer.House, rows).ToArray()));
        Assert.Equal(rows.Count, alone.Count);
        Assert.Equal(whole, alone);

        static List<string> Rows(byte[] file) => [.. RowPages.Documents(file).Select(d => Convert.ToHexString(d.Span)).Order(StringComparer.Ordinal)];
    }

    [Fact]
    public void PagesThatDoNotHoldWhatTheLastPageSaysAreNotBelieved()
    {
        var trailer = Trailer.Read(File.Value)!;
        Assert.Null(EntryTable.FromPages(File.Value, trailer with { Count = trailer.Count + 1 }));
        Assert.Null(EntryTable.FromPages(File.Value, trailer with { Seal = "another" }));
        var first = File.Value.AsSpan().IndexOf("after"u8);
        byte[] changed = [.. File.Value];
        changed[first + 10] ^= 1;
        Assert.Null(EntryTable.FromPages(changed, trailer));
        Assert.Null(EntryTable.Read(changed, trailer));
    }

    [Fact]
    public void AnEmptyHouseHasNoRows()
    {
        var files = new RecordingFiles();
        HouseOnDisk.Create(ScriptedJob.Here(files), ScriptedJob.Path).Dispose();
        var file = files.Read(ScriptedJob.Path);
        Assert.Empty(EntryTable.Read(file, Trailer.Read(file)!)!);
    }
}
