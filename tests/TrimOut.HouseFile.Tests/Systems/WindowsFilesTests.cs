using TrimOut.Core.History;
using TrimOut.HouseFile.Tests.Crashes;

namespace TrimOut.HouseFile.Tests.Systems;

/// <summary>A house on a disk with the manners of Windows, which ran nowhere else here.</summary>
public class WindowsFilesTests
{
    [Fact]
    public void NoSaveNoOpeningAndNoClosingRenamesOverAnOpenFile()
    {
        var files = new WindowsFiles();
        var here = ScriptedJob.Here(files);
        HouseOnDisk.Create(here, ScriptedJob.Path).Dispose();
        List<Change> saved = [];
        for (var day = 0; day < 4; day++)
        {
            var house = HouseOnDisk.Open(here, ScriptedJob.Path);
            for (var save = 0; save < 12; save++)
            {
                saved.Add(Note(here, saved.Count + 1, house.Device));
                house.Append(saved[^1]);
            }
            if (day == 2)
            {
                // The battery is empty: the system lets go of everything.
                files = new WindowsFiles(files.Now);
                here = ScriptedJob.Here(files, firstName: 100);
                continue;
            }
            house.Dispose();
            Assert.Empty(files.OpenNames);
        }
        using var again = HouseOnDisk.OpenToRead(here, ScriptedJob.Path);
        Assert.Equal(saved.Select(c => c.Id), again.Opened.Select(c => c.Id));
    }

    [Fact]
    public void AJournalThatSomethingElseCutIsWrittenFromMemory()
    {
        var files = new WindowsFiles();
        var here = ScriptedJob.Here(files);
        HouseOnDisk.Create(here, ScriptedJob.Path).Dispose();
        var house = HouseOnDisk.Open(here, ScriptedJob.Path);
        var saved = Note(here, 1, house.Device);
        house.Append(saved);
        using (var other = files.Open(ScriptedJob.Path + ".journal"))
            other.Cut(10);
        Assert.Throws<HouseStoreException>(() => house.Append(Note(here, 2, house.Device)));
        house.Dispose();
        using var again = HouseOnDisk.OpenToRead(here, ScriptedJob.Path);
        Assert.Equal([saved.Id], again.Opened.Select(c => c.Id));
    }

    [Fact]
    public void TheDiskHasTheMannersThatItIsSaidToHave()
    {
        var files = new WindowsFiles();
        files.Create("/stick/a.trimout").Dispose();
        Assert.True(files.Exists("/STICK/A.trimout"));
        using (files.Create("/stick/b.trimout"))
        {
            Assert.Throws<UnauthorizedAccessException>(() => files.Rename("/stick/a.trimout", "/stick/B.trimout"));
            files.Delete("/stick/b.trimout");
            Assert.True(files.Exists("/stick/b.trimout"));
            Assert.Throws<UnauthorizedAccessException>(() => files.Create("/stick/b.trimout"));
        }
        Assert.False(files.Exists("/stick/b.trimout"));
        Assert.Throws<UnauthorizedAccessException>(() => files.Create("/stick/con.trimout"));
    }

    private static Change Note(Surroundings here, int number, string device) =>
        new(new ChangeId(device, number), number, here.Clock.GetUtcNow(), "Ash", "A note", [new Edit.Put("house", "name", new string('n', number * 90), [])]);
}
