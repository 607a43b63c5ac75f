using TrimOut.Core.Decisions;
using TrimOut.Core.History;

namespace TrimOut.HouseFile.Tests.Faults;

/// <summary>Something else cuts the journal of an open house, or writes into it: the next save sees it, and what was saved before is not lost.</summary>
public sealed class JournalCutTests : IDisposable
{
    private readonly TryFolder _try = new TryFolder().Begin();

    public void Dispose() => _try.Dispose();

    private string Journal => _try.House + ".journal";

    public static TheoryData<string> Ways => ["cut to half a line", "emptied", "emptied and filled with zeros", "grown", "written over"];

    private void Spoil(string way)
    {
        using var file = new FileStream(Journal, FileMode.Open, FileAccess.ReadWrite, FileShare.ReadWrite | FileShare.Delete);
        var length = file.Length;
        switch (way)
        {
            case "cut to half a line":
                file.SetLength(400);
                break;
            case "emptied":
                file.SetLength(0);
                break;
            case "emptied and filled with zeros":
                file.SetLength(0);
                file.SetLength(length);
                break;
            case "grown":
                file.SetLength(length + 1);
                break;
            case "written over":
                file.Write(new byte[length]);
                break;
        }
    }

    [Theory]
    [MemberData(nameof(Ways))]
    public void TheNextSaveIsNotCalledSavedAndNothingBeforeItIsLost(string way)
    {
        if (OperatingSystem.IsWindows())
            return;
        using (var house = HouseOnDisk.Open(_try.House, TimeProvider.System))
        {
            var scribe = new Scribe(house, TimeProvider.System, "Ash");
            TryFolder.AddWindow(scribe);
            TryFolder.AddWindow(scribe);
            Assert.Null(house.NotHeldBecause);
            Spoil(way);
            Assert.Contains("was cut or written to by something else", house.NotHeldBecause);
            var refused = AddItems.Window(scribe.House, "X99", null).Then(scribe.Record);
            Assert.StartsWith("Not saved: ", refused.Reason, StringComparison.Ordinal);
            Assert.Null(house.NotHeldBecause);
            // As a program that is killed now leaves it.
            Assert.Equal("W01 W02 W03", _try.Tags());
            TryFolder.AddWindow(scribe);
        }
        Assert.Equal("W01 W02 W03 W04", _try.Tags());
        Assert.Single(_try.Names, n => n.Contains(".unread-", StringComparison.Ordinal));
    }

    [Fact]
    public void AHouseThatIsClosedWithoutAnotherSaveIsWholeToo()
    {
        if (OperatingSystem.IsWindows())
            return;
        using (var house = HouseOnDisk.Open(_try.House, TimeProvider.System))
        {
            TryFolder.AddWindow(new Scribe(house, TimeProvider.System, "Ash"));
            Spoil("emptied");
            house.Dispose();
            Assert.Null(house.NotKeptBecause);
        }
        Assert.Equal("W01 W02", _try.Tags());
    }

    [Fact]
    public void AHouseWhoseFolderIsGoneSaysAtClosingThatNothingIsThere()
    {
        if (OperatingSystem.IsWindows())
            return;
        Directory.CreateDirectory(_try.In("job"));
        File.Move(_try.House, _try.In("job/elm.trimout"));
        using var house = HouseOnDisk.Open(_try.In("job/elm.trimout"), TimeProvider.System);
        TryFolder.AddWindow(new Scribe(house, TimeProvider.System, "Ash"));
        Directory.Delete(_try.In("job"), recursive: true);
        Assert.Contains("was removed, moved or replaced", house.NotHeldBecause);
        house.Dispose();
        Assert.Contains("was removed, moved or replaced", house.NotKeptBecause);
    }
}
