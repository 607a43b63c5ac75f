using Microsoft.Extensions.Time.Testing;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.HouseFile.Backups;
using TrimOut.HouseFile.Kept;

namespace TrimOut.HouseFile.Tests.Kept;

/// <summary>Short work on a house that counts as large.</summary>
public sealed class BriefWorkTests : IDisposable
{
    private readonly TryFolder _folder = new();

    public BriefWorkTests() => Directory.CreateDirectory(_folder.In("kept"));

    private BriefWork Large => new(_folder.In("kept"), LargeFrom: 0);

    public void Dispose() => _folder.Dispose();

    private (bool WentOn, bool Kept) Note(string text, BriefWork brief)
    {
        using var file = HouseOnDisk.Open(_folder.House, TimeProvider.System, brief);
        var scribe = new Scribe(file, TimeProvider.System, "Test crew");
        file.KeepAtClosing(() => scribe.Log);
        TryFolder.Do(scribe, SetFact.Typed(scribe.House, scribe.House.FindTag("W01")!.Item, WindowFacts.Note, text).Value);
        return (file.WentOn, file.Kept is not null);
    }

    private List<string> Notes(string? path = null)
    {
        using var file = HouseOnDisk.OpenToRead(path ?? _folder.House, TimeProvider.System);
        return [.. file.Opened.SelectMany(c => c.Edits).OfType<Edit.Put>().Where(p => p.Field == WindowFacts.Note.Name).Select(p => p.Value!)];
    }

    [Fact]
    public void ALargeHouseIsGoneOnWithWhereItWasLeft()
    {
        _folder.Begin(3);
        Assert.Equal((false, false), Note("one", Large));
        Assert.Equal(["Elm Street.trimout", "Elm Street.trimout.journal"], _folder.Names);
        var file = File.ReadAllBytes(_folder.House);
        Assert.Equal((true, true), Note("two", Large));
        Assert.Equal((true, true), Note("three", Large));
        Assert.Equal(["one", "two", "three"], Notes());
        // Nothing of the file but the note of how far the journal got was written.
        Assert.Equal(file[..^1024], File.ReadAllBytes(_folder.House)[..^1024]);
    }

    [Fact]
    public void TheNextOtherOpeningMakesItOneFileAgain()
    {
        _folder.Begin();
        Note("one", Large);
        _folder.Work(TryFolder.AddWindow);
        Assert.Equal(["Elm Street.trimout"], _folder.Names);
        Assert.Equal("W01 W02", _folder.Tags());
        Assert.Equal((false, false), Note("two", Large));
        Assert.Equal(["one", "two"], Notes());
    }

    [Fact]
    public void WorkThatIsNotBriefKeepsWhatTheNextBriefWorkGoesOnFrom()
    {
        _folder.Begin();
        using (var file = HouseOnDisk.Open(_folder.House, TimeProvider.System, BriefWork.Not(_folder.In("kept"), largeFrom: 0)))
        {
            var scribe = new Scribe(file, TimeProvider.System, "Test crew");
            file.KeepAtClosing(() => scribe.Log);
            TryFolder.AddWindow(scribe);
        }
        Assert.Equal(["Elm Street.trimout"], _folder.Names);
        Assert.Equal((false, true), Note("one", Large));
        Assert.Equal((true, true), Note("two", Large));
        Assert.Equal("W01 W02", _folder.Tags());
    }

    [Fact]
    public void AMergeOrAnotherHistoryInItsPlaceLeavesNothingKeptThatIsNotOfIt()
    {
        _folder.Begin(2);
        Note("one", Large);
        var earlier = new List<Change>();
        using (var file = HouseOnDisk.Open(_folder.House, TimeProvider.System, BriefWork.Not(_folder.In("kept"), largeFrom: 0)))
        {
            var log = HouseLog.Of(file.Opened).Value;
            file.KeepAtClosing(() => log);
            earlier.AddRange(file.Opened.SkipLast(1));
            file.Replace(earlier);
        }
        Assert.Equal((false, false), Note("two", Large));
        Assert.Equal(["two"], Notes());
    }

    [Fact]
    public void AHouseThatIsNotLargeIsOneFileAfterIt()
    {
        _folder.Begin();
        var brief = new BriefWork(_folder.In("kept"));
        Assert.Equal((false, false), Note("one", brief));
        Assert.Equal((false, false), Note("two", brief));
        Assert.Equal(["Elm Street.trimout"], _folder.Names);
        Assert.Empty(Directory.GetFiles(_folder.In("kept")));
    }

