using Microsoft.Extensions.Time.Testing;
using TrimOut.Core.History;

namespace TrimOut.Office.Tests.Schema;

public class SendTests(OfficeServer server) : IClassFixture<OfficeServer>
{
    private readonly Scribe _house = Houses.Begin("Sent house");

    [OfficeFact]
    public async Task WhatIsSentAgainAloneOrAmongOthersArrivesOnce()
    {
        _house.Note("one");
        _house.Note("two");
        var lines = _house.Log.Changes.Select(ChangeJson.Write).ToList();
        await using var office = await Open("again");
        var house = await office.Begin(_house.Log.Changes[0].Id.ToString(), default);
        var first = await office.Send(house, lines[..2], default);
        Assert.Equal((0, 2, 2), (first.Before, first.Last, first.Fresh));
        var again = await office.Send(house, lines[..2], default);
        Assert.Equal((2, 2, 0, first.Token), (again.Before, again.Last, again.Fresh, again.Token));
        var mixed = await office.Send(house, [lines[2], lines[0], lines[2]], default);
        Assert.Equal((2, 3, 1), (mixed.Before, mixed.Last, mixed.Fresh));
        Assert.Equal(lines, (await office.Fetch(house, 0, default, 10, default)).Select(a => a.Line));
        Assert.Equal(0, (await office.Send(house, [], default)).Fresh);
    }

    [OfficeFact]
    public async Task TwoDifferentChangesUnderOneNameAreRefusedAndNamedAndNothingElseArrives()
    {
        var copy = new Scribe(new Testing.MemoryStore(_house.Store.Device, [.. _house.Log.Changes]), TimeProvider.System, "A copied machine");
        var (one, other) = (_house.Note("one"), copy.Note("another"));
        Assert.Equal(one.Id, other.Id);
        await using var office = await Open("clone");
        var house = await office.Begin(_house.Log.Changes[0].Id.ToString(), default);
        await office.Send(house, [.. _house.Log.Changes.Select(ChangeJson.Write)], default);
        var refused = await Assert.ThrowsAsync<OfficeException>(() => office.Send(house,
            [ChangeJson.Write(copy.Note("more")), ChangeJson.Write(other)], default));
        Assert.Equal(OfficeFault.BadData, refused.Fault);
        Assert.Contains(one.Id.ToString(), refused.Message);
        Assert.Equal(2, (await office.Fetch(house, 0, default, 10, default)).Count);
        var inOne = await Assert.ThrowsAsync<OfficeException>(() => office.Send(house,
            [ChangeJson.Write(copy.Note("x")), ChangeJson.Write(copy.Log.Changes[^1] with { By = "B" })], default));
        Assert.Contains(copy.Log.Changes[^1].Id.ToString(), inOne.Message);
        // The program sees it before it sends, and takes nothing in either.
        var seen = await Assert.ThrowsAsync<OfficeException>(() => Exchange.Run(office, copy.Log, null, TimeProvider.System, true, _ => { }, default));
        Assert.Contains(one.Id.ToString(), seen.Message);
    }

    [OfficeFact]
    public async Task ALineThatIsNoChangeIsRefusedByItsNameAndAnotherHouseDoesNotGetIn()
    {
        await using var office = await Open("slips");
        var house = await office.Begin(_house.Log.Changes[0].Id.ToString(), default);
        var note = ChangeJson.Write(_house.Note("one"));
        var refused = await Assert.ThrowsAsync<OfficeException>(() => office.Send(house,
            [note, note.Replace("\"what\"", "\"whit\"", StringComparison.Ordinal)], default));
        Assert.Contains("each once", refused.Message);
        await Assert.ThrowsAsync<OfficeException>(() => office.Send(house, ["no JSON at all"], default));
        var other = Houses.Begin("Another house").Log.Changes[0];
        Assert.Contains(other.Id.ToString(), (await Assert.ThrowsAsync<OfficeException>(() => office.Send(house, [ChangeJson.Write(other)], default))).Message);
        Assert.Empty(await office.Fetch(house, 0, default, 10, default));
    }

    [OfficeFact]
    public async Task WhatWasFetchedIsMergedByTheOneOrderAndAGapIsFilledLater()
    {
        // A copy that was rescued lacks a change in the middle; another laptop has it. The office gets it all the same.
        for (var at = 0; at < 5; at++)
            _house.Note($"note {at}");
        var whole = _house.Log;
        var holed = Houses.Copy(HouseLog.Of(whole.Changes.Where((_, at) => at != 3)).Value);
        var van = await server.Enroll(Houses.Fresh("holed"));
        var mark = await van.Exchange(holed, null);
        Assert.Empty(ExchangeStatus.Of(mark, holed.Log).NotYetThere);
        Assert.True(holed.TakeIn(Merge.Of(holed.Log, whole).Value).Ok);
        Assert.Single(ExchangeStatus.Of(mark, holed.Log).NotYetThere);
        await van.Exchange(holed, mark);
        await Storms.EveryStepCutTests.Whole(van, mark.House, whole);
    }

    /// <summary>Somebody looks at two changes that came, and says not now: that is known afterwards, with the minute, until they are taken in.</summary>
    [OfficeFact]
    public async Task WhatCameAndWasPutOffIsKnownUntilItIsTakenIn()
    {
        var office = await server.Enroll(Houses.Fresh("desk"), "office");
        var before = await office.Exchange(_house, null);
        Assert.Equal(0, ExchangeStatus.Of(before, _house.Log).PutOff);
        var site = Houses.Copy(_house.Log);
        site.Note("one");
        site.Note("two");
        await office.Exchange(site, null);
        await using var connection = await OfficeConnection.Open(office, default);
        var at = new FakeTimeProvider(new DateTimeOffset(2026, 3, 5, 8, 0, 0, TimeSpan.Zero));
        var looked = await Exchange.Run(connection, _house.Log, before, at, true, _ => { }, default);
        var mark = ExchangeMark.Read(looked.Mark.Write());
        Assert.Equal("Last exchanged 2026-03-05 08:00, all changes are at the office. Put off then: 2 changes from the office, not taken in here.",
            ExchangeStatus.Of(mark, _house.Log).InWords);
        _house.Note("mine");
        var both = ExchangeStatus.Of(mark, _house.Log);
        Assert.Equal((1, 2), (both.NotYetThere.Count, both.PutOff));
        Assert.True(_house.TakeIn(Merge.Of(_house.Log, site.Log).Value).Ok);
        Assert.Equal(0, ExchangeStatus.Of(mark, _house.Log).PutOff);
    }

    private async Task<OfficeConnection> Open(string stem) => await OfficeConnection.Open(await server.Enroll(Houses.Fresh(stem)), default);
}
