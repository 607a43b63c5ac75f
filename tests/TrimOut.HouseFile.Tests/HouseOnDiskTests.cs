using TrimOut.Core.History;
using TrimOut.HouseFile.Durable;

namespace TrimOut.HouseFile.Tests;

public sealed class HouseOnDiskTests : IDisposable
{
    private readonly TryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void WhatWasSavedIsThereAgain()
    {
        _folder.Begin(windows: 3).Work(TryFolder.AddWindow);
        Assert.Equal("W01 W02 W03 W04", _folder.Tags());
    }

    [Fact]
    public void AClosedHouseIsOneFile()
    {
        _folder.Begin().Work(TryFolder.AddWindow);
        Assert.Equal(["Elm Street.trimout"], _folder.Names);
    }

    [Fact]
    public void ASaveIsOnTheDiskBeforeTheHouseIsClosed()
    {
        _folder.Begin();
        _folder.Work(scribe =>
        {
            TryFolder.AddWindow(scribe);
            Assert.Equal("W01 W02", _folder.Tags());
        });
    }

    [Fact]
    public void LookingAtAHouseWritesNothing()
    {
        _folder.Begin();
        var before = File.ReadAllBytes(_folder.House);
        _folder.Work(_ => { });
        Assert.Equal(before, File.ReadAllBytes(_folder.House));
    }

    [Fact]
    public void UndoAndRedoWorkOverARestart()
    {
        _folder.Begin(windows: 2);
        _folder.Work(scribe => Assert.True(scribe.Undo().Ok));
        Assert.Equal("W01", _folder.Tags());
        _folder.Work(scribe => Assert.True(scribe.Redo().Ok));
        Assert.Equal("W01 W02", _folder.Tags());
    }

    [Fact]
    public void ASecondProgramIsToldWhoHasTheHouseAndMayLookAtIt()
    {
        _folder.Begin();
        _folder.Work(_ =>
        {
            var refused = Assert.Throws<HouseStoreException>(() => HouseOnDisk.Open(_folder.House, TimeProvider.System));
            Assert.Equal(StoreFault.InUse, refused.Fault);
            Assert.Contains($"{Environment.UserName} on {Environment.MachineName}, program number {Environment.ProcessId}, since 20", refused.Message);
            using var looking = HouseOnDisk.OpenToRead(_folder.House, TimeProvider.System);
            Assert.NotNull(looking.ReadOnlyBecause);
        });
        _folder.Work(TryFolder.AddWindow);
    }

    [Fact]
    public void ALockThatADeadProgramLeftLocksNobodyOut()
    {
        _folder.Begin();
        File.WriteAllText(_folder.House + ".lock", "");
        File.WriteAllText(_folder.House + ".in-use", "somebody on another laptop, since long ago");
        _folder.Work(TryFolder.AddWindow);
        Assert.Equal("W01 W02", _folder.Tags());
    }

    [Fact]
    public void ACopyGetsADeviceOfItsOwnAndTheOriginalKeepsIts()
    {
        _folder.Begin();
        var copy = _folder.In("copy.trimout");
        File.Copy(_folder.House, copy);
        var devices = new List<string>();
        foreach (var path in new[] { _folder.House, copy, _folder.House, copy })
        {
            _folder.Work(
                scribe =>
                {
                    TryFolder.AddWindow(scribe);
                    devices.Add(scribe.Store.Device);
                },
                path);
        }
        Assert.Equal(devices[0], devices[2]);
        Assert.Equal(devices[1], devices[3]);
        Assert.NotEqual(devices[0], devices[1]);
    }

    [Fact]
    public void ACopyWithItsJournalGetsADeviceOfItsOwnEvenBeforeItSavesAnything()
    {
        _folder.Begin();
        var copy = _folder.In("copy.trimout");
        _folder.Work(scribe =>
        {
            TryFolder.AddWindow(scribe);
            File.Copy(_folder.House, copy);
            File.Copy(_folder.House + ".journal", copy + ".journal");
        });
        var devices = new List<string>();
        foreach (var path in new[] { copy, copy, _folder.House })
            _folder.Work(scribe => devices.Add(scribe.Store.Device), path);
        Assert.NotEqual(devices[0], devices[2]);
        Assert.NotEqual(devices[1], devices[2]);
    }

    [Fact]
    public void AnOldCopyPutBackOverTheFileGetsADeviceOfItsOwn()
    {
        _folder.Begin();
        var old = File.ReadAllBytes(_folder.House);
        Change? first = null;
        _folder.Work(scribe => { TryFolder.AddWindow(scribe); first = scribe.Log.Changes[^1]; });
        File.WriteAllBytes(_folder.House, old);
        _folder.Work(scribe => { TryFolder.AddWindow(scribe); Assert.NotEqual(first!.Id, scribe.Log.Changes[^1].Id); });
    }

    [Fact]
    public void AFileMarkedReadOnlyOpensForReading()
    {
        _folder.Begin();
        File.SetAttributes(_folder.House, FileAttributes.ReadOnly);
        _folder.Work(scribe =>
        {
            Assert.Contains("is marked read-only", scribe.Store.ReadOnlyBecause);
            Assert.False(scribe.Record(new Draft("x", [new Edit.Put("house", "name", "x", [])])).Ok);
        });
        Assert.Equal(["Elm Street.trimout"], _folder.Names);
        File.SetAttributes(_folder.House, FileAttributes.Normal);
    }

