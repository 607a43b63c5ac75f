using TrimOut.Core.Facts;

namespace TrimOut.TrueHouse.Tests.Truth;

/// <summary>Rolls a house in which nothing is wrong: all that was built leans and tapers a little, and all that was planned works.</summary>
public static class RandomHouse
{
    private static readonly string[] RoomNames = ["Parlour", "Kitchen", "Study", "Landing", "Nursery", "Workshop"];
    private static readonly string[] Weaves = ["Linen weave", "Basket weave", "Twill", "Plain slat"];
    private static readonly string[] Shades = ["Chalk", "Slate", "Oat", "Moss"];

    /// <summary>The house of a seed.</summary>
    public static RealHouse Of(int seed)
    {
        var dice = new Dice(seed);
        var house = new RealHouse
        {
            Seed = seed,
            Metric = dice.Chance(0.4),
            Dwelling = dice.Chance(0.7) ? Dwelling.OneOrTwoFamily : Dwelling.MultiFamily,
            Noise = new Noise(seed),
            CableAtFirstTest = Math.Round(dice.Between(6, 30)),
            CableAtSecondTest = Math.Round(dice.Between(12, 27)),
            WarmestCable = Math.Round(dice.Between(30, 50)),
            MeterLeads = dice.Chance(0.4) ? 0 : Math.Round(dice.Between(0.08, 0.35), 2),
            PlannedPanelTail = Math.Round(dice.Between(1200, 2200)),
        };
        var volts = dice.Of(ClassTwo.Voltages);
        house.Kinds.Add(RandomSheets.Kind(house, dice, "Roll-up", RaisedForm.Roll, volts));
        house.Kinds.Add(RandomSheets.Kind(house, dice, "Pleated", RaisedForm.Stack, volts));
        house.Kinds.Add(RandomSheets.Kind(house, dice, "Slatted", RaisedForm.Stack, volts));
        RollRooms(house, dice);
        RollCovers(house, dice);
        foreach (var opening in house.Openings)
            Deepen(house, dice, opening);
        RandomWiring.Roll(house, dice, volts);
        RandomControls.Roll(house, dice);
        var day = new DateOnly(2026, 3, 2);
        foreach (var stage in Stages.All)
            house.Days[stage] = day = day.AddDays(dice.Whole(3, 25));
        // Dice of its own: what comes years later changes nothing of the house that was built.
        RandomServices.Roll(house, new Dice((seed * 53) + 11));
        return house;
    }

    private static void RollRooms(RealHouse house, Dice dice)
    {
        var number = 0;
        foreach (var name in dice.Shuffled(RoomNames).Take(dice.Whole(2, 3)))
        {
            var room = new RealRoom { Name = name, Floor = dice.Chance(0.5) ? "Main" : "Upper", Remote = $"{name} remote" };
            house.Rooms.Add(room);
            for (var n = dice.Whole(2, 3); n > 0; n--)
                house.Openings.Add(Opening(house, dice, room, $"W{++number:00}", several: n == 2 && dice.Chance(0.4)));
        }
        if (dice.Chance(0.5))
        {
            var last = house.Openings[^1];
            var left = Opening(house, dice, last.Room, $"W{++number:00}", several: false);
            (left.LeftOut, left.LeftOutBecause) = (true, "The owner wants the view.");
            house.Openings.Add(left);
        }
    }

    private static RealOpening Opening(RealHouse house, Dice dice, RealRoom room, string tag, bool several)
    {
        var (width, height) = (dice.Between(several ? 1300 : 560, several ? 2600 : 1700), dice.Between(650, 2250));
        var finished = Polygon.Opening(width, height, dice.Between(-1.4, 1.4), dice.Between(-1.6, 1.6), dice.Between(-0.6, 0.6), dice.Between(-1.6, 1.6));
        var trim = dice.Between(11, 24);
        var opening = new RealOpening
        {
            Tag = tag,
            Room = room,
            Finished = finished,
            Rough = Polygon.Opening(width + (2 * trim), height + (2 * trim), dice.Between(-4, 4)),
            Depth = dice.Between(110, 190),
            Facing = dice.Of(["N", "E", "S", "W", "SW"]),
            Outside = !several && dice.Chance(0.25),
            GlassBelowHead = dice.Between(20, 70),
        };
        var kind = dice.Of(house.Kinds);
        var count = several && !opening.Outside ? dice.Whole(2, 3) : 1;
        for (var n = 0; n < count; n++)
            opening.Units.Add(Unit(house, dice, opening, kind, n, count));
        if (opening.Outside)
        {
            opening.Overlap = house.OnTape(dice.Between(30, 85));
            opening.HeadAbove = house.UpOnTape(kind.BracketDown + dice.Between(8, 60));
            opening.WallAbove = opening.HeadAbove + dice.Between(12, 200);
        }
        if (count > 1)
            Part(house, opening, kind, count);
        var underIt = height - kind.Raised(height + opening.HeadAbove) - 25;
        // Nobody walks through less than 600 mm.
        if (opening.Outside && kind.Form == RaisedForm.Stack && dice.Chance(0.5) && underIt >= 600)
            opening.ClearHeight = house.OnTape(underIt);
        if (dice.Chance(0.3))
            (opening.InTheWay, opening.StandsOut) = (dice.Of(["crank", "handle", "alarm contact"]), house.OnTape(dice.Between(15, 45)));
        return opening;
    }

