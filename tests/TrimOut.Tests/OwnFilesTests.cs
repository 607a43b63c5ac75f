namespace TrimOut.Tests;

/// <summary>Nothing but the house file and its backups is written without being asked, and nothing new can be read by others.</summary>
public sealed class OwnFilesTests : IDisposable
{
    private readonly RunTrimOut _run = new();

    public void Dispose() => _run.Dispose();

    private string[] Files =>
        [.. Directory.GetFiles(_run.Folder, "*", SearchOption.AllDirectories).Select(f => Path.GetRelativePath(_run.Folder, f).Replace('\\', '/'))
            .Order(StringComparer.Ordinal)];

    private void Work()
    {
        File.WriteAllText(_run.In("s.csv"), "tag,width\nW01,30\n");
        Assert.Equal(0, _run.Run("new", "elm").Code);
        Assert.Equal(0, _run.Run("import", "elm.trimout", "s.csv").Code);
        Assert.Equal(0, _run.RunWith("W01\tnote\tx\n", "set", "elm.trimout").Code);
        foreach (var verb in new[] { "check", "history", "windows", "backups", "conflicts" })
            _run.Run(verb, "elm.trimout");
        File.Delete(_run.In("s.csv"));
    }

    [Fact]
    public void ADayOfWorkLeavesTheHouseAndItsBackups()
    {
        Work();
        Assert.Equal("elm.trimout", Files[^1]);
        Assert.InRange(Files.Length, 2, 4);
        Assert.All(Files[..^1], f => Assert.Matches("^data/trimout/backups/elm-[a-z0-9]+/[^/]+Z-[0-9]+-[^/]+[.]trimout$", f));
    }

    [Fact]
    public void NothingNewCanBeReadByOthers()
    {
        if (OperatingSystem.IsWindows())
            return;
        Work();
        const UnixFileMode others = UnixFileMode.GroupRead | UnixFileMode.GroupWrite | UnixFileMode.OtherRead | UnixFileMode.OtherWrite;
        foreach (var path in Directory.GetFileSystemEntries(_run.In("data/trimout"), "*", SearchOption.AllDirectories).Append(_run.In("data/trimout"))
            .Append(_run.In("elm.trimout")))
            Assert.True((File.GetUnixFileMode(path) & others) == UnixFileMode.None, $"{path} can be read or written by others.");
    }
}
