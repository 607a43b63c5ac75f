using System.Collections.Immutable;
using System.Text;
using TrimOut.Core;
using TrimOut.Core.Facts;
using TrimOut.Core.Units;
using TrimOut.HouseFile.Schedules;
using TrimOut.Testing;

namespace TrimOut.HouseFile.Tests.Schedules;

/// <summary>An office's columns, named short, wrong, twice, by place and with units: doubt is asked about, and what was understood is said.</summary>
public class NamedColumnsTests
{
    private const string Office = "Mark,Location,Unit width (mm),Unit height (mm),RO width,Remarks\nW01,Kitchen,900,1200,37,over sink\n";

    private readonly TestJob _job = new();

    private static ScheduleOptions Named(params string[] columns) => ScheduleOptions.ByHeaders with
    {
        Columns = columns.Select(c => ScheduleOptions.ReadColumn(c).Value).ToImmutableDictionary(c => c.Key, c => c.Value),
    };

    private Result<SchedulePlan> Plan(string csv, ScheduleOptions options) =>
        ScheduleImport.Plan(_job.Scribe.Log, Encoding.UTF8.GetBytes(csv), "windows.csv", options);

    private static Length? Width(string csv, params string[] columns) => Taken(csv, WindowFacts.RoughWidth, columns);

    private static Length? Taken(string csv, Fact<Length> fact, params string[] columns)
    {
        var job = new TestJob();
        job.Do(ScheduleImport.Plan(job.Scribe.Log, Encoding.UTF8.GetBytes(csv), "windows.csv", Named(columns)).Value.Draft);
        return job.House.FindTag("W01")!.Item.Get(fact);
    }

    /// <summary>Of the three widths in millimetres or inches each name means one.</summary>
    [Theory]
    [InlineData("width=unit w", 900)]
    [InlineData("width=UNIT WIDTH", 900)]
    [InlineData("width=unit-width mm", 900)]
    [InlineData("width=ro", 939.8)]
    [InlineData("width=#5", 939.8)]
    [InlineData("width=hei", 1200)]
    public void AShortNameThatFitsOneColumnIsThatColumn(string named, double millimetres) =>
        Assert.Equal(Length.FromMillimetres((decimal)millimetres), Width(Office, named));

