using TrimOut.HouseFile.Files;

namespace TrimOut.HouseFile.Tests.Files;

/// <summary>What is read of a house that another program has open.</summary>
public sealed class DiskFilesTests : IDisposable
{
    private readonly TryFolder _try = new();

    public void Dispose() => _try.Dispose();

    /// <summary>A lock of the whole file refuses whoever does not share writing, here as on Windows an open file does.</summary>
    [Fact]
    public void TheStartAndTheEndOfAFileAreReadBesideWhoeverWritesIt()
    {
        var path = _try.In("held");
        File.WriteAllBytes(path, [1, 2, 3]);
        using var held = new FileStream(path, FileMode.Open, FileAccess.ReadWrite, OperatingSystem.IsWindows() ? FileShare.ReadWrite : FileShare.None);
        Assert.Equal([1, 2], DiskFiles.Instance.ReadStart(path, 2));
        Assert.Equal([2, 3], DiskFiles.Instance.ReadEnd(path, 2));
    }
}
