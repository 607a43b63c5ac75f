using System.Collections.Immutable;

namespace TrimOut.Core.Facts;

/// <summary>The pictures that one photo detail names: paths, with <c>|</c> and a space on each side of it between several.</summary>
public static class PhotoPaths
{
    /// <summary>What stands between two paths.</summary>
    public const string Between = " | ";

    /// <summary>The paths, in the order in which they were noted; none for an empty text.</summary>
    public static ImmutableArray<string> Of(string? noted) =>
        noted is null ? [] : [.. noted.Split(Between, StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)];

    /// <summary>
    /// What is noted once another path is; the same where it names that path already, and the path alone where it only said that there is none.
    /// </summary>
    public static string With(string? noted, string path) =>
        Of(noted) is var before && (before.IsEmpty || AbsenceWords.SayNoMore(noted!)) ? path
        : before.Contains(path, StringComparer.Ordinal) ? noted! : $"{noted!.Trim()}{Between}{path}";

    /// <summary>What is noted once a path is taken out; null where nothing is left.</summary>
    public static string? Without(string? noted, string path) =>
        Of(noted).Where(p => p != path).ToList() is { Count: > 0 } left ? string.Join(Between, left) : null;
}
