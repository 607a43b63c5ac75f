using System.Buffers.Binary;
using System.Runtime.InteropServices;

namespace TrimOut.HouseFile.Files;

/// <summary>Opens files to be read, and only files: a pipe or a device that has the name of one would never end, or never begin.</summary>
public static class PlainFile
{
    /// <summary>The most bytes of a file that is read whole.</summary>
    public const long LargestToRead = 1 << 30;

    private const int FromHere = -100;
    private const uint SortAndSize = 0x1 | 0x200;
    private const int SortAt = 28;

    /// <summary>Opens a file.</summary>
    /// <param name="path">The file, or a link to one.</param>
    /// <param name="most">The most bytes that it may have.</param>
    /// <exception cref="IOException">It is something else, too large, or can't be opened; the message says which.</exception>
    /// <exception cref="UnauthorizedAccessException">There is no right to read it.</exception>
    public static FileStream OpenRead(string path, long most = long.MaxValue)
    {
        Check(path);
        var file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        if (file.Length <= most)
            return file;
        file.Dispose();
        throw new IOException($"{path} is too large: more than {most >> 20} MiB.");
    }

    /// <summary>All bytes of a file.</summary>
    /// <param name="path">The file, or a link to one.</param>
    /// <param name="most">The most bytes that it may have.</param>
    /// <exception cref="IOException">It is something else, too large, or can't be read.</exception>
    /// <exception cref="UnauthorizedAccessException">There is no right to read it.</exception>
    public static byte[] ReadAll(string path, long most = LargestToRead)
    {
        using var file = OpenRead(path, most);
        // No more than the file was long when it was opened: some that the system makes up as they are read never end.
        var bytes = new byte[file.Length];
        var read = file.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false);
        return read == bytes.Length ? bytes : bytes[..read];
    }

    /// <summary>That a file can't be read, and why; its name stands there once, also where the reason has it already.</summary>
    public static string WhyNotRead(string path, Exception failed) =>
        failed is FileNotFoundException or DirectoryNotFoundException ? $"{path} can't be read: there is no such file."
        : failed.Message.Contains(path, StringComparison.Ordinal) ? failed.Message : $"{path} can't be read: {failed.Message}";

    /// <summary>Throws where there is no plain file of that name.</summary>
    /// <exception cref="IOException">It is something else, or not there.</exception>
    public static void Check(string path)
    {
        if (NameOf(path) is { } other)
            throw new NotAFileException($"{path} is {other}, not a file.");
    }

    /// <summary>That a file can't be written, and why, in the user's words.</summary>
    public static string WhyNotWritten(string path, Exception failed) => failed switch
    {
        UnauthorizedAccessException => $"There is no right to write {path}.",
        IOException io when Faults.IsFull(io) => $"{path} can't be written: the disk that it is on is full.",
        IOException io when Faults.IsReadOnly(io) => $"{path} can't be written: the disk that it is on is read-only.",
        _ => failed.Message.Contains(path, StringComparison.Ordinal) ? failed.Message : $"{path} can't be written: {failed.Message}",
    };

    /// <summary>What has that name when it is no plain file, such as "a folder"; null for a plain file, and where nothing is there.</summary>
    public static string? NameOf(string path)
    {
        if (Directory.Exists(path))
            return "a folder";
        if (!OperatingSystem.IsLinux())
            return null;
        var answer = new byte[256];
        try
        {
            if (Ask(FromHere, path, 0, SortAndSize, answer) != 0)
                return null;
        }
        catch (EntryPointNotFoundException)
        {
            return null;
        }
        return (BinaryPrimitives.ReadUInt16LittleEndian(answer.AsSpan(SortAt)) & 0xf000) switch
        {
            0x1000 => "a pipe",
            0x2000 or 0x6000 => "a device",
            0xc000 => "a socket",
            0x4000 => "a folder",
            _ => null,
        };
    }

    [DllImport("libc", EntryPoint = "statx", BestFitMapping = false, ThrowOnUnmappableChar = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int Ask(int folder, [MarshalAs(UnmanagedType.LPUTF8Str)] string path, int flags, uint mask, [Out] byte[] answer);
}

/// <summary>A folder, a pipe, a device or a socket has the name of what should be a file.</summary>
public sealed class NotAFileException(string message) : IOException(message);
