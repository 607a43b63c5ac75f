using Microsoft.Extensions.Time.Testing;
using TrimOut.Core.Checks;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Plans.Firm;
using TrimOut.Screens.Firm;
using TrimOut.Testing;

namespace TrimOut.Screens.Tests.Stories;

/// <summary>From the list of houses to all houses with what is said of them, from list to list, and into one of them.</summary>
public class FirmTests
{
    private static readonly FakeTimeProvider Clock = new(new DateTimeOffset(2026, 3, 16, 8, 0, 0, TimeSpan.Zero));

    [Fact]
    public void AllHousesAreSeenWithWhatIsDueAndOneIsOpened()
    {
        var job = new TestJob().Window("W01");
        job.Do(QuickPeople.Visit(job.House, "2026-03-20 Hang upstairs").Value);
        var board = new Board
        {
            Rows =
            [
                new FirmRow("samples/corner", HouseSummary.Of(job.Scribe.Log, CheckReport.Of(job.House)), null, Stale: false),
                new FirmRow("houses/bad.trimout", null, "houses/bad.trimout is no house file.", Stale: false),
                new FirmRow("houses/new.trimout", null, null, Stale: true),
            ],
        };
        using var user = new TerminalUser(new TestDesk(Clock) { AllHouses = board });
        user.Press("J").Sees("All houses").Sees("Test house").Sees("can't be opened: houses/bad").Sees("not read yet")
            .Sees("1 to be read again (~)");
        board.Rows = [.. board.Rows.Take(2)];
        user.Press("right", "right", "right", "right").Sees("2026-03-20 visit: Hang").Sees("1 of 2 houses").Sees("1 can't be opened");
        user.Press("right", "right").Sees("No house is in this list: Not arrived.").Press("left", "left").Press("enter").Sees("Corner house");
    }

    [Fact]
    public void APaperIsWrittenOverTheHousesThatAreListed()
    {
        var job = new TestJob().Window("W01");
        var summary = HouseSummary.Of(job.Scribe.Log, CheckReport.Of(job.House));
        var desk = new TestDesk(Clock)
        {
            AllHouses = new Board
            {
                Rows = [new FirmRow("a.trimout", summary, null, false), new FirmRow("b.trimout", summary with { Name = "Oak" }, null, false)],
            },
        };
        using var user = new TerminalUser(desk);
        user.Press("J", "/").Type("Oak").Press("w").Type("call-off").Sees("Written: call-off.md.");
        user.Press("esc", "right", "right", "right", "left", "left", "left", "w").Type("week-plan");
        Assert.Equal(["call-off of 1 of 2 by Oak", "week-plan of 2 of 2 by "], desk.Written);
    }

    /// <summary>On March 16th that of March 1st is late for 15 days, that of the 2nd for 14.</summary>
    [Theory]
    [InlineData("2026-03-01", "2026-03-20")]
    [InlineData("2026-03-02", "2026-03-02")]
    public void WhatIsLateForWeeksStandsBehindWhatIsPressingNow(string late, string first)
    {
        var job = new TestJob().Window("W01");
        job.Do(QuickPeople.Visit(job.House, late + " Hang").Value).Do(j => QuickPeople.Visit(j.House, "2026-03-20 Pair").Value);
        var summary = HouseSummary.Of(job.Scribe.Log, CheckReport.Of(job.House));
        Assert.StartsWith(first, FirmList.All.Single(l => l.Id == "due").Of(summary, new DateOnly(2026, 3, 16), FirmVisits.Of([summary])).First());
    }

    [Fact]
    public void ARowThatWasMadeAnewIsShownWithTheNextTick()
    {
        var job = new TestJob().Window("W01");
        var board = new Board { Rows = [new FirmRow("houses/new.trimout", null, null, Stale: true)] };
        using var user = new TerminalUser(new TestDesk(Clock) { AllHouses = board });
        user.Press("J").Sees("not read yet");
        board.Rows = [new FirmRow("houses/new.trimout", HouseSummary.Of(job.Scribe.Log, CheckReport.Of(job.House)), null, Stale: false)];
        user.Press("home").Sees("Test house").Sees("0/1");
    }

