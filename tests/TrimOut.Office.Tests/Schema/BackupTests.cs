using TrimOut.Core.History;

namespace TrimOut.Office.Tests.Schema;

/// <summary>The office is backed up and put back by PostgreSQL's own programs; what devices sent since then they send again.</summary>
public class BackupTests(OfficeServer server) : IClassFixture<OfficeServer>
{
    [OfficeFact]
    public async Task WhatWasSentSinceABackupThatIsPutBackComesFromTheDevices()
    {
        var (van, desk) = (await server.Enroll("backup-van"), await server.Enroll("backup-desk", "office"));
        var house = Houses.Begin("House before the fire");
        var here = await van.Exchange(house, null);
        var before = await Sql.All(server.Owner);
        var dump = Path.Combine(server.Server.Folder, "data", "office.dump");
        server.Server.Run("pg_dump", ["-Fc", "-f", dump], server.Owner);

        for (var at = 0; at < 5; at++)
            house.Note($"sent after the backup {at}");
        here = await van.Exchange(house, here);
        server.Server.Run("pg_restore", ["--clean", "--if-exists", "--single-transaction", "-d", server.Owner.Database, dump], server.Owner);
        Assert.Equal(before, await Sql.All(server.Owner));

        // Another laptop takes the numbers that the lost changes had, and more.
        var other = Houses.Copy(HouseLog.Of(house.Log.Changes.Take(1)).Value);
        for (var at = 0; at < 9; at++)
            other.Note($"after the fire {at}");
        var there = await desk.Exchange(other, null);
        here = await van.Exchange(house, here);
        there = await desk.Exchange(other, there);
        Assert.Equal(house.Log.Names(), other.Log.Names());
        Assert.Equal(15, house.Log.Changes.Count);
        await Storms.EveryStepCutTests.Whole(desk, here.House, house.Log);
        Assert.Empty(ExchangeStatus.Of(there, other.Log).NotYetThere);
    }
}
