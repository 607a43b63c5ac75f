using TrimOut.HouseFile;

namespace TrimOut.Tests.Verbs;

/// <summary>What is said of backups where a house is missing or damaged: of which house, which is the newest, and where others may be.</summary>
public sealed class WayBackTests : IDisposable
{
    private readonly RunTrimOut _run = new();

    public void Dispose() => _run.Dispose();

    /// <summary>A house in a folder of its own, with a backup of each of its two states.</summary>
    private string House(string folder, string name, int windows = 1)
    {
        Directory.CreateDirectory(_run.In(folder));
        var file = _run.In(Path.Combine(folder, "house.trimout"));
        Assert.Equal(0, _run.Run("new", file, "--name", name).Code);
        for (var window = 1; window <= windows; window++)
        {
            File.WriteAllText(_run.In("s.csv"), $"tag,width\nW0{window},30\n");
            Assert.Equal(0, _run.Run("import", file, "s.csv").Code);
        }
        Assert.Equal(0, _run.Run("backup", file).Code);
        return file;
    }

    private string[] Backups(string house) =>
        [.. _run.Run("backups", house).Output.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(l => l.Split('\t')[0])];

    [Fact]
    public void TheNewestIsWhatWasSavedLastWhateverTheClockSaid()
    {
        var house = House("j", "One");
        var (last, before) = (Backups(house)[0], Backups(house)[1]);
        // The clock was a year ahead when the one before was made.
        var ahead = Path.Combine(Path.GetDirectoryName(before)!, "2099" + Path.GetFileName(before)[4..]);
        File.Move(before, ahead);
        File.Delete(house);
        var said = _run.Run("check", house).Error;
        Assert.Contains($"trimout restore {house} {last}", said);
        Assert.DoesNotContain(ahead, said);
    }

    [Fact]
    public void OfSeveralHousesOfOneFileNameEachIsNamedWithALineOfItsOwn()
    {
        var (one, two) = (House("j1", "Elm Street"), House("j2", "Oak Road"));
        var ids = new[] { HouseOnDisk.HouseOf(one), HouseOnDisk.HouseOf(two) };
        var newest = new[] { Backups(one)[0], Backups(two)[0] };
        File.Delete(one);
        var said = _run.Run("check", one).Error;
        Assert.Contains("2 houses of that name have backups", said);
        var lines = said.Split('\n');
        Assert.Contains(lines, l => l.Contains($"\"Elm Street\" ({ids[0]})", StringComparison.Ordinal) && l.Contains(newest[0], StringComparison.Ordinal));
        Assert.Contains(lines, l => l.Contains($"\"Oak Road\" ({ids[1]})", StringComparison.Ordinal) && l.Contains(newest[1], StringComparison.Ordinal));
        Assert.Equal(2, _run.Run("backups", one).Code);
        // The last page of the other still says whose it is.
        var bytes = File.ReadAllBytes(two);
        bytes.AsSpan(8192, 64).Fill((byte)'x');
        File.WriteAllBytes(two, bytes);
        var known = _run.Run("check", two).Error;
        Assert.Contains($"Of this house, \"Oak Road\" ({ids[1]}), there are 2 backups", known);
        Assert.DoesNotContain("Elm Street", known);
    }

    [Fact]
    public void ADamagedHouseThatSaysNothingIsReplacedByAnotherThanItsNamesakesOnlyWhenThatIsSaid()
    {
        var house = House("j", "Elm Street");
        Assert.Equal(0, _run.Run("new", "other").Code);
        var newest = Backups(house)[0];
        File.WriteAllBytes(house, []);
        var refused = _run.Run("restore", house, "other.trimout", "--replace");
        Assert.Equal(73, refused.Code);
        Assert.Contains("\"Elm Street\"", refused.Error);
        Assert.Equal(0, new FileInfo(house).Length);
        Assert.Equal(2, _run.Run("restore", house, newest, "--replace").Code);
        File.WriteAllBytes(house, []);
        Assert.Equal(2, _run.Run("restore", house, "other.trimout", "--replace", "--other-house").Code);
    }

    [Fact]
    public void NoWayBackIsOfferedUnderASoundHouse()
    {
        var house = House("j", "Elm Street");
        foreach (var command in new[] { $"backup {house} --to {house}", $"rescue {house} {house}", $"new {house}" })
        {
            var refused = _run.Run(command.Split(' '));
            Assert.Equal(73, refused.Code);
            Assert.DoesNotContain("restore", refused.Error);
            Assert.DoesNotContain("backups", refused.Error);
        }
    }

    [Fact]
    public void AFolderForBackupsThatIsAwayIsSaidWhereBackupsAreLookedFor()
    {
        Assert.Equal(0, _run.Run("backup", "--keep-in", "stick").Code);
        var house = House("j", "Elm Street");
        Directory.Move(_run.In("stick"), _run.In("drawer"));
        var sentence = $"Backups may be in {_run.In("stick")}, which is not there.";
        Assert.Contains(sentence, _run.Run("backups", house).Error);
        File.WriteAllBytes(house, []);
        Assert.Contains(sentence, _run.Run("check", house).Error);
        Assert.Contains(sentence, _run.Run("backups", house).Error);
    }

