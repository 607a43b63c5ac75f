using System.Buffers;

namespace TrimOut.HouseFile.Files;

/// <summary>A path as it stands in a command that somebody copies: one word for the shell, whatever is in it.</summary>
/// <remarks>Within single quotes a POSIX shell takes everything as it stands but the quote itself (POSIX.1-2017, Shell Command Language, 2.2.2).</remarks>
public static class ShellWord
{
    private static readonly SearchValues<char> Special = SearchValues.Create(" \t\n!\"#$&'()*;<=>?[\\]^`{|}~%");
    private static readonly SearchValues<char> SpecialOnWindows = SearchValues.Create(" \t&()^;,=!%");

    /// <summary>The path, in quotes where a shell would take it apart or read something else in it.</summary>
    public static string Of(string path)
    {
        if (OperatingSystem.IsWindows())
            return path.Length == 0 || path.AsSpan().ContainsAny(SpecialOnWindows) ? $"\"{path}\"" : path;
        return path.Length == 0 || path.AsSpan().ContainsAny(Special) ? $"'{path.Replace("'", "'\\''", StringComparison.Ordinal)}'" : path;
    }
}
