using System.Globalization;
using System.Text;
using TrimOut.Core;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;
using TrimOut.HouseFile.Schedules;
using TrimOut.Testing;

namespace TrimOut.HouseFile.Tests.Schedules;

/// <summary>Windows of building models, written by hand by the tables of ISO 16739 and ISO 10303-21: where each stands and looks is known before.</summary>
public class IfcImportTests
{
    /// <summary>A house of 10 by 8 units with a window in the middle of each wall: its name, place, the way along its wall, where it looks.</summary>
    private static readonly (string Mark, double X, double Y, double Along, double AlongY, string Looks)[] Walls =
    [
        ("S1", 5, 0, 1, 0, "S"), ("E1", 10, 4, 0, 1, "E"), ("N1", 5, 8, -1, 0, "N"), ("W1", 0, 4, 0, -1, "W"),
    ];

    private static Result<SchedulePlan> Plan(string text, TestJob? job = null) =>
        ScheduleImport.Plan((job ?? new TestJob()).Scribe.Log, Encoding.UTF8.GetBytes(text), "house.ifc", ScheduleOptions.ByHeaders);

    private static string Model(string unit, double width, double height, string trueNorth = "$", string window = "IFCWINDOW", string more = "")
    {
        var text = new StringBuilder($"""
            ISO-10303-21;
            HEADER; FILE_SCHEMA(('IFC4')); ENDSEC;
            DATA;
            {unit}
            #5=IFCCARTESIANPOINT((0.,0.,0.));
            #6=IFCAXIS2PLACEMENT3D(#5,$,$);
            #7=IFCLOCALPLACEMENT($,#6);
            #8=IFCDIRECTION((0.,0.,1.));
            #9=IFCGEOMETRICREPRESENTATIONCONTEXT($,'Model',3,0.01,#6,{trueNorth});
            #11=IFCBUILDINGSTOREY('s',$,'\X2\00C9\X0\tage; 1',$,$,#7,$,$,.ELEMENT.,0.);
            #12=IFCSPACE('r',$,'101',$,$,#7,$,'Owner''s room',.ELEMENT.,.INTERNAL.,$);
            {more}

            """);
        foreach (var (at, wall) in Walls.Index())
        {
            var id = 100 + 20 * at;
            text.AppendLine(CultureInfo.InvariantCulture, $"""
                #{id}=IFCCARTESIANPOINT(({wall.X:0.0},{wall.Y:0.0},1.));
                #{id + 1}=IFCDIRECTION(({wall.Along:0.0},{wall.AlongY:0.0},0.));
                #{id + 2}=IFCAXIS2PLACEMENT3D(#{id},#8,#{id + 1});
                #{id + 3}=IFCLOCALPLACEMENT(#7,#{id + 2});
                #{id + 4}={window}('w{at}',$,'Fixed, 36; x 60:{at}',$,$,#{id + 3},$,'T-{at}',{height},{width},$,$,$);
                #{id + 5}=IFCPROPERTYSINGLEVALUE('Mark',$,IFCLABEL('{wall.Mark}'),$);
                #{id + 6}=IFCPROPERTYSET('p{at}',$,'Identity',$,(#{id + 5}));
                #{id + 7}=IFCRELDEFINESBYPROPERTIES('d{at}',$,$,$,(#{id + 4}),#{id + 6});
                #{id + 8}=IFCRELCONTAINEDINSPATIALSTRUCTURE('c{at}',$,$,$,(#{id + 4}),#11);
                """);
        }
        return text.Append("#90=IFCRELSPACEBOUNDARY('b',$,$,$,#12,#104,$,.PHYSICAL.,.EXTERNAL.);\nENDSEC;\nEND-ISO-10303-21;\n").ToString();
    }

    private const string Millimetres = "#1=IFCSIUNIT(*,.LENGTHUNIT.,.MILLI.,.METRE.);\n#2=IFCUNITASSIGNMENT((#1));";

    private const string Feet = """
        #1=IFCSIUNIT(*,.LENGTHUNIT.,$,.METRE.);
        #2=IFCMEASUREWITHUNIT(IFCLENGTHMEASURE(0.3048),#1);
        #3=IFCCONVERSIONBASEDUNIT(#4,.LENGTHUNIT.,'FOOT',#2);
        #10=IFCUNITASSIGNMENT((#3));
        """;

