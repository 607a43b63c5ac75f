using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Net.Sockets;
using Npgsql;
using TrimOut.Core.History;
using TrimOut.Office;
using TrimOut.Office.Running;
using TrimOut.Testing;

namespace TrimOut.Benchmarks.Office;

/// <summary>
/// The office copy of many houses on a PostgreSQL of its own, beside a bare COPY and a bare SELECT of the same rows in the same run. Each house has the changes
/// of a sample job under device names of its own, as many as 673 of them.
/// </summary>
internal static class OfficeCopy
{
    private const int Changes = 673;
    private const int Tries = 25;

    public static void Measure(int houses) => MeasureAsync(houses).GetAwaiter().GetResult();

    private static async Task MeasureAsync(int houses)
    {
        var folder = Path.Combine(Path.GetTempPath(), $"trimout-office-{Path.GetRandomFileName()}");
        var (server, owner, _) = await TrialServer.Make(folder, FreePort(), TimeProvider.System);
        try
        {
            await Migrations.Apply(owner, _ => { }, default);
            var desk = await Devices.Enroll(owner, "desk", "office", default);
            await using var source = OfficeConnection.Source(owner);
            await using var bare = await source.OpenConnectionAsync();
            await Do(bare, "create schema bare; create table bare.changes (house int, arrival int, id text, line text)");
            await using var office = await OfficeConnection.Open(desk, default);
            await Load(houses, office, bare);
            await Do(bare, "vacuum analyze office.changes"); await Do(bare, "vacuum analyze bare.changes");
            await Sizes(bare);
            await FirstPull(houses, office, bare);
            await Small(houses, desk, office, bare);
        }
        finally
        {
            server.Stop(asIfKilled: true);
            Directory.Delete(folder, recursive: true);
        }
    }

    private static async Task Load(int houses, OfficeConnection office, NpgsqlConnection bare)
    {
        var (ours, copied, rows) = (new List<double>(), new List<double>(), 0);
        for (var house = 1; house <= houses; house++)
        {
            var lines = Lines(house);
            rows += lines.Count;
            var number = await office.Begin(ChangeJson.Read(lines[0]).Value.Id.ToString(), default);
            ours.Add(await Took(() => office.Send(number, lines, default)));
            copied.Add(await Took(() => Copy(bare, number, lines)));
        }
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{houses} houses, {rows} changes"));
        Compare("sending a house of 673 changes, beside a bare COPY and commit", ours, copied);
        Compare("the last tenth of that", [.. ours.TakeLast(houses / 10)], [.. copied.TakeLast(houses / 10)]);
    }

