namespace TrimOut.Papers.Tests.CrewPapers;

/// <summary>What stands above the tables of the walk sheet.</summary>
public class WalkSheetTests
{
    [Fact]
    public void ARoomWhoseFloorNobodyNotedIsNamedWithoutOne()
    {
        var sheet = PaperList.Find("walk-sheet")!.Write(SampleJobs.Data("canal-house")).Markdown;
        Assert.Contains("### Front room (Ground)\n", sheet, StringComparison.Ordinal);
        Assert.Contains("### (no room yet)\n", sheet, StringComparison.Ordinal);
    }
}
