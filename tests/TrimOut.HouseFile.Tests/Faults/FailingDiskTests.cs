using TrimOut.Core;
using TrimOut.Core.Decisions;
using TrimOut.Core.History;
using TrimOut.Core.Units;
using TrimOut.HouseFile.Tests.Crashes;
using TrimOut.Testing;

namespace TrimOut.HouseFile.Tests.Faults;

/// <summary>A full disk, a stick that is pulled out: nothing that was saved is lost, and what was typed can be written elsewhere.</summary>
public class FailingDiskTests
{
    private const int NoSpace = 28;

    private readonly RecordingFiles _disk = new();
    private readonly HouseOnDisk _house;
    private readonly Scribe _scribe;

    public FailingDiskTests()
    {
        _house = HouseOnDisk.Create(ScriptedJob.Here(_disk), ScriptedJob.Path);
        _scribe = new Scribe(_house, TimeProvider.System, "Ash");
        Assert.True(CommonPracticeKit.NewHouse("Elm", DisplayUnits.Inches).Then(_scribe.Record).Ok);
    }

    private static Result<Draft> Window(Scribe scribe) => AddItems.Window(scribe.House, AddItems.NextTag(scribe.House), null);

    private string TagsAfterReopening()
    {
        _house.Dispose();
        using var again = HouseOnDisk.Open(ScriptedJob.Here(_disk), ScriptedJob.Path);
        return string.Join(" ", HouseLog.Of(again.Opened).Value.House.Windows.Select(w => w.Tag));
    }

    [Fact]
    public void OnAFullDiskNothingIsSavedAndTheNextSaveAfterMakingRoomIs()
    {
        Assert.True(Window(_scribe).Then(_scribe.Record).Ok);
        _disk.Failing = new IOException("No space left on device", NoSpace);
        _disk.FailsAfter = 40;
        var refused = Window(_scribe).Then(_scribe.Record);
        Assert.Contains("is full. Make room and try again, or save a copy somewhere else.", refused.Reason);
        Assert.Single(_scribe.House.Windows);
        _disk.Failing = null;
        Assert.Null(_house.ReadOnlyBecause);
        Assert.True(Window(_scribe).Then(_scribe.Record).Ok);
        Assert.Equal("W01 W02", TagsAfterReopening());
    }

    [Fact]
    public void APulledStickLeavesTheHouseForLookingAndACopyGoesElsewhere()
    {
        Assert.True(Window(_scribe).Then(_scribe.Record).Ok);
        _disk.Failing = new IOException("Input/output error", 5);
        var typed = Window(_scribe);
        Assert.Contains("can't be written", typed.Then(_scribe.Record).Reason);
        Assert.NotNull(_house.ReadOnlyBecause);
        var elsewhere = new RecordingFiles();
        using (var copy = HouseOnDisk.Create(ScriptedJob.Here(elsewhere), "/home/elm.trimout", _scribe.Log.Changes))
            Assert.True(typed.Then(new Scribe(copy, TimeProvider.System, "Ash").Record).Ok);
        using var opened = HouseOnDisk.Open(ScriptedJob.Here(elsewhere), "/home/elm.trimout");
        Assert.Equal(2, HouseLog.Of(opened.Opened).Value.House.Windows.Length);
        _disk.Failing = null;
        Assert.Equal("W01", TagsAfterReopening());
    }

    [Fact]
    public void WhatIsTakenInOnAFullDiskFailsForTheDiskAsWhatIsTypedDoes()
    {
        _house.Dispose();
        _disk.Failing = new IOException("No space left on device", NoSpace);
        using var full = HouseOnDisk.Open(ScriptedJob.Here(_disk), ScriptedJob.Path);
        Assert.Contains("is full", full.ReadOnlyBecause);
        Assert.Equal(StoreFault.Disk, Assert.Throws<HouseStoreException>(() => full.Take(full.Opened)).Fault);
        Assert.Equal(StoreFault.Disk, Assert.Throws<HouseStoreException>(() => full.Replace(full.Opened)).Fault);
        _disk.Failing = null;
    }

    [Fact]
    public void ClosingOnAFullDiskKeepsTheJournal()
    {
        Assert.True(Window(_scribe).Then(_scribe.Record).Ok);
        _disk.Failing = new IOException("No space left on device", NoSpace);
        _house.Dispose();
        _disk.Failing = null;
        Assert.Equal("W01", TagsAfterReopening());
    }

    [Fact]
    public void AJournalThatCannotBeFoldedInOnAFullDiskIsReadAndNothingIsLost()
    {
        Assert.True(Window(_scribe).Then(_scribe.Record).Ok);
        _disk.Failing = new IOException("No space left on device", NoSpace);
        _house.Dispose();
        using (var looking = HouseOnDisk.Open(ScriptedJob.Here(_disk), ScriptedJob.Path))
        {
            Assert.Contains("is full", looking.ReadOnlyBecause);
            Assert.Single(HouseLog.Of(looking.Opened).Value.House.Windows);
        }
        _disk.Failing = null;
        Assert.Equal("W01", TagsAfterReopening());
    }

    [Fact]
    public void AHouseFileThatAnotherProgramReplacedIsNotWrittenOver()
    {
        var others = new RecordingFiles();
        HouseOnDisk.Create(ScriptedJob.Here(others), ScriptedJob.Path).Dispose();
        using (var file = _disk.Create(ScriptedJob.Path))
            file.Write(0, others.Read(ScriptedJob.Path));
        _house.Dispose();
        Assert.Equal(others.Read(ScriptedJob.Path), _disk.Read(ScriptedJob.Path));
    }
}
