using System.Collections.Concurrent;
using Microsoft.Extensions.Time.Testing;
using TrimOut.Core.History;

namespace TrimOut.Office.Tests.Storms;

/// <summary>A device in the storm: it works, exchanges over a line that may be cut, forgets its mark, and beside that fetches by number alone.</summary>
internal sealed class StormDevice(Credentials office, int number, HouseLog begun, int seed, ConcurrentDictionary<string, bool> recorded,
    ConcurrentDictionary<int, string> arrivals)
{
    private readonly Random _chance = new(seed);
    private readonly FakeTimeProvider _clock = new(new DateTimeOffset(2026, 1, 1, 0, 0, 0, TimeSpan.Zero).AddDays(new Random(seed).Next(-9000, 9000)));
    private Guid _token;

    public Scribe House { get; private set; } = Houses.Copy(begun);

    public ExchangeMark? Mark { get; private set; }

    /// <summary>What it fetched by number alone, and never asked for again.</summary>
    public SortedDictionary<int, string> Puller { get; } = [];

    public int Done { get; private set; }

    public int Failed { get; private set; }

    public async Task Live(int rounds)
    {
        for (var round = 0; round < rounds; round++)
        {
            for (var notes = _chance.Next(4); notes > 0; notes--)
                Note();
            using var proxy = new CutProxy(office.Port);
            (proxy.CutBefore, proxy.LosesOnlyTheAnswer) = (_chance.Next(3) > 0 ? _chance.Next(40) : -1, _chance.Next(2) == 0);
            var cut = office with { Port = proxy.Port };
            try
            {
                Mark = await cut.Exchange(House, _chance.Next(10) == 0 ? null : Mark, _clock);
                Done++;
                if (_chance.Next(3) == 0)
                    await Pull(cut);
            }
            catch (OfficeException failed) when (failed.Fault is OfficeFault.Away or OfficeFault.NotTrusted)
            {
                Failed++;
                await Task.Delay(_chance.Next(100));
            }
            // An older copy of the house was put back, with everything in it that was sent: its device goes on under another name.
            if (_chance.Next(20) == 0 && ExchangeStatus.Of(Mark, House.Log).NotYetThere.Count == 0 && Mark is not null)
                House = Houses.Copy(HouseLog.Of(House.Log.Changes.Take(1 + _chance.Next(House.Log.Changes.Count))).Value, _clock);
        }
    }

    public async Task Rest()
    {
        for (var tries = 0; ; tries++)
        {
            try
            {
                Mark = await office.Exchange(House, Mark, _clock);
                await Pull(office);
                return;
            }
            catch (OfficeException failed) when (failed.Fault == OfficeFault.Away && tries < 20)
            {
                await Task.Delay(500);
            }
        }
    }

    private void Note()
    {
        _clock.Advance(TimeSpan.FromSeconds(_chance.Next(1000)));
        recorded[ChangeJson.Write(House.Note($"by {seed}"))] = true;
    }

    /// <summary>Fetches what arrived after the last number; the same number never means two changes, to whomever.</summary>
    private async Task Pull(Credentials by)
    {
        await using var connection = await OfficeConnection.Open(by, default, patience: 20);
        foreach (var arrived in await connection.Fetch(number, Puller.Count == 0 ? 0 : Puller.Keys.Max(), _token, 10_000, default))
        {
            Puller.Add(arrived.Arrival, arrived.Line);
            _token = arrived.Token;
            Assert.Equal(arrived.Line, arrivals.GetOrAdd(arrived.Arrival, arrived.Line));
        }
    }
}
