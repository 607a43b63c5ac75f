namespace TrimOut.Tests.Verbs;

public sealed class ImportVerbTests : IDisposable
{
    private readonly RunTrimOut _run = new();

    public ImportVerbTests() => Assert.Equal(0, _run.Run("new", "elm").Code);

    public void Dispose() => _run.Dispose();

    private Ended Import(string csv, params string[] more)
    {
        File.WriteAllText(_run.In("s.csv"), csv);
        return _run.Run(["import", "elm.trimout", "s.csv", .. more]);
    }

    private int Changes() => _run.Run("history", "elm.trimout").Output.Split('\n').Length - 1;

    [Fact]
    public void AScheduleIsImportedAsOneChange()
    {
        var ended = Import("Mark,Room,Size\nW01,Den,4050\nW02,Den,2668\n");
        Assert.Equal(0, ended.Code);
        Assert.Equal("W01\tDen\t48\"\t60\"\nW02\tDen\t30\"\t80\"\n", ended.Output.ReplaceLineEndings("\n"));
        Assert.Contains("W01: 4050 read as 4'-0\" wide by 5'-0\" high", ended.Error);
        Assert.Equal(2, Changes());
    }

    [Fact]
    public void WhatCouldNotBeReadIsListedAndSaidByTheExitCode()
    {
        var ended = Import("Mark,Width\nW01,wide\nW02,30\n");
        Assert.Equal(2, ended.Code);
        Assert.Contains("Line 2, column Width: \"wide\" is no length.", ended.Error);
        Assert.Equal(2, Changes());
    }

    [Fact]
    public void ATryImportsNothing()
    {
        Assert.Equal(0, Import("Mark,Width\nW01,30\n", "--try").Code);
        Assert.Equal(1, Changes());
    }

    [Fact]
    public void AWindowOnOrderIsNotLeftOutByAWordForAllThatAreGone()
    {
        Assert.Equal(0, Import("Mark,Width,Lead side\nW01,30,left\nW02,30,left\nW03,30,left\n").Code);
        Assert.Equal(0, _run.RunWith("W01\torder width\t29\nW01\torder height\t40\n"
            + "W01\tordered on\t2026-03-01\nW03\ttail at window\t36\n", "set", "elm.trimout").Code);
        var ended = Import("Mark,Width,Lead side\nW03,30,right\n", "--revised", "--gone", "leave-out");
        Assert.Contains("W03, Lead side: left here, right in the schedule. Kept: the cable of W03 lies in the wall: look at it with the office", ended.Error);
        Assert.Contains("Not in this schedule, and noted as gone: W01.", ended.Error);
        Assert.Contains("Not in this schedule, and left out: W02.", ended.Error);
        Assert.Contains("W01 is gone from the schedule, and W01 is on order: leave it out on the job sheet if it is not wanted.", ended.Error);
        var lines = _run.Run("windows", "elm.trimout").Output.ReplaceLineEndings("\n").Split('\n');
        Assert.Equal([false, true], new[] { "W01", "W02" }.Select(t =>
            lines.Single(l => l.StartsWith(t, StringComparison.Ordinal)).Contains("gone from the schedule of", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("Mark,Width\n\"W01,30\nW02,30\n", "Line 2: a quote")]
    [InlineData("color\nred\n", "The columns are: color.")]
    [InlineData("Mark,Width\n,30\n", "No window could be read")]
    public void ABrokenFileImportsNothing(string csv, string said)
    {
        var ended = Import(csv);
        Assert.Equal(65, ended.Code);
        Assert.Contains(said, ended.Error);
        Assert.Equal(1, Changes());
    }

    [Fact]
    public void ColumnsAndRoomAndUnitsCanBeSaid()
    {
        var ended = Import("a,b\nW01,900\n", "--column", "tag=a", "--column", "width=b", "--room", "Hall", "--units", "mm");
        Assert.Equal("W01\tHall\t900 mm\t", ended.Output.TrimEnd('\r', '\n'));
        Assert.Equal(64, Import("a,b\nW01,900\n", "--column", "width").Code);
        Assert.Equal(64, Import("a,b\nW01,900\n", "--column", "price=b").Code);
    }

    [Fact]
    public void ColumnsThatWereSaidAreKeptForTheNextScheduleOfThatOffice()
    {
        Assert.Equal(0, Import("a,b\nW01,30\n", "--column", "tag=a", "--column", "width=b", "--keep-columns", "office.txt").Code);
        Assert.Equal("tag=a\nwidth=b\n", File.ReadAllText(_run.In("office.txt")).ReplaceLineEndings("\n"));
        Assert.Equal("W02\t\t31\"\t\n", Import("a,b\nW02,31\n", "--columns", "office.txt").Output.ReplaceLineEndings("\n"));
        Assert.Equal(66, Import("a,b\nW03,31\n", "--columns", "nowhere.txt").Code);
        Assert.Equal(73, Import("Mark,Width\nW03,31\n", "--keep-columns", ".", "--try").Code);
        var house = File.ReadAllBytes(_run.In("elm.trimout"));
        Assert.Equal(73, Import("Mark,Width\nW03,31\n", "--keep-columns", "elm.trimout", "--try").Code);
        Assert.Equal(73, Import("Mark,Width\nW03,31\n", "--keep-columns", "s.csv", "--try").Code);
        Assert.Equal(house, File.ReadAllBytes(_run.In("elm.trimout")));
    }

    [Fact]
    public void ARevisedScheduleIsComparedAndWhatWasTypedStays()
    {
        Assert.Equal(0, Import("Mark,Width\nW01,30\nW02,40\nW03,50\n").Code);
        Assert.Equal(0, _run.RunWith("W02\trough width\t41\n", "set", "elm.trimout").Code);
        var ended = Import("Mark,Width\nW01,31\nW02,42\nW04,60\n", "--revised");
        Assert.Equal(0, ended.Code);
        Assert.Contains("W01, Rough width: 30\" here, 31\" in the schedule. Taken.", ended.Error, StringComparison.Ordinal);
        Assert.Contains("W02, Rough width: 41\" here, 42\" in the schedule. Kept: ", ended.Error, StringComparison.Ordinal);
        Assert.Contains("Not in this schedule, and left as they are: W03.", ended.Error, StringComparison.Ordinal);
        Assert.Contains("the house has it all", Import("Mark,Width\nW01,31\n", "--revised").Error, StringComparison.Ordinal);
    }

    [Fact]
    public void AnEncodingOrASheetThatIsNotThereIsSaid()
    {
        Assert.Contains("There is no encoding", Import("Mark,Width\nW01,30\n", "--encoding", "morse").Error, StringComparison.Ordinal);
        Assert.Contains("has no sheet \"Doors\"", Import("Mark,Width\nW01,30\n", "--sheet", "Doors").Error, StringComparison.Ordinal);
    }
}
