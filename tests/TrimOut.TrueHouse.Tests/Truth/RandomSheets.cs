using TrimOut.Core.Facts;

namespace TrimOut.TrueHouse.Tests.Truth;

/// <summary>Rolls makers' sheets that are as unlike as sheets can be; no set of them belongs to a maker.</summary>
internal static class RandomSheets
{
    private const double Inch = 25.4;

    public static KindSheet Kind(RealHouse house, Dice dice, string name, RaisedForm form, double volts)
    {
        double Size(double least, double most) => house.OnTape(dice.Between(least, most));
        var running = Math.Round(dice.Between(0.22, 1.1), 2);
        var (setback, back, needed) = (Size(0, 55), Size(28, 85), Size(25, 80));
        var gap = Size(3, 9);
        var centre = Size(18, 70);
        return new KindSheet
        {
            Name = name,
            Form = form,
            Motor = dice.Of([MotorEnd.Left, MotorEnd.Right, MotorEnd.Either]),
            MotorVolts = volts,
            LeastVolts = Math.Round(volts * dice.Between(0.72, 0.88), 1),
            Running = running,
            Starting = Math.Round(running * dice.Between(1.08, 1.8), 2),
            Widest = house.OnTape(5200 + (100 * (house.Seed % 9))),
            Highest = house.OnTape(4200 + (100 * (house.Seed % 7))),
            EndBracket = Size(9, 60),
            BracketBack = back,
            BracketDown = Size(20, 75),
            CentreBracket = centre,
            CentreFrom = Size(1150, 2900),
            MiddleScrew = form == RaisedForm.Stack && dice.Chance(0.6) ? house.UpOnTape((centre / 2) + dice.Between(8, 40)) : null,
            GapLeast = gap,
            GapMost = house.UpOnTape(gap + dice.Between(11, 22)),
            EndClear = Size(0, 5),
            Setback = setback,
            LeadBehind = Size(60, 320),
            Tube = Size(25, 62),
            Fabric = Math.Round(dice.Between(0.28, 0.95), 2),
            ExtraFabric = Size(120, 450),
            StackFixed = Size(35, 90),
            StackShare = Math.Round(dice.Between(0.02, 0.07), 3),
            DepthNeeded = needed,
            DepthFlush = house.UpOnTape(Math.Max(needed, setback + back) + dice.Between(0, 20)),
            Step = house.Metric ? dice.Of([1.0, 2, 5]) : dice.Of([Inch / 16, Inch / 8, Inch / 4]),
            Deduction = house.OnTape(dice.Between(4, 11)),
            MadeWidth = (house.Seed + name.Length) % 4 == 0,
            PairHold = dice.Whole(3, 19),
            PresetHold = dice.Whole(2, 14),
        };
    }

    public static CoverSheet Cover(RealHouse house, Dice dice, string name, double roll)
    {
        var room = house.UpOnTape(roll + dice.Between(6, 22));
        return new CoverSheet(name, room, house.UpOnTape(room + dice.Between(3, 30)));
    }

    public static CableSheet Cable(RealHouse house, Dice dice, string name, bool thick)
    {
        var metric = house.Metric && dice.Chance(0.7);
        var inhabited = house.Dwelling == Dwelling.OneOrTwoFamily;
        CableListing[] listings = inhabited
            ? [CableListing.Cl2p, CableListing.Cl3p, CableListing.Cmp, CableListing.Cl2r, CableListing.Cl3r, CableListing.Cmr, CableListing.Cl2]
            : [CableListing.Cl2p, CableListing.Cl3p, CableListing.Cmp, CableListing.Cl2r, CableListing.Cl3r, CableListing.Cmr];
        return new CableSheet
        {
            Name = name,
            Gauge = metric ? null : dice.Of(thick ? [12, 14] : (int[])[16, 18]),
            SquareMillimetres = metric ? dice.Of(thick ? [1.5, 2.5] : (double[])[0.75, 1]) : 0,
            Stranded = dice.Chance(0.5),
            Listing = dice.Of(listings),
            LongestRun = 0,
            Diameter = Math.Round(dice.Between(4.6, 8.4), 1),
            Box = Math.Round(dice.Between(130, 310)),
        };
    }

    public static PanelSheet Panel(Dice dice, double volts, double largest, double all) => new()
    {
        Name = "Supply box",
        Outputs = dice.Whole(4, 17),
        Volts = volts,
        PerOutput = Math.Round(Math.Min(largest * dice.Between(1.12, 1.4), ClassTwo.MostOnNameplate(volts)), 2),
        Total = Math.Round(all * dice.Between(1.1, 1.6), 1),
        UnitsPerOutput = 1,
    };
}
