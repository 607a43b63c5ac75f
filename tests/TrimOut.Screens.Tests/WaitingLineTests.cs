using Microsoft.Extensions.Time.Testing;
using TrimOut.Core.Checks;
using TrimOut.Core.Phases;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Shell;
using TrimOut.Testing;

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

    /// <summary>What waits for phases that nobody works in yet is no work, and no reason to be afraid.</summary>
    [Fact]
    public void InShortItSaysWhatWaitsNowAndWhatLater()
    {
        Assert.Equal(["34 checks wait now, 694 for later phases (m)", "34 checks wait, 694 later (m)"], WaitingLine.InShort(new Waiting(728, 428), 34));
        Assert.Equal(["4 checks waiting for 2 details (m)", "4 checks wait (m)"], WaitingLine.InShort(new Waiting(4, 2), 4));
    }

    [Fact]
    public void ANewHouseSaysHowManyChecksWaitInThePhaseThatIsWorkedIn()
    {
        using var user = new TerminalUser(new TestDesk(new FakeTimeProvider()), new TestJob().Window("W01").Scribe);
        user.Sees($"{user.Shell.Context.Report.WaitingUpTo(Phase.WalkThrough)} checks wait, ");
    }

    // The list of what is missing begins with it, from the second column of 80.
    [Fact]
    public void FiveFiguresEachFitIntoALine() =>
        Assert.InRange(TextWidth.Of(WaitingLine.Of(new Waiting(99_999, 99_999), new Waiting(9_999, 9_999), 99, null)), 60, 79);
}
