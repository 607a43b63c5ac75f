namespace TrimOut.HouseFile.Files;

/// <summary>Bytes that are at hand, read as a file is.</summary>
internal sealed class BytesAsFile(ReadOnlyMemory<byte> bytes) : IReadFile
{
    public long Length => bytes.Length;

    public int Read(long at, Span<byte> into)
    {
        var there = bytes.Span[(int)Math.Min(at, bytes.Length)..];
        there = there[..Math.Min(there.Length, into.Length)];
        there.CopyTo(into);
        return there.Length;
    }

    public void Dispose() { }
}
