using TrimOut.Testing;

namespace TrimOut.Tests;

public class LineLengthTests
{
    private const int Longest = 160;

    /// <summary>Folders that are not held to it yet.</summary>
    private static readonly string[] NotYet =
    [
        "src/TrimOut.Core/Checks/", "src/TrimOut.Core/Houses/", "src/TrimOut.HouseFile/", "src/TrimOut/Desks/", "src/TrimOut/Verbs/",
        "tests/TrimOut.Core.Tests/Checks/",
    ];

    [Fact]
    public void NoLineOfCodeIsLongerThan160Characters() => Assert.Empty(
        from file in CodeFiles()
        where !NotYet.Any(folder => file.StartsWith(folder, StringComparison.Ordinal))
        from line in File.ReadLines(Path.Combine(Repository.Root, file)).Index()
        where line.Item.Length > Longest
        select $"{file}:{line.Index + 1}: {line.Item.Length} characters");

    [Fact]
    public void EveryFolderThatIsNotHeldToItYetIsThere() =>
        Assert.All(NotYet, folder => Assert.Contains(CodeFiles(), f => f.StartsWith(folder, StringComparison.Ordinal)));

    private static IEnumerable<string> CodeFiles() =>
        from top in new[] { "src", "tests" }
        from path in Directory.EnumerateFiles(Path.Combine(Repository.Root, top), "*.cs", SearchOption.AllDirectories)
        let file = Path.GetRelativePath(Repository.Root, path).Replace('\\', '/')
        where !file.Contains("/obj/", StringComparison.Ordinal) && !file.Contains("/bin/", StringComparison.Ordinal)
        select file;
}
