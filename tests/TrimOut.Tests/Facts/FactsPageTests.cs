using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Tests.Facts;

/// <summary>docs/facts.md is made from the facts and who reads them: a test fails when it is stale, and writes it when TRIMOUT_WRITE_DOCS is set.</summary>
public class FactsPageTests
{
    [Fact]
    public void TheFactsPageSaysWhoReadsWhat()
    {
        var path = Path.Combine(Repository.Root, "docs", "facts.md");
        var page = FactsPage.Of();
        if (Environment.GetEnvironmentVariable("TRIMOUT_WRITE_DOCS") is not null)
            File.WriteAllText(path, page);
        Assert.Equal(page, File.ReadAllText(path));
    }

    /// <summary>Made by the same command as the page.</summary>
    [Fact]
    public void TheSheetInHandNamesTheChecksThatReadEachValue()
    {
        var path = Path.Combine(Repository.Root, "src", "TrimOut.Screens", "Kit", "checks-by-value.txt");
        var list = FactsPage.ChecksByValue();
        if (Environment.GetEnvironmentVariable("TRIMOUT_WRITE_DOCS") is not null)
            File.WriteAllText(path, list);
        Assert.Equal(list, File.ReadAllText(path));
    }

    [Fact]
    public void AFactThatNobodyReadsHasAReasonToBeKept() =>
        Assert.Equal([], FactTable.All.Where(f => !FactsPage.ReadersOf(f).Any() && !KeptFacts.Why.ContainsKey(f)).Select(f => $"{f.Subject}: {f.Name}"));

    [Fact]
    public void AFactThatIsReadNeedsNoReason() =>
        Assert.Equal([], KeptFacts.Why.Keys.Where(f => FactsPage.ReadersOf(f).Any())
            .Select(f => $"{f.Subject}: {f.Name}, by {FactsPage.ReadersOf(f).First().Name}"));
}
