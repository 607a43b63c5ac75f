using System.Text;
using TrimOut.Core;
using TrimOut.Core.Facts;
using TrimOut.Core.Units;
using TrimOut.HouseFile.Schedules;
using TrimOut.Testing;

namespace TrimOut.HouseFile.Tests.Schedules;

/// <summary>Files as offices and their programs make them: what a person would read in each is what comes in, or it is said.</summary>
public class AwkwardScheduleTests
{
    private static TestJob In(string csv, out SchedulePlan plan, DisplayUnits units = DisplayUnits.Inches)
    {
        var job = new TestJob(units);
        plan = ScheduleImport.Plan(job.Scribe.Log, Encoding.UTF8.GetBytes(csv), "w.csv", ScheduleOptions.ByHeaders).Value;
        return job.Do(plan.Draft);
    }

    private static Length? Width(TestJob job, string tag) => job.House.FindTag(tag)!.RoughWidth;

    private static Length? Height(TestJob job, string tag) => job.House.FindTag(tag)!.RoughHeight;

    [Theory]
    [InlineData("Smith residence, 12 Elm St\nMark;Room;Width;Height\nW01;Kitchen, north;36;48\n")]
    [InlineData("Smith; second issue, of May\nMark,Room,Width,Height\nW01,\"Kitchen, north\",36,48\n")]
    [InlineData("Smith, second issue\nMark\tRoom\tWidth\tHeight\nW01\tKitchen, north\t36\t48\n")]
    [InlineData("Mark;Room;Width;Height\nW01;Kitchen, north;36;48\n")]
    public void ATitleAboveTheTablePartsNoColumns(string csv)
    {
        var job = In(csv, out var plan);
        Assert.Empty(plan.Problems);
        Assert.Equal(("Kitchen, north", Length.FromInches(36), Length.FromInches(48)),
            (job.House.FindTag("W01")!.Room!.Name, Width(job, "W01"), Height(job, "W01")));
    }

    /// <summary>So a spreadsheet keeps the noughts of a number that stands for a name.</summary>
    [Fact]
    public void AFormulaOfATextIsThatText()
    {
        var job = In("Mark,Room,Width\n=\"007\",\"=\"\"Den\"\"\",36\n", out var plan);
        Assert.Empty(plan.Problems);
        Assert.Equal("Den", job.House.FindTag("007")!.Room!.Name);
    }

    [Theory]
    [InlineData("2.0", 2)]
    [InlineData("2,0", 2)]
    [InlineData("3", 3)]
    public void ACountWithADecimalOfNoughtIsACount(string count, int windows) =>
        Assert.Equal(windows, In($"Mark,Width,Qty\nW01,36,\"{count}\"\n", out _).House.Windows.Length);

    [Theory]
    [InlineData("2.5")]
    [InlineData("2 pcs")]
    [InlineData("0")]
    public void WhatIsNoCountTakesOneAndSaysSo(string count)
    {
        Assert.Single(In($"Mark,Width,Qty\nW01,36,{count}\n", out var plan).House.Windows);
        Assert.Equal(("Qty", "One was taken."), (Assert.Single(plan.Problems).Column, plan.Problems[0].Outcome));
    }

    /// <summary>The unit of the column goes for fractions too, written or printed, in a house of millimeters as well.</summary>
    [Fact]
    public void AFractionHasTheUnitOfItsColumn()
    {
        var job = In("Mark,Width (in),Height (in)\nW01,36½,48 1/4\nW02,30 1⁄2,40-3/8\n", out var plan, DisplayUnits.Millimetres);
        Assert.Empty(plan.Problems);
        Assert.Equal((Length.FromInches(36, 1, 2), Length.FromInches(48, 1, 4)), (Width(job, "W01"), Height(job, "W01")));
        Assert.Equal((Length.FromInches(30, 1, 2), Length.FromInches(40, 3, 8)), (Width(job, "W02"), Height(job, "W02")));
    }

