using TrimOut.Core.Decisions;
using TrimOut.Core.History;

namespace TrimOut.HouseFile.Tests.Faults;

/// <summary>Folders and files that are removed, moved, replaced or linked while the house is open: nothing is called saved that is not found again.</summary>
public sealed class NamesTakenAwayTests : IDisposable
{
    private readonly TryFolder _try = new();
    private readonly string _path;

    public NamesTakenAwayTests()
    {
        Directory.CreateDirectory(_try.In("job"));
        _path = _try.In("job/elm.trimout");
        _try.Begin();
        File.Move(_try.House, _path);
    }

    public void Dispose() => _try.Dispose();

    private static readonly string[] All =
    [
        "folder removed", "folder moved", "house removed", "house moved", "house replaced by a copy", "house replaced by another", "house behind a link",
        "journal removed", "journal replaced", "lock removed", "folder behind another",
    ];

    public static TheoryData<string, bool> Ways
    {
        get
        {
            var ways = new TheoryData<string, bool>();
            foreach (var way in All)
            {
                ways.Add(way, true);
                ways.Add(way, false);
            }
            return ways;
        }
    }

    private void Take(string way)
    {
        switch (way)
        {
            case "folder removed":
                Directory.Delete(_try.In("job"), recursive: true);
                break;
            case "folder moved":
                Directory.Move(_try.In("job"), _try.In("moved"));
                break;
            case "house removed":
                File.Delete(_path);
                break;
            case "house moved":
                File.Move(_path, _try.In("moved.trimout"));
                break;
            case "house replaced by a copy":
                File.Copy(_path, _path + "2");
                File.Move(_path + "2", _path, overwrite: true);
                break;
            case "house replaced by another":
                HouseOnDisk.Create(_try.In("other.trimout"), TimeProvider.System).Dispose();
                File.Move(_try.In("other.trimout"), _path, overwrite: true);
                break;
            case "house behind a link":
                File.Move(_path, _try.In("moved.trimout"));
                File.CreateSymbolicLink(_path, _try.In("moved.trimout"));
                break;
            case "journal removed":
                File.Delete(_path + ".journal");
                break;
            case "journal replaced":
                File.Copy(_path + ".journal", _path + "2");
                File.Move(_path + "2", _path + ".journal", overwrite: true);
                break;
            case "lock removed":
                File.Delete(_path + ".lock");
                break;
            case "folder behind another":
                Directory.Move(_try.In("job"), _try.In("moved"));
                Directory.CreateDirectory(_try.In("job"));
                File.Copy(_try.In("moved/elm.trimout"), _path);
                break;
        }
    }

    [Theory]
    [MemberData(nameof(Ways))]
    public void ASaveThatNoNameLeadsToIsNotCalledSavedAndACopyGoesElsewhere(string way, bool savedBefore)
    {
        if (OperatingSystem.IsWindows() || (!savedBefore && way.StartsWith("journal", StringComparison.Ordinal)))
            return;
        using var house = HouseOnDisk.Open(_path, TimeProvider.System);
        var scribe = new Scribe(house, TimeProvider.System, "Ash");
        if (savedBefore)
            TryFolder.AddWindow(scribe);
        Take(way);
        var typed = AddItems.Window(scribe.House, "X99", null);
        for (var attempt = 0; attempt < 2; attempt++)
            Assert.StartsWith("Not saved: ", typed.Then(scribe.Record).Reason, StringComparison.Ordinal);
        Assert.Null(scribe.House.FindTag("X99"));
        using (var copy = HouseOnDisk.Create(_try.In("elsewhere.trimout"), TimeProvider.System, scribe.Log.Changes))
            Assert.True(typed.Then(new Scribe(copy, TimeProvider.System, "Ash").Record).Ok);
        Assert.EndsWith("X99", _try.Tags(_try.In("elsewhere.trimout")), StringComparison.Ordinal);
    }

