using System.Runtime.InteropServices;

namespace TrimOut.HouseFile.Files;

/// <summary>Brings a folder's names to the disk. .NET opens no folders, so this asks the system itself.</summary>
/// <remarks>
/// Without it a renamed or new file may be gone after a power cut although its contents were flushed. Windows keeps names in its own journal and
/// needs no call. On macOS fsync(2) hands all to the drive, which may keep it for long and write it in another order: fcntl(2) with F_FULLFSYNC has the drive
/// write it (Apple, manual page of fsync(2)). A disk that knows no such call, such as a folder of another machine, is asked by fsync(2), as files are.
/// </remarks>
internal static class FolderFlush
{
    private const int ReadOnly = 0;
    private const int FullFlush = 51;
    private const int Interrupted = 4;
    private const int NotSupported = 22;
    private const int NotSupportedOnMac = 45;

    /// <summary>Returns when the folder's names are on the disk.</summary>
    /// <exception cref="IOException">The system refused.</exception>
    public static void Of(string folder)
    {
        if (OperatingSystem.IsWindows())
            return;
        var handle = Open(folder, ReadOnly);
        if (handle < 0)
            throw new IOException($"The folder {folder} can't be opened (system error {Marshal.GetLastPInvokeError()}).");
        try
        {
            Func<int> flush = () => Flush(handle);
            var error = Ask(OperatingSystem.IsMacOS() ? [() => Control(handle, FullFlush), flush] : [flush]);
            if (error is not (0 or NotSupported or NotSupportedOnMac))
                throw new IOException($"The folder {folder} can't be brought to the disk (system error {error}).");
        }
        finally
        {
            _ = Close(handle);
        }
    }

    /// <summary>Asks in the first way that works, each one again while it is interrupted.</summary>
    /// <param name="ways">The ways, the strongest first; each gives 0 where it worked and leaves the system's error otherwise.</param>
    /// <param name="errorNow">What the system's error is; that of this thread when left out.</param>
    /// <returns>0, or the error of the last way.</returns>
    internal static int Ask(IReadOnlyList<Func<int>> ways, Func<int>? errorNow = null)
    {
        var error = 0;
        foreach (var way in ways)
        {
            do
            {
                if (way() == 0)
                    return 0;
                error = (errorNow ?? Marshal.GetLastPInvokeError)();
            } while (error == Interrupted);
        }
        return error;
    }

    [DllImport("libc", EntryPoint = "open", SetLastError = true, BestFitMapping = false, ThrowOnUnmappableChar = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int Open([MarshalAs(UnmanagedType.LPUTF8Str)] string path, int flags);

    [DllImport("libc", EntryPoint = "fsync", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int Flush(int handle);

    // It takes more for other commands, and nothing behind this one: so it is called alike on all processors.
    [DllImport("libc", EntryPoint = "fcntl", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int Control(int handle, int command);

    [DllImport("libc", EntryPoint = "close", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int Close(int handle);
}
