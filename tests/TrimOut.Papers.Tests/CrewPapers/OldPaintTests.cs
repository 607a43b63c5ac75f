namespace TrimOut.Papers.Tests.CrewPapers;

public class OldPaintTests
{
    /// <summary>The attic frames of the sample hold lead: whoever drills reads that on the sheet in hand.</summary>
    [Theory]
    [InlineData("walk-sheet")]
    [InlineData("pull-sheet")]
    [InlineData("hang-sheet")]
    public void WhatATestForLeadSaidStandsOnEachSheetThatSomebodyDrillsBy(string paper) =>
        Assert.Contains("Tested: positive at the frames of the attic.", Written(paper, "canal-house"), StringComparison.Ordinal);

    [Theory]
    [InlineData("pull-sheet")]
    [InlineData("hang-sheet")]
    public void NewPaintTakesNoLine(string paper) => Assert.DoesNotContain("Oldest paint", Written(paper, "orchard-cottage"), StringComparison.Ordinal);

    private static string Written(string paper, string sample) => PaperList.Find(paper)!.Write(SampleJobs.Data(sample)).Markdown;
}
