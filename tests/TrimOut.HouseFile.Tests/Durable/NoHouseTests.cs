using TrimOut.Core.History;
using TrimOut.HouseFile.Backups;

namespace TrimOut.HouseFile.Tests.Durable;

/// <summary>What is no house file is refused by its first and last page, however long it is.</summary>
public sealed class NoHouseTests : IDisposable
{
    private const long Length = 900L << 20;
    private const long Little = 1 << 20;

    private readonly TryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData("", StoreFault.Foreign, "is no house file")]
    [InlineData("a letter, and no house", StoreFault.Foreign, "is no house file")]
    [InlineData("\0** This is a LiteDB file **", StoreFault.Damaged, "its last page is missing")]
    public void AHugeFileThatIsNoHouseIsRefusedWithoutBeingRead(string start, StoreFault fault, string said)
    {
        var path = _folder.In("huge.trimout");
        using (var file = File.Create(path))
        {
            file.Write(System.Text.Encoding.ASCII.GetBytes(start));
            file.SetLength(Length);
        }
        foreach (var way in new Action[]
        {
            () => HouseOnDisk.Open(path, TimeProvider.System).Dispose(),
            () => HouseOnDisk.OpenToRead(path, TimeProvider.System).Dispose(),
            () => HouseOnDisk.OpenToRead(path, TimeProvider.System, goOn: true).Dispose(),
            () => BackupFolder.Copy(path, _folder.In("copy.trimout"), TimeProvider.System),
        })
        {
            var before = GC.GetAllocatedBytesForCurrentThread();
            var refused = Assert.Throws<HouseStoreException>(way);
            Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, Little);
            Assert.Equal(fault, refused.Fault);
            Assert.Contains(said, refused.Message, StringComparison.Ordinal);
        }
    }
}
