using System.Security.Cryptography;
using Microsoft.Win32.SafeHandles;

namespace TrimOut.HouseFile.Files;

/// <summary>The real disk.</summary>
internal sealed class DiskFiles : IFileLayer
{
    private const int Piece = 1 << 20;
    private const UnixFileMode OwnerOnly = UnixFileMode.UserRead | UnixFileMode.UserWrite;

    public static DiskFiles Instance { get; } = new();

    public bool Exists(string path) => Path.Exists(path);

    public byte[] Read(string path) => PlainFile.ReadAll(path);

    public IReadFile OpenToRead(string path) => new LongFile(PlainFile.OpenRead(path, PlainFile.LargestToRead));

    public byte[] ReadStart(string path, int count) => ReadPart(path, count, _ => 0);

    public byte[] ReadEnd(string path, int count) => ReadPart(path, count, length => Math.Max(0, length - count));

    private static byte[] ReadPart(string path, int count, Func<long, long> from)
    {
        PlainFile.Check(path);
        // Windows opens no file for somebody who would not let others write it while somebody else does: then nobody would come to see who has it.
        using var file = File.OpenHandle(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        var length = RandomAccess.GetLength(file);
        var part = new byte[Math.Min(count, length)];
        var read = 0;
        for (var got = -1; read < part.Length && got != 0; read += got)
            got = RandomAccess.Read(file, part.AsSpan(read), from(length) + read);
        return part[..read];
    }

    public long LengthOf(string path) => new FileInfo(path).Length;

    public string HashWithout(string path, int last)
    {
        using var file = PlainFile.OpenRead(path);
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        var left = file.Length - last;
        var piece = new byte[Piece];
        for (var got = -1; left > 0 && got != 0; left -= got)
            hash.AppendData(piece, 0, got = file.Read(piece, 0, (int)Math.Min(left, piece.Length)));
        return Convert.ToHexStringLower(hash.GetHashAndReset());
    }

    public IOpenFile Create(string path, string? like = null)
    {
        File.Delete(path);
        var options = new FileStreamOptions
        {
            Mode = FileMode.CreateNew,
            Access = FileAccess.ReadWrite,
            Share = FileShare.Read | FileShare.Delete,
            BufferSize = 0
        };
        if (!OperatingSystem.IsWindows())
            options.UnixCreateMode = like is not null && File.Exists(like) ? File.GetUnixFileMode(like) & (UnixFileMode)0b110_110_110 : OwnerOnly;
        return new DiskFile(new FileStream(path, options));
    }

    public IOpenFile Open(string path) =>
        new DiskFile(new FileStream(path, FileMode.Open, FileAccess.ReadWrite, FileShare.ReadWrite | FileShare.Delete, bufferSize: 0));

    public void Rename(string from, string to) => File.Move(from, to, overwrite: true);

    public void Delete(string path) => File.Delete(path);

    public void FlushFolderOf(string path) => FolderFlush.Of(Path.GetDirectoryName(Path.GetFullPath(path))!);

    public string? BirthOf(string path) => FileBirth.Of(path);

    public IHeldName Hold(string path, bool isOpen) => new HeldName(path, isOpen);

    public int? NamesOf(string path) => HeldName.NamesOf(path);

    public string? ReadOnlyBecause(string path)
    {
        if (File.Exists(path) && File.GetAttributes(path).HasFlag(FileAttributes.ReadOnly))
            return $"{path} is marked read-only.";
        var folder = Path.GetDirectoryName(Path.GetFullPath(path))!;
        return !OperatingSystem.IsWindows() && Directory.Exists(folder) && File.GetAttributes(folder).HasFlag(FileAttributes.ReadOnly)
            ? $"the folder {folder} is read-only."
            : null;
    }

    public IDisposable? TryHold(string path)
    {
        for (var attempt = 0; attempt < 10; attempt++)
        {
            try
            {
                var options = new FileStreamOptions
                {
                    Mode = FileMode.OpenOrCreate,
                    Access = FileAccess.ReadWrite,
                    Share = FileShare.None,
                    Options = FileOptions.DeleteOnClose
                };
                if (!OperatingSystem.IsWindows())
                    options.UnixCreateMode = OwnerOnly;
                var held = new FileStream(path, options);
                OpenTo(path);
                if (StillNamed(held.SafeFileHandle, path))
                    return held;
                held.Dispose();
            }
            catch (IOException shared) when (IsSharing(shared))
            {
                return null;
            }
        }
        return null;
    }

    /// <summary>Lets whoever may write the house hold its name too, whatever this user's mask leaves of a new file's mode.</summary>
    private static void OpenTo(string path)
    {
        if (OperatingSystem.IsWindows() || Path.ChangeExtension(path, null) is not { } house || !File.Exists(house))
            return;
        var mode = OwnerOnly | (File.GetUnixFileMode(house) & (UnixFileMode)0b110_110_110);
        try
        {
            if (File.GetUnixFileMode(path) != mode)
                File.SetUnixFileMode(path, mode);
        }
        catch (UnauthorizedAccessException)
        {
            // It is another user's, who left it open to this one.
        }
    }

    /// <summary>Whether the held file is the one of that name: its last holder may have taken the name away between our opening and our holding it.</summary>
    private static bool StillNamed(SafeFileHandle held, string path) =>
        OperatingSystem.IsWindows() || (File.Exists(path) && File.GetCreationTimeUtc(held) == File.GetCreationTimeUtc(path));

    private static bool IsSharing(IOException failed) =>
        OperatingSystem.IsWindows() ? (failed.HResult & 0xffff) is 32 or 33 : failed.HResult is 11 or 35;

    private sealed class LongFile(FileStream stream) : IReadFile
    {
        public long Length { get; } = stream.Length;

        public int Read(long at, Span<byte> into)
        {
            into = into[..(int)Math.Max(0, Math.Min(into.Length, Length - at))];
            var read = 0;
            for (var got = -1; read < into.Length && got != 0; read += got)
                got = RandomAccess.Read(stream.SafeFileHandle, into[read..], at + read);
            return read;
        }

        public void Dispose() => stream.Dispose();
    }

    private sealed class DiskFile(FileStream stream) : IOpenFile
    {
        public long Length => RandomAccess.GetLength(stream.SafeFileHandle);

        public byte[] Read(long at, int count)
        {
            var bytes = new byte[count];
            return bytes[..RandomAccess.Read(stream.SafeFileHandle, bytes, at)];
        }

        public void Write(long at, ReadOnlySpan<byte> bytes) => RandomAccess.Write(stream.SafeFileHandle, bytes, at);

        public void Cut(long length) => RandomAccess.SetLength(stream.SafeFileHandle, length);

        public void FlushToDisk() => RandomAccess.FlushToDisk(stream.SafeFileHandle);

        public void Dispose() => stream.Dispose();
    }
}
