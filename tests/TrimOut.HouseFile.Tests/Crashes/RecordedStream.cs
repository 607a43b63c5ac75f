namespace TrimOut.HouseFile.Tests.Crashes;

/// <summary>A real file that records what is asked of it, so that a database that knows nothing of our layer can be recorded too.</summary>
internal sealed class RecordedStream(string path, DiskRecord record, int file)
    : FileStream(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.ReadWrite)
{
    public override void Write(byte[] buffer, int offset, int count)
    {
        record.Steps.Add(new DiskStep.Write(file, Position, buffer.AsSpan(offset, count).ToArray()));
        base.Write(buffer, offset, count);
    }

    public override void Write(ReadOnlySpan<byte> buffer)
    {
        record.Steps.Add(new DiskStep.Write(file, Position, buffer.ToArray()));
        base.Write(buffer);
    }

    public override void SetLength(long value)
    {
        record.Steps.Add(new DiskStep.Cut(file, value));
        base.SetLength(value);
    }

    public override void Flush(bool flushToDisk)
    {
        if (flushToDisk)
            record.Steps.Add(new DiskStep.Flush(file));
        base.Flush(flushToDisk);
    }
}
