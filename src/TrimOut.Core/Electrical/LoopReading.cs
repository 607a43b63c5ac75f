using TrimOut.Core.Units;

namespace TrimOut.Core.Electrical;

/// <summary>What a meter can show across the two conductors of a run whose far end is shorted.</summary>
public static class LoopReading
{
    /// <summary>The meter found no way through: it shows no figure.</summary>
    public static readonly Resistance Open = new(decimal.MaxValue);

    /// <summary>The part by which two good readings of one run may differ: common practice, no published source.</summary>
    public const decimal Share = 0.1m;

    /// <summary>What a hand meter and its contacts may add or lose whatever the run: common practice, no published source.</summary>
    public static readonly Resistance Contacts = new(0.1m);

    /// <summary>The most by which a reading may differ from what is expected: a tenth of it and 0.1 ohm for the contacts.</summary>
    public static Resistance Tolerance(Resistance expected) => expected * Share + Contacts;

    /// <summary>Whether a reading agrees with what is expected.</summary>
    public static bool Agrees(Resistance read, Resistance expected) => Agrees(read, expected, expected == Open ? default : Tolerance(expected));

    /// <summary>Whether a reading agrees with what is expected, within a band.</summary>
    public static bool Agrees(Resistance read, Resistance expected, Resistance within) =>
        read == Open || expected == Open ? read == expected : Math.Abs((read - expected).Ohms) <= within.Ohms;
}
