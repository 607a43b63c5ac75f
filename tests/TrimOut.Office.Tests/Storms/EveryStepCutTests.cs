using TrimOut.Core.History;

namespace TrimOut.Office.Tests.Storms;

/// <summary>The line is cut at every piece of an exchange, before it and right after the server had it; the next one makes both sides whole.</summary>
public class EveryStepCutTests(OfficeServer server) : IClassFixture<OfficeServer>
{
    [OfficeFact]
    public async Task AnExchangeThatIsCutAnywhereIsMadeWholeByTheNext()
    {
        var (van, desk) = (await server.Enroll("cut-van"), await server.Enroll("cut-desk", "office"));
        var house = Houses.Begin("House with a bad network");
        var here = await van.Exchange(house, null);
        var other = Houses.Copy(house.Log);
        var there = await desk.Exchange(other, null);
        var (cuts, refused) = (0, 0);
        foreach (var answerLost in (bool[])[false, true])
        {
            for (var piece = 0; piece < 200; piece++)
            {
                var note = house.Note($"{answerLost} {piece}");
                other.Note($"there {answerLost} {piece}");
                there = await desk.Exchange(other, there);
                using var proxy = new CutProxy(van.Port) { CutBefore = piece, LosesOnlyTheAnswer = answerLost };
                try
                {
                    here = await (van with { Port = proxy.Port }).Exchange(house, here);
                }
                catch (OfficeException failed) when (failed.Fault is OfficeFault.Away or OfficeFault.NotTrusted)
                {
                    refused++;
                }
                var cut = proxy.Pieces > piece;
                here = await van.Exchange(house, here);
                there = await desk.Exchange(other, there);
                Assert.NotNull(other.Log.Find(note.Id));
                Assert.Equal(house.Log.Names(), other.Log.Names());
                Assert.Empty(ExchangeStatus.Of(here, house.Log).NotYetThere);
                if (!cut)
                    break;
                cuts++;
            }
        }
        Assert.True(cuts >= 20 && refused >= 10, $"{cuts} cuts, {refused} refused");
        await Whole(desk, here.House, house.Log);
    }

    /// <summary>The office has each change once, byte for byte, under numbers without a gap.</summary>
    internal static async Task Whole(Credentials office, int house, HouseLog log)
    {
        await using var connection = await OfficeConnection.Open(office, default);
        var all = new List<ArrivedChange>();
        while (await connection.Fetch(house, all.Count, all.Count == 0 ? default : all[^1].Token, 5000, default) is { Count: > 0 } more)
            all.AddRange(more);
        Assert.Equal(Enumerable.Range(1, all.Count), all.Select(a => a.Arrival));
        Assert.Equal(log.Changes.Select(ChangeJson.Write).Order(StringComparer.Ordinal), all.Select(a => a.Line).Order(StringComparer.Ordinal));
    }
}
