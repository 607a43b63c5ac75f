using System.Globalization;
using LiteDB;
using Xunit.Abstractions;

namespace TrimOut.HouseFile.Tests.Crashes;

/// <summary>The same crash states on LiteDB as it comes, and with its log flushed after every commit: why the house file keeps a journal of its own.</summary>
public class PlainLiteDbTests(ITestOutputHelper output)
{
    private const int Saves = 16;

    [Fact]
    public void LiteDbAloneLosesCommittedRows() => Assert.NotEmpty(Count("plain LiteDB", flushLog: false));

    [Fact]
    public void LiteDbWithItsLogFlushedStillLosesCommittedRows() => Assert.NotEmpty(Count("LiteDB with its log flushed", flushLog: true));

    private List<string> Count(string what, bool flushLog)
    {
        var record = Session(flushLog);
        var states = 0;
        var failures = new List<string>();
        foreach (var (state, told, step) in CrashStates.Of(record, new Random(3), tries: 3))
        {
            states++;
            if (Fault(state, told) is { } fault)
                failures.Add($"step {step}: {fault}");
        }
        output.WriteLine($"{what}: {states} states, {failures.Count} failed");
        Assert.Null(Fault(CrashStates.AllKept(record), Saves));
        return failures;
    }

    private static DiskRecord Session(bool flushLog)
    {
        using var folder = new TryFolder();
        var record = new DiskRecord { Files = 2, OlderContents = { [1] = [], [2] = [] } };
        record.Steps.AddRange([new DiskStep.Name("data", 1, null), new DiskStep.Name("log", 2, null), new DiskStep.FlushFolder()]);
        using var data = new RecordedStream(folder.In("data"), record, 1);
        using var log = new RecordedStream(folder.In("log"), record, 2);
        using var database = new LiteDatabase(data, new BsonMapper(), log);
        database.CheckpointSize = 20;
        data.Flush(flushToDisk: true);
        log.Flush(flushToDisk: true);
        var rows = database.GetCollection("rows");
        for (var save = 1; save <= Saves; save++)
        {
            rows.Insert(new BsonDocument { ["_id"] = save, ["text"] = Text(save) });
            if (flushLog)
                log.Flush(flushToDisk: true);
            record.Steps.Add(new DiskStep.Told(save));
        }
        return record;
    }

    private static string? Fault(DiskState state, int told)
    {
        try
        {
            // A damaged index can send LiteDB round in circles.
            return Task.Run(() => Read(state, told)) is var reading && reading.Wait(TimeSpan.FromSeconds(5)) ? reading.Result : "it never ended";
        }
        catch (AggregateException failed)
        {
            return failed.InnerException!.GetType().Name;
        }
    }

    private static string? Read(DiskState state, int told)
    {
        using var data = new MemoryStream();
        data.Write(state.Contents[1]);
        using var log = new MemoryStream();
        log.Write(state.Contents[2]);
        data.Position = log.Position = 0;
        using var database = new LiteDatabase(data, new BsonMapper(), log);
        var rows = database.GetCollection("rows").FindAll().ToDictionary(r => r["_id"].AsInt32, r => r["text"].AsString);
        for (var save = 1; save <= told; save++)
        {
            if (rows.GetValueOrDefault(save) != Text(save))
                return string.Create(CultureInfo.InvariantCulture, $"row {save} of {told} is missing or wrong");
        }
        return null;
    }

    private static string Text(int save) => new((char)('a' + save % 26), save % 5 == 0 ? 6000 : 200);
}
