using TrimOut.Core.Checks;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.Tests;

public class WaitingLineTests
{
    [Theory]
    [InlineData(506, 325, 8, 3, "506 checks waiting for 325 details (m); 8 for 3 sheet values: key 9")]
    [InlineData(1, 1, 1, 1, "1 check waiting for 1 detail (m); 1 for 1 sheet value: key 9")]
    [InlineData(4, 2, 0, 0, "4 checks waiting for 2 details (m)")]
    public void ItSaysHowManyWaitAndWhichKeysLeadThere(int checks, int details, int ofSheets, int values, string said) =>
        Assert.Equal(said, WaitingLine.Of(new Waiting(checks, details), new Waiting(ofSheets, values)));

    // The job sheet draws it from the second column of 80.
    [Fact]
    public void FiveFiguresEachFitIntoALine() =>
        Assert.InRange(TextWidth.Of(WaitingLine.Of(new Waiting(99_999, 99_999), new Waiting(99_999, 99_999))), 60, 79);
}
