namespace TrimOut.Tests.Verbs;

/// <summary>A house file that is gone, empty or damaged: what every verb says of what is left, and the way back.</summary>
public sealed class LostHouseTests : IDisposable
{
    private readonly RunTrimOut _run = new();

    public LostHouseTests()
    {
        Assert.Equal(0, _run.Run("new", "elm").Code);
        File.WriteAllText(_run.In("s.csv"), "tag,width,lead side,note\nW01,30,left,\"one, \"\"two\"\"\"\nW02,31,right,=x\n");
        Assert.Equal(0, _run.Run("import", "elm.trimout", "s.csv").Code);
        Assert.Equal(0, _run.RunWith("W01\tnote\tlater\n", "set", "elm.trimout").Code);
    }

    public void Dispose() => _run.Dispose();

    private string House => _run.In("elm.trimout");

    private string[] Backups() => _run.Run("backups", "elm.trimout").Output.Split('\n', StringSplitOptions.RemoveEmptyEntries);

    private void Lose(string how)
    {
        switch (how)
        {
            case "missing":
                File.Delete(House);
                break;
            case "empty":
                File.WriteAllBytes(House, []);
                break;
            case "damaged":
                var bytes = File.ReadAllBytes(House);
                bytes.AsSpan(bytes.AsSpan().IndexOf("Import s.csv"u8), 3).Fill((byte)'x');
                File.WriteAllBytes(House, bytes);
                break;
            case "without its last page":
                File.WriteAllBytes(House, File.ReadAllBytes(House)[..^8192]);
                break;
        }
    }

    [Theory]
    [InlineData("missing", 66)]
    [InlineData("empty", 65)]
    [InlineData("damaged", 65)]
    [InlineData("without its last page", 65)]
    public void TheBackupsAreNamedListedAndPutBackAndWhatWasThereIsKept(string how, int code)
    {
        var sound = Backups();
        Assert.Equal(2, sound.Length);
        var newest = sound[0].Split('\t')[0];
        Lose(how);
        var there = File.Exists(House) ? File.ReadAllBytes(House) : null;
        var looked = _run.Run("check", "elm.trimout");
        Assert.Equal(code, looked.Code);
        Assert.Contains("there are 2 backups, the newest of ", looked.Error);
        Assert.Contains("with 2 changes", looked.Error);
        Assert.Contains($"trimout restore {House} {newest}", looked.Error);
        var listed = _run.Run("backups", "elm.trimout");
        Assert.Equal((2, $"{newest}\t"), (listed.Code, listed.Output[..(newest.Length + 1)]));
        Assert.All(listed.Output.Split('\n', StringSplitOptions.RemoveEmptyEntries), l => Assert.EndsWith("\t-", l));
        var back = _run.Run("restore", "elm.trimout", newest, "--replace");
        Assert.Equal((how == "missing" ? 0 : 2, 2), (back.Code, _run.Run("history", "elm.trimout").Output.Split('\n').Length - 1));
        Assert.Equal(sound.Select(b => b.Split('\t')[0]), Backups().Select(b => b.Split('\t')[0]));
        if (there is not null)
            Assert.Equal(there, File.ReadAllBytes(Assert.Single(Directory.GetFiles(_run.Folder, "*.aside-*"))));
    }

    [Fact]
    public void ARescueThatLostSomethingNamesTheNewestBackup()
    {
        Lose("damaged");
        var rescue = _run.Run("rescue", "elm.trimout", "saved");
        Assert.Contains("is lost.", rescue.Error);
        Assert.Contains("To fill gaps from it: --also ", rescue.Error);
    }

    [Fact]
    public void NoVerbMakesAHouseOverAJournalWithoutItsFile()
    {
        using (var process = _run.Start("set", "elm.trimout"))
        {
            process.StandardInput.WriteLine("W01\tnote\tlast");
            process.StandardInput.Flush();
            Assert.Equal("1", process.StandardOutput.ReadLine());
            process.Kill();
            process.WaitForExit();
        }
        var (main, journal) = (File.ReadAllBytes(House), File.ReadAllBytes(House + ".journal"));
        File.Delete(House);
        var backup = Directory.GetFiles(_run.In("data/trimout/backups"), "*.trimout", SearchOption.AllDirectories)[0];
        foreach (var command in new[] { "new elm", $"restore elm {backup}", $"rescue {backup} elm", $"backup {backup} --to elm" })
        {
            var refused = _run.Run(command.Split(' '));
            Assert.Equal((command, 73), (command, refused.Code));
            Assert.Contains("a journal with 1 save that may be nowhere else", refused.Error);
            Assert.Equal(journal, File.ReadAllBytes(House + ".journal"));
            Assert.False(File.Exists(House));
        }
        Assert.Contains("a journal with 1 save", _run.Run("check", "elm.trimout").Error);
        File.WriteAllBytes(House, main);
        Assert.Contains("last", _run.Run("history", "elm.trimout").Output);
    }

