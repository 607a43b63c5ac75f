using TrimOut.Core.Facts;

namespace TrimOut.Papers.Tests.BinderSections;

public class SpareCablesTests
{
    [Fact]
    public void TheBookSaysWhichSparesLieInTheWallAndWhereTheirEndsAre()
    {
        var job = FinishedHouse.Build();
        string Book() => PaperList.Find("binder")!.Write(FinishedHouse.Data(job.Scribe.Log)).Markdown;
        foreach (var (tag, count) in (ReadOnlySpan<(string, string)>)[("W01", "2"), ("W02A", "1"), ("W02B", "1")])
            job.Say(tag, RunFacts.SpareCables, count).Say(tag, RunFacts.SpareEnds, "in the loft");
        Assert.Contains("- 2 more cables beside each of W01; where their ends are: in the loft.", Book(), StringComparison.Ordinal);
        Assert.Contains("- 1 more cable beside each of W02A, W02B; where their ends are: in the loft.", Book(), StringComparison.Ordinal);
        foreach (var tag in (ReadOnlySpan<string>)["W01", "W02A", "W02B"])
            job.Say(tag, RunFacts.SpareCables, "0");
        Assert.DoesNotContain("Spare cables", Book(), StringComparison.Ordinal);
    }
}
