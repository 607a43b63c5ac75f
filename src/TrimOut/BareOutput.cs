using System.Runtime.InteropServices;

namespace TrimOut;

/// <summary>Standard output or error as the system has it: what is written goes there, and nothing else does.</summary>
/// <param name="number">The number of the stream, 1 or 2.</param>
internal sealed class BareOutput(int number) : Stream
{
    private const int Interrupted = 4;
    private const int BrokenPipe = 32;
    private static readonly int Busy = OperatingSystem.IsMacOS() ? 35 : 11;

    public override bool CanRead => false;

    public override bool CanSeek => false;

    public override bool CanWrite => true;

    public override long Length => throw new NotSupportedException();

    public override long Position
    {
        get => throw new NotSupportedException();
        set => throw new NotSupportedException();
    }

    public override void Write(byte[] buffer, int offset, int count) => Write(buffer.AsSpan(offset, count));

    /// <inheritdoc/>
    /// <exception cref="IOException">It can't be written. Where only nobody reads any more, as behind <c>head</c>, all is dropped.</exception>
    public override void Write(ReadOnlySpan<byte> buffer)
    {
        while (!buffer.IsEmpty)
        {
            var written = Put(number, in MemoryMarshal.GetReference(buffer), buffer.Length);
            if (written >= 0)
            {
                buffer = buffer[(int)written..];
                continue;
            }
            var why = Marshal.GetLastPInvokeError();
            if (why == BrokenPipe)
                return;
            if (why == Busy)
                Thread.Sleep(1);
            else if (why != Interrupted)
                throw new IOException($"{(number == 1 ? "Standard output" : "Standard error")} can't be written: {Marshal.GetPInvokeErrorMessage(why)}.");
        }
    }

    public override void Flush()
    {
    }

    public override int Read(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();

    [DllImport("libc", EntryPoint = "write", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern nint Put(int stream, in byte bytes, nint count);
}
