using TrimOut.Core.History;
using TrimOut.HouseFile.Backups;
using TrimOut.HouseFile.Rescues;

namespace TrimOut.HouseFile.Tests;

/// <summary>A journal whose house file is gone holds saves that are nowhere else: nothing that makes a house file does it harm.</summary>
public sealed class FreeNameTests : IDisposable
{
    private const int Saves = 5;

    private readonly TryFolder _try = new();
    private readonly string _path;
    private readonly byte[] _journal;

    public FreeNameTests()
    {
        _try.Begin();
        _path = _try.In("lost.trimout");
        using var house = HouseOnDisk.Open(_try.House, TimeProvider.System);
        var scribe = new Scribe(house, TimeProvider.System, "Ash");
        for (var save = 0; save < Saves; save++)
            TryFolder.AddWindow(scribe);
        _journal = Shared(_try.House + ".journal");
        File.WriteAllBytes(_path + ".journal", _journal);
    }

    public void Dispose() => _try.Dispose();

    /// <summary>What a program that died would have left; it is open in this one.</summary>
    private static byte[] Shared(string path)
    {
        using var file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        var bytes = new byte[file.Length];
        file.ReadExactly(bytes);
        return bytes;
    }

    public static TheoryData<string> Makers => ["create", "copy"];

    [Theory]
    [MemberData(nameof(Makers))]
    public void NothingIsMadeBesideAJournalWithoutItsHouseFile(string how)
    {
        var refused = Assert.Throws<HouseStoreException>(() =>
        {
            if (how == "create")
                HouseOnDisk.Create(_path, TimeProvider.System).Dispose();
            else
                BackupFolder.Copy(_try.House, _path, TimeProvider.System);
        });
        Assert.Equal(StoreFault.AlreadyThere, refused.Fault);
        Assert.Contains($"a journal with {Saves} saves that may be nowhere else", refused.Message);
        Assert.Contains($"trimout rescue {_path} NEW.trimout", refused.Message);
        Assert.Equal(_journal, File.ReadAllBytes(_path + ".journal"));
        Assert.Equal(["Elm Street.trimout", "lost.trimout.journal"], _try.Names);
    }

    [Fact]
    public void WhoeverLooksForTheHouseIsToldOfItsJournalAndARescueBringsItOut()
    {
        var missing = Assert.Throws<HouseStoreException>(() => HouseOnDisk.OpenToRead(_path, TimeProvider.System));
        Assert.Equal(StoreFault.NotThere, missing.Fault);
        Assert.Contains($"{_path}.journal, a journal with {Saves} saves", missing.Message);
        Assert.DoesNotContain("trimout new", missing.Message);
        Assert.Equal(Saves, Rescue.Read(_path).Changes.Length);
    }

    [Fact]
    public void AHouseThatIsPutInThePlaceOfAnotherLeavesThatOneWholeBesideIt()
    {
        var bytes = "no house"u8.ToArray();
        File.WriteAllBytes(_path, bytes);
        var (house, aside) = HouseOnDisk.CreateInstead(_path, TimeProvider.System, []);
        house.Dispose();
        Assert.Equal(bytes, File.ReadAllBytes(aside));
        Assert.Equal(_journal, File.ReadAllBytes(aside + ".journal"));
        Assert.False(File.Exists(_path + ".journal"));
        HouseOnDisk.OpenToRead(_path, TimeProvider.System).Dispose();
    }
}
