using TrimOut.Core.History;

namespace TrimOut.HouseFile.Tests;

/// <summary>Who may hold an open house's name, and what is said of who has it.</summary>
public sealed class HouseLockTests : IDisposable
{
    private readonly TryFolder _folder = new TryFolder().Begin();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void WhoMayWriteTheHouseMayHoldItsNameToo()
    {
        if (OperatingSystem.IsWindows())
            return;
        File.SetUnixFileMode(_folder.House, (UnixFileMode)0b110_110_100);
        using var open = HouseOnDisk.Open(_folder.House, TimeProvider.System);
        Assert.Equal("rw-rw-r--", _folder.RightsOf("Elm Street.trimout.lock"));
    }

    [Fact]
    public void ANoteThatSaysNothingIsSaidToSayNothing()
    {
        using var open = HouseOnDisk.Open(_folder.House, TimeProvider.System);
        File.WriteAllText(_folder.House + ".in-use", "");
        var refused = Assert.Throws<HouseStoreException>(() => HouseOnDisk.Open(_folder.House, TimeProvider.System).Dispose());
        Assert.Contains("is open in another program: it does not say which.", refused.Message);
    }
}
