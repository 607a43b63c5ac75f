using System.Runtime.InteropServices;
using System.Text;
using Microsoft.Win32.SafeHandles;
using TrimOut.Core;
using TrimOut.HouseFile.Texts;

namespace TrimOut;

/// <summary>Standard output and error: whatever a verb writes goes through here, and nothing of it can act on a terminal.</summary>
internal static class Streams
{
    private static TextWriter? _output;
    private static TextWriter? _error;

    /// <summary>Puts the guard before both. The screens, which make their cells safe themselves, take it away again.</summary>
    /// <remarks>
    /// The runtime's own streams put a terminal into another mode (application keys) before the first byte that they write to it, and never take it
    /// back: so words are written past them, and only the screens, which do take it back, use them.
    /// </remarks>
    public static void Guard()
    {
        if (IsClosed(0))
            Console.SetIn(TextReader.Null);
        else if (!OperatingSystem.IsWindows() && !Console.IsInputRedirected)
            Console.SetIn(Reader(new FileStream(new SafeFileHandle(0, ownsHandle: false), FileAccess.Read, bufferSize: 0)));
        else
            Console.SetIn(Reader(Console.OpenStandardInput()));
        Guard(IsClosed(1) ? new ClosedWriter() : Writer(OperatingSystem.IsWindows() ? Console.OpenStandardOutput() : new BareOutput(1)),
            IsClosed(2) ? TextWriter.Null : Writer(OperatingSystem.IsWindows() ? Console.OpenStandardError() : new BareOutput(2)));
    }

    /// <summary>The same where the streams are other ones than those of the process.</summary>
    /// <param name="input">What is read as standard input.</param>
    /// <param name="output">What standard output is written to.</param>
    /// <param name="error">What standard error is written to.</param>
    internal static void Guard(Stream input, Stream output, Stream error)
    {
        Console.SetIn(Reader(input));
        Guard(Writer(output), Writer(error));
    }

    private static void Guard(TextWriter output, TextWriter error)
    {
        (_output, _error) = (output, error);
        Console.SetOut(new ShownWriter(_output));
        Console.SetError(new ShownWriter(_error));
    }

    /// <summary>A reader of a stream by its byte-order mark, else in the encoding of the terminal; what is not UTF-8 there is marked, not replaced.</summary>
    private static StreamReader Reader(Stream stream) =>
        new(stream, Console.InputEncoding is { CodePage: not 65001 } other ? other : TextBytes.Marking, detectEncodingFromByteOrderMarks: true);

    /// <summary>A writer on a stream as it is, in the encoding of the terminal.</summary>
    private static StreamWriter Writer(Stream stream) =>
        new(stream, Console.OutputEncoding is { CodePage: not 65001 } other ? other : new UTF8Encoding(encoderShouldEmitUTF8Identifier: false),
            4096)
        { AutoFlush = true };

    /// <summary>Lets something write to the terminal as it is.</summary>
    public static T Bare<T>(Func<T> write)
    {
        var (output, error) = (Console.Out, Console.Error);
        Console.SetOut(_output ?? output);
        Console.SetError(_error ?? error);
        try
        {
            return write();
        }
        finally
        {
            Console.SetOut(output);
            Console.SetError(error);
        }
    }

    /// <summary>
    /// Whether a stream was closed when the program was started. Its number may be in use all the same, by something of the runtime's own, which must
    /// be neither read nor written.
    /// </summary>
    /// <remarks>What was inherited lacks the mark "to be closed for another program" (FD_CLOEXEC): otherwise it would have been closed for this one.</remarks>
    private static bool IsClosed(int stream)
    {
        const int getFlags = 1;
        const int closedForOthers = 1;
        return !OperatingSystem.IsWindows() && Control(stream, getFlags) is var flags && (flags < 0 || (flags & closedForOthers) != 0);
    }

    [DllImport("libc", EntryPoint = "fcntl")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int Control(int stream, int command);

    /// <summary>Standard output that nobody holds: data that was asked for can't be handed over, and that is said.</summary>
    private sealed class ClosedWriter : TextWriter
    {
        public override Encoding Encoding => Encoding.UTF8;

        public override void Write(char value) => throw new IOException("Standard output is closed.");
    }

    private sealed class ShownWriter(TextWriter to) : TextWriter
    {
        public override Encoding Encoding => to.Encoding;

        public override void Write(char value) => to.Write(ShownText.Lines(value.ToString()));

        public override void Write(char[] buffer, int index, int count) => to.Write(ShownText.Lines(new string(buffer, index, count)));

        public override void Write(ReadOnlySpan<char> buffer) => to.Write(ShownText.Lines(buffer.ToString()));

        public override void Write(string? value) => to.Write(ShownText.Lines(value ?? ""));

        public override void WriteLine(string? value) => to.WriteLine(ShownText.Lines(value ?? ""));

        public override void WriteLine() => to.WriteLine();

        public override void Flush() => to.Flush();
    }
}
