using System.Runtime.InteropServices;

namespace TrimOut.HouseFile.Files;

/// <summary>Brings a folder's names to the disk. .NET opens no folders, so this asks the system itself.</summary>
/// <remarks>
/// Without it a renamed or new file may be gone after a power cut although its contents were flushed. Windows keeps names in its own journal and
/// needs no call.
/// </remarks>
internal static class FolderFlush
{
    private const int ReadOnly = 0;
    private const int Interrupted = 4;
    private const int NotSupported = 22;

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
            while (Flush(handle) != 0)
            {
                var error = Marshal.GetLastPInvokeError();
                if (error == NotSupported)
                    return;
                if (error != Interrupted)
                    throw new IOException($"The folder {folder} can't be brought to the disk (system error {error}).");
            }
        }
        finally
        {
            _ = Close(handle);
        }
    }

    [DllImport("libc", EntryPoint = "open", SetLastError = true, BestFitMapping = false, ThrowOnUnmappableChar = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int Open([MarshalAs(UnmanagedType.LPUTF8Str)] string path, int flags);

    [DllImport("libc", EntryPoint = "fsync", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int Flush(int handle);

    [DllImport("libc", EntryPoint = "close", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int Close(int handle);
}
