using System.Diagnostics;
using System.Runtime.InteropServices;
using Terminal.Gui.App;

namespace TrimOut.Screens.Terminal;

/// <summary>Lets the main loop rest until a key comes, in place of beating all the time.</summary>
/// <remarks>
/// The library's loop sleeps to a fixed beat: a slow one answers keys late, a quick one uses up the battery. Here the
/// beat is quick for a moment after each key, and between keys the loop waits for the terminal to have something to
/// read. The library's own reading thread looks every 20 ms, which is what is left of the delay.
/// </remarks>
internal static class WakeOnInput
{
    private const int StandardInput = 0;
    private const short Readable = 1;
    private const short HungUp = 0x8 | 0x10 | 0x20;
    private static readonly TimeSpan Lively = TimeSpan.FromMilliseconds(150);
    private static readonly TimeSpan Rest = TimeSpan.FromMilliseconds(100);

    /// <summary>Gives an application this manner. Where the system can't wait for input, it gets a quick beat instead.</summary>
    /// <param name="app">The application.</param>
    /// <param name="drawn">Whether there is a screen to rest on.</param>
    /// <param name="gone">What to do when the terminal is gone: not every shell lets the system say so.</param>
    public static void For(IApplication app, Func<bool> drawn, Action gone)
    {
        if (OperatingSystem.IsWindows())
        {
            Application.MaximumIterationsPerSecond = 60;
            return;
        }
        Application.MaximumIterationsPerSecond = 1000;
        var lastKey = Stopwatch.GetTimestamp();
        app.Iteration += (_, _) =>
        {
            // The library never takes this back by itself, and would move the cursor at every beat. Whatever is drawn sets it again.
            app.Driver?.SetCursorNeedsUpdate(false);
            if (!drawn() || Stopwatch.GetElapsedTime(lastKey) < Lively)
                return;
            var input = InputWithin(Rest);
            if ((input & HungUp) != 0)
                gone();
            else if (input != 0)
                lastKey = Stopwatch.GetTimestamp();
        };
    }

    private static short InputWithin(TimeSpan time)
    {
        var at = new PollEntry { Descriptor = StandardInput, Asked = Readable };
        return Poll(ref at, 1, (int)time.TotalMilliseconds) > 0 ? at.Given : (short)0;
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