    [Theory]
    [InlineData("36 x 60\"")]
    [InlineData("36 x 60 in.")]
    [InlineData("36 x 60 inches")]
    [InlineData("3 x 5'")]
    [InlineData("3 x 5 feet")]
    [InlineData("36\" W X 60\" H")]
    public void TheUnitBehindASizeGoesForBothOfIt(string size)
    {
        var job = In($"Mark,Size\nW01,\"{size.Replace("\"", "\"\"", StringComparison.Ordinal)}\"\n", out var plan, DisplayUnits.Millimetres);
        Assert.Empty(plan.Problems);
        Assert.Equal((Length.FromInches(36), Length.FromInches(60)), (Width(job, "W01"), Height(job, "W01")));
    }

    [Fact]
    public void AHeaderThatSaysWhatComesFirstIsASizeAndTheOtherWayRoundIsNone()
    {
        Assert.Equal(Length.FromInches(36), Width(In("Mark,Rough Opening (W x H)\nW01,36 x 60\n", out _), "W01"));
        Assert.Contains("Size (HxW)", In("Mark,Room,Size (HxW)\nW01,Den,36 x 60\n", out var plan).House.FindTag("W01")!.RoughWidth is null ? plan.Unused : []);
    }

    /// <summary>An area of square feet is no room, and the number of a row is no tag without a word where there is a column of windows too.</summary>
    [Fact]
    public void AnAreaIsNoRoom()
    {
        var job = In("No.,Window,Area,W,H\n1,W01,12.5,36,48\n2,W02,11.25 sq ft,36,48\n", out var plan);
        Assert.Empty(job.House.Rooms);
        Assert.Contains("\"Area\" holds figures, and is taken for no room", plan.Understood);
        Assert.Contains("tag is taken from \"No.\"; \"Window\" would fit too", plan.Understood);
        Assert.Equal("Bed wing", In("Tag,Area,W\nW01,Bed wing,36\n", out _).House.FindTag("W01")!.Room!.Name);
    }

    /// <summary>Of a unit and its opening the opening is the rough size, whatever stands behind both.</summary>
    [Fact]
    public void WhatStandsBehindAGroupOfColumnsIsNotOfTheGroup()
    {
        var job = In(",Unit,,Rough opening,,,\nMark,Width,Height,Width,Height,Location,Remarks\nW01,35,47,36,48,Den,first\n", out _);
        Assert.Equal((Length.FromInches(36), Length.FromInches(48)), (Width(job, "W01"), Height(job, "W01")));
        Assert.Equal(("Den", "first"), (job.House.FindTag("W01")!.Room!.Name, job.House.FindTag("W01")!.Show(WindowFacts.Note)));
    }

    [Theory]
    [InlineData("North", "N")]
    [InlineData("north-east", "NE")]
    [InlineData("South West", "SW")]
    [InlineData("SOUTHSOUTHWEST", "SSW")]
    public void AWordForASideOfTheWorldIsThatSide(string word, string point) =>
        Assert.Equal(point, In($"Mark,Facing\nW01,{word}\n", out _).House.FindTag("W01")!.Show(WindowFacts.Facing));

    [Theory]
    [InlineData("north corner")]
    [InlineData("northnorth")]
    [InlineData("NO")]
    public void WhatIsNoSideOfTheWorldIsSaid(string word)
    {
        In($"Mark,Facing\nW01,{word}\n", out var plan);
        Assert.Equal("Facing", Assert.Single(plan.Problems).Column);
    }

    /// <summary>A blank takes nothing away, and is not passed over either.</summary>
    [Fact]
    public void WhatARevisedScheduleHasBlankIsSaid()
    {
        var job = In("tag,width,height,mount,note\nW01,36,48,inside,by the stair\nW02,30,48,,\n", out _);
        SchedulePlan Revised(string csv) =>
            ScheduleImport.Plan(job.Scribe.Log, Encoding.UTF8.GetBytes(csv), "w.csv", ScheduleOptions.ByHeaders with { Revised = true }).Value;
        var plan = Revised("tag,width,height,mount,note\nW01,,48,,\nW02,30,48,,\n");
        Assert.False(plan.Changes);
        Assert.Equal([("W01", "Rough width", "36\"", "nothing"), ("W01", "Mount", "inside", "nothing")],
            plan.Revised.Select(r => (r.Tag, r.Label, r.Here, r.There)));
        Assert.All(plan.Revised, r => Assert.StartsWith("a blank in a schedule takes nothing away", r.KeptBecause, StringComparison.Ordinal));
        // A schedule without the column says nothing of it.
        Assert.Empty(Revised("tag,height\nW01,48\nW02,48\n").Revised);
        // One size in a cell is both.
        Assert.Empty(Revised("tag,width,height,size\nW01,,,36 x 48\nW02,,,30 x 48\n").Revised);
    }
}
