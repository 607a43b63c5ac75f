using System.Globalization;
using TrimOut.HouseFile.Durable;
using TrimOut.HouseFile.Files;

namespace TrimOut.HouseFile.Tests.Crashes;

/// <summary>A disk in memory that keeps a record of all that was asked of it.</summary>
internal class RecordingFiles : IFileLayer
{
    private readonly Dictionary<string, int> _names;
    private readonly Dictionary<int, byte[]> _contents = [];
    private byte[] _lastJournal = [];

    /// <summary>A disk.</summary>
    /// <param name="state">What is on it; nothing when left out.</param>
    /// <param name="names">Which names are one; to the letter when left out.</param>
    public RecordingFiles(DiskState? state = null, StringComparer? names = null)
    {
        _names = new(names ?? StringComparer.Ordinal);
        foreach (var (name, file) in (state ?? DiskState.Empty).Names)
            _names.Add(name, file);
        foreach (var (file, bytes) in (state ?? DiskState.Empty).Contents)
            _contents.Add(file, bytes);
        Record.Files = _contents.Keys.DefaultIfEmpty().Max();
    }

    public DiskRecord Record { get; } = new();

    /// <summary>Whether a flush does what it says.</summary>
    public bool Flushes { get; init; } = true;

    /// <summary>Whether flushing a folder does what it says.</summary>
    public bool FlushesFolders { get; init; } = true;

    /// <summary>What every write fails with; null when they work.</summary>
    public IOException? Failing { get; set; }

    /// <summary>How many bytes of a failing write are written all the same.</summary>
    public int FailsAfter { get; set; }

    /// <summary>The files as they are, all on the disk.</summary>
    public DiskState Now => new(new Dictionary<string, int>(_names), new Dictionary<int, byte[]>(_contents));

    public bool Exists(string path) => _names.ContainsKey(path);

    public byte[] Read(string path) => _names.TryGetValue(path, out var file) ? [.. _contents[file]] : throw new FileNotFoundException(path);

    public virtual IReadFile OpenToRead(string path) => new BytesAsFile(Read(path));

    public byte[] ReadStart(string path, int count) => Read(path)[..Math.Min(count, _contents[_names[path]].Length)];

    public byte[] ReadEnd(string path, int count) => Read(path)[^Math.Min(count, _contents[_names[path]].Length)..];

    public long LengthOf(string path) => Read(path).Length;

    public string HashWithout(string path, int last) => Trailer.Hash(Read(path).AsSpan()[..^last]);

    public virtual IOpenFile Create(string path, string? like = null)
    {
        var file = ++Record.Files;
        _contents[file] = [];
        _names[path] = file;
        Record.OlderContents[file] = _lastJournal;
        Record.Steps.Add(new DiskStep.Name(path, file, null));
        return new RecordedFile(this, file);
    }

    public virtual IOpenFile Open(string path) => _names.TryGetValue(path, out var file) ? new RecordedFile(this, file) : throw new FileNotFoundException(path);

    public virtual void Rename(string from, string to)
    {
        var file = _names[from];
        _names.Remove(from);
        _names[to] = file;
        Record.Steps.Add(new DiskStep.Name(to, file, from));
    }

    public virtual void Delete(string path)
    {
        if (!_names.Remove(path, out var file))
            return;
        if (path.EndsWith(".journal", StringComparison.Ordinal))
            _lastJournal = _contents[file];
        Record.Steps.Add(new DiskStep.Unname(path));
    }

    public void FlushFolderOf(string path)
    {
        if (FlushesFolders)
            Record.Steps.Add(new DiskStep.FlushFolder());
    }

    public virtual string? BirthOf(string path) => _names.TryGetValue(path, out var file) ? file.ToString(CultureInfo.InvariantCulture) : null;

    /// <summary>Names that lead to a link, as another program may have made of them.</summary>
    public HashSet<string> Links { get; } = new(StringComparer.Ordinal);

    public virtual IHeldName Hold(string path, bool isOpen) => new RecordedName(this, path, _names[path]);

    public int? NamesOf(string path) => _names.TryGetValue(path, out var file) ? _names.Count(n => n.Value == file) : null;

    public string? ReadOnlyBecause(string path) => null;

    public virtual IDisposable? TryHold(string path) => new MemoryStream();

    private void Flush(int file)
    {
        if (Flushes)
            Record.Steps.Add(new DiskStep.Flush(file));
    }

    private sealed class RecordedName(RecordingFiles disk, string path, int file) : IHeldName
    {
        public bool StillLeadsThere => !disk.Links.Contains(path) && disk._names.TryGetValue(path, out var now) && now == file;

        public void Dispose() { }
    }

    private sealed class RecordedFile(RecordingFiles disk, int file) : IOpenFile
    {
        public long Length => disk._contents[file].Length;

        public byte[] Read(long at, int count) => disk._contents[file].AsSpan((int)at, (int)Math.Min(count, Math.Max(0,
            disk._contents[file].Length - at))).ToArray();

        public void Write(long at, ReadOnlySpan<byte> bytes)
        {
            if (disk.Failing is { } failing && disk.FailsAfter < bytes.Length)
            {
                disk._contents[file] = CrashStates.Apply(disk._contents[file], new DiskStep.Write(file, at, bytes[..disk.FailsAfter].ToArray()));
                throw failing;
            }
            var step = new DiskStep.Write(file, at, bytes.ToArray());
            disk._contents[file] = CrashStates.Apply(disk._contents[file], step);
            disk.Record.Steps.Add(step);
        }

        public void Cut(long length)
        {
            var bytes = disk._contents[file];
            Array.Resize(ref bytes, (int)length);
            disk._contents[file] = bytes;
            disk.Record.Steps.Add(new DiskStep.Cut(file, length));
        }

        public void FlushToDisk() => disk.Flush(file);

        public void Dispose() { }
    }
}

/// <summary>A disk on which no file can be written in place, so that the house file keeps no note of how far its journal got.</summary>
internal sealed class NoNotes(DiskState? state = null) : RecordingFiles(state)
{
    public override IOpenFile Open(string path) => throw new IOException("Not in place.");
}

/// <summary>A disk on which the journal is taken away before the file that holds its changes is in place.</summary>
internal sealed class JournalCutFirst : RecordingFiles
{
    public override void Rename(string from, string to)
    {
        var foldedIn = from.EndsWith(".trimout.new", StringComparison.Ordinal) && Trailer.Read(Read(from)) is { Journal: null };
        if (foldedIn)
            Delete(to + ".journal");
        base.Rename(from, to);
    }
}
