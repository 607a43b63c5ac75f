namespace TrimOut.HouseFile.Tests.Crashes;

/// <summary>One thing that was asked of the disk.</summary>
public abstract record DiskStep
{
    private DiskStep() { }

    public sealed record Write(int File, long At, byte[] Bytes) : DiskStep;

    public sealed record Cut(int File, long Length) : DiskStep;

    /// <summary>What was written to the file is on the disk from here on.</summary>
    public sealed record Flush(int File) : DiskStep;

    /// <summary>The name stands for the file from here on; <paramref name="From"/> is the name it loses, if any.</summary>
    public sealed record Name(string Path, int File, string? From) : DiskStep;

    public sealed record Unname(string Path) : DiskStep;

    /// <summary>The names are on the disk from here on.</summary>
    public sealed record FlushFolder : DiskStep;

    /// <summary>The program was told that this many changes are saved.</summary>
    public sealed record Told(int Saved) : DiskStep;
}

/// <summary>What was asked of the disk, in order, and what the disk blocks that a file grows into held before.</summary>
public sealed class DiskRecord
{
    public List<DiskStep> Steps { get; } = [];

    /// <summary>File number to the contents of an older file that the same blocks may have held.</summary>
    public Dictionary<int, byte[]> OlderContents { get; } = [];

    public int Files { get; set; }
}

/// <summary>All files as a crash left them.</summary>
/// <param name="Names">Name to file.</param>
/// <param name="Contents">File to bytes.</param>
public sealed record DiskState(IReadOnlyDictionary<string, int> Names, IReadOnlyDictionary<int, byte[]> Contents)
{
    public static DiskState Empty { get; } = new(new Dictionary<string, int>(), new Dictionary<int, byte[]>());
}
