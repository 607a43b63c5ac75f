
namespace TrimOut.Core.Tests;

public class PureCoreTests
{
    private static readonly string Core = Path.Combine(RepositoryRoot.Path, "src", "TrimOut.Core");

    [Theory]
    [InlineData(@"\bDateTime(Offset)?\.(Utc)?Now\b")]
    [InlineData(@"\bDateTime\.Today\b")]
    [InlineData(@"\bTimeProvider\.System\b")]
    [InlineData(@"\bFile(Info|Stream)?\.")]
    [InlineData(@"\bDirectory\.")]
    [InlineData(@"\bConsole\.")]
    [InlineData(@"\bEnvironment\.")]
    [InlineData(@"\bCultureInfo\.Current")]
    [InlineData(@"\bGuid\.NewGuid\b")]
    [InlineData(@"\bRandom\.Shared\b")]
    public void TheCoreKnowsNoClockNoFileNoScreenAndNoCulture(string forbidden) =>
        Assert.Empty(Directory.EnumerateFiles(Core, "*.cs", SearchOption.AllDirectories)
            .Where(f => !f.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal))
            .Where(f => System.Text.RegularExpressions.Regex.IsMatch(File.ReadAllText(f), forbidden)).Select(Path.GetFileName));

    /// <summary>NodaTime brings the time-zone database in itself: no file, no setting of the machine.</summary>
    [Fact]
    public void TheCoreStandsOnTheRuntimeAndTheTimeZonesAlone() =>
        Assert.All(typeof(Result<>).Assembly.GetReferencedAssemblies(), a =>
            Assert.True(a.Name == "NodaTime" || a.Name!.StartsWith("System", StringComparison.Ordinal), a.Name));
}
