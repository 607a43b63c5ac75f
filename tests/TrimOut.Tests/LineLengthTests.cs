using TrimOut.Testing;

namespace TrimOut.Tests;

public class LineLengthTests
{
    private const int Longest = 160;

    [Fact]
    public void NoLineOfCodeIsLongerThan160Characters() => Assert.Empty(
        from file in CodeFiles()
        from line in File.ReadLines(Path.Combine(Repository.Root, file)).Index()
        where line.Item.Length > Longest
        select $"{file}:{line.Index + 1}: {line.Item.Length} characters");

    private static IEnumerable<string> CodeFiles() =>
        from top in new[] { "src", "tests" }
        from path in Directory.EnumerateFiles(Path.Combine(Repository.Root, top), "*.cs", SearchOption.AllDirectories)
        let file = Path.GetRelativePath(Repository.Root, path).Replace('\\', '/')
        where !file.Contains("/obj/", StringComparison.Ordinal) && !file.Contains("/bin/", StringComparison.Ordinal)
        select file;
}
