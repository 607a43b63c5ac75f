using System.Collections.Immutable;
using TrimOut.Core.Facts;
using TrimOut.Core.Units;

namespace TrimOut.Core.Electrical;

/// <summary>What arrives at the end of a cable, when its length, conductor, current and supply are these.</summary>
/// <param name="Supply">Voltage at the near end.</param>
/// <param name="OneWay">Length, one way, to the first unit.</param>
/// <param name="Current">Current of each unit.</param>
/// <param name="Least">The least that must arrive.</param>
/// <param name="OhmsPerMetre">Resistance of one conductor.</param>
public sealed record WhatIf(Voltage Supply, Length OneWay, Current Current, Voltage Least, decimal OhmsPerMetre)
{
    /// <summary>The most units on one cable that can be asked about.</summary>
    public const int MostUnits = 8;

    /// <summary>The most volts of a supply that can be asked about: the upper end of low direct voltage.</summary>
    public const int MostVolts = 60;

    /// <summary>Gauges that are sold as two-conductor cable, from the thinnest.</summary>
    private static readonly int[] Sold = [22, 20, 18, 16, 14, 12, 10];

    /// <summary>Units on the cable.</summary>
    public int Units { get; private init; } = 1;

    /// <summary>Cable from each unit to the next.</summary>
    public Length Apart { get; private init; }

    /// <summary>The longest run of the maker's table for this conductor; null when it gives none.</summary>
    public Length? Table { get; init; }

    /// <summary>Units that the maker's sheet allows on an output; null when it does not say.</summary>
    public int? Allowed { get; init; }

    /// <summary>Whether the sheet allows so many units on one cable; several are refused while it does not say.</summary>
    public bool IsAllowed => Units == 1 || Units <= (Allowed ?? 1);

    /// <summary>Each unit in its order from the panel: the current through its stretch, the cable to it, what arrives.</summary>
    public ImmutableArray<TapResult> Each => SharedCable.Of(Supply, Units, OneWay, Apart, OhmsPerMetre, Current);

    /// <summary>Cable to the last unit, one way.</summary>
    public Length ToLast => Each[^1].OneWay;

    /// <summary>Resistance out and back, to the last unit.</summary>
    public Resistance Loop => TwoWire.Loop(ToLast, OhmsPerMetre);

    /// <summary>What arrives at the last unit; not less than nothing.</summary>
    public Voltage Arrives => Each[^1].Arrives is { Volts: > 0 } volts ? volts : new Voltage(0);

    /// <summary>What is lost, in per cent of the supply.</summary>
    public decimal LostPercent => (Supply - Arrives).Volts / Supply.Volts * 100;

    /// <summary>Volts to spare; negative when there are too few.</summary>
    public Voltage Margin => Arrives - Least;

    /// <summary>
    /// The longest run by voltage drop, one way to the first unit: with n units, ((supply - least) / (2 x current x ohms per metre) - apart x n (n - 1) / 2) /
    /// n. Nothing when even the way between them is too long.
    /// </summary>
    public Length Longest => Length.Max(Length.Zero, (TwoWire.Longest(Supply, Least, OhmsPerMetre, Current) - Apart * (Units * (Units - 1) / 2m)) / Units);

    /// <summary>The longest run to the first unit by the maker's table, which counts to the last; null when it gives none.</summary>
    public Length? LongestByTable => Table is { } table ? Length.Max(Length.Zero, table - Apart * (Units - 1)) : null;

    /// <summary>The tighter of the two.</summary>
    public Length Governing => LongestByTable is { } table ? Length.Min(table, Longest) : Longest;

    /// <summary>Whether the maker's table is the tighter one.</summary>
    public bool TableGoverns => LongestByTable is { } table && table <= Longest;

    /// <summary>Cable to spare before the tighter limit; negative when the run is too long.</summary>
    public Length MarginLength => Governing - OneWay;

    /// <summary>Asks.</summary>
    /// <param name="conductor">Gauge or metric size.</param>
    /// <param name="made">Solid or stranded.</param>
    /// <param name="warmest">The warmest that the cable gets.</param>
    /// <param name="supply">Voltage at the panel, up to 60 V.</param>
    /// <param name="oneWay">Length to the first unit, up to 1000 m.</param>
    /// <param name="current">Current of each unit, up to 50 A.</param>
    /// <param name="least">The least that must arrive.</param>
    /// <param name="units">Units on the cable, 1 to 8.</param>
    /// <param name="apart">Cable from each to the next, up to 1000 m.</param>
    /// <returns>The answer, or which figure makes no sense.</returns>
    public static Result<WhatIf> Ask(ConductorSize conductor, Stranding made, Temperature warmest, Voltage supply, Length oneWay, Current current,
        Voltage least, int units = 1, Length apart = default) =>
        supply.Volts is <= 0 or > MostVolts ? new Refusal($"Supply: {supply} is no low direct voltage. It goes up to 60 V.")
        : oneWay <= Length.Zero || oneWay > Length.FromMetres(1000) ? new Refusal("Length: a run is longer than nothing and no longer than 1000 m.")
        : current.Amperes is <= 0 or > 50 ? new Refusal($"Current: {current} is out of range. It goes up to 50 A.")
        : least.Volts < 0 || least > supply ? new Refusal($"Minimum volts: {least} is not between 0 and the supply.")
        : units is < 1 or > MostUnits ? new Refusal($"Units: {units} is out of range. There are 1 to {MostUnits} on a cable.")
        : apart < Length.Zero || apart > Length.FromMetres(1000) ? new Refusal("Apart: units are no farther apart than 1000 m.")
        : Conductors.OhmsPerMetre(conductor, made, warmest)
            .Then<WhatIf>(ohms => new WhatIf(supply, oneWay, current, least, ohms) { Units = units, Apart = apart });

    /// <summary>The thinnest gauge that is sold with which enough arrives; null when none is thick enough.</summary>
    public static int? ThinnestGauge(Stranding made, Temperature warmest, Voltage supply, Length oneWay, Current current, Voltage least,
        int units = 1, Length apart = default)
    {
        foreach (var gauge in Sold)
        {
            if (Ask(new ConductorSize.Gauge(gauge), made, warmest, supply, oneWay, current, least, units, apart) is { Ok: true } answer
                && answer.Value.Margin.Volts >= 0)
                return gauge;
        }
        return null;
    }
}
