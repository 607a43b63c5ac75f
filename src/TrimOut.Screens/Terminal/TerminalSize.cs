using System.Runtime.InteropServices;

namespace TrimOut.Screens.Terminal;

/// <summary>How large the terminal is, asked of the system: the runtime, when it is asked, puts the terminal into another mode first.</summary>
public static class TerminalSize
{
    private const int StandardOutput = 1;
    private const nuint AskOnLinux = 0x5413;

    /// <summary>Columns and rows; 0 by 0 where the terminal does not say.</summary>
    public static (int Width, int Height) Now()
    {
        if (!OperatingSystem.IsLinux())
            return (Console.WindowWidth, Console.WindowHeight);
        var size = default(WindowSize);
        return Control(StandardOutput, AskOnLinux, ref size) == 0 ? (size.Columns, size.Rows) : (0, 0);
    }

    [DllImport("libc", EntryPoint = "ioctl")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int Control(int descriptor, nuint request, ref WindowSize size);

    [StructLayout(LayoutKind.Sequential)]
    private struct WindowSize
    {
        public ushort Rows;
        public ushort Columns;
        public ushort WidthInPixels;
        public ushort HeightInPixels;
    }
}
