namespace TrimOut.Papers.Tests.CrewPapers;

public class OldPaintTests
{
    /// <summary>The attic frames of the sample hold lead: whoever drills reads that on the sheet in hand.</summary>
    [Theory]
    [InlineData("walk-sheet")]
    [InlineData("pull-sheet")]
    [InlineData("hang-sheet")]
    public void WhatATestForLeadSaidStandsOnEachSheetThatSomebodyDrillsBy(string paper) =>
        Assert.Matches(@"Tested for lead: positive at the frames of the attic\. \*\*Nobody drills or sands it until", Written(paper, "canal-house"));

    [Theory]
    [InlineData("pull-sheet")]
    [InlineData("hang-sheet")]
    public void NewPaintTakesNoLine(string paper) => Assert.DoesNotContain("Oldest paint", Written(paper, "orchard-cottage"), StringComparison.Ordinal);

    private static string Written(string paper, string sample) => PaperList.Find(paper)!.Write(SampleJobs.Data(sample)).Markdown;
}
