using TrimOut.Core.Units;

namespace TrimOut.Core.Electrical;

/// <summary>Two-wire direct-current circuits: out on one conductor, back on the other. Lengths are one way throughout.</summary>
public static class TwoWire
{
    /// <summary>Resistance out and back: 2 x length x ohms per metre.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Length or resistance is negative.</exception>
    public static Resistance Loop(Length oneWay, decimal ohmsPerMetre) => new(2 * Refuse.Negative(oneWay).Metres * Refuse.Negative(ohmsPerMetre));

    /// <summary>The voltage lost on the way: Ohm's law over both conductors.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Length, resistance or current is negative.</exception>
    public static Voltage Drop(Length oneWay, decimal ohmsPerMetre, Current current)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(current.Amperes, nameof(current));
        return current * Loop(oneWay, ohmsPerMetre);
    }

    /// <summary>The voltage that arrives: supply less what is lost out and back.</summary>
    public static Voltage Arrives(Voltage supply, Length oneWay, decimal ohmsPerMetre, Current current) =>
        supply - Drop(oneWay, ohmsPerMetre, current);

    /// <summary>
    /// The longest run, one way, at whose end the least voltage still arrives: (supply - least) / (2 x current x ohms per metre). Nothing when the supply
    /// itself is too low.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Current or resistance is not more than nothing.</exception>
    public static Length Longest(Voltage supply, Voltage least, decimal ohmsPerMetre, Current current)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(ohmsPerMetre);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(current.Amperes);
        return supply <= least ? Length.Zero : Length.FromMetres((supply - least).Volts / (2 * current.Amperes * ohmsPerMetre));
    }

    /// <summary>The loop that explains a drop: volts lost / current.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The current is not more than nothing.</exception>
    public static Resistance LoopOf(Voltage lost, Current current)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(current.Amperes);
        return new Resistance(lost.Volts / current.Amperes);
    }

    /// <summary>The length of a run, one way, from its loop resistance: ohms / (2 x ohms per metre).</summary>
    /// <exception cref="ArgumentOutOfRangeException">The resistance per metre is not more than nothing.</exception>
    public static Length FromLoop(Resistance loop, decimal ohmsPerMetre)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(ohmsPerMetre);
        return Length.FromMetres(loop.Ohms / (2 * ohmsPerMetre));
    }
}
