using TrimOut.Core.Facts;

namespace TrimOut.TrueHouse.Tests.Truth;

/// <summary>Rolls cables, routes and panels that carry what the motors draw.</summary>
internal static class RandomWiring
{
    private const double LongestEver = 85;

    public static void Roll(RealHouse house, Dice dice, double volts)
    {
        house.Cables.Add(RandomSheets.Cable(house, dice, "Thick two-wire", thick: true));
        house.Cables.Add(RandomSheets.Cable(house, dice, "Thin two-wire", thick: false));
        foreach (var cable in house.Cables)
        {
            foreach (var kind in house.Kinds)
            {
                while (ByVolts(house, kind, cable, volts) < 24)
                    (kind.Running, kind.Starting) = (Math.Round(kind.Running * 0.75, 2), Math.Round(kind.Starting * 0.75, 2));
            }
            var shortest = house.Kinds.Min(k => ByVolts(house, k, cable, volts));
            cable.LongestRun = OnTape(house, Math.Clamp(shortest * dice.Between(0.7, 1.3), 22, LongestEver));
        }
        foreach (var unit in house.Wired)
            Route(house, dice, unit, volts);
        Panels(house, dice, volts);
        foreach (var cable in house.Cables)
        {
            var needed = house.Wired.Where(u => u.Cable!.Sheet == cable).Sum(u => (u.Cable!.LegsMetres * 1.1) + 4.5 + (u.Opening.Finished.Width / 1000));
            house.Boxes[cable.Name] = [.. Enumerable.Repeat(cable.Box, (int)Math.Ceiling(needed * 1.1 / cable.Box) + 1)];
        }
    }

    /// <summary>The longest way at which a kind still starts: by what is left to lose, not by any table.</summary>
    public static double ByVolts(RealHouse house, KindSheet kind, CableSheet cable, double volts) =>
        (volts - kind.LeastVolts) / Math.Max(kind.Starting, kind.Running) / (2 * cable.OhmsPerMetre(house.WarmestCable));

    /// <summary>
    /// What a tail must reach: up to the head, along it to the motor, and what is used up behind the unit; outside the unit hangs above the opening and its
    /// motor beside it.
    /// </summary>
    public static double Reach(RealUnit unit, double width) =>
        unit.EntryBelowHead + (unit.EntrySide == unit.Lead ? unit.EntryFromJamb : width - unit.EntryFromJamb) + unit.Kind.LeadBehind
            + (unit.Opening.Outside ? unit.Opening.HeadAbove + unit.Opening.Overlap : 0);

    /// <summary>From one end of a unit to the other.</summary>
    private static double EndToEnd(RealUnit unit, double width) => width + (unit.Opening.Outside ? 2 * unit.Opening.Overlap : 0);

    private static void Route(RealHouse house, Dice dice, RealUnit unit, double volts)
    {
        var cable = unit.Cable!;
        cable.Sheet = cable.Pulled = dice.Of(house.Cables);
        var width = unit.PartWidth > 0 ? unit.PartWidth : unit.Opening.Rough.Width;
        cable.TailAtWindow = house.UpOnTape(Math.Max(EndToEnd(unit, width), Reach(unit, width)) + dice.Between(60, 400));
        cable.TailFound = cable.TailAtWindow - dice.Between(0, 20);
        cable.TailAtPanel = dice.Between(1.2, 2.3);
        var most = (Math.Min(cable.Sheet.LongestRun,
            ByVolts(house, unit.Kind, cable.Sheet, volts)) * 0.88) - (cable.TailAtWindow / 1000) - Math.Max(cable.TailAtPanel, 2.2);
        var legs = dice.Between(Math.Min(6, most * 0.7), most);
        var share = dice.Between(0.1, 0.3);
        Leg(LegDirection.Up, share, CablePlace.InWall);
        Leg(LegDirection.Across, 0.45, cable.Sheet.Listing is CableListing.Cl2p or CableListing.Cl3p or CableListing.Cmp && dice.Chance(0.4)
            ? CablePlace.AirHandlingSpace : CablePlace.InWall);
        Leg(LegDirection.ThroughFloor, 0.1, CablePlace.BetweenFloors);
        Leg(LegDirection.Down, 0.45 - share, CablePlace.InWall);
        (cable.MainsDistance, cable.MainsSheathed) = dice.Chance(0.3) ? (dice.Between(5, 40), true) : (dice.Between(70, 500), dice.Chance(0.5));
        (cable.HoleEdge, cable.Plated) = dice.Chance(0.3) ? (dice.Between(12, 28), true) : (dice.Between(35, 50), dice.Chance(0.3));
        cable.LabelAtWindow = cable.LabelAtPanel = unit.Key;
        unit.BoxLabel = unit.Key;

        // A floor between flats must hold back fire; one within a house need not.
        void Leg(LegDirection way, double part, CablePlace around) => cable.Legs.Add(new RealLeg
        {
            Metres = legs * part,
            Direction = way,
            Around = around,
            FireBarrier = around == CablePlace.BetweenFloors && house.Dwelling != Dwelling.OneOrTwoFamily,
            SealedBy = around == CablePlace.BetweenFloors && house.Dwelling != Dwelling.OneOrTwoFamily ? "The fire-stopping crew" : null,
        });
    }

    private static void Panels(RealHouse house, Dice dice, double volts)
    {
        var wired = house.Wired.ToList();
        var draws = wired.Select(u => Math.Max(u.Kind.Running, u.Kind.Starting)).ToList();
        var sheet = RandomSheets.Panel(dice, volts, draws.Max(), draws.Sum());
        house.PanelSheets.Add(sheet);
        var count = ((wired.Count - 1) / sheet.Outputs) + 1;
        for (var n = 1; n <= count; n++)
        {
            house.Panels.Add(new RealPanel
            {
                Name = $"P{n}",
                Sheet = sheet,
                Volts = volts * dice.Between(0.99, 1.03),
                Breaker = $"{13 + n}",
                ElseOnBreaker = n,
                BreakerRating = new double[] { 15, 20, 32, 50, 63 }.First(r => r >= sheet.Input(house.Metric) + n),
            });
        }
        for (var n = 0; n < wired.Count; n++)
        {
            (wired[n].Panel, wired[n].Output) = (house.Panels[n % count], (n / count) + 1);
            wired[n].DrawsShare = dice.Between(0.85, 1);
            wired[n].Splices = dice.Between(0.005, 0.03);
        }
        foreach (var unit in house.Units)
            unit.BoxLabel = unit.Key;
    }

    private static double OnTape(RealHouse house, double metres) => house.Metric ? Math.Round(metres) : Math.Round(metres / 0.3048) * 0.3048;
}
