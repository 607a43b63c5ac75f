namespace TrimOut.Core.Tests;

/// <summary>Where the sources and pages lie that tests are held against.</summary>
internal static class RepositoryRoot
{
    /// <summary>The folder that holds the solution.</summary>
    public static string Path { get; } = Find(AppContext.BaseDirectory);

    private static string Find(string from) =>
        File.Exists(System.IO.Path.Combine(from, "TrimOut.sln")) ? from
        : Directory.GetParent(from) is { } above ? Find(above.FullName)
        : throw new InvalidOperationException("The tests do not run inside the repository.");
}