    [Theory]
    [InlineData("IFCWINDOW")]
    [InlineData("IFCWINDOWSTANDARDCASE")]
    public void EachWindowComesWithItsMarkFloorRoomSizeAndTheWayItLooks(string type)
    {
        var job = new TestJob();
        var plan = Plan(Model(Millimetres, 914.4, 1524, window: type), job).Value;
        Assert.Empty(plan.Problems);
        job.Do(plan.Draft);
        Assert.All(Walls, w =>
        {
            var window = job.House.FindTag(w.Mark)!;
            Assert.Equal(w.Looks, window.Show(WindowFacts.Facing));
            Assert.Equal(Length.FromMillimetres(914.4m), window.RoughWidth);
            Assert.Equal(Length.FromMillimetres(1524), window.RoughHeight);
            Assert.Equal("Étage; 1", window.Room!.Item.Get(RoomFacts.Floor));
        });
        Assert.Equal("Owner's room", job.House.FindTag("S1")!.Room!.Name);
        Assert.Equal("Étage; 1", job.House.FindTag("E1")!.Room!.Name);
        Assert.Contains(plan.Understood, u => u.Contains("away from the middle of its floor", StringComparison.Ordinal));
    }

    /// <summary>3 ft are 914.4 mm exactly (international foot, 1959).</summary>
    [Fact]
    public void FeetAreReadAsTheModelSays()
    {
        var job = new TestJob();
        job.Do(Plan(Model(Feet, 3, 5)).Value.Draft);
        Assert.Equal(Length.FromMillimetres(914.4m), job.House.FindTag("S1")!.RoughWidth);
    }

    /// <summary>North of the model points where x and y grow alike, so what looks along y looks 45 degrees to the left of it: to the northwest.</summary>
    [Fact]
    public void ATrueNorthTurnsTheWayTheyLook()
    {
        var job = new TestJob();
        job.Do(Plan(Model(Millimetres, 900, 1500, "#99", more: "#99=IFCDIRECTION((1.,1.));")).Value.Draft);
        Assert.Equal(["SE", "NE", "NW", "SW"], Walls.Select(w => Turned(job.House.FindTag(w.Mark)!)));

        static string Turned(Window window) => window.Show(WindowFacts.Facing)!;
    }

    [Fact]
    public void AWindowIsOnTheFloorOfTheWallAroundIt()
    {
        var text = Model(Millimetres, 900, 1500, more: """
            #70=IFCRELFILLSELEMENT('f',$,$,$,#71,#144);
            #71=IFCOPENINGELEMENT('o',$,$,$,$,$,$,$);
            #72=IFCRELVOIDSELEMENT('v',$,$,$,#73,#71);
            #74=IFCRELCONTAINEDINSPATIALSTRUCTURE('c',$,$,$,(#73),#75);
            #75=IFCBUILDINGSTOREY('s2',$,'Attic',$,$,#7,$,$,.ELEMENT.,3.);
            """).Replace("(#144),#11)", "(),#11)", StringComparison.Ordinal);
        var job = new TestJob();
        job.Do(Plan(text).Value.Draft);
        Assert.Equal("Attic", job.House.FindTag("N1")!.Room!.Item.Get(RoomFacts.Floor));
    }

    [Theory]
    [InlineData("#1=IFCSIUNIT(*,.AREAUNIT.,$,.SQUARE_METRE.);\n#2=IFCUNITASSIGNMENT((#1));", "in which unit")]
    [InlineData("", "in which unit")]
    public void AModelWithoutAUnitIsRefused(string unit, string reason) =>
        Assert.Contains(reason, Plan(Model(unit, 1, 1)).Reason, StringComparison.Ordinal);

    [Fact]
    public void AModelWithoutWindowsIsRefused() =>
        Assert.Contains("no windows", Plan(Model(Millimetres, 1, 1, window: "IFCDOOR")).Reason, StringComparison.Ordinal);

    [Fact]
    public void WhatIsBrokenIsPassedOverAndEndsNothing()
    {
        var text = Model(Millimetres, 900, 1500);
        var random = new Random(7);
        for (var round = 0; round < 200; round++)
        {
            var at = random.Next(30, text.Length - 1);
            var broken = random.Next(3) switch
            {
                0 => text[..at],
                1 => text.Remove(at, Math.Min(random.Next(1, 40), text.Length - at)),
                _ => text.Insert(at, "('#9=;\\X2\\"),
            };
            var plan = Plan(broken);
            Assert.True(plan.Ok ? plan.Value.Windows.Length <= Walls.Length : plan.Reason!.Length > 0);
        }
    }
}
