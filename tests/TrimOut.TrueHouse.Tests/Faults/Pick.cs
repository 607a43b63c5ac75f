using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Recording;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults;

/// <summary>Picks the place at which a fault strikes, and reckons what can be told from readings there.</summary>
internal static class Pick
{
    /// <summary>One of several by chance; null where there is none.</summary>
    public static T? One<T>(this IEnumerable<T> of, Dice dice)
        where T : class
    {
        var several = of.ToList();
        return several.Count == 0 ? null : dice.Of(several);
    }

    /// <summary>Two different ones; null where there are not two.</summary>
    public static (T A, T B)? Two<T>(this IEnumerable<T> of, Dice dice)
        where T : class
    {
        var several = dice.Shuffled(of);
        return several.Count < 2 ? null : (several[0], several[1]);
    }

    /// <summary>Units that hang alone inside their reveal, on a home run.</summary>
    public static IEnumerable<RealUnit> Inside(this RealHouse house) => house.Wired.Where(u => !u.Opening.Outside && u.Opening.Units.Count == 1);

    /// <summary>Takes a unit off every remote and preset.</summary>
    public static void MovedByNothing(this RealHouse house, RealUnit unit)
    {
        foreach (var remote in house.Remotes)
        {
            remote.Moves.Remove(unit);
            foreach (var preset in remote.Presets.Values)
                preset.Remove(unit);
        }
    }

    /// <summary>Openings that get a covering.</summary>
    public static IEnumerable<RealOpening> Covered(this RealHouse house) => house.Openings.Where(o => !o.LeftOut);

    /// <summary>The legs of a run with their lengths, as facts.</summary>
    public static (string Name, Fact Fact)[] Legs(this RealUnit unit) =>
        [.. Enumerable.Range(1, unit.Cable!.Legs.Count).Select(n => ($"{unit.Key}/{n}", (Fact)LegFacts.Length))];

    /// <summary>Stretches the legs of a run to so many metres together.</summary>
    public static void Stretch(this RealCable cable, double metres)
    {
        var by = metres / cable.LegsMetres;
        foreach (var leg in cable.Legs)
            leg.Metres *= by;
    }

    /// <summary>Makes a mount an outside mount that works.</summary>
    public static void MountOutside(this RealOpening opening, RealHouse house)
    {
        opening.Outside = true;
        opening.Overlap = Math.Max(opening.Overlap, house.OnTape(50));
        opening.HeadAbove = Math.Max(opening.HeadAbove, house.UpOnTape(opening.Units.Max(u => u.Kind.BracketDown) + 20));
        opening.WallAbove = Math.Max(opening.WallAbove, opening.HeadAbove + 60);
    }

    /// <summary>What the volts of a run are, as its supply's sheet says.</summary>
    public static double Supply(this RealHouse house) => house.PanelSheets[0].Volts;

    /// <summary>The most that a loop reading may be off from what the recorded legs make it: meter, leads, temperature, pacing of four legs.</summary>
    public static double LoopError(this RealHouse house, RealUnit unit)
    {
        var cable = unit.Cable!;
        var perMetre = 2 * cable.Sheet.OhmsPerMetre(house.CableAtFirstTest);
        var ohms = perMetre * cable.Metres;
        var paced = (0.01 * cable.LegsMetres) + (4 * (house.Metric ? 0.05 : 0.0762)) + 0.003;
        return new Meter(house.Noise).Error(ohms + house.MeterLeads) + (0.01 * ohms) + (perMetre * paced);
    }

    /// <summary>The most that two loop readings of one cable may be apart: twice the meter, and the temperature twice.</summary>
    public static double LoopsApart(this RealHouse house, RealUnit unit)
    {
        var ohms = unit.Cable!.Ohms(Stage.Sheets, house.CableAtFirstTest);
        return (2 * new Meter(house.Noise).Error(ohms + house.MeterLeads)) + (0.02 * ohms) + 0.01;
    }

    /// <summary>Runs on which a fault of a few hundredths of an ohm can be told for sure from the error of the readings, though not by much.</summary>
    public static IEnumerable<Blind> Blind(this RealHouse house, Stage test) =>
        house.Wired.Select(u => new Blind(u, u.Cable!.Ohms(Stage.Sheets, 20), test == Stage.Pulled ? house.LoopError(u) : house.LoopsApart(u)))
            .Where(b => b.Ohms < (b.All * 0.08) + 0.08);

    /// <summary>Two runs whose loops differ plainly, or only so that who reads carefully can tell them.</summary>
    public static Apart? Apart(this RealHouse house, Dice dice, bool plain)
    {
        var wired = house.Wired.ToList();
        var pairs = wired.SelectMany(a => wired.Where(b => string.CompareOrdinal(a.Key, b.Key) < 0).Select(b => new Apart(a, b, house)));
        return pairs.Where(p => plain ? p.Ohms > (p.Larger * 0.14) + 0.14 : p.Ohms > p.Sure && p.Ohms < (p.Smaller * 0.08) + 0.08).One(dice);
    }

    /// <summary>Lowers the width from which on a kind needs a centre support, so that a unit needs one.</summary>
    public static void NeedCentreSupport(this RealUnit unit) => unit.Kind.CentreFrom = Math.Min(unit.Kind.CentreFrom,
        (Math.Floor(unit.Opening.Finished.Width / 25.4) * 25.4) - 101.6);

    /// <summary>What a unit draws at the most.</summary>
    public static double Draws(this RealUnit unit) => Math.Max(unit.Kind.Running, unit.Kind.Starting);

    /// <summary>The names of the units of a kind, and of the kind.</summary>
    public static string[] About(this RealHouse house, KindSheet kind) => [kind.Name, .. house.Units.Where(u => u.Kind == kind).Select(u => u.Key)];

    /// <summary>A kind that some wired unit is of.</summary>
    public static KindSheet? UsedKind(this RealHouse house, Dice dice) => house.Wired.Select(u => u.Kind).Distinct().One(dice);
}

/// <summary>A run with its loop and with what the readings of it may be off, in ohms.</summary>
/// <param name="Unit">The unit at its end.</param>
/// <param name="All">Its whole loop at 20 C.</param>
/// <param name="Error">The most that the readings may be off.</param>
internal sealed record Blind(RealUnit Unit, double All, double Error)
{
    /// <summary>A little more than twice that: what one reading may feign, another may hide.</summary>
    public double Ohms => Sure * 1.1;

    /// <summary>The least that can be told for sure.</summary>
    public double Sure => Error * 2;
}

/// <summary>Two runs and how far their loops are apart, in ohms.</summary>
internal sealed record Apart(RealUnit First, RealUnit Second, RealHouse House)
{
    private double OfFirst => First.Cable!.Ohms(Stage.Sheets, House.CableAtFirstTest);

    private double OfSecond => Second.Cable!.Ohms(Stage.Sheets, House.CableAtFirstTest);

    /// <summary>The larger loop.</summary>
    public double Larger => Math.Max(OfFirst, OfSecond);

    /// <summary>The smaller loop.</summary>
    public double Smaller => Math.Min(OfFirst, OfSecond);

    /// <summary>How far apart they are.</summary>
    public double Ohms => Larger - Smaller;

    /// <summary>The most that readings of the two may be off.</summary>
    public double Error => Math.Max(House.LoopError(First), House.LoopError(Second));

    /// <summary>The least that can be told for sure: what one reading may feign, another may hide.</summary>
    public double Sure => Error * 2;
}
