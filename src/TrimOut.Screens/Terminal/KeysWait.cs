namespace TrimOut.Screens.Terminal;

/// <summary>Where this program waits for keys in the system.</summary>
/// <remarks>
/// Linux: poll(2) waits for a terminal and a pipe at once. macOS: the manual of its poll(2) says under BUGS that devices are not supported, and a terminal
/// is one (from memory); the library's own beat is used there. Windows: a console has no poll; the library reads it in its own way.
/// </remarks>
internal static class KeysWait
{
    /// <summary>Whether it waits in the system; else the library looks for keys to its own beat.</summary>
    public static bool InTheSystem => OperatingSystem.IsLinux();
}
