using TrimOut.Office.Running;

namespace TrimOut.Office.Tests.Schema;

/// <summary>The tables come to the same from every earlier version, with what is in them kept.</summary>
public class MigrationsTests(OfficeServer server) : IClassFixture<OfficeServer>
{
    public static TheoryData<int> Earlier() => [.. Enumerable.Range(1, Migrations.All.Length)];

    [OfficeTheory]
    [MemberData(nameof(Earlier))]
    public async Task FromEachEarlierVersionTheTablesBecomeTheSameAndKeepWhatIsInThem(int version)
    {
        var owner = await Database($"from_{version}");
        Assert.Equal(version, await Migrations.Apply(owner, _ => { }, default, upTo: version));
        var van = await Devices.Enroll(owner, $"migrated-van-{version}", "crew", default);
        var house = Houses.Begin("House of an earlier version");
        await using (var office = await OfficeConnection.Open(van, default))
        {
            var number = await office.Begin(house.Log.Changes[0].Id.ToString(), default);
            await office.Send(number, [.. house.Log.Changes.Select(Core.History.ChangeJson.Write)], default);
        }
        Assert.Equal(Migrations.All.Length - version, await Migrations.Apply(owner, _ => { }, default));
        Assert.Equal(await Dumped(server.Owner), await Dumped(owner));
        house.Note("after it");
        var mark = await van.Exchange(house, null);
        await Storms.EveryStepCutTests.Whole(van, mark.House, house.Log);
        Assert.Equal("House of an earlier version", await Sql.Try(van, "select name from report.houses"));
    }

    [OfficeFact]
    public async Task NothingIsDoneTwiceAndAFailedStepLeavesTheVersionBefore()
    {
        Assert.Equal(0, await Migrations.Apply(server.Owner, _ => { }, default));
        var owner = await Database("failing");
        await Migrations.Apply(owner, _ => { }, default, upTo: 1);
        // What stands in the way of the second step.
        await Devices.Do(owner, "create schema report", default);
        var before = await Dumped(owner);
        await Assert.ThrowsAsync<OfficeException>(() => Migrations.Apply(owner, _ => { }, default));
        Assert.Equal(before, await Dumped(owner));
        await Devices.Do(owner, "drop schema report", default);
        Assert.Equal(Migrations.All.Length - 1, await Migrations.Apply(owner, _ => { }, default));
    }

    [OfficeFact]
    public async Task TablesOfANewerProgramOrOfAnotherTextAreLeftAlone()
    {
        var owner = await Database("newer");
        await Migrations.Apply(owner, _ => { }, default);
        await Devices.Do(owner, "update office.migrations set sha256 = 'another' where number = 1", default);
        Assert.Contains("another text of 001-history", (await Assert.ThrowsAsync<OfficeException>(() => Migrations.Apply(owner, _ => { }, default))).Message);
        await Devices.Do(owner, "insert into office.migrations (number, name, sha256) values (99, '099-later', '')", default);
        Assert.Contains("up to date", (await Assert.ThrowsAsync<OfficeException>(() => Migrations.Apply(owner, _ => { }, default))).Message);
    }

    [OfficeFact]
    public async Task AnOfficeWithoutTablesIsSaidToBeOne()
    {
        var van = await server.Enroll("early-van");
        var owner = await Database("bare");
        await Devices.Do(owner, "grant connect on database bare to office_device", default);
        await using var office = await OfficeConnection.Open(van with { Database = "bare" }, default);
        var said = await Assert.ThrowsAsync<OfficeException>(() => office.Houses(default));
        Assert.Equal(OfficeFault.NotSetUp, said.Fault);
        Assert.Contains("trimout office set-up", said.Message);
    }

    private async Task<Credentials> Database(string name)
    {
        await Devices.Do(server.Administrator, $"create database {name} owner office_owner", default);
        await Devices.Do(server.Administrator, $"revoke all on database {name} from public", default);
        return server.Owner with { Database = name };
    }

    /// <summary>The tables as the server's own program writes them, without the lines that are of one run.</summary>
    private async Task<string> Dumped(Credentials owner)
    {
        var file = Path.Combine(server.Server.Folder, "data", $"{owner.Database}.sql");
        server.Server.Run("pg_dump", ["--schema-only", "--no-comments", "-f", file], owner);
        return string.Join('\n', (await File.ReadAllLinesAsync(file)).Where(l => !l.StartsWith("--", StringComparison.Ordinal)
            && !l.StartsWith('\\')));
    }
}
