using TrimOut.Core.Facts;
using TrimOut.Core.Units;

namespace TrimOut.Core.Electrical;

/// <summary>What arrives at the end of a cable, when its length, conductor, current and supply are these.</summary>
/// <param name="Supply">Voltage at the near end.</param>
/// <param name="OneWay">Length, one way.</param>
/// <param name="Current">Current.</param>
/// <param name="Least">The least that must arrive.</param>
/// <param name="OhmsPerMetre">Resistance of one conductor.</param>
public sealed record WhatIf(Voltage Supply, Length OneWay, Current Current, Voltage Least, decimal OhmsPerMetre)
{
    /// <summary>Gauges that are sold as two-conductor cable, from the thinnest.</summary>
    private static readonly int[] Sold = [22, 20, 18, 16, 14, 12, 10];

    /// <summary>Resistance out and back.</summary>
    public Resistance Loop => TwoWire.Loop(OneWay, OhmsPerMetre);

    /// <summary>What arrives; not less than nothing.</summary>
    public Voltage Arrives => TwoWire.Arrives(Supply, OneWay, OhmsPerMetre, Current) is { Volts: > 0 } volts ? volts : new Voltage(0);

    /// <summary>What is lost, in per cent of the supply.</summary>
    public decimal LostPercent => (Supply - Arrives).Volts / Supply.Volts * 100;

    /// <summary>Volts to spare; negative when there are too few.</summary>
    public Voltage Margin => Arrives - Least;

    /// <summary>The longest run, one way.</summary>
    public Length Longest => TwoWire.Longest(Supply, Least, OhmsPerMetre, Current);

    /// <summary>Asks.</summary>
    /// <returns>The answer, or which figure makes no sense.</returns>
    public static Result<WhatIf> Ask(ConductorSize conductor, Stranding made, Temperature warmest, Voltage supply, Length oneWay, Current current, Voltage least) =>
        supply.Volts is <= 0 or > 60 ? new Refusal($"Supply: {supply} is no low direct voltage. It goes up to 60 V.")
        : oneWay <= Length.Zero || oneWay > Length.FromMetres(1000) ? new Refusal("Length: a run is longer than nothing and no longer than 1000 m.")
        : current.Amperes is <= 0 or > 50 ? new Refusal($"Current: {current} is out of range. It goes up to 50 A.")
        : least.Volts < 0 || least > supply ? new Refusal($"Least volts: {least} is not between 0 and the supply.")
        : Conductors.OhmsPerMetre(conductor, made, warmest).Then<WhatIf>(ohms => new WhatIf(supply, oneWay, current, least, ohms));

    /// <summary>The thinnest gauge that is sold with which enough arrives; null when none is thick enough.</summary>
    public static int? ThinnestGauge(Stranding made, Temperature warmest, Voltage supply, Length oneWay, Current current, Voltage least)
    {
        foreach (var gauge in Sold)
        {
            if (Ask(new ConductorSize.Gauge(gauge), made, warmest, supply, oneWay, current, least) is { Ok: true } answer && answer.Value.Margin.Volts >= 0)
                return gauge;
        }
        return null;
    }
}