    [Fact]
    public void AFolderThatIsPutBackIsSavedToAgain()
    {
        using (var house = HouseOnDisk.Open(_path, TimeProvider.System))
        {
            var scribe = new Scribe(house, TimeProvider.System, "Ash");
            TryFolder.AddWindow(scribe);
            Directory.Move(_try.In("job"), _try.In("moved"));
            Assert.False(AddItems.Window(scribe.House, "W03", null).Then(scribe.Record).Ok);
            Directory.Move(_try.In("moved"), _try.In("job"));
            TryFolder.AddWindow(scribe);
        }
        Assert.Equal("W01 W02 W03", _try.Tags(_path));
    }

    [Fact]
    public void AHouseWhoseFolderWasMovedIsWholeThere()
    {
        using (var house = HouseOnDisk.Open(_path, TimeProvider.System))
        {
            TryFolder.AddWindow(new Scribe(house, TimeProvider.System, "Ash"));
            Directory.Move(_try.In("job"), _try.In("moved"));
        }
        _try.Work(TryFolder.AddWindow, _try.In("moved/elm.trimout"));
        Assert.Equal("W01 W02 W03", _try.Tags(_try.In("moved/elm.trimout")));
    }

    [Theory]
    [InlineData("linked", false)]
    [InlineData("linked", true)]
    [InlineData("copied", false)]
    [InlineData("copied", true)]
    public void TwoNamesOfOneHouseGiveNoNumberTwiceAndCanBeMerged(string how, bool atOnce)
    {
        if (OperatingSystem.IsWindows())
            return;
        var (one, two) = (_path, _try.In("job/two.trimout"));
        _try.Work(TryFolder.AddWindow, one);
        if (how == "copied")
            File.Copy(one, two);
        else
            Run("ln", one, two);
        if (atOnce)
        {
            using var first = HouseOnDisk.Open(one, TimeProvider.System);
            using var second = HouseOnDisk.Open(two, TimeProvider.System);
            Add(first, "A1");
            Add(second, "B1");
        }
        else
        {
            Work(one, "A1");
            Work(two, "B1");
            Work(one, "A2");
        }
        var (mine, theirs) = (Log(one), Log(two));
        var names = mine.Changes.Select(c => c.Id).Intersect(theirs.Changes.Select(c => c.Id)).ToList();
        Assert.All(names, n => Assert.Equal(ChangeJson.Write(mine.Find(n)!), ChangeJson.Write(theirs.Find(n)!)));
        Assert.NotNull(Merge.Of(mine, theirs).Value.Merged.House.FindTag("A1"));
        Assert.NotNull(Merge.Of(theirs, mine).Value.Merged.House.FindTag("B1"));
    }

    [Fact]
    public void ADaysWorkUnderOneNameKeepsItsDevice()
    {
        string device;
        using (var house = HouseOnDisk.Open(_path, TimeProvider.System))
        {
            TryFolder.AddWindow(new Scribe(house, TimeProvider.System, "Ash"));
            device = house.Device;
        }
        using var again = HouseOnDisk.Open(_path, TimeProvider.System);
        Assert.Equal(device, again.Device);
    }

    private static void Add(HouseOnDisk house, string tag)
    {
        var scribe = new Scribe(house, TimeProvider.System, "Ash");
        TryFolder.Do(scribe, AddItems.Window(scribe.House, tag, null).Value);
    }

    private static void Work(string path, string tag)
    {
        using var house = HouseOnDisk.Open(path, TimeProvider.System);
        Add(house, tag);
    }

    private static HouseLog Log(string path)
    {
        using var house = HouseOnDisk.OpenToRead(path, TimeProvider.System);
        return HouseLog.Of(house.Opened).Value;
    }

    private static void Run(string program, params string[] arguments)
    {
        using var process = System.Diagnostics.Process.Start(program, arguments);
        process.WaitForExit();
        Assert.Equal(0, process.ExitCode);
    }
}