    [Fact]
    public void InAListOfManyHousesWhatPressesMostStandsOnTop()
    {
        FirmRow Row(string name, string visit)
        {
            var job = new TestJob().Window("W01");
            job.Do(QuickPeople.Visit(job.House, $"{visit} Hang").Value);
            return new($"{name}.trimout", HouseSummary.Of(job.Scribe.Log, CheckReport.Of(job.House)) with { Name = name }, null, false);
        }
        // On March 16th the visit of February is long late: it waits behind what can still be met.
        var board = new Board { Rows = [Row("Ash", "2026-03-20"), Row("Birch", "2026-02-02"), Row("Cedar", "2026-03-17"), Row("Elm", "2026-04-20")] };
        using var user = new TerminalUser(new TestDesk(Clock) { AllHouses = board });
        string Listed() => string.Join(' ', user.Shell.Draw(80, 24).ToText().Split('\n').Skip(3).TakeWhile(l => l.Length > 1)
            .Select(l => l.Trim().Split(' ')[0]).Where(w => w is "Ash" or "Birch" or "Cedar" or "Elm"));
        user.Press("J").DoesNotSee("pressing first");
        Assert.Equal("Ash Birch Cedar Elm", Listed());
        user.Press("right", "right", "right", "right").Sees("4 of 4 houses; the most pressing first").Sees("Cedar: 2026-03-17");
        Assert.Equal("Cedar Ash Elm Birch", Listed());
        // On a house that was gone to the cursor stays, from list to list.
        user.Press("down", "down").Sees("Elm: 2026-04-20").Press("left", "left", "left", "left").Sees("Elm: next");
    }

    [Fact]
    public void WhatWasPutOffFromTheOfficeAndWhatIsNotThereIsSaidOfAHouse()
    {
        var job = new TestJob().Window("W01");
        var summary = HouseSummary.Of(job.Scribe.Log, CheckReport.Of(job.House));
        FirmRow Row(string name, (int, int)? atOffice) => new($"{name}.trimout", summary with { Name = name }, null, false) { AtOffice = atOffice };
        var board = new Board { Rows = [Row("Ash", (14, 0)), Row("Birch", (0, 3)), Row("Cedar", (0, 0)), Row("Elm", null)] };
        using var user = new TerminalUser(new TestDesk(Clock) { AllHouses = board });
        user.Press("J").Sees("3 put off; next: ").Sees("; 14 not at office").DoesNotSee("0 put off").DoesNotSee("0 not at office");
        user.Press("/").Type("put off").Sees("1 of 4 houses").Sees("Birch").DoesNotSee("Ash");
        user.Press("esc", "/").Type("not at office").Sees("1 of 4 houses").Sees("Ash").DoesNotSee("Birch");
    }

    private sealed class Board : IFirmBoard
    {
        public IReadOnlyList<FirmRow> Rows { get; set => Now = new FirmHousesNow(field = value, value.Count(r => r.Stale)); } = [];

        public FirmHousesNow Now { get; private set; } = new([], 0);

        public void Stop()
        {
        }
    }

    /// <summary>The rows beside it go and come while nobody touches a key: what is opened is the house that the cursor was put on.</summary>
    [Fact]
    public void TheCursorStaysOnItsHouseWhileOthersComeAndGo()
    {
        var job = new TestJob().Window("W01");
        var summary = HouseSummary.Of(job.Scribe.Log, CheckReport.Of(job.House));
        FirmRow Row(string path, string name) => new(path, summary with { Name = name }, null, Stale: false);
        var board = new Board { Rows = [Row("ash.trimout", "Ash"), Row("samples/corner", "Corner"), Row("oak.trimout", "Oak")] };
        using var user = new TerminalUser(new TestDesk(Clock) { AllHouses = board });
        user.Press("J", "down").Sees("samples/corner");
        Assert.True(user.Shell.Ticks);
        board.Rows = [Row("a-new.trimout", "New"), .. board.Rows];
        user.Shell.Tick();
        Assert.Contains("4 of 4 houses", user.Shell.Draw(80, 24).ToText(), StringComparison.Ordinal);
        board.Rows = [.. board.Rows.Where(r => r.Path != "ash.trimout").Reverse()];
        user.Shell.Tick();
        Assert.Contains("3 of 3 houses", user.Shell.Draw(80, 24).ToText(), StringComparison.Ordinal);
        user.Press("enter").Sees("Corner house");
    }