    private static RealUnit Unit(RealHouse house, Dice dice, RealOpening opening, KindSheet kind, int at, int count)
    {
        // Of several side by side each reaches a jamb with its lead, and the one between them has a battery.
        var lead = count > 1 ? at == 0 ? Side.Left : Side.Right
            : kind.Motor switch { MotorEnd.Left => Side.Left, MotorEnd.Right => Side.Right, _ => dice.Of([Side.Left, Side.Right]) };
        var between = at > 0 && at < count - 1;
        if (count > 1)
            kind.Motor = MotorEnd.Either;
        var unit = new RealUnit
        {
            Key = count == 1 ? opening.Tag : opening.Tag + (char)('A' + at),
            Opening = opening,
            Kind = kind,
            Lead = lead,
            EntrySide = lead,
            Position = at + 1,
            Power = between ? PowerSource.Battery : PowerSource.Panel,
            Group = dice.Chance(0.6) ? $"{opening.Room.Name} front" : null,
            Fabric = AsBeside(opening, dice.Of(Weaves), u => u.Fabric),
            Colour = AsBeside(opening, dice.Of(Shades), u => u.Colour),
            Opacity = AsBeside(opening, dice.Of([Opacity.Sheer, Opacity.LightFiltering, Opacity.Blackout]), u => u.Opacity),
            Serial = $"S-{house.Seed}-{opening.Tag}-{at}",
            Cable = between ? null : new RealCable { Sheet = null!, Pulled = null! },
        };
        // One fabric in one color is one cloth, and lets one light through.
        unit.Opacity = house.Units.Concat(opening.Units).FirstOrDefault(u => (u.Fabric, u.Colour) == (unit.Fabric, unit.Colour))?.Opacity ?? unit.Opacity;
        return unit;
    }

    /// <summary>What was chosen for the first unit of an opening is chosen for those beside it.</summary>
    private static T AsBeside<T>(RealOpening opening, T rolled, Func<RealUnit, T> of) => opening.Units.Count == 0 ? rolled : of(opening.Units[0]);

    /// <summary>Parts an opening so that the gaps lie between what the sheet asks for and what it allows.</summary>
    private static void Part(RealHouse house, RealOpening opening, KindSheet kind, int count)
    {
        var gap = kind.GapLeast + Math.Min(4, (kind.GapMost - kind.GapLeast) / 3);
        var each = (opening.Finished.PlumbWidth - 3 - (2 * kind.EndClear) - ((count - 1) * gap)) / count;
        kind.Step = house.Metric ? 1 : 25.4 / 16;
        foreach (var unit in opening.Units)
            unit.PartWidth = Math.Floor(each / kind.Step) * kind.Step;
    }

    private static void RollCovers(RealHouse house, Dice dice)
    {
        house.Covers.Add(new CoverSheet("None", null, null));
        var rolls = house.Units.Where(u => u.Kind.Form == RaisedForm.Roll).ToList();
        if (rolls.Count == 0)
            return;
        house.Covers.Add(RandomSheets.Cover(house, dice, "Box cover", rolls.Max(u => u.Kind.Raised(u.Opening.Finished.Height + u.Opening.HeadAbove + 30))));
        foreach (var unit in rolls.Where(_ => dice.Chance(0.75)))
            unit.Cover = house.Covers[1];
        foreach (var unit in rolls)
            unit.Cover = unit.Opening.Units[0].Cover;
    }

    /// <summary>Makes a reveal deep enough for what hangs in it, and marks where the cable comes out of it.</summary>
    private static void Deepen(RealHouse house, Dice dice, RealOpening opening)
    {
        foreach (var unit in opening.Units)
        {
            var kind = unit.Kind;
            var taken = unit.Cover.Depth is { } cover ? kind.Setback + cover : kind.DepthFlush;
            var least = Math.Max(kind.DepthNeeded, Math.Max(taken, kind.Setback + kind.BracketBack + opening.StandsOut));
            opening.Depth = Math.Max(opening.Depth, least + dice.Between(6, 20));
            unit.Setback = kind.Setback;
            unit.MiddleScrew = kind.MiddleScrew is { } off ? Width(unit) / 2 + off : null;
            Enter(house, dice, unit);
        }
    }

    private static void Enter(RealHouse house, Dice dice, RealUnit unit)
    {
        var kind = unit.Kind;
        var behind = kind.Setback + kind.BracketBack + 9;
        var beside = behind > unit.Opening.Depth - 8 || dice.Chance(0.7);
        // Its brackets hang at the ends of what is made, and that is narrower than the opening by what comes off, or by the lean, and by a step of the order.
        var finished = unit.Opening.Finished;
        var narrower = unit.Opening.Outside ? 0 : Math.Max(kind.Deduction, finished.Width - finished.PlumbWidth) + kind.Step;
        var clear = (unit.Opening.Units.Count > 1 ? kind.EndClear : 0) + (narrower / 2);
        unit.EntryFromJamb = house.OnTape(beside ? clear + kind.EndBracket + dice.Between(10, 32) : dice.Between(4, kind.EndBracket));
        unit.EntryBack = house.OnTape(beside ? dice.Between(8, unit.Opening.Depth - 8) : dice.Between(behind, unit.Opening.Depth - 4));
        unit.EntryBelowHead = house.OnTape(dice.Between(4, 60));
        unit.EntryAsBuilt = Math.Max(0, unit.EntryFromJamb + dice.Between(-2, 2));
    }

    private static double Width(RealUnit unit) => unit.PartWidth > 0 ? unit.PartWidth
        : unit.Opening.Outside ? unit.Opening.Finished.Width + (2 * unit.Opening.Overlap) : unit.Opening.Finished.Width;
}
