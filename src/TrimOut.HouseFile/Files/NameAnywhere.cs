using TrimOut.Core;

namespace TrimOut.HouseFile.Files;

/// <summary>Whether a file's name can be one on every system: a house goes from laptop to laptop.</summary>
/// <remarks>
/// Windows is the strictest. It keeps the names of devices, whatever ending stands behind them and however many spaces between, and takes neither the signs
/// that mean something in a path or a pattern nor control characters (Microsoft Learn, "Naming Files, Paths, and Namespaces"; the names with raised figures
/// stand there too). A dot or a space at the very end would go; the ending of a house file stands there.
/// </remarks>
public static class NameAnywhere
{
    private const string NotInNames = "<>:\"/\\|?*";

    private static readonly HashSet<string> Devices = new(["CON", "PRN", "AUX", "NUL", "CONIN$", "CONOUT$",
        .. "0123456789¹²³".SelectMany(n => new[] { $"COM{n}", $"LPT{n}" })], StringComparer.OrdinalIgnoreCase);

    /// <summary>Why the name of a file that is to be made would be none on another system, and what to do; null where it is one everywhere.</summary>
    /// <param name="path">The file; only its own name counts, for the folder stays where it is.</param>
    public static string? WhyNot(string path)
    {
        var inside = path[(Path.GetPathRoot(path)?.Length ?? 0)..];
        var name = inside[(inside.LastIndexOfAny([Path.DirectorySeparatorChar, Path.AltDirectorySeparatorChar]) + 1)..];
        var free = new string([.. name.Select(c => IsTaken(c) ? '-' : c)]);
        var why = free != name ? $"Windows takes no {InWords(name.First(IsTaken))} in a file's name"
            : DeviceOf(name) is { } device ? $"Windows keeps {device} for a device" : null;
        return why is null ? null
            : $"{ShownText.Line(name)} can't be a house file's name: {why}, and a house file may go to a laptop with Windows. "
                + $"Choose another name, such as {Freed(free)}.";
    }

    /// <summary>A name as it is, or another one near it where it is a device's.</summary>
    public static string Freed(string name) => DeviceOf(name) is null ? name : $"house-{name}";

    private static bool IsTaken(char c) => char.IsControl(c) || NotInNames.Contains(c, StringComparison.Ordinal);

    private static string InWords(char c) => char.IsControl(c) ? "control character" : c.ToString();

    private static string? DeviceOf(string name) =>
        name.Split('.')[0].TrimEnd(' ') is var stem && Devices.Contains(stem) ? stem.ToUpperInvariant() : null;
}
