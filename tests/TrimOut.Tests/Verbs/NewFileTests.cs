namespace TrimOut.Tests.Verbs;

/// <summary>Where a new house file goes: what was typed is a file, a folder, or nothing at all.</summary>
public sealed class NewFileTests : IDisposable
{
    private readonly RunTrimOut _run = new();

    public NewFileTests() => Assert.Equal(0, _run.Run("new", "elm").Code);

    public void Dispose() => _run.Dispose();

    [Theory]
    [InlineData("tray")]
    [InlineData("tray/")]
    public void ACopyForAFolderGoesIntoItUnderTheHousesName(string folder)
    {
        Directory.CreateDirectory(_run.In("tray"));
        var copied = _run.Run("backup", "elm.trimout", "--to", folder);
        Assert.Equal(0, copied.Code);
        Assert.Equal([_run.In("tray/elm.trimout")], Directory.GetFiles(_run.In("tray")));
        Assert.EndsWith("elm.trimout\n", copied.Output);
        Assert.Equal(73, _run.Run("backup", "elm.trimout", "--to", folder).Code);
    }

    [Theory]
    [InlineData("backup elm.trimout --to -", "standard output")]
    [InlineData("backup elm.trimout --to gone/", "There is no folder gone/.")]
    [InlineData("backup elm.trimout --to gone/.trimout", "only the ending")]
    [InlineData("new .trimout", "only the ending")]
    [InlineData("new tray/", "tray/ is a folder. Say which file in it")]
    [InlineData("restore tray/ elm.trimout", "tray/ is a folder. Say which file in it")]
    [InlineData("rescue elm.trimout -", "standard output")]
    public void WhatIsNoFilesNameIsRefusedWithTheReasonAndNothingHiddenIsMade(string command, string reason)
    {
        Directory.CreateDirectory(_run.In("tray"));
        var there = Directory.GetFileSystemEntries(_run.Folder).Length;
        var refused = _run.Run(command.Split(' '));
        Assert.Equal(64, refused.Code);
        Assert.Contains(reason, refused.Error);
        Assert.Equal(there, Directory.GetFileSystemEntries(_run.Folder).Length);
        Assert.Empty(Directory.GetFileSystemEntries(_run.In("tray")));
    }

    /// <summary>Source: Microsoft Learn, "Naming Files, Paths, and Namespaces".</summary>
    [Theory]
    [InlineData("Windows keeps CON for a device", "house-con.trimout", "new", "con")]
    [InlineData("Windows keeps AUX for a device", "house-aux.old.trimout", "restore", "aux.old", "elm.trimout")]
    [InlineData("Windows keeps COM1 for a device", "house-Com1 .trimout", "rescue", "elm.trimout", "Com1 .trimout")]
    [InlineData("Windows takes no : in a file's name", "elm-2.trimout", "backup", "elm.trimout", "--to", "elm:2")]
    public void ANameThatWindowsKeepsIsRefusedOnEverySystem(string why, string instead, params string[] words)
    {
        var there = Directory.GetFileSystemEntries(_run.Folder).Length;
        var refused = _run.Run(words);
        Assert.Equal(64, refused.Code);
        Assert.Contains($"can't be a house file's name: {why}, and a house file may go to a laptop with Windows.", refused.Error);
        Assert.Contains($"such as {instead}.", refused.Error);
        Assert.Equal(there, Directory.GetFileSystemEntries(_run.Folder).Length);
    }

    [Fact]
    public void AHouseThatHasSuchANameAlreadyIsWorkedOnAsEver()
    {
        if (OperatingSystem.IsWindows())
            return;
        File.Move(_run.In("elm.trimout"), _run.In("con.trimout"));
        Assert.Equal(0, _run.RunWith("house\tcrew\tAsh\n", "set", "con.trimout").Code);
        Assert.Equal(0, _run.Run("backup", "con.trimout", "--to", "copy").Code);
        Assert.Equal(0, _run.Run("restore", "con.trimout", "copy.trimout", "--replace").Code);
        Assert.Contains("con.trimout is there already", _run.Run("new", "con").Error);
    }

    [Theory]
    [InlineData("HOUSE", "check", "")]
    [InlineData("PATH", "new", " ")]
    [InlineData("--to", "backup", "elm.trimout", "--to", "")]
    [InlineData("--keep-in", "backup", "--keep-in", "")]
    [InlineData("--by", "set", "elm.trimout", "--by", "")]
    [InlineData("PAPER", "paper", "elm.trimout", "")]
    [InlineData("SCHEDULE", "import", "elm.trimout", "")]
    [InlineData("CONDUCTOR", "what-if", "62 ft", "", "1")]
    [InlineData("COMMAND", "help", "")]
    public void WhatIsEmptyIsNamedByEveryVerb(string which, params string[] words)
    {
        var refused = _run.Run(words);
        Assert.Equal(64, refused.Code);
        Assert.Contains($"{which} is empty", refused.Error);
    }

    [Fact]
    public void HelpThatNobodyCanTakeEndsAsAFullDiskDoes()
    {
        if (!OperatingSystem.IsLinux())
            return;
        foreach (var words in new[] { "help", "help check", "check --help", "--version" })
        {
            var start = new System.Diagnostics.ProcessStartInfo("/bin/sh", ["-c", $"{RunTrimOut.Program} {words} >/dev/full"]) { RedirectStandardError = true };
            using var shell = System.Diagnostics.Process.Start(start)!;
            var error = shell.StandardError.ReadToEnd();
            shell.WaitForExit();
            Assert.Equal((words, 74), (words, shell.ExitCode));
            Assert.DoesNotContain("   at ", error);
        }
    }
}
