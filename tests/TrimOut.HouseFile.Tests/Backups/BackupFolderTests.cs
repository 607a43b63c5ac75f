using Microsoft.Extensions.Time.Testing;
using TrimOut.Core.History;
using TrimOut.HouseFile.Backups;

namespace TrimOut.HouseFile.Tests.Backups;

public sealed class BackupFolderTests : IDisposable
{
    private readonly TryFolder _folder = new();
    private readonly FakeTimeProvider _clock = new(new DateTimeOffset(2026, 3, 2, 8, 0, 0, TimeSpan.Zero));

    private BackupFolder Backups => new(_folder.In("backups"));

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void ABackupIsMadeWhenSomethingChangedAndOnlyThen()
    {
        _folder.Begin();
        Assert.NotNull(Backups.Keep(_folder.House, _clock));
        _clock.Advance(TimeSpan.FromHours(1));
        Assert.Null(Backups.Keep(_folder.House, _clock));
        _folder.Work(TryFolder.AddWindow);
        Assert.NotNull(Backups.Keep(_folder.House, _clock));
        Assert.Equal(["2026-03-02T090000Z.trimout", "2026-03-02T080000Z.trimout"], Backups.All.Select(b => Path.GetFileName(b.Path)));
    }

    [Fact]
    public void ABackupOfAnOpenHouseHoldsAllThatWasSaved()
    {
        _folder.Begin();
        _folder.Work(scribe =>
        {
            TryFolder.AddWindow(scribe);
            Assert.Equal("W01 W02", _folder.Tags(Backups.Keep(_folder.House, _clock)!.Path));
            BackupFolder.Copy(_folder.House, _folder.In("copy.trimout"), _clock);
            Assert.Equal("W01 W02", _folder.Tags(_folder.In("copy.trimout")));
            Assert.Throws<HouseStoreException>(() => BackupFolder.Copy(_folder.House, _folder.In("copy.trimout"), _clock));
        });
    }

    [Fact]
    public void WhoWorksOnABackupHasADeviceOfTheirOwn()
    {
        _folder.Begin();
        var backup = Backups.Keep(_folder.House, _clock)!.Path;
        var device = "";
        _folder.Work(scribe => device = scribe.Store.Device);
        _folder.Work(scribe => Assert.NotEqual(device, scribe.Store.Device), backup);
    }

    [Fact]
    public void AnEarlierHistoryCanBePutBackAndTheLaterOneMergedIn()
    {
        _folder.Begin();
        var backup = Backups.Keep(_folder.House, _clock)!.Path;
        _folder.Work(TryFolder.AddWindow);
        BackupFolder.Copy(_folder.House, _folder.In("later.trimout"), _clock);
        using (var house = HouseOnDisk.Open(_folder.House, _clock))
        using (var earlier = HouseOnDisk.OpenToRead(backup, _clock))
            house.Replace(earlier.Opened);
        Assert.Equal("W01", _folder.Tags());
        _folder.Work(TryFolder.AddWindow);
        using (var house = HouseOnDisk.Open(_folder.House, _clock))
        using (var later = HouseOnDisk.OpenToRead(_folder.In("later.trimout"), _clock))
            house.Take(Merge.Of(HouseLog.Of(house.Opened).Value, HouseLog.Of(later.Opened).Value).Value.New.ToList());
        Assert.Equal("W01 W02 W02", _folder.Tags());
    }
}
