using TrimOut.Core.History;
using TrimOut.HouseFile.Texts;
using TrimOut.Testing;

namespace TrimOut.HouseFile.Tests;

/// <summary>A file of every form that was ever written is kept in old-files, never made anew, and opens to the history that lies beside it.</summary>
public sealed class OldFilesTests : IDisposable
{
    private static readonly string Kept = Path.Combine(Repository.Root, "tests", "TrimOut.HouseFile.Tests", "old-files");

    private readonly TryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    public static TheoryData<string> Files => [.. Directory.GetFiles(Kept, "*.trimout").Select(f => Path.GetFileNameWithoutExtension(f))];

    [Theory]
    [MemberData(nameof(Files))]
    public void AnOldFileOpensToItsHistoryAndCanBeWorkedOn(string name)
    {
        foreach (var file in Directory.GetFiles(Kept, name + ".trimout*"))
            File.Copy(file, _folder.In(Path.GetFileName(file)));
        var expected = File.ReadAllText(Path.Combine(Kept, name + ".jsonl"));
        var path = _folder.In(name + ".trimout");
        using (var looked = HouseOnDisk.OpenToRead(path, TimeProvider.System))
            Assert.Equal(expected, HistoryText.Write(HouseLog.Of(looked.Opened).Value));
        _folder.Work(TryFolder.AddWindow, path);
        using var again = HouseOnDisk.OpenToRead(path, TimeProvider.System);
        Assert.StartsWith(expected, HistoryText.Write(HouseLog.Of(again.Opened).Value));
        Assert.Equal("W01 W02 W03", _folder.Tags(path));
    }

    [Fact]
    public void TheFirstFormIsKept() => Assert.Contains("form-1", Files);
}