    [Fact]
    public void AHouseInAReadOnlyFolderOpensForReading()
    {
        if (OperatingSystem.IsWindows())
            return;
        _folder.Begin();
        File.SetUnixFileMode(_folder.Path, UnixFileMode.UserRead | UnixFileMode.UserExecute);
        _folder.Work(scribe => Assert.Contains("is read-only", scribe.Store.ReadOnlyBecause));
        File.SetUnixFileMode(_folder.Path, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
    }

    [Fact]
    public void AFileThatIsNotThereIsNotMade()
    {
        Assert.Equal(StoreFault.NotThere, Assert.Throws<HouseStoreException>(() => HouseOnDisk.Open(_folder.House, TimeProvider.System)).Fault);
        Assert.Empty(_folder.Names);
    }

    [Fact]
    public void AFileThatIsThereIsNotBegunAnew()
    {
        File.WriteAllText(_folder.House, "shopping list");
        Assert.Equal(StoreFault.AlreadyThere, Assert.Throws<HouseStoreException>(() => HouseOnDisk.Create(_folder.House, TimeProvider.System)).Fault);
        Assert.Equal("shopping list", File.ReadAllText(_folder.House));
    }

    [Theory]
    [InlineData("", "is empty")]
    [InlineData("milk, eggs, bread", "is no house file")]
    public void AForeignFileIsRefusedAndLeftAlone(string contents, string said)
    {
        File.WriteAllText(_folder.House, contents);
        var refused = Assert.Throws<HouseStoreException>(() => HouseOnDisk.Open(_folder.House, TimeProvider.System));
        Assert.Equal(StoreFault.Foreign, refused.Fault);
        Assert.Contains(said, refused.Message);
        Assert.Equal(contents, File.ReadAllText(_folder.House));
        Assert.Equal(["Elm Street.trimout"], _folder.Names);
    }

    [Fact]
    public void ADatabaseOfAnotherProgramIsNoHouse()
    {
        using (var other = new LiteDB.LiteDatabase(_folder.House))
            other.GetCollection("songs").Insert(new LiteDB.BsonDocument { ["name"] = "x" });
        var before = File.ReadAllBytes(_folder.House);
        Assert.Equal(StoreFault.Damaged, Assert.Throws<HouseStoreException>(() => HouseOnDisk.Open(_folder.House, TimeProvider.System)).Fault);
        Assert.Equal(before, File.ReadAllBytes(_folder.House));
    }

    [Fact]
    public void AnyProgramThatKnowsTheDatabaseCanReadTheRows()
    {
        _folder.Begin(windows: 40);
        using var database = new LiteDB.LiteDatabase($"Filename={_folder.House};ReadOnly=true");
        Assert.Equal(41, database.GetCollection("changes").FindAll().Count(r => r["json"].AsString.StartsWith("{\"v\":1,", StringComparison.Ordinal)));
    }

    [Fact]
    public void AChangeInAFormOfTheFutureOpensForReading()
    {
        _folder.Begin();
        var file = File.ReadAllBytes(_folder.House);
        var trailer = Trailer.Read(file)! with { Form = Trailer.CurrentForm + 1 };
        File.WriteAllBytes(_folder.House, [.. file[..^Trailer.Size], .. trailer.ToPage()]);
        _folder.Work(scribe => Assert.Contains("newer TrimOut", scribe.Store.ReadOnlyBecause));
        Assert.Equal("W01", _folder.Tags());
    }

    [Fact]
    public void NewFilesAreTheirOwnersAlone()
    {
        _folder.Begin();
        _folder.Work(scribe =>
        {
            TryFolder.AddWindow(scribe);
            Assert.All(_folder.Names, name => Assert.Equal("rw-------", _folder.RightsOf(name)));
        });
    }

    [Fact]
    public void AFileThatOthersMayReadStaysThatWay()
    {
        _folder.Begin();
        if (!OperatingSystem.IsWindows())
            File.SetUnixFileMode(_folder.House, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.GroupRead);
        var before = _folder.RightsOf("Elm Street.trimout");
        _folder.Work(TryFolder.AddWindow);
        Assert.Equal(before, _folder.RightsOf("Elm Street.trimout"));
    }

    [Theory]
    [InlineData(-1000, true)]
    [InlineData(1000, false)]
    public void AChangeThatNoRowCanHoldIsRefusedAndOneThatJustFitsIsFoldedIn(int more, bool saved)
    {
        _folder.Begin().Work(scribe =>
        {
            var bare = System.Text.Encoding.UTF8.GetByteCount(ChangeJson.Write(scribe.Record(Window(scribe, 1)).Value));
            var recorded = scribe.Record(Window(scribe, HouseFile.Durable.Entry.LongestJson - bare + 1 + more));
            Assert.Equal(saved, recorded.Ok);
            Assert.True(saved || recorded.Reason!.Contains("no house file can hold so large a change", StringComparison.Ordinal));
        });
        Assert.False(File.Exists(_folder.House + ".journal"));
        _folder.Work(scribe => Assert.Equal(saved ? 2 : 1, scribe.Log.Changes.Count(c => c.What.StartsWith('w'))));

        static Draft Window(Scribe scribe, int letters) =>
            Core.Decisions.AddItems.Window(scribe.House, Core.Decisions.AddItems.NextTag(scribe.House), null).Value with { What = new string('w', letters) };
    }

    [Fact]
    public void WhyNothingIsSavedDoesNotSayTwiceThatTheHouseIsOnlyLookedAt()
    {
        _folder.Begin();
        using var looking = HouseOnDisk.OpenToRead(_folder.House, TimeProvider.System);
        Assert.DoesNotContain("reading only", looking.ReadOnlyBecause, StringComparison.Ordinal);
    }
}
