using System.Buffers.Binary;
using System.Runtime.InteropServices;
using Microsoft.Win32.SafeHandles;

namespace TrimOut.HouseFile.Files;

/// <summary>A name on the real disk and the file that it led to.</summary>
/// <remarks>
/// The file is held open, here or by whoever works with it, so that its number on the disk is not given to another one, and so that disks without numbers
/// of their own (FAT) keep the one that the system made up. Asking costs a few millionths of a second; .NET does not ask
/// for such numbers, so this does, by statx(2). Elsewhere than on Linux only the name itself is looked for, and nothing is held open for that: Windows lets
/// no file be renamed over one that is open (MoveFileEx refuses with ERROR_ACCESS_DENIED), and every save of ours is such a renaming.
/// </remarks>
internal sealed class HeldName : IHeldName
{
    private const int FromHere = -100;
    private const int NotThroughLinks = 0x100;
    private const uint SortAndNumber = 0x1 | 0x100;
    private const int NamesAt = 16;
    private const int SortAt = 28;
    private const int NumberAt = 32;
    private const int DiskAt = 136;

    private readonly string _path;
    private readonly SafeFileHandle? _held;
    private readonly (ulong Number, ulong Disk)? _file;
    private readonly byte[] _answer = new byte[256];

    public HeldName(string path, bool isOpen)
    {
        _path = path;
        PlainFile.Check(path);
        // The lock is held for this program alone, and could not be opened a second time.
        if (!OperatingSystem.IsLinux() && !File.Exists(path))
            throw new FileNotFoundException($"There is no file {path}.", path);
        _held = isOpen || !OperatingSystem.IsLinux() ? null : File.OpenHandle(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        _file = Look();
    }

    public bool StillLeadsThere => OperatingSystem.IsLinux() ? _file is { } file && Look() == file : File.Exists(_path);

    public void Dispose() => _held?.Dispose();

    /// <summary>How many names a file has; null where that can't be told.</summary>
    public static int? NamesOf(string path)
    {
        var answer = new byte[256];
        return OperatingSystem.IsLinux() && Ask(FromHere, path, 0, 0x4, answer) == 0 ? (int)BinaryPrimitives.ReadUInt32LittleEndian(answer.AsSpan(NamesAt))
            : null;
    }

    /// <summary>What the name leads to now; null for a link, and where there is nothing.</summary>
    private (ulong Number, ulong Disk)? Look() =>
        !OperatingSystem.IsLinux() || Ask(FromHere, _path, NotThroughLinks, SortAndNumber, _answer) != 0
            || (BinaryPrimitives.ReadUInt16LittleEndian(_answer.AsSpan(SortAt)) & 0xf000) != 0x8000
            ? null
            : (BinaryPrimitives.ReadUInt64LittleEndian(_answer.AsSpan(NumberAt)), BinaryPrimitives.ReadUInt64LittleEndian(_answer.AsSpan(DiskAt)));

    [DllImport("libc", EntryPoint = "statx", BestFitMapping = false, ThrowOnUnmappableChar = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int Ask(int folder, [MarshalAs(UnmanagedType.LPUTF8Str)] string path, int flags, uint mask, [Out] byte[] answer);
}