    [Theory]
    [InlineData("")]
    [InlineData("{\"backups\": ")]
    public void SettingsThatCannotBeReadAreSaidKeptAndWrittenAnewOnlyWhenTheFolderIsSaidAgain(string damaged)
    {
        Assert.Equal(0, _run.Run("backup", "--keep-in", "stick").Code);
        var house = House("j", "Elm Street");
        var settings = _run.In("data/trimout/settings.json");
        File.WriteAllText(settings, damaged);
        Assert.Contains("settings.json can't be read", _run.RunWith("W01\tnote\ta\n", "set", house).Error);
        Assert.Equal(damaged, File.ReadAllText(settings));
        Assert.Equal(0, _run.Run("backup", "--keep-in", "stick").Code);
        Assert.DoesNotContain("can't be read", _run.RunWith("W01\tnote\tb\n", "set", house).Error);
        Assert.Equal(damaged, File.ReadAllText(Assert.Single(Directory.GetFiles(_run.In("data/trimout"), "settings.json.unread-*"))));
    }

    [Fact]
    public void AFolderThatCannotBeRememberedIsNotSaidToBeKept()
    {
        Directory.CreateDirectory(_run.In("data/trimout/settings.json"));
        var refused = _run.Run("backup", "--keep-in", "stick");
        Assert.InRange(refused.Code, 66, 77);
        Assert.DoesNotContain("from now on", refused.Error);
        Assert.Contains("Backups are kept where they were.", refused.Error);
    }

    [Fact]
    public void AUsersFolderThatTakesNothingCostsTheBackupAndNotTheWork()
    {
        Assert.Equal(0, _run.Run("new", "elm").Code);
        if (Directory.Exists(_run.In("data")))
            Directory.Delete(_run.In("data"), recursive: true);
        File.WriteAllText(_run.In("data"), "no folder");
        var set = _run.RunWith("house\tclient\tA family\n", "set", "elm.trimout");
        Assert.Contains("No backup was made: ", set.Error);
        Assert.Equal((0, "1\n"), (set.Code, set.Output));
    }

    [Fact]
    public void PathsInAHintAreOneWordForAShell()
    {
        var house = House("my job's", "Elm Street");
        File.Delete(house);
        var quoted = $"'{house.Replace("'", "'\\''", StringComparison.Ordinal)}'";
        Assert.Contains($"trimout restore {quoted} ", _run.Run("check", house).Error);
        File.WriteAllBytes(house, []);
        Assert.Contains($"trimout backups {quoted} lists them.", _run.Run("check", house).Error);
    }

    [Fact]
    public void HolesOfARescuedHouseAreSaidWheneverItIsOpened()
    {
        var house = House("j", "Elm Street", windows: 3);
        var lines = _run.Run("history", house).Output.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        var id = System.Text.Json.JsonDocument.Parse(lines[2]).RootElement.GetProperty("id").GetString();
        File.WriteAllLines(_run.In("h.jsonl"), lines.Where((_, at) => at != 2));
        Assert.Equal(2, _run.Run("restore", "holed", "h.jsonl").Code);
        foreach (var command in new[] { "check holed.trimout", "set holed.trimout", "windows holed.trimout" })
        {
            var said = _run.Run(command.Split(' '));
            Assert.Contains($"1 change is missing from the history of {_run.In("holed.trimout")}", said.Error);
            Assert.Contains(id!, said.Error);
        }
        Assert.Equal(0, _run.Run("windows", "holed.trimout").Code);
        Assert.DoesNotContain("missing", _run.Run("windows", house).Error);
    }

    [Fact]
    public void AJournalThatWasLeftUnderTheOldNameIsNamedAndTakenForARescue()
    {
        var house = House("j", "Elm Street");
        using (var process = _run.Start("set", house))
        {
            process.StandardInput.WriteLine("W01\tnote\tlast");
            process.StandardInput.Flush();
            Assert.Equal("1", process.StandardOutput.ReadLine());
            process.Kill();
            process.WaitForExit();
        }
        var renamed = _run.In("j/renamed.trimout");
        File.Move(house, renamed);
        var said = _run.Run("check", renamed);
        Assert.Equal(65, said.Code);
        Assert.Contains($"{house}.journal goes on from it", said.Error);
        Assert.Contains($"Rename it to {renamed}.journal", said.Error);
        Assert.Equal(2, _run.Run("rescue", renamed, "without").Code);
        Assert.DoesNotContain("last", _run.Run("history", "without.trimout").Output);
        var rescue = _run.Run("rescue", renamed, "whole", "--also", house + ".journal");
        Assert.Equal(0, rescue.Code);
        Assert.Contains("last", _run.Run("history", "whole.trimout").Output);
    }

    [Fact]
    public void ADamagedHouseOfALongNameIsKeptUnderAShorterOne()
    {
        var name = new string('ü', 115);
        Assert.Equal(0, _run.Run("new", name, "--name", "Long").Code);
        Assert.Equal(0, _run.Run("backup", name + ".trimout", "--to", "copy").Code);
        File.WriteAllBytes(_run.In(name + ".trimout"), [1, 2, 3]);
        Assert.Equal(2, _run.Run("restore", name, "copy.trimout", "--replace").Code);
        Assert.Equal([1, 2, 3], File.ReadAllBytes(Assert.Single(Directory.GetFiles(_run.Folder, "*.aside-*"))));
    }
}
