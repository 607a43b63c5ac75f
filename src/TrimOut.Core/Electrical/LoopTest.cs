using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Electrical;

/// <summary>A loop reading with what was kept beside it when it was taken.</summary>
/// <param name="Read">What the meter showed, leads and all; <see cref="LoopReading.Open"/> when it found no way through.</param>
/// <param name="Leads">What its leads add; null where nothing was said, which is taken as leads taken off.</param>
/// <param name="CableAt">How warm the cable was; null where nothing was said, which is taken as 20 C.</param>
/// <param name="Step">What one step of the meter's last digit is; null where nothing was said.</param>
public readonly record struct LoopTest(Resistance Read, Resistance? Leads, Temperature? CableAt, Resistance? Step = null)
{
    private static readonly Message WarmWithLeads = new("cable at {0}, leads {1}");
    private static readonly Message WarmWithoutLeads = new("cable at {0}, leads taken off");
    private static readonly Message WithLeads = new("cable taken as 20 C, leads {0}");
    private static readonly Message WithoutLeads = new("cable taken as 20 C, leads taken off");

    /// <summary>The temperature that is reckoned with.</summary>
    public Temperature At => CableAt ?? Temperature.Reference;

    /// <summary>What the cable alone has, as warm as it was; never less than nothing.</summary>
    public Resistance OfCable => Read == LoopReading.Open ? Read : new Resistance(Math.Max(0, (Read - (Leads ?? default)).Ohms));

    /// <summary>What the cable alone has at 20 C, so that two tests can be compared: by what copper does.</summary>
    public Resistance At20 => Read == LoopReading.Open ? Read : Conductors.At(OfCable, At, Temperature.Reference);

    /// <summary>What the meter must show for a cable: its loop at the temperature of the test, and the leads.</summary>
    /// <param name="oneWay">Length, one way.</param>
    /// <param name="ohmsPerMetre">Resistance of one conductor at <see cref="At"/>.</param>
    public Resistance Expected(Length oneWay, decimal ohmsPerMetre) => TwoWire.Loop(oneWay, ohmsPerMetre) + (Leads ?? default);

    /// <summary>Whether it reads no more than its leads do.</summary>
    public bool ShowsNoCable => OfCable.Ohms == 0;

    /// <summary>Whether it reads open, or so much less than a cable of that length has that only a short, another cable or wrong legs explain it.</summary>
    /// <param name="expected">What it should be, leads and all.</param>
    /// <param name="band">How far a sound one may read from that.</param>
    public bool IsOpenOrShorted(Resistance expected, Resistance band) => Read == LoopReading.Open
        || Read.Ohms < expected.Ohms - Math.Max(LoopReading.Tolerance(expected).Ohms, band.Ohms);

    /// <summary>What was reckoned with, in words.</summary>
    public Sentence Circumstances => (CableAt, Leads) switch
    {
        ({ } warm, { } add) => WarmWithLeads.With(Arg.Number(warm.Celsius, "C"), Arg.Loop(add)),
        ({ } warm, null) => WarmWithoutLeads.With(Arg.Number(warm.Celsius, "C")),
        (null, { } add) => WithLeads.With(Arg.Loop(add)),
        _ => WithoutLeads,
    };
}
