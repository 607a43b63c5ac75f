using System.Diagnostics;
using System.Globalization;
using System.Text;
using Microsoft.Data.Sqlite;
using TrimOut.Core.History;
using TrimOut.HouseFile;

namespace TrimOut.Benchmarks.HouseFiles;

/// <summary>
/// One durable save, against a bare 4 KiB append and flush and against SQLite in WAL mode with synchronous=FULL. The three take turns, so that a slow moment of
/// the disk hits all.
/// </summary>
internal static class Saves
{
    private const int Rounds = 400;
    private const int WarmUp = 20;

    public static void Measure(string folder)
    {
        using var house = HouseOnDisk.Create(Path.Combine(folder, "saves.trimout"), TimeProvider.System);
        using var bare = new FileStream(Path.Combine(folder, "bare"), FileMode.Create, FileAccess.Write, FileShare.None, bufferSize: 0);
        using var sqlite = new SqliteConnection($"Data Source={Path.Combine(folder, "saves.sqlite")};Pooling=False");
        sqlite.Open();
        Run(sqlite, "PRAGMA journal_mode=WAL");
        Run(sqlite, "PRAGMA synchronous=FULL");
        Run(sqlite, "CREATE TABLE changes (id TEXT PRIMARY KEY, stamp INTEGER, json TEXT)");
        var block = new byte[4096];
        var (ours, appended, sql) = (new List<double>(), new List<double>(), new List<double>());
        for (var round = 0; round < Rounds + WarmUp; round++)
        {
            var change = Change(house.Device, round + 1);
            var json = ChangeJson.Write(change);
            Time(ours, round, () => house.Append(change));
            Time(appended, round, () =>
            {
                bare.Write(block);
                bare.Flush(flushToDisk: true);
            });
            Time(sql, round,
                () => Run(sqlite, "INSERT INTO changes VALUES ($id, $stamp, $json)", ("$id", change.Id.ToString()), ("$stamp", change.Stamp), ("$json", json)));
        }
        Print("one save", ours, ours);
        Print("bare 4 KiB append and flush", appended, ours);
        Print("SQLite, WAL, synchronous=FULL", sql, ours);
    }

    private static Change Change(string device, int number) =>
        new(new ChangeId(device, number), number, DateTimeOffset.UtcNow, "Benchmark", "W01: Rough width: 45 1/2\"",
            [new Edit.Put("house", "name", new string('x', 60), [new ChangeId(device, 1)])]);

    private static void Time(List<double> into, int round, Action work)
    {
        var start = Stopwatch.GetTimestamp();
        work();
        if (round >= WarmUp)
            into.Add(Stopwatch.GetElapsedTime(start).TotalMilliseconds);
    }

    private static void Run(SqliteConnection connection, string sql, params ReadOnlySpan<(string Name, object Value)> values)
    {
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        foreach (var (name, value) in values)
            command.Parameters.AddWithValue(name, value);
        command.ExecuteNonQuery();
    }

    private static void Print(string what, List<double> times, List<double> ours)
    {
        var line = new StringBuilder();
        line.Append(CultureInfo.InvariantCulture,
            $"{what,-32} median {Median(times):0.000} ms, 90 of 100 under {times.Order().ElementAt(times.Count * 9 / 10):0.000} ms");
        line.Append(CultureInfo.InvariantCulture, $"; one save is {Median(ours) / Median(times):0.00} of it");
        Console.WriteLine(line);
    }

    private static double Median(List<double> times) => times.Order().ElementAt(times.Count / 2);
}
