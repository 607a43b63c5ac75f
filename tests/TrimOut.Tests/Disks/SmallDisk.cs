using System.Diagnostics;

namespace TrimOut.Tests.Disks;

/// <summary>A real disk of its own in memory, mounted on a folder: it can be made read-only, filled up and pulled out.</summary>
internal sealed class SmallDisk : IDisposable
{
    private readonly string _folder;

    public SmallDisk(string folder, string size)
    {
        _folder = Directory.CreateDirectory(folder).FullName;
        Assert.True(Sh("mount", "-t", "tmpfs", "-o", $"size={size}", "none", _folder), "The disk could not be mounted.");
    }

    /// <summary>Whether this machine lets us mount: it must be Linux, and we its administrator.</summary>
    public static bool CanMount => Mountable.Value;

    private static readonly Lazy<bool> Mountable = new(() =>
    {
        if (!OperatingSystem.IsLinux() || Environment.UserName != "root")
            return false;
        var folder = Directory.CreateTempSubdirectory("trimout-mount-").FullName;
        var mounted = Sh("mount", "-t", "tmpfs", "none", folder) && Sh("umount", folder);
        Directory.Delete(folder);
        return mounted;
    });

    public void MakeReadOnly() => Assert.True(Sh("mount", "-o", "remount,ro", _folder));

    /// <summary>Uses up what room is left.</summary>
    public void FillUp()
    {
        using var filler = new FileStream(Path.Combine(_folder, "filler"), FileMode.Create, FileAccess.Write, FileShare.None, bufferSize: 0);
        var block = new byte[1024];
        try
        {
            while (true)
                filler.Write(block);
        }
        catch (IOException)
        {
            // It is full now.
        }
    }

    public void MakeRoom() => Assert.True(Sh("mount", "-o", "remount,size=4m", _folder));

    /// <summary>Takes the disk away under whoever uses it.</summary>
    public void PullOut() => Assert.True(Sh("umount", "-l", _folder));

    public void Dispose() => Sh("umount", "-l", _folder);

    private static bool Sh(string command, params string[] arguments)
    {
        try
        {
            using var process = Process.Start(new ProcessStartInfo(command, arguments) { RedirectStandardError = true })!;
            process.StandardError.ReadToEnd();
            process.WaitForExit();
            return process.ExitCode == 0;
        }
        catch (System.ComponentModel.Win32Exception)
        {
            return false;
        }
    }
}

/// <summary>A test that needs real disks to mount.</summary>
public sealed class MountFactAttribute : FactAttribute
{
    public MountFactAttribute() => Skip = SmallDisk.CanMount ? null! : "needs Linux and the right to mount";
}