    [Fact]
    public void WhatAShortNameWasReadAsIsSaid()
    {
        Assert.Contains("unit w read as the column \"Unit width (mm)\", for width", Plan(Office, Named("width=unit w")).Value.Understood);
        Assert.DoesNotContain(Plan(Office, Named("width=Unit width (mm)")).Value.Understood, u => u.Contains("read as", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("width=wid", "\"wid\" (asked for as width) fits 2 columns: Unit width (mm), RO width. Write more of the one. Nothing was imported.")]
    [InlineData("width=unit", "\"unit\" (asked for as width) fits 2 columns: Unit width (mm), Unit height (mm). Write more of the one. Nothing was imported.")]
    [InlineData("note=xyz", "No column is headed \"xyz\" (asked for as note). The columns are: Mark, Location, Unit width (mm), Unit height (mm), RO width, "
        + "Remarks. Nothing was imported.")]
    [InlineData("note=#7", "No column is headed \"#7\" (asked for as note). The columns are: Mark, Location, Unit width (mm), Unit height (mm), RO width, "
        + "Remarks. Nothing was imported.")]
    public void ANameThatFitsSeveralIsAskedAboutAndOneThatFitsNoneRefused(string named, string reason)
    {
        Assert.Equal(reason, Plan(Office, Named(named)).Reason);
        // Somebody who can look at the columns is told the same; nothing becomes of the columns meanwhile.
        Assert.Equal(reason, Plan(Office, Named(named) with { Unmapped = true }).Reason);
    }

    /// <summary>A name with a unit is that of a column in that unit: read from the one in the other, 900 would be inches.</summary>
    [Fact]
    public void AColumnThatWasKeptInOneUnitIsNotTakenForOneInAnother()
    {
        const string inches = "Mark,Width (in)\nW01,36\n";
        Assert.StartsWith("No column is headed \"Width (mm)\"", Plan(inches, Named("width=Width (mm)")).Reason, StringComparison.Ordinal);
        var before = Plan(inches, Named("width=Width (mm)", "note=Remarks") with { AsBefore = true }).Value;
        Assert.Contains("not as before: No column is headed \"Width (mm)\" (asked for as width). The columns are: Mark, Width (in)", before.Understood);
        Assert.Contains("not as before: No column is headed \"Remarks\" (asked for as note). The columns are: Mark, Width (in)", before.Understood);
        _job.Do(before.Draft);
        Assert.Equal(Length.FromInches(36), _job.House.FindTag("W01")!.RoughWidth);
    }

    [Fact]
    public void OneColumnForTwoFactsIsSaid() => Assert.Contains("\"Location\" is taken for room and for floor",
        Plan(Office, Named("room=Location", "floor=Location")).Value.Understood);

    [Fact]
    public void AFactIsTakenFromNoColumnWhereThatIsSaid()
    {
        var plan = Plan("Mark,Area,Width\nW01,2.4,36\n", Named("room=")).Value;
        Assert.Empty(plan.NewRooms);
        Assert.Equal(["Area"], plan.Unused.ToArray());
        Assert.Equal("from no column", plan.Columns.Single(c => c.Field == ScheduleField.Room).From);
    }

    [Fact]
    public void TwoColumnsOfOneHeaderAreToldByTheirPlace()
    {
        const string csv = "Mark,Width,Height,Width,Height\nW01,30,40,32,42\n";
        Assert.Equal("\"Width\" (asked for as width) fits 2 columns: #2 Width, #4 Width. Write the place of the one, such as #2. Nothing was imported.",
            Plan(csv, Named("width=Width")).Reason);
        Assert.Equal(Length.FromInches(32), Width(csv, "width=#4"));
        Assert.Contains("width is taken from \"Width\" (#2); \"Width\" (#4) would fit too", Plan(csv, ScheduleOptions.ByHeaders).Value.Understood);
        Assert.Equal("#4", Plan(csv, Named("width=#4")).Value.Columns.Single(c => c.Field == ScheduleField.Width).Name);
    }

    /// <summary>The field is the rough opening; the width of the frame beside it is an inch or so less.</summary>
    [Fact]
    public void TheRoughOpeningIsTakenBeforeAWidthOfNoName()
    {
        const string csv = "Mark,Width,Rough width,RO height,Height\nW01,35,36,48,47\n";
        Assert.Equal((Length.FromInches(36), Length.FromInches(48)), (Width(csv), Taken(csv, WindowFacts.RoughHeight)));
        Assert.Contains("width is taken from \"Rough width\"; \"Width\" would fit too", Plan(csv, ScheduleOptions.ByHeaders).Value.Understood);
    }

    [Theory]
    [InlineData("W (mm)", "w", "900", 900)]
    [InlineData("W [cm]", "w", "90", 900)]
    [InlineData("Width in", "width in", "36", 914.4)]
    [InlineData("Width (ft)", "width", "3", 914.4)]
    [InlineData("Width", "=mm", "900", 900)]
    [InlineData("Width", "Width=cm", "90", 900)]
    [InlineData("Width (in)", "Width (in)=mm", "900", 900)]
    [InlineData("Width (in)", "=mm", "900", 900)]
    public void TheUnitOfAColumnIsThatOfItsHeaderOrWhatSomebodySays(string header, string named, string cell, double millimetres) =>
        Assert.Equal(Length.FromMillimetres((decimal)millimetres), Width($"Mark,{header}\nW01,{cell}\n", $"width={named}"));

    [Fact]
    public void TheUnitOfEachColumnIsToldAndKept()
    {
        var plan = Plan("Mark,Width (in),Height,Sill\nW01,900,120,3\n", Named("width==mm")).Value;
        Assert.Equal(["from \"Mark\"", "from \"Width (in)\", bare numbers in mm", "from \"Height\", bare numbers in inches",
            "from \"Sill\", bare numbers in inches"],
            plan.Columns.Select(c => c.From));
        Assert.Contains("bare numbers below \"Width (in)\" are taken for mm, as you said, and not for in", plan.Understood);
        Assert.Equal("Width (in)=mm", plan.Columns.Where(c => c.Field == ScheduleField.Width).Select(c => c.Name + c.Said).Single());
    }

    [Fact]
    public void EachRowThatIsNoWindowIsListed()
    {
        var plan = Plan("House on the hill,,\nWINDOW SCHEDULE,,\nMark,Room,Width\nGROUND FLOOR,,\nW01,Den,30\nMark,Room,Width\nA,,\n"
            + "Total,,30\nSee sheet A3 too,,\n",
            ScheduleOptions.ByHeaders).Value;
        Assert.Equal(["W01", "A"], plan.Windows.Select(w => w.Tag));
        Assert.Equal([
            "line 3 is the header; above it 2 left out: \"House on the hill\", \"WINDOW SCHEDULE\"", "line 4 left out: it is a heading, \"GROUND FLOOR\"",
            "line 6 left out: it is the header again", "line 8 left out: it is a row of totals", "line 9 left out: it is a note",
        ], plan.Understood.ToArray());
    }

    /// <summary>What we wrote comes back whole, whatever a window is called, and so does a window of that name which the house has.</summary>
    [Fact]
    public void AWindowThatIsCalledLikeAHeadingOrATotalIsAWindowInOurOwnTable()
    {
        var table = WindowTable.Write(_job.Window("Kitchen").Window("Total").Window("By the stair").House);
        Assert.Equal(["Kitchen", "Total", "By the stair"],
            ScheduleImport.Plan(new TestJob().Scribe.Log, Encoding.UTF8.GetBytes(table), "w.csv", ScheduleOptions.ByHeaders).Value.Windows.Select(w => w.Tag));
        Assert.Empty(Plan("Mark,Width\nKitchen,\nBy the stair,\nW01,30\n", ScheduleOptions.ByHeaders with { Revised = true }).Value.Missing.Except(["Total"]));
    }
}
