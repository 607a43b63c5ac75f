using System.Collections.Immutable;
using System.Text;
using TrimOut.Core;
using TrimOut.Core.Facts;
using TrimOut.Core.Units;
using TrimOut.HouseFile.Schedules;
using TrimOut.Testing;

namespace TrimOut.HouseFile.Tests.Schedules;

public class ScheduleImportTests
{
    private readonly TestJob _job = new();

    private Result<SchedulePlan> Plan(string csv, ScheduleOptions? options = null) =>
        ScheduleImport.Plan(_job.House, Encoding.UTF8.GetBytes(csv), "windows.csv", options ?? ScheduleOptions.ByHeaders);

    private static string Problems(SchedulePlan plan) =>
        string.Join("\n", plan.Problems.Select(p => $"{p.Line} {p.Column}: {p.Reason}{(p.RowLost ? " (row)" : "")}"));

    [Fact]
    public void AnOfficeScheduleComesInWhole()
    {
        var plan = Plan(""""
            WINDOW SCHEDULE,,,,,
            Mark,Location,Width,Height,Sill Ht.,Remarks
            W01,Kitchen,"3'-9 1/2""","4'-0""","36""","over sink, ""garden"" side"
            W02,Kitchen,45 1/2",48",,

            ,,,,,
            W03,Stair landing,1156 mm,60,,

            TOTALS,,3,,,
            """".Insert(0, "\ufeff")).Value;
        Assert.Empty(plan.Problems);
        _job.Do(plan.Draft);
        Assert.Equal(["Kitchen", "Stair landing"], _job.House.Rooms.Select(r => r.Name));
        Assert.Equal(Length.FromInches(45, 1, 2), _job.House.FindTag("W01")!.RoughWidth);
        Assert.Equal(Length.FromInches(45, 1, 2), _job.House.FindTag("W02")!.RoughWidth);
        Assert.Equal(Length.FromMillimetres(1156), _job.House.FindTag("W03")!.RoughWidth);
        Assert.Equal("over sink, \"garden\" side. Sill 36\"", _job.House.FindTag("W01")!.Item.Get(WindowFacts.Note));
        Assert.Equal("Stair landing", _job.House.FindTag("W03")!.Room!.Name);
        Assert.NotNull(_job.Unit("W02").Run);
        Assert.Contains(plan.Understood, u => u.Contains("totals"));
    }

    [Fact]
    public void RoomsOfOneNameOnTwoFloorsStayTwoRooms()
    {
        var plan = Plan("tag,room,floor,width\nW01,Kitchen,Main,30\nW02,Kitchen,Upper,30\nW03,kitchen,main,30\nW04,Kitchen,,30\n").Value;
        Assert.Equal("5 room: there is more than one Kitchen, and no floor says which: Kitchen/Main, Kitchen/Upper. It is left without a room.",
            Problems(plan));
        _job.Do(plan.Draft);
        Assert.Equal(["Kitchen/Main", "Kitchen/Upper"], _job.House.Rooms.Select(r => r.FullName));
        Assert.Equal(["W01", "W03"], _job.House.Rooms[0].Windows.Select(w => w.Tag));
    }

    [Fact]
    public void TheWholeImportIsOneChangeAndOneUndo()
    {
        _job.Do(Plan("tag,room,width\nW01,Bath,30\nW02,Hall,30\n").Value.Draft);
        Assert.Equal(2, _job.House.Windows.Length);
        Assert.True(_job.Scribe.Undo().Ok);
        Assert.Empty(_job.House.Windows);
        Assert.Empty(_job.House.Rooms);
    }

    [Fact]
    public void WhatCannotBeReadIsListedByLineAndColumnAndTheRestIsNotLost()
    {
        _job.Window("W09");
        var plan = Plan("""
            Mark,Room,Width,Height,Qty
            W01,Den,45 1/3,60,1
            W02,Den,40 ft,-5,
            ,Den,36,60,
            w01,Den,36,60,
            W09,Den,36,60,
            W03,Den,36,sixty,some
            """).Value;
        Assert.Equal(["W01", "W02", "W03"], plan.Windows.Select(w => w.Tag));
        Assert.Equal("""
            2 Width: 1/3 is on no tape. A tape has halves, quarters, eighths, sixteenths, thirty-seconds and sixty-fourths.
            3 Width: 480" is too long: the most that makes sense here is 360".
            3 Height: A length can't be negative.
            4 Mark: there is no tag. (row)
            5 Mark: tag w01 is on line 2 already. Every window has its own tag. (row)
            6 Mark: tag W09 is in the house already, in Kitchen. (row)
            7 Qty: "some" is no number of windows from 1 to 99. One was taken.
            7 Height: "sixty" is no length. Type something like 45 1/2, 3'-9 1/2" or 1156 mm.
            """, Problems(plan));
        Assert.Equal(("", "60\""), (plan.Windows[0].Width, plan.Windows[0].Height));
    }

    [Fact]
    public void ColumnsThatTheUserNamesAreTaken()
    {
        var named = ImmutableDictionary<ScheduleField, string>.Empty.Add(ScheduleField.Tag, "Type Id").Add(ScheduleField.Width, "B");
        var plan = Plan("Type Id,Width,B\nA,1,40\n", ScheduleOptions.ByHeaders with { Columns = named }).Value;
        Assert.Equal("40\"", plan.Windows.Single().Width);
        Assert.Equal("Width", Assert.Single(plan.Unused));
    }

    [Fact]
    public void AColumnThatIsNotThereIsNamedWithThoseThatAre()
    {
        var columns = ImmutableDictionary<ScheduleField, string>.Empty.Add(ScheduleField.Tag, "Nummer");
        var refused = Plan("Mark,Width\nA,40\n", ScheduleOptions.ByHeaders with { Columns = columns });
        Assert.Equal("No column is headed \"Nummer\" (asked for as tag). The columns are: Mark, Width. Nothing was imported.", refused.Reason);
    }

    [Theory]
    [InlineData("color,price\nred,3\n", "No row names a column with the windows' tags")]
    [InlineData("", "The file is empty")]
    [InlineData("\n , \n", "The file is empty")]
    [InlineData("tag,width\n\"W01,30\nW02,30\n", "Line 2: a quote is opened and not closed")]
    [InlineData("tag,width\nW01,\"30\" x\nW02,30\n", "Line 2: a quote is opened and not closed")]
    [InlineData("tag,note,width\nW00,,3\nW01,45 1/2\",\"abc\nW02,30\n", "Line 3: a quote is opened and not closed")]
    [InlineData("\0\u0001\u0002", "is no text file")]
    public void AFileThatCannotBeReadSaysWhy(string csv, string why) => Assert.Contains(why, Plan(csv).Reason);

    [Fact]
    public void TheUnitInAHeaderGoesForItsBareNumbers()
    {
        var plan = Plan("Tag;Overall Width (mm);Height_in\nA;914.999999999999;60\n").Value;
        Assert.Equal(("915 mm", "60\""), (plan.Windows[0].Width, plan.Windows[0].Height));
    }

    [Fact]
    public void AScheduleThatAModellersExportGives()
    {
        var plan = Plan("""
            GlobalId,Tag,Name,Storey,StoreyElevation,OverallHeight_raw,OverallWidth_raw,OverallWidth_mm,OverallHeight_mm
            0ZB,359493,M_Fixed:0915 x 1830mm:359493,Level 1,0.,1830.,914.999999999999,915.0,1830.0
            0ZC,360741,M_Fixed:0915 x 1830mm:360741,Level 2,4000.,1830.,914.999999999999,915.0,1830.0
            """).Value;
        Assert.Equal("Level 1, Level 2", string.Join(", ", plan.NewRooms));
        Assert.All(plan.Windows, w => Assert.Equal(("915 mm", "1830 mm"), (w.Width, w.Height)));
        Assert.Contains("OverallWidth_raw", plan.Unused);
    }

    [Fact]
    public void SeveralWindowsOfOneMarkGetTagsOfTheirOwn() =>
        Assert.Equal(["A-1", "A-2", "A-3", "B"], Plan("mark,qty,size\nA,3,4050\nB,1,2668\n").Value.Windows.Select(w => w.Tag));

    [Fact]
    public void AUtf16ExportAndAnOldWesternOneAreRead()
    {
        var utf16 = Encoding.Unicode.GetPreamble().Concat(Encoding.Unicode.GetBytes("tag\troom\nW1\tCafé\n")).ToArray();
        var western = Encoding.Latin1.GetBytes("tag,room\nW1,Café\n");
        foreach (var file in new[] { utf16, western })
            Assert.Equal("Café", ScheduleImport.Plan(_job.House, file, "x.csv", ScheduleOptions.ByHeaders).Value.Windows.Single().Room);
    }
}
