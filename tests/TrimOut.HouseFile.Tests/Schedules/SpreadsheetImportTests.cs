using System.IO.Compression;
using TrimOut.Core;
using TrimOut.Core.Facts;
using TrimOut.Core.Units;
using TrimOut.HouseFile.Schedules;
using TrimOut.Testing;

namespace TrimOut.HouseFile.Tests.Schedules;

public class SpreadsheetImportTests
{
    private readonly TestJob _job = new();

    private Result<SchedulePlan> Plan(byte[] file, ScheduleOptions? options = null) =>
        ScheduleImport.Plan(_job.Scribe.Log, file, "windows.xlsx", options ?? ScheduleOptions.ByHeaders);

    private static byte[] Book(object?[][] rows, params string[] merged) => SmallBook.Of(("Windows", false, rows, merged));

    private Length Width(string tag) => _job.House.FindTag(tag)!.RoughWidth!.Value;

    /// <summary>Of the older format an error can't be told from a blank, and that is said.</summary>
    [Fact]
    public void AnOldSpreadsheetIsReadAndItIsSaidThatItsErrorsLookBlank()
    {
        var plan = Plan(OldBook.Of(["Tag", "Room", "Width (in)", "Height (in)"], ["W01", "Kitchen", 36.5, 60.0], ["W02", "Kitchen", null, 48.0])).Value;
        Assert.Equal([("W01", "36 1/2\"", "60\""), ("W02", "", "48\"")], plan.Windows.Select(w => (w.Tag, w.Width, w.Height)));
        Assert.Contains(plan.Understood, u => u.Contains("an .xls shows a cell with an error as blank", StringComparison.Ordinal));
    }

    [Fact]
    public void TheSheetOfAnOfficeComesInWithItsMergedCellsTotalsAndNotes()
    {
        var plan = Plan(Book(
        [
            ["WINDOW SCHEDULE", null, null, null, null],
            ["Mark", "Room", "Rough opening", null, "Unit"],
            [null, null, "Width", "Height", "Width"],
            ["W01", "Kitchen", 45.5, "4'-0\"", 44.25],
            ["W02", null, 36, 48, 35],
            ["Total", null, 2, null, null],
            ["All sizes are rough openings", null, null, null, null],
        ], "A1:E1", "A2:A3", "B2:B3", "C2:D2", "B4:B5", "A7:E7")).Value;
        Assert.Empty(plan.Problems);
        Assert.Equal("Windows", plan.Sheet);
        _job.Do(plan.Draft);
        Assert.Equal(["W01", "W02"], _job.House.Windows.Select(w => w.Tag));
        Assert.Equal(["Kitchen"], _job.House.Windows.Select(w => w.Room!.Name).Distinct());
        Assert.Equal(Length.FromInches(45, 1, 2), Width("W01"));
        Assert.Equal(Length.FromInches(36), Width("W02"));
        Assert.Equal(Length.FromInches(48), _job.House.FindTag("W01")!.RoughHeight);
        Assert.Equal([
            "width is taken from \"Rough opening Width\"; \"Unit Width\" would fit too", "line 3 is the header; above it 1 left out: \"WINDOW SCHEDULE\"",
            "line 6 left out: it is a row of totals", "line 7 left out: it is a note",
        ], plan.Understood.ToArray());
    }

    [Fact]
    public void AUnitInTheFormatOfANumberGoesForThatNumber()
    {
        _job.Do(Plan(Book([["Tag", "Width", "Height"], ["W01", (915.0, 1), (60.5, 2)], ["W02", 30, 40]])).Value.Draft);
        Assert.Equal(Length.FromMillimetres(915), Width("W01"));
        Assert.Equal(Length.FromInches(60, 1, 2), _job.House.FindTag("W01")!.RoughHeight);
        Assert.Equal(Length.FromInches(30), Width("W02"));
    }

    /// <summary>Formats have a part of their own for what is below nought, and units end with a point.</summary>
    [Fact]
    public void AUnitInAFormatOfSeveralPartsGoesToo()
    {
        _job.Do(Plan(Book([["Tag", "Width", "Height"], ["W01", (915.0, 4), (60.5, 5)]])).Value.Draft);
        Assert.Equal((Length.FromMillimetres(915), Length.FromInches(60, 1, 2)), (Width("W01"), _job.House.FindTag("W01")!.RoughHeight));
    }

    /// <summary>A width that the office's spreadsheet lost the source of is not one that nobody gave.</summary>
    [Fact]
    public void ACellThatCouldNotBeWorkedOutIsSaidAndNotBlank()
    {
        var plan = Plan(Book([["Tag", "Room", "Width", "Height"], ["W01", "Hall", "#REF!", 40], ["W02", "#REF!", 30, 40], ["#REF!", "Hall", 30, 40]])).Value;
        Assert.Equal([(2, "Width", false), (3, "Room", false), (4, "Tag", true)], plan.Problems.Select(p => (p.Line, p.Column, p.RowLost)));
        Assert.All(plan.Problems, p => Assert.StartsWith("#REF! is an error of the spreadsheet, and no value.", p.Reason, StringComparison.Ordinal));
        Assert.Equal(["W01", "W02"], plan.Windows.Select(w => w.Tag));
        Assert.Equal("Hall", Assert.Single(plan.NewRooms));
    }