    private static async Task Sizes(NpgsqlConnection bare)
    {
        await using var command = new NpgsqlCommand("select pg_table_size('office.changes'), pg_indexes_size('office.changes'), pg_table_size('bare.changes'), "
            + "(select sum(octet_length(line)) from office.changes)", bare);
        await using var row = await command.ExecuteReaderAsync();
        await row.ReadAsync();
        var (table, indexes, copied, text) = (row.GetInt64(0), row.GetInt64(1), row.GetInt64(2), row.GetInt64(3));
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"size: table {table >> 20} MiB, indexes {indexes >> 20} MiB, bare table {copied >> 20} MiB, lines alone {text >> 20} MiB: "
            + $"{(table + indexes) / (double)copied:0.00} of it"));
    }

    private static async Task FirstPull(int houses, OfficeConnection office, NpgsqlConnection bare)
    {
        var (ours, selected, most) = (new List<double>(), new List<double>(), 0L);
        for (var tries = 0; tries < 3; tries++)
        {
            ours.Add(await Took(async () =>
            {
                foreach (var house in await office.Houses(default))
                {
                    var (after, token) = (0, Guid.Empty);
                    while (await office.Fetch(house.House, after, token, Exchange.FetchedAtATime, default) is { Count: > 0 } batch)
                        (after, token) = (batch[^1].Arrival, batch[^1].Token);
                    most = Math.Max(most, GC.GetTotalMemory(false));
                }
                return true;
            }));
            selected.Add(await Took(async () =>
            {
                await using var command = new NpgsqlCommand("select house, arrival, line from bare.changes order by house, arrival", bare);
                await using var rows = await command.ExecuteReaderAsync();
                while (await rows.ReadAsync())
                    _ = rows.GetString(2);
                return true;
            }));
        }
        Compare($"first pull of all {houses} houses, beside a bare SELECT of all rows in that order", ours, selected);
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"memory of the client at the most while it pulled: {most >> 20} MiB"));
    }

    private static async Task Small(int houses, Credentials desk, OfficeConnection office, NpgsqlConnection bare)
    {
        var (first, selected, empty, ping, whole) = (new List<double>(), new List<double>(), new List<double>(), new List<double>(), new List<double>());
        for (var tries = 0; tries < Tries; tries++)
        {
            var house = 1 + tries * 7 % houses;
            IReadOnlyList<ArrivedChange> all = [];
            first.Add(await Took(async () => all = await office.Fetch(house, 0, default, Exchange.FetchedAtATime, default)));
            selected.Add(await Took(() => Count(bare, $"select arrival, line from bare.changes where house = {house} order by arrival")));
            empty.Add(await Took(() => office.Fetch(house, all[^1].Arrival, all[^1].Token, Exchange.FetchedAtATime, default)));
            ping.Add(await Took(() => Count(bare, "select 1")));
            var log = HouseLog.Of(all.Select(a => ChangeJson.Read(a.Line).Value)).Value;
            var mark = (await Exchange.Run(office, log, null, TimeProvider.System, true, _ => { }, default)).Mark;
            whole.Add(await Took(async () =>
            {
                await using var fresh = await OfficeConnection.Open(desk, default);
                return await Exchange.Run(fresh, log, mark, TimeProvider.System, true, _ => { }, default);
            }));
        }
        Compare("first pull of one house, beside a bare SELECT of it (a table without an index)", first, selected);
        Compare("empty pull, beside \"select 1\"", empty, ping);
        Compare("whole exchange with nothing new, with connecting, beside \"select 1\"", whole, ping);
    }

    private static List<string> Lines(int house)
    {
        var log = HouseLog.Of(SampleHouse.Changes(house % 3 == 0 ? "orchard-cottage" : house % 3 == 1 ? "ridge-house" : "canal-house")).Value;
        var named = string.Create(CultureInfo.InvariantCulture, $"h{house}-");
        var devices = log.Changes.Select(c => c.Id.Device).Distinct().ToList();
        return [.. log.Changes.Take(Changes).Select(ChangeJson.Write).Select(line => devices.Aggregate(line, (text, device) =>
            text.Replace($"\"{device}", $"\"{named}{device}", StringComparison.Ordinal)))];
    }

    private static async Task<bool> Copy(NpgsqlConnection bare, int house, List<string> lines)
    {
        await using var rows = await bare.BeginBinaryImportAsync("copy bare.changes from stdin (format binary)");
        foreach (var (at, line) in lines.Index())
        {
            await rows.StartRowAsync();
            await rows.WriteAsync(house);
            await rows.WriteAsync(at + 1);
            await rows.WriteAsync($"{house}:{at}");
            await rows.WriteAsync(line);
        }
        await rows.CompleteAsync();
        return true;
    }

    private static async Task<int> Count(NpgsqlConnection bare, string query)
    {
        await using var command = new NpgsqlCommand(query, bare);
        await using var rows = await command.ExecuteReaderAsync();
        var count = 0;
        while (await rows.ReadAsync())
            count++;
        return count;
    }

    private static async Task Do(NpgsqlConnection connection, string sql)
    {
        await using var command = new NpgsqlCommand(sql, connection) { CommandTimeout = 600 };
        await command.ExecuteNonQueryAsync();
    }

    private static async Task<double> Took<T>(Func<Task<T>> work)
    {
        var start = Stopwatch.GetTimestamp();
        await work();
        return Stopwatch.GetElapsedTime(start).TotalMilliseconds;
    }

    private static void Compare(string what, List<double> ours, List<double> peer)
    {
        var (a, b) = (Median(ours), Median(peer));
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{what}: {a:0.00} ms against {b:0.00} ms, {a / b:0.00} of it ({ours.Count} tries)"));
    }

    private static double Median(List<double> times) => times.Order().ElementAt(times.Count / 2);

    private static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }
}