    [Fact]
    public void AJournalThatGrewLongIsFoldedIn()
    {
        _folder.Begin();
        Note("one", Large);
        var notes = 1;
        for (; _folder.Names.Length == 2; notes++)
            Note(new string('x', 400), Large);
        Assert.InRange(notes, 10, 30);
        Assert.Equal(["Elm Street.trimout"], _folder.Names);
        Assert.Equal(notes, Notes().Count);
    }

    [Fact]
    public void ACopyGetsADeviceOfItsOwnAndDoesNotGoOn()
    {
        _folder.Begin();
        Note("one", Large);
        var copy = Directory.CreateDirectory(_folder.In("copy")).FullName;
        foreach (var name in _folder.Names)
            File.Copy(_folder.In(name), Path.Combine(copy, name));
        using var file = HouseOnDisk.Open(Path.Combine(copy, "Elm Street.trimout"), TimeProvider.System, Large);
        Assert.False(file.WentOn);
        Assert.DoesNotContain(file.Opened, c => c.Id.Device == file.Device);
    }

    /// <summary>The file and the journal are written over in place, as a copy from a stick does it: their disk has them for the same as before.</summary>
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void AnOlderCopyPutBackOverItGoesOnUnderAnotherName(bool brief)
    {
        _folder.Begin();
        Note("one", Large);
        var (file, journal) = (File.ReadAllBytes(_folder.House), File.ReadAllBytes(_folder.House + ".journal"));
        Note("two", Large);
        string device;
        using (var open = HouseOnDisk.Open(_folder.House, TimeProvider.System, Large))
            device = open.Device;
        File.WriteAllBytes(_folder.House, file);
        File.WriteAllBytes(_folder.House + ".journal", journal);
        using var again = HouseOnDisk.Open(_folder.House, TimeProvider.System, brief ? Large : BriefWork.Not(_folder.In("kept")));
        Assert.NotEqual(device, again.Device);
        Assert.DoesNotContain(again.Opened, c => c.Id.Device == again.Device);
    }

    [Fact]
    public void WhatOnlyTheWholeHistoryCanSayIsReadWhenItIsAskedFor()
    {
        _folder.Begin(2);
        Note("one", Large);
        Note("two", Large);
        using var file = HouseOnDisk.Open(_folder.House, TimeProvider.System, Large);
        var scribe = new Scribe(file, TimeProvider.System, "Test crew");
        Assert.NotNull(file.Kept);
        using (var looked = HouseOnDisk.OpenToRead(_folder.House, TimeProvider.System))
            Assert.Equal(looked.Opened.Select(ChangeJson.Write), file.Opened.Select(ChangeJson.Write));
        Assert.True(scribe.Undo().Ok);
        Assert.Equal("one", scribe.House.FindTag("W01")!.Item.Get(WindowFacts.Note));
    }

    [Fact]
    public void OneBackupADayIsEnoughThatHoldsTheFile()
    {
        _folder.Begin();
        var clock = new FakeTimeProvider(new DateTimeOffset(2026, 3, 2, 8, 0, 0, TimeSpan.Zero));
        var backups = new BackupFolder(_folder.In("backups"));
        Assert.NotNull(backups.Keep(_folder.House, clock));
        Note("one", Large);
        Assert.Null(backups.Keep(_folder.House, clock, onceADay: true));
        clock.Advance(TimeSpan.FromDays(1));
        Assert.Equal(["one"], Notes(backups.Keep(_folder.House, clock, onceADay: true)!.Path));
        Note("two", Large);
        Assert.Null(backups.Keep(_folder.House, clock, onceADay: true));
        // Written anew, the file holds what no backup does.
        _folder.Work(TryFolder.AddWindow);
        Note("three", Large);
        Assert.NotNull(backups.Keep(_folder.House, clock, onceADay: true));
    }

    [Fact]
    public void OnlyTheLatestFewHousesAreKept()
    {
        for (var house = 0; house < 10; house++)
        {
            var path = _folder.In($"h{house}.trimout");
            _folder.Begin();
            File.Move(_folder.House, path);
            using var file = HouseOnDisk.Open(path, TimeProvider.System, Large);
            file.KeepAtClosing(() => HouseLog.Of(file.Opened).Value);
        }
        Assert.Equal(8, Directory.GetFiles(_folder.In("kept"), "*.fold").Length);
    }