    [Fact]
    public void AFormulaThatWasNeverWorkedOutIsSaidAndNotBlank()
    {
        var plan = Plan(Book([["Tag", "Width", "Height", "Note"], ["W01", "=B1+1", 40, null]])).Value;
        Assert.Equal((2, "Width", "there is a formula without a value: open it in a spreadsheet, and save it again."),
            (Assert.Single(plan.Problems).Line, plan.Problems[0].Column, plan.Problems[0].Reason));
    }

    [Fact]
    public void ATagThatASpreadsheetMadeADateOfIsSaid()
    {
        var plan = Plan(Book([["Tag", "Width"], [(46_115.0, 3), 30]])).Value;
        var said = Assert.Single(plan.Problems);
        Assert.True(said.Taken);
        Assert.StartsWith("\"2026-04-03\" is a date", said.Reason, StringComparison.Ordinal);
    }

    /// <summary>An office has a sheet for each floor: whoever takes in the first must know of the others.</summary>
    [Fact]
    public void OtherSheetsWithTagsAreNamed()
    {
        object?[][] Of(string tag) => [["Tag", "Room", "Width"], [tag, "Hall", 30]];
        var file = SmallBook.Of(("Ground", false, Of("W01"), []), ("Upper", false, Of("W02"), []), ("Legend", false, [["Sign", "Meaning"]], []));
        var plan = Plan(file).Value;
        Assert.Equal(("Ground", "nothing is taken from another sheet with tags: Upper; trimout import --sheet \"Upper\" takes in that one"),
            (plan.Sheet, Assert.Single(plan.Understood)));
        Assert.Empty(Plan(file, ScheduleOptions.ByHeaders with { Sheet = "Upper" }).Value.Understood);
    }

    [Fact]
    public void TheSheetWithTheMostIsTakenAndAnotherOnlyWhenItIsNamed()
    {
        object?[][] doors = [["Tag", "Room"], ["D01", "Hall"]];
        object?[][] windows = [["Tag", "Room", "Width"], ["W01", "Hall", 30]];
        object?[][] old = [["Tag", "Room", "Width", "Height"], ["X01", "Hall", 30, 40]];
        var file = SmallBook.Of(("Doors", false, doors, []), ("Windows", false, windows, []), ("Old", true, old, []));
        Assert.Equal(["W01"], Plan(file).Value.Windows.Select(w => w.Tag));
        Assert.Equal(["D01"], Plan(file, ScheduleOptions.ByHeaders with { Sheet = "doors" }).Value.Windows.Select(w => w.Tag));
        Assert.Contains("There are: Doors, Windows.", Plan(file, ScheduleOptions.ByHeaders with { Sheet = "Old" }).Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void AProblemNamesTheRowOfTheSheet() =>
        Assert.Equal([3], Plan(Book([["Tag", "Width"], ["W01", 30], ["W02", "wide"]])).Value.Problems.Select(p => p.Line));

    [Fact]
    public void AFileThatOnlyBeginsLikeASpreadsheetIsRefusedInWords()
    {
        var whole = Book([["Tag", "Width"], ["W01", 30]]);
        Assert.All(new byte[][] { [.. "PK\x3\x4"u8, 1, 2, 3], whole[..(whole.Length / 2)], [0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1, 0, 0] },
            file => Assert.Contains("can't be read as one", Plan(file).Reason, StringComparison.Ordinal));
    }

    [Fact]
    public void BrokenBytesWithinOneEndNothing()
    {
        var random = new Random(11);
        var whole = Book([["Tag", "Room", "Width"], ["W01", "Den", 30], ["W02", null, 31]], "B2:B3");
        for (var round = 0; round < 300; round++)
        {
            var file = (byte[])whole.Clone();
            for (var broken = 0; broken < 3; broken++)
                file[random.Next(4, file.Length)] = (byte)random.Next(256);
            var plan = Plan(file);
            Assert.True(plan.Ok || plan.Reason!.Length > 0);
        }
    }

    /// <summary>A gigabyte of the same letter is a megabyte in a ZIP.</summary>
    [Fact]
    public void WhatIsHugeOnceItIsUnpackedIsRefusedBeforeItIs()
    {
        using var file = new MemoryStream();
        using (var zip = new ZipArchive(file, ZipArchiveMode.Create, leaveOpen: true))
        {
            using var part = zip.CreateEntry("xl/sharedStrings.xml").Open();
            for (var piece = 0; piece < 300; piece++)
                part.Write(new byte[1 << 20]);
        }
        var before = GC.GetAllocatedBytesForCurrentThread();
        Assert.Contains("Unpacked it has more than", Plan(file.ToArray()).Reason, StringComparison.Ordinal);
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 20_000_000);
    }

    [Fact]
    public void TooManyRowsAreRefused()
    {
        var rows = Enumerable.Range(0, 5_002).Select(at => at == 0 ? new object?[] { "Tag", "Width" } : [$"W{at}", 30]).ToArray();
        Assert.Contains("more than 5000 rows", Plan(Book(rows)).Reason, StringComparison.Ordinal);
    }
}
