using TrimOut.HouseFile.Files;
using TrimOut.HouseFile.Tests.Crashes;

namespace TrimOut.HouseFile.Tests.Systems;

/// <summary>A disk in memory with the manners of Windows on a stick (FAT), which are the strictest.</summary>
/// <remarks>
/// By the documentation of the Windows API, from memory: MoveFileEx refuses to replace a file that is open, whatever it is shared for (ERROR_ACCESS_DENIED);
/// a file that is deleted while it is open keeps its name until it is closed, and nothing can be made under that name before; names differ by more than
/// their case; CON, PRN, AUX, NUL, COM1 to COM9 and LPT1 to LPT9 are devices, whatever their ending (Naming Files, Paths, and Namespaces).
/// </remarks>
internal sealed class WindowsFiles(DiskState? state = null) : RecordingFiles(state, StringComparer.OrdinalIgnoreCase)
{
    private static readonly HashSet<string> Devices = new(["CON", "PRN", "AUX", "NUL", .. Enumerable.Range(1, 9).SelectMany(n =>
        new[] { $"COM{n}", $"LPT{n}" })], StringComparer.OrdinalIgnoreCase);

    private readonly List<Handle> _open = [];
    private readonly HashSet<string> _leaving = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>The names of the files that are open.</summary>
    public IEnumerable<string> OpenNames => _open.Select(h => h.Path);

    public override IOpenFile Create(string path, string? like = null)
    {
        if (Devices.Contains(Path.GetFileName(path).Split('.')[0]) || _leaving.Contains(path))
            throw new UnauthorizedAccessException($"Access to the path '{path}' is denied.");
        if (IsOpen(path))
            throw new IOException($"The process cannot access the file '{path}' because it is being used by another process.", unchecked((int)0x80070020));
        return new Handle(this, base.Create(path, like), path);
    }

    public override IOpenFile Open(string path) => new Handle(this, base.Open(path), path);

    public override void Rename(string from, string to)
    {
        if (IsOpen(to))
            throw new UnauthorizedAccessException($"Access to the path '{to}' is denied.");
        base.Rename(from, to);
        foreach (var handle in _open.Where(h => Same(h.Path, from)))
            handle.Path = to;
    }

    public override void Delete(string path)
    {
        if (IsOpen(path))
            _leaving.Add(path);
        else
            base.Delete(path);
    }

    private bool IsOpen(string path) => _open.Any(h => Same(h.Path, path));

    private static bool Same(string one, string other) => string.Equals(one, other, StringComparison.OrdinalIgnoreCase);

    private void Close(Handle handle)
    {
        if (_open.Remove(handle) && !IsOpen(handle.Path) && _leaving.Remove(handle.Path))
            base.Delete(handle.Path);
    }

    private sealed class Handle : IOpenFile
    {
        private readonly WindowsFiles _disk;
        private readonly IOpenFile _file;

        public Handle(WindowsFiles disk, IOpenFile file, string path)
        {
            (_disk, _file, Path) = (disk, file, path);
            disk._open.Add(this);
        }

        public string Path { get; set; }

        public long Length => _file.Length;

        public byte[] Read(long at, int count) => _file.Read(at, count);

        public void Write(long at, ReadOnlySpan<byte> bytes) => _file.Write(at, bytes);

        public void Cut(long length) => _file.Cut(length);

        public void FlushToDisk() => _file.FlushToDisk();

        public void Dispose()
        {
            _file.Dispose();
            _disk.Close(this);
        }
    }
}
