using TrimOut.Core.Facts;
using TrimOut.Testing;
using TrimOut.TrueHouse.Tests.Runs;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests;

/// <summary>The simulator by itself: held to outside figures, and to houses that work.</summary>
public class TruthTests
{
    [Fact]
    public void ALeaningOpeningHasTheDiagonalsOfTheCosineRule()
    {
        // 36 x 60 in, leaning 1/4 in: parallelogram law, worked by hand outside the project.
        var opening = Polygon.Opening(36, Math.Sqrt((60 * 60) - (0.25 * 0.25)), lean: 0.25);
        Assert.Equal(70.099929, opening.DiagonalUp, 5);
        Assert.Equal(69.842681, opening.DiagonalDown, 5);
        Assert.Equal(35.75, opening.PlumbWidth, 9);
        Assert.Equal(36, opening.WidthAt(30), 9);
        Assert.Equal(0.25, opening.Lean, 9);
    }

    [Fact]
    public void ABowedOpeningIsNarrowestAtItsMiddle()
    {
        var opening = Polygon.Opening(1000, 1500, bow: 6);
        Assert.Equal(988, opening.WidthAt(750), 9);
        Assert.Equal(988, opening.PlumbWidth, 9);
        Assert.True(opening.WidthAt(1475) > 999);
    }

    [Theory]
    [InlineData(18, false, 30.48, 20, 1.2770)] // 100 ft of solid 18 AWG at 20 C; IACS copper.
    [InlineData(18, false, 30, 20, 1.2569)]
    [InlineData(16, true, 30.48, 75, 0.998)] // NFPA 70-2017 chapter 9 table 8: 4.99 ohm per 1000 ft at 75 C.
    public void ALoopHasTheOhmsOfThePublishedTables(int gauge, bool stranded, double metres, double celsius, double ohms)
    {
        var cable = Cable(gauge, stranded, metres);
        Assert.Equal(ohms, cable.Ohms(Stage.Pulled, celsius), 3);
    }

    [Fact]
    public void AShortReadsTheCableBeforeItAndACutReadsNothing()
    {
        var cable = Cable(18, false, 40);
        var whole = cable.Ohms(Stage.Pulled, 20);
        Assert.Equal(double.PositiveInfinity, cable.Ohms(Stage.Pulled, 20, shorted: false));
        cable.Damages.Add(Damage.Short(10, Stage.CloseIn, 0));
        Assert.Equal(whole, cable.Ohms(Stage.Pulled, 20), 12);
        Assert.Equal(whole / 4, cable.Ohms(Stage.CloseIn, 20), 12);
        Assert.Equal(whole / 4, cable.Ohms(Stage.CloseIn, 20, shorted: false), 12);
        cable.Damages.Clear();
        cable.Damages.Add(Damage.Short(20, Stage.Pulled, 20_000));
        Assert.Equal(20_000 + (whole / 2), cable.Ohms(Stage.Pulled, 20, shorted: false), 6);
        cable.Damages.Add(Damage.Cut(10, Stage.Pulled));
        Assert.Equal(double.PositiveInfinity, cable.Ohms(Stage.Pulled, 20));
    }

    [Fact]
    public void FifteenTurnsOfAFabricMakeARollOfThatManyThicknesses() =>
        Assert.Equal(62 + 0.8, Winding.Room(50, 0.4, (840 * Math.PI) - 1e-6), 9);

    [Fact]
    public void AFaultlessHouseWorks()
    {
        foreach (var seed in Seeds.Faultless)
        {
            var house = RandomHouse.Of(seed);
            var walk = Walk.Through(house, Stage.Sized);
            foreach (var unit in house.Units.Where(u => !u.Opening.Outside))
            {
                var ordered = (double)walk.Book.Unit(unit.Key).Item.Get(UnitFacts.OrderWidth)!.Value.Millimetres;
                var room = unit.PartWidth > 0 ? unit.PartWidth + 0.1 : unit.Opening.Finished.PlumbWidth;
                var made = unit.Kind.MadeWidth ? ordered : ordered - unit.Kind.Deduction;
                Assert.True(made <= room + Unsure(house, unit),
                    $"seed {seed}: {unit.Key} is made {made:0.0} wide and {room:0.0} are there.");
            }
            foreach (var unit in house.Wired)
            {
                var arrives = unit.Panel!.Sheet.Volts - (Math.Max(unit.Kind.Running, unit.Kind.Starting) * unit.Cable!.InLine(Stage.Powered,
                    house.WarmestCable));
                Assert.True(arrives >= unit.Kind.LeastVolts, $"seed {seed}: {arrives:0.00} V arrive at {unit.Key}.");
                Assert.True(unit.Cable.Metres <= unit.Cable.Sheet.LongestRun, $"seed {seed}: the run of {unit.Key} is too long.");
                Assert.True(unit.Cable.TailFound >= (unit.PartWidth > 0 ? unit.PartWidth : unit.Opening.Finished.Width)
                    + (unit.Opening.Outside ? 2 * unit.Opening.Overlap : 0),
                    $"seed {seed}: the tail of {unit.Key} is short.");
            }
            Assert.All(house.Panels, p => Assert.True(house.Wired
                .Where(u => u.Panel == p).Sum(u => Math.Max(u.Kind.Running, u.Kind.Starting)) <= p.Sheet.Total));
        }
    }

    [Fact]
    public void TheTruthKnowsNoFormulaOfTheProgram()
    {
        var folder = Path.Combine(Repository.Root, "tests", "TrimOut.TrueHouse.Tests", "Truth");
        string[] formulas = ["Core.Electrical", "Core.Geometry", "Core.Plans", "Core.Checks", "Core.Units", "Core.Figures"];
        Assert.All(Directory.EnumerateFiles(folder, "*.cs"),
            file => Assert.DoesNotContain(formulas, f => File.ReadAllText(file).Contains(f, StringComparison.Ordinal)));
    }

    [Fact]
    public void ASeedRollsTheSameHouseAndTheSameReadings()
    {
        var (one, other) = (Walk.Through(RandomHouse.Of(7)), Walk.Through(RandomHouse.Of(7)));
        Assert.All(Stages.All, s => Assert.Equal(one.SaidAt(s).Select(x => x.Message), other.SaidAt(s).Select(x => x.Message)));
        Assert.NotEqual(RandomHouse.Of(8).Openings[0].Finished.Width, RandomHouse.Of(7).Openings[0].Finished.Width);
    }

    /// <summary>What hangs plumb is known as well as a tape reads two diagonals and a width.</summary>
    private static double Unsure(RealHouse house, RealUnit unit)
    {
        var shape = unit.Opening.Finished;
        return house.TapeError * (1 + ((shape.DiagonalDown + shape.DiagonalUp) / (2 * shape.Width)));
    }

    private static RealCable Cable(int gauge, bool stranded, double metres)
    {
        var sheet = new CableSheet { Name = "Test", Gauge = gauge, Stranded = stranded, Listing = CableListing.Cl2, LongestRun = 60, Diameter = 5, Box = 100 };
        var cable = new RealCable { Sheet = sheet, Pulled = sheet };
        cable.Legs.Add(new RealLeg { Metres = metres, Direction = LegDirection.Up, Around = CablePlace.InWall });
        return cable;
    }
}
