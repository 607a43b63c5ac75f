using TrimOut.Core.Houses;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.PublicApi;

/// <summary>
/// What Core offers stands in <c>public-api.txt</c>, so that a change of it is seen in the change itself: this test fails when the list is stale, and writes
/// it anew when TRIMOUT_WRITE_DOCS is set.
/// </summary>
public class PublicApiTests
{
    private static readonly string File = Path.Combine(Repository.Root, "tests", "TrimOut.Core.Tests", "PublicApi", "public-api.txt");

    [Fact]
    public void TheListIsWhatCoreOffers()
    {
        var now = Surface.Of(typeof(House).Assembly).ToList();
        if (Environment.GetEnvironmentVariable("TRIMOUT_WRITE_DOCS") is not null)
            System.IO.File.WriteAllText(File, string.Join('\n', now) + "\n");
        var listed = System.IO.File.ReadAllLines(File);
        Assert.Equal("", string.Join('\n', now.Except(listed).Select(l => $"new: {l}").Concat(listed.Except(now).Select(l => $"gone: {l}"))));
        Assert.InRange(now.Count, 500, 20_000);
    }

    [Fact]
    public void TheListTellsOneMemberFromAnother() =>
        Assert.Equal(
            [
                "PublicApi.PublicApiTests.TheListIsWhatCoreOffers(): Void",
                "PublicApi.PublicApiTests.TheListTellsOneMemberFromAnother(): Void",
                "PublicApi.PublicApiTests.new()",
                "PublicApi.PublicApiTests: class",
            ],
            Surface.Of(typeof(PublicApiTests).Assembly).Where(l => l.Contains("PublicApiTests", StringComparison.Ordinal))
                .Select(l => l.Replace("Tests.PublicApi.", "PublicApi.", StringComparison.Ordinal)));
}
