using System.Collections.Concurrent;
using System.Globalization;
using TrimOut.Core.History;

namespace TrimOut.Office.Tests.Storms;

/// <summary>
/// Sixteen devices with wrong clocks work on one house and exchange it at random, while lines are cut and the server is killed. TRIMOUT_OFFICE_ROUNDS sets how
/// many rounds they make together (240 when unset), TRIMOUT_OFFICE_SEED the chance.
/// </summary>
public class StormTests(OfficeServer server) : IClassFixture<OfficeServer>
{
    private const int Devices = 16;

    private static readonly int Rounds = Number("TRIMOUT_OFFICE_ROUNDS", 240);

    private static readonly int Seed = Number("TRIMOUT_OFFICE_SEED", 1);

    [OfficeFact]
    public async Task SixteenDevicesEndWithTheSameHistoryAsTheOffice()
    {
        var desk = await server.Enroll("storm-desk", "office");
        var begun = Houses.Begin("House in a storm");
        var house = (await desk.Exchange(begun, null)).House;
        var recorded = new ConcurrentDictionary<string, bool>();
        var arrivals = new ConcurrentDictionary<int, string>();
        var devices = new List<StormDevice>();
        for (var at = 0; at < Devices; at++)
        {
            var name = string.Create(CultureInfo.InvariantCulture, $"storm-van-{at}");
            var office = await server.Enroll(name);
            await using (var connection = await OfficeConnection.Open(desk, default))
                await connection.LetIn(house, name, "crew", default);
            devices.Add(new StormDevice(office, house, begun.Log, Seed * 1000 + at, recorded, arrivals));
        }

        using var over = new CancellationTokenSource();
        var kills = Kill(over.Token);
        await Task.WhenAll(devices.Select(d => Task.Run(() => d.Live(Rounds / Devices))));
        await over.CancelAsync();
        var killed = await kills;

        // All come to rest: what each has goes up, and then comes down to all.
        foreach (var device in devices.Concat(devices))
            await device.Rest();
        var all = begun.Log.Names().Union(recorded.Keys);
        Assert.All(devices, device => Assert.Equal(all, device.House.Log.Names()));
        Assert.All(devices, device => Assert.Empty(ExchangeStatus.Of(device.Mark, device.House.Log).NotYetThere));
        await EveryStepCutTests.Whole(desk, house, devices[0].House.Log);
        Assert.All(devices, device => Assert.Equal(Enumerable.Range(1, device.Puller.Count), device.Puller.Keys.Order()));
        Assert.All(devices, device => Assert.Equal(all.Count, device.Puller.Count));
        Assert.True(devices.Sum(d => d.Failed) > 0 && killed > 0, $"{devices.Sum(d => d.Failed)} exchanges failed, {killed} kills");
        await Console.Out.WriteLineAsync($"{devices.Sum(d => d.Done)} exchanges done, {devices.Sum(d => d.Failed)} cut off, "
            + $"{killed} kills, {all.Count} changes");
    }

    private async Task<int> Kill(CancellationToken over)
    {
        var killed = 0;
        try
        {
            while (true)
            {
                await Task.Delay(TimeSpan.FromSeconds(killed == 0 ? 1 : 4), over);
                server.Server.Stop(asIfKilled: true);
                killed++;
                server.Server.Start();
            }
        }
        catch (OperationCanceledException)
        {
            return killed;
        }
    }

    private static int Number(string variable, int otherwise) =>
        int.TryParse(Environment.GetEnvironmentVariable(variable), CultureInfo.InvariantCulture, out var number) ? number : otherwise;
}
