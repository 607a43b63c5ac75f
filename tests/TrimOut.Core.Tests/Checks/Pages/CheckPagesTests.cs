using System.IO;
using TrimOut.Core.Checks;

namespace TrimOut.Core.Tests.Checks.Pages;

/// <summary>docs/checks is made from the checks: these tests fail when a page is stale, and write it anew when TRIMOUT_WRITE_DOCS is set.</summary>
public class CheckPagesTests
{
    private static readonly string Folder = Path.Combine(RepositoryRoot.Path, "docs", "checks");

    public static TheoryData<string> Ids => [.. AllChecks.All.Select(c => c.Info.Id)];

    [Theory]
    [MemberData(nameof(Ids))]
    public void ThePageOfACheckSaysWhatTheCheckIs(string id)
    {
        var path = Path.Combine(Folder, id + ".md");
        var page = CheckPage.Of(AllChecks.Find(id)!);
        if (Environment.GetEnvironmentVariable("TRIMOUT_WRITE_DOCS") is not null)
            File.WriteAllText(path, page);
        Assert.True(File.Exists(path), $"{path} is missing: set TRIMOUT_WRITE_DOCS=1 and run this test again.");
        Assert.Equal(page, File.ReadAllText(path));
    }

    [Fact]
    public void EveryPageBelongsToACheck() =>
        Assert.DoesNotContain(Directory.EnumerateFiles(Folder, "*.md").Select(Path.GetFileNameWithoutExtension), p => AllChecks.Find(p!) is null);
}
