namespace TrimOut.Testing;

/// <summary>The checkout that the tests run in.</summary>
public static class Repository
{
    /// <summary>The folder that holds TrimOut.sln.</summary>
    public static string Root { get; } = Find(AppContext.BaseDirectory);

    private static string Find(string folder) =>
        File.Exists(Path.Combine(folder, "TrimOut.sln")) ? folder
        : Path.GetDirectoryName(folder) is { } above ? Find(above)
        : throw new InvalidOperationException("The tests run outside a checkout of TrimOut.");
}