    [Fact]
    public void HousesThatAreClosedAtOnceKeepEachItsOwn()
    {
        var houses = Enumerable.Range(0, 4).Select(n => _folder.In($"h{n}.trimout")).ToList();
        foreach (var house in houses)
        {
            _folder.Begin();
            File.Move(_folder.House, house);
        }
        Parallel.ForEach(houses, house =>
        {
            for (var note = 0; note < 12; note++)
            {
                using var file = HouseOnDisk.Open(house, TimeProvider.System, Large);
                var scribe = new Scribe(file, TimeProvider.System, "Test crew");
                file.KeepAtClosing(() => scribe.Log);
                TryFolder.Do(scribe, SetFact.Typed(scribe.House, scribe.House.FindTag("W01")!.Item, WindowFacts.Note, $"{house} {note}").Value);
                // Thrown away now and then by another one, so that all make it anew.
                if (note % 4 == 3)
                    File.Delete(Directory.GetFiles(_folder.In("kept"), "*.fold").FirstOrDefault() ?? house + ".none");
            }
        });
        Assert.All(houses, house => Assert.Equal(Enumerable.Range(0, 12).Select(n => $"{house} {n}"), Notes(house)));
        foreach (var house in houses)
        {
            using (HouseOnDisk.Open(house, TimeProvider.System, BriefWork.Not(_folder.In("kept"), largeFrom: 0)))
            {
            }
            using var file = HouseOnDisk.Open(house, TimeProvider.System, Large);
            Assert.Equal($"{house} 11", new Scribe(file, TimeProvider.System, "Test crew").House.FindTag("W01")!.Item.Get(WindowFacts.Note));
        }
    }

    /// <summary>Whoever looks sees at the least what had been called saved before, whatever the other program is at.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(BriefWork.Large)]
    public async Task LookingWhileAnotherSavesNeverShowsLessThanWasSaved(long largeFrom)
    {
        _folder.Begin();
        var before = 0;
        using (var file = HouseOnDisk.OpenToRead(_folder.House, TimeProvider.System))
            before = file.Opened.Count;
        var saved = 0;
        var done = false;
        var saving = Task.Run(() =>
        {
            for (var opening = 0; opening < 40; opening++)
            {
                using var file = HouseOnDisk.Open(_folder.House, TimeProvider.System, new BriefWork(_folder.In("kept"), largeFrom));
                var scribe = new Scribe(file, TimeProvider.System, "Test crew");
                file.KeepAtClosing(() => scribe.Log);
                for (var note = 0; note < 5; note++)
                {
                    TryFolder.Do(scribe, SetFact.Typed(scribe.House, scribe.House.FindTag("W01")!.Item, WindowFacts.Note,
                        $"{opening} {note} {new string('x', note * 400)}").Value);
                    Interlocked.Increment(ref saved);
                }
            }
            Volatile.Write(ref done, true);
        });
        var looks = 0;
        for (; !Volatile.Read(ref done) && !saving.IsFaulted; looks++)
        {
            var acknowledged = Volatile.Read(ref saved);
            using var file = HouseOnDisk.OpenToRead(_folder.House, TimeProvider.System);
            Assert.InRange(file.Opened.Count, before + acknowledged, before + 200);
        }
        await saving;
        Assert.InRange(looks, 2, int.MaxValue);
        Assert.Equal(200, Notes().Count);
    }

    /// <summary>Where it can't be kept, and where it is a link, nothing is lost and nothing is written through.</summary>
    [Fact]
    public void WhatIsKeptIsNeverWrittenThroughALink()
    {
        if (OperatingSystem.IsWindows())
            return;
        _folder.Begin();
        var kept = _folder.In("kept");
        Note("one", Large);
        var fold = Directory.GetFiles(kept, "*.fold").Single();
        var elsewhere = _folder.In("elsewhere");
        File.WriteAllText(elsewhere, "mine");
        File.Delete(fold);
        File.CreateSymbolicLink(fold, elsewhere);
        File.CreateSymbolicLink(fold + ".new", elsewhere);
        Assert.Equal((true, false), Note("two", Large));
        Assert.Equal("mine", File.ReadAllText(elsewhere));
        Assert.Null(File.ResolveLinkTarget(fold, returnFinalTarget: false));
        Assert.Equal((true, true), Note("three", Large));
        Directory.Delete(kept, recursive: true);
        File.WriteAllText(kept, "no folder");
        Assert.Equal((true, false), Note("four", Large));
        Assert.Equal(["one", "two", "three", "four"], Notes());
    }
}
