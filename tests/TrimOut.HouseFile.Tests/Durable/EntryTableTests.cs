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