    [Fact]
    public void AnotherHousesFileIsPutInPlaceOnlyWhenThatIsSaid()
    {
        Assert.Equal(0, _run.Run("new", "other").Code);
        var before = _run.Run("history", "elm.trimout").Output;
        foreach (var how in new[] { "", "damaged" })
        {
            Lose(how);
            var refused = _run.Run("restore", "elm.trimout", "other.trimout", "--replace");
            Assert.Equal(73, refused.Code);
            Assert.Contains("is of another house", refused.Error);
        }
        Assert.Equal(2, _run.Run("restore", "elm.trimout", "other.trimout", "--replace", "--other-house").Code);
        Assert.NotEqual(before, _run.Run("history", "elm.trimout").Output);
    }

    [Fact]
    public void AHistoryWithALineMissingIsNamedByTheNumbersThatAreMissing()
    {
        var lines = _run.Run("history", "elm.trimout").Output.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        File.WriteAllLines(_run.In("h.jsonl"), lines.Where((_, at) => at != 1));
        var id = System.Text.Json.JsonDocument.Parse(lines[1]).RootElement.GetProperty("id").GetString();
        foreach (var command in new[] { "restore made h.jsonl", "check h.jsonl" })
        {
            var ended = _run.Run(command.Split(' '));
            Assert.Equal(2, ended.Code);
            Assert.Contains($"change {id} is missing.", ended.Error);
        }
        File.WriteAllLines(_run.In("whole.jsonl"), lines);
        Assert.Equal(0, _run.Run("restore", "whole", "whole.jsonl").Code);
    }

    [Fact]
    public void TheWindowsGoThroughAFileIntoAnotherHouseWithoutLoss()
    {
        var table = _run.Run("windows", "elm.trimout");
        Assert.EndsWith("\r\n", table.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("U+", table.Output);
        File.WriteAllText(_run.In("windows.csv"), table.Output);
        Assert.Equal(0, _run.Run("new", "oak").Code);
        var import = _run.Run("import", "oak.trimout", "windows.csv");
        Assert.Equal(0, import.Code);
        Assert.DoesNotContain("Not used", import.Error);
        Assert.Equal(table.Output, _run.Run("windows", "oak.trimout").Output);
    }

    [Fact]
    public void BackupsOfBeforeAreFoundAfterARenameAndInTheFolderOfBefore()
    {
        var before = Backups().Select(b => b.Split('\t')[0]).ToList();
        File.Move(House, _run.In("oak.trimout"));
        Assert.Equal(0, _run.Run("backup", "--keep-in", "stick").Code);
        Assert.Equal(0, _run.RunWith("W01\tnote\tagain\n", "set", "oak.trimout").Code);
        var listed = _run.Run("backups", "oak.trimout");
        Assert.Contains("Earlier ones", listed.Error);
        Assert.StartsWith(_run.In("stick"), listed.Output, StringComparison.Ordinal);
        Assert.All(before, b => Assert.Contains(b, listed.Output));
        Directory.Delete(_run.In("stick"), recursive: true);
        Assert.Contains("No backup was made: the folder for backups", _run.RunWith("W01\tnote\tmore\n", "set", "oak.trimout").Error);
        Assert.Equal(73, _run.Run("backup", "oak.trimout").Code);
        Assert.False(Directory.Exists(_run.In("stick")));
    }

    [Fact]
    public void AStepThatIsNotThereIsAnsweredWithThoseThatAreAndWhatIsLeftOutOfATextIsSaid()
    {
        var set = _run.RunWith("W01\tstep:xyz\tdone\nW01\tnote\ta\u001b[31mb\n", "set", "elm.trimout");
        Assert.Equal((2, "2"), (set.Code, set.Output.Trim()));
        Assert.Matches("Line 1: W01 has no step xyz. It has: [a-z-]+, ", set.Error);
        Assert.Contains("Line 2: characters in it that can't be seen, or act on a screen, were left out.", set.Error);
    }

    [Theory]
    [InlineData("check folder.trimout")]
    [InlineData("history folder.trimout")]
    [InlineData("restore made folder.trimout/x.jsonl")]
    [InlineData("rescue folder.trimout made")]
    [InlineData("import elm.trimout folder.trimout")]
    [InlineData("binder elm.trimout --template folder.trimout")]
    public void AFolderWhereAFileShouldBeIsOneCodeEverywhere(string command)
    {
        Directory.CreateDirectory(_run.In("folder.trimout"));
        Assert.Equal(66, _run.Run(command.Split(' ')).Code);
    }

    [Fact]
    public void PapersGoBesideTheHouseFileUnlessAFolderIsSaid()
    {
        Directory.CreateDirectory(_run.In("job"));
        File.Move(House, _run.In("job/elm.trimout"));
        Assert.Equal(0, _run.Run("paper", "job/elm.trimout", "labels").Code);
        Assert.NotEmpty(Directory.GetFiles(_run.In("job"), "elm-labels*"));
        Assert.Empty(Directory.GetFiles(_run.Folder, "elm-labels*"));
    }
}
