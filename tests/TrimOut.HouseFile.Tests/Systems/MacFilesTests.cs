using System.Buffers.Binary;
using TrimOut.Core.History;
using TrimOut.HouseFile.Files;
using TrimOut.HouseFile.Rescues;
using TrimOut.HouseFile.Tests.Crashes;

namespace TrimOut.HouseFile.Tests.Systems;

/// <summary>A house on a disk with the manners of macOS, which ran nowhere here.</summary>
public sealed class MacFilesTests
{
    private const string Composed = "/stick/Küche.trimout";
    private const string Apart = "/stick/KU\u0308CHE.trimout";

    [Fact]
    public void EverySaveOpeningAndClosingGoesThroughUnderNamesInOtherLetters()
    {
        var files = new MacFiles();
        var here = ScriptedJob.Here(files);
        HouseOnDisk.Create(here, Composed).Dispose();
        List<Change> saved = [];
        for (var day = 0; day < 6; day++)
        {
            var house = HouseOnDisk.Open(here, day % 2 == 0 ? Composed : Apart);
            for (var save = 0; save < 12; save++)
            {
                saved.Add(Note(here, saved.Count + 1, house.Device, saved.Count(c => c.Id.Device == house.Device) + 1));
                house.Append(saved[^1]);
            }
            if (day == 2)
            {
                // The battery is empty: the system lets go of everything.
                files = new MacFiles(files.Now);
                here = ScriptedJob.Here(files, firstName: 100);
                continue;
            }
            house.Dispose();
            Assert.Null(house.NotKeptBecause);
        }
        using var again = HouseOnDisk.OpenToRead(here, Apart);
        Assert.Equal(saved.Select(c => c.Id), again.Opened.Select(c => c.Id));
        Assert.Equal([Composed], files.Now.Names.Keys);
    }

    [Fact]
    public void AHouseThatIsOpenIsHeldUnderAllItsNames()
    {
        var here = ScriptedJob.Here(new MacFiles());
        using (HouseOnDisk.Create(here, Composed))
        {
            var refused = Assert.Throws<HouseStoreException>(() => HouseOnDisk.Open(here, Apart));
            Assert.Equal(StoreFault.InUse, refused.Fault);
        }
        HouseOnDisk.Open(here, Apart).Dispose();
    }

    [Fact]
    public void NoHouseIsBegunOverOneWhoseNameIsSpelledOtherwise()
    {
        var here = ScriptedJob.Here(new MacFiles());
        HouseOnDisk.Create(here, Composed).Dispose();
        var refused = Assert.Throws<HouseStoreException>(() => HouseOnDisk.Create(here, Apart));
        Assert.Equal(StoreFault.AlreadyThere, refused.Fault);
    }

    [Fact]
    public void ACopyThatIsPutBackNeverGivesAChangesNameTwice()
    {
        var files = new MacFiles();
        var here = ScriptedJob.Here(files);
        HouseOnDisk.Create(here, Composed).Dispose();
        files.CopyAsTheFinderDoes(Composed, "/stick/copy.trimout");
        string first;
        using (var house = HouseOnDisk.Open(here, Composed))
            house.Append(Note(here, 1, first = house.Device, 1));
        files.CopyAsTheFinderDoes("/stick/copy.trimout", Composed);
        using var again = HouseOnDisk.Open(here, Composed);
        Assert.NotEqual(first, again.Device);
    }

    [Fact]
    public void ClosingSaysThatAnotherFileLiesThereAndTheRescueThatItNamesBringsAllOut()
    {
        var files = new MacFiles();
        var here = ScriptedJob.Here(files);
        HouseOnDisk.Create(here, "/stick/other.trimout").Dispose();
        HouseOnDisk.Create(here, Composed).Dispose();
        var house = HouseOnDisk.Open(here, Composed);
        var saved = Note(here, 1, house.Device, 1);
        house.Append(saved);
        files.CopyAsTheFinderDoes("/stick/other.trimout", Composed);
        house.Dispose();
        Assert.Contains($"{Composed} is not the file any more that was opened. All that was saved lies in {Composed}.journal.", house.NotKeptBecause);
        Assert.Throws<HouseStoreException>(() => HouseOnDisk.Open(here, Composed).Dispose());
        Assert.Equal([saved.Id], Rescue.Read(here, Composed, [], house.House).Changes.Select(c => c.Id));
    }

    /// <summary>Source: Apple, manual page of getattrlist(2): the length of the answer, then the attributes in the order of their bits.</summary>
    [Fact]
    public void ADayAndANumberAreReadFromTheAnswerOfTheSystem()
    {
        var answer = new byte[28];
        BinaryPrimitives.WriteUInt32LittleEndian(answer, 28);
        BinaryPrimitives.WriteInt64LittleEndian(answer.AsSpan(4), 1_772_438_400);
        BinaryPrimitives.WriteInt64LittleEndian(answer.AsSpan(12), 42);
        BinaryPrimitives.WriteUInt64LittleEndian(answer.AsSpan(20), 8_589_934_592);
        Assert.Equal("1772438400.000000042-8589934592", FileBirth.OfMac(answer));
        BinaryPrimitives.WriteUInt32LittleEndian(answer, 20);
        Assert.Null(FileBirth.OfMac(answer));
    }

    /// <summary>Sources: errno.h of macOS (EDQUOT is 69) and of Linux (122).</summary>
    [Theory]
    [InlineData(28, true, true)]
    [InlineData(69, true, true)]
    [InlineData(122, true, false)]
    [InlineData(122, false, true)]
    [InlineData(69, false, false)]
    public void AFullShareOfTheDiskIsAFullDisk(int error, bool isMac, bool isFull) => Assert.Equal(isFull, HouseFile.Faults.IsFullOnUnix(error, isMac));

    /// <summary>Source: Apple, manual page of fsync(2); errno.h of macOS (EINTR is 4, ENOTSUP 45, EIO 5).</summary>
    [Theory]
    [InlineData(new[] { 0 }, 0, "full")]
    [InlineData(new[] { 4, 0 }, 0, "full full")]
    [InlineData(new[] { 45, 0 }, 0, "full plain")]
    [InlineData(new[] { 45, 4, 5 }, 5, "full plain plain")]
    public void AFolderIsFlushedToTheDriveAndElseAsFarAsItsDiskCan(int[] answers, int error, string asked)
    {
        var (at, now, ways) = (0, 0, new List<string>());
        int Way(string way)
        {
            ways.Add(way);
            now = answers[at++];
            return now == 0 ? 0 : -1;
        }
        Assert.Equal(error, FolderFlush.Ask([() => Way("full"), () => Way("plain")], () => now));
        Assert.Equal(asked, string.Join(' ', ways));
    }

    private static Change Note(Surroundings here, int stamp, string device, int number) =>
        new(new ChangeId(device, number), stamp, here.Clock.GetUtcNow(), "Ash", "A note", [new Edit.Put("house", "name", new string('n', stamp * 90), [])]);
}
