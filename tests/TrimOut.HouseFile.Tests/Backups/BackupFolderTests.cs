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
        Assert.Equal(["2026-03-02T090000Z-2", "2026-03-02T080000Z-1"], Backups.All.Select(b => Path.GetFileName(b.Path)[..20]));
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

    [Fact]
    public void TwoBackupsWithinOneSecondAreTwoFiles()
    {
        _folder.Begin();
        var first = Backups.Keep(_folder.House, _clock)!;
        _folder.Work(TryFolder.AddWindow);
        var second = Backups.Keep(_folder.House, _clock)!;
        Assert.Equal("W01", _folder.Tags(first.Path));
        Assert.Equal("W01 W02", _folder.Tags(second.Path));
        Assert.Equal([second.Path, first.Path], Backups.All.Select(b => b.Path));
    }

    [Fact]
    public void ABackupOfAnEarlierTimeIsStillOneOfThem()
    {
        _folder.Begin();
        Directory.CreateDirectory(Backups.Path);
        File.Copy(_folder.House, Path.Combine(Backups.Path, "2027-01-02T080000Z.trimout"));
        _folder.Work(TryFolder.AddWindow);
        Assert.NotNull(Backups.Keep(_folder.House, _clock));
        Assert.Equal(["2026-03-02T080000Z-1", "2027-01-02T080000Z.t"], Backups.All.Select(b => Path.GetFileName(b.Path)[..20]));
    }

    [Fact]
    public void ADamagedBackupIsNotTakenForOneThatHoldsAll()
    {
        _folder.Begin();
        var first = Backups.Keep(_folder.House, _clock)!;
        var bytes = File.ReadAllBytes(first.Path);
        bytes[bytes.Length / 2] ^= 1;
        File.WriteAllBytes(first.Path, bytes);
        _clock.Advance(TimeSpan.FromHours(1));
        Assert.Equal("W01", _folder.Tags(Backups.Keep(_folder.House, _clock)!.Path));
    }

    [Fact]
    public void ACopyThroughALinkIsOfWhatItLeadsTo()
    {
        if (OperatingSystem.IsWindows())
            return;
        _folder.Begin();
        File.CreateSymbolicLink(_folder.In("link.trimout"), _folder.House);
        _folder.Work(scribe =>
        {
            TryFolder.AddWindow(scribe);
            BackupFolder.Copy(_folder.In("link.trimout"), _folder.In("copy.trimout"), _clock);
        });
        Assert.Equal("W01 W02", _folder.Tags(_folder.In("copy.trimout")));
    }
}