    /// <summary>Ada and Bo measured one window each on their own laptop; the third house has nothing of that.</summary>
    [Fact]
    public void AHouseInWhichTwoLaptopsDisagreeIsMarkedAndHasAListOfItsOwn()
    {
        var start = new TestJob().Window("W01").Scribe.Log.Changes;
        var (ada, bo) = (new TestJob(store: new MemoryStore("ada", start)), new TestJob(store: new MemoryStore("bo", start)));
        ada.Say("W01", WindowFacts.RoughWidth, "36");
        bo.Say("W01", WindowFacts.RoughWidth, "37");
        var both = Merge.Of(ada.Scribe.Log, bo.Scribe.Log).Value.Merged;
        FirmRow Row(string name, HouseLog log) => new($"{name}.trimout", HouseSummary.Of(log, CheckReport.Of(log.House)) with { Name = name }, null, false);
        var board = new Board { Rows = [Row("Alder", ada.Scribe.Log), Row("Birch", both)] };
        using var user = new TerminalUser(new TestDesk(Clock) { AllHouses = board });
        var lines = user.Press("J").Sees("1 in conflict; next: ").Shell.Draw(80, 24).ToText().Split('\n');
        Assert.Matches("^ Birch +x", lines.Single(l => l.Contains("Birch", StringComparison.Ordinal)));
        Assert.DoesNotMatch("^ Alder +x", lines.First(l => l.Contains("Alder", StringComparison.Ordinal)));
        user.Press("right", "right").Sees("1 of 2 houses").Sees("W01: Rough width").DoesNotSee("Alder");
        Assert.Equal(["W01: Rough width"], FirmList.All.Single(l => l.Id == "conflicts")
            .Of(board.Rows[1].Summary!, new DateOnly(2026, 3, 16), FirmVisits.Of([])));
        user.Press("left", "left", "/").Type("conflict").Sees("1 of 2 houses").DoesNotSee("Alder");
    }

    [Fact]
    public void WhatDoesNotFitTheRowStandsBelowAndTheListIsCopied()
    {
        var job = new TestJob();
        foreach (var day in Enumerable.Range(16, 7))
            job.Do(QuickPeople.Visit(job.House, $"2026-03-{day} Hang number {day} upstairs").Value);
        var board = new Board { Rows = [new FirmRow("a.trimout", HouseSummary.Of(job.Scribe.Log, CheckReport.Of(job.House)), null, false)] };
        using var user = new TerminalUser(new TestDesk(Clock) { AllHouses = board });
        user.Press("J", "right", "right", "right", "right").Sees("2026-03-21 visit: Hang number 21");
        user.Press("Y").Sees("the list of All houses");
    }

    [Fact]
    public void FromAHouseOneComesBackToTheListWithItsFilterAndRow()
    {
        var job = new TestJob().Window("W01");
        var summary = HouseSummary.Of(job.Scribe.Log, CheckReport.Of(job.House));
        var board = new Board
        {
            Rows = [new FirmRow("samples/other", summary with { Name = "Oak one" }, null, false),
                new FirmRow("samples/corner", summary with { Name = "Oak two" }, null, false)],
        };
        using var user = new TerminalUser(new TestDesk(Clock) { AllHouses = board });
        user.Press("J", "/").Type("Oak").Press("down", "enter").Sees("Corner house").Press("esc", "y").Sees("All houses").Sees("Oak two");
        var screen = Assert.IsType<FirmScreen>(user.Shell.Screen);
        Assert.Equal(("Oak", "samples/corner"), (screen.Search, screen.Current(user.Shell.Context)!.Path));
    }
}
