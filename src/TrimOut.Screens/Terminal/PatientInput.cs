using System.IO.Pipes;
using System.Runtime.InteropServices;
using Terminal.Gui.Drivers;

namespace TrimOut.Screens.Terminal;

/// <summary>The library's reader of keys, except that it waits for a key in the system, where the library looks every 20 ms.</summary>
/// <param name="heard">Set when keys were read and stand in the library's queue.</param>
/// <param name="gone">What to do when the terminal is gone: not every shell lets the system say so, and the library would read on for ever.</param>
internal sealed class PatientInput(AutoResetEvent heard, Action gone) : AnsiInput
{
    private const int StandardInput = 0;
    private const short Readable = 1;
    private const short HungUp = 0x8 | 0x10 | 0x20;
    private const int ForEver = -1;

    private readonly AnonymousPipeServerStream _letGo = new(PipeDirection.Out);
    private bool _handedOver;

    /// <summary>Waits until there is something to read, or until <see cref="LetGo"/>.</summary>
    public override bool Peek()
    {
        // The library asks again when it has put what it read in its queue.
        if (_handedOver)
            heard.Set();
        _handedOver = false;
        Span<PollEntry> asked =
        [
            new() { Descriptor = StandardInput, Asked = Readable },
            new() { Descriptor = (int)_letGo.ClientSafePipeHandle.DangerousGetHandle(), Asked = Readable },
        ];
        if (Poll(ref asked[0], (nuint)asked.Length, ForEver) <= 0)
            return false;
        if ((asked[0].Given & HungUp) != 0)
        {
            gone();
            return false;
        }
        return _handedOver = (asked[0].Given & Readable) != 0 && base.Peek();
    }

    /// <summary>Ends the waiting: the library joins this reader before it gives the terminal back.</summary>
    public void LetGo() => _letGo.WriteByte(0);

    /// <inheritdoc/>
    public override void Dispose()
    {
        base.Dispose();
        _letGo.Dispose();
    }

    [DllImport("libc", EntryPoint = "poll")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int Poll(ref PollEntry entries, nuint count, int milliseconds);

    [StructLayout(LayoutKind.Sequential)]
    private struct PollEntry
    {
        public int Descriptor;
        public short Asked;
        public short Given;
    }
}
