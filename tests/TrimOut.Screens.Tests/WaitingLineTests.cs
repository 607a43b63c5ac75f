using TrimOut.Core.Checks;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.Tests;

public class WaitingLineTests
{
    [Theory]
    [InlineData(506, 325, 51, 8, 5, "51 checks wait for the sheets of 5 parts (9); 455 for 317 details (m)")]
    [InlineData(1, 1, 1, 1, 1, "1 check waits for the sheet of 1 part (9)")]
    [InlineData(4, 2, 0, 0, 0, "4 checks waiting for 2 details (m)")]
    public void WhatWaitsForSheetsIsSaidOnceAndApart(int checks, int details, int ofSheets, int values, int parts, string said) =>
        Assert.Equal(said, WaitingLine.Of(new Waiting(checks, details), new Waiting(ofSheets, values), parts, null));

    [Fact]
    public void OfAPhaseThatIsShownItSaysHowManyWaitInIt() => Assert.Equal(
        "51 checks wait for the sheets of 5 parts (9); 40 for Rough-in, 415 later or before (m)",
        WaitingLine.Of(new Waiting(506, 325), new Waiting(51, 8), 5, ("Rough-in", 40)));

    // The list of what is missing begins with it, from the second column of 80.
    [Fact]
    public void FiveFiguresEachFitIntoALine() =>
        Assert.InRange(TextWidth.Of(WaitingLine.Of(new Waiting(99_999, 99_999), new Waiting(9_999, 9_999), 99, null)), 60, 79);
}
