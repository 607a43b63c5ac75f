using System.Collections.Immutable;
using TrimOut.Core.Units;

namespace TrimOut.Core.Electrical;

/// <summary>One unit of several on one cable, and the stretch of cable that leads to it.</summary>
/// <param name="After">Which one it goes on from, by its place in the list, before its own; -1 from the panel.</param>
/// <param name="Stretch">Length of that stretch, one way.</param>
/// <param name="OhmsPerMetre">Resistance of one of its conductors.</param>
/// <param name="Draws">Current of the unit.</param>
public readonly record struct Tap(int After, Length Stretch, decimal OhmsPerMetre, Current Draws);

/// <summary>What comes of one unit on a shared cable.</summary>
/// <param name="Through">Current through its stretch: its own and that of all that go on from it.</param>
/// <param name="OneWay">Cable from the panel to it, one way.</param>
/// <param name="Arrives">Voltage at it; may be less than nothing, when no such currents can flow.</param>
public readonly record struct TapResult(Current Through, Length OneWay, Voltage Arrives);

/// <summary>Several units on one cable: currents add on the way back to the panel, and every stretch loses 2 x length x ohms per metre x its current.</summary>
public static class SharedCable
{
    /// <summary>What arrives at each unit when all draw at once.</summary>
    /// <param name="supply">Voltage at the panel.</param>
    /// <param name="taps">The units; each goes on from one before it.</param>
    /// <exception cref="ArgumentException">One goes on from itself or from one behind it.</exception>
    public static ImmutableArray<TapResult> Of(Voltage supply, IReadOnlyList<Tap> taps)
    {
        var through = taps.Select(t => t.Draws.Amperes).ToArray();
        for (var at = taps.Count - 1; at >= 0; at--)
        {
            if (taps[at].After < -1 || taps[at].After >= at)
                throw new ArgumentException($"Unit {at} goes on from {taps[at].After}, which is not before it.", nameof(taps));
            if (taps[at].After >= 0)
                through[taps[at].After] += through[at];
        }
        var results = ImmutableArray.CreateBuilder<TapResult>(taps.Count);
        for (var at = 0; at < taps.Count; at++)
        {
            var tap = taps[at];
            var (from, length) = tap.After < 0 ? (supply, Length.Zero) : (results[tap.After].Arrives, results[tap.After].OneWay);
            var current = new Current(through[at]);
            results.Add(new TapResult(current, length + tap.Stretch, TwoWire.Arrives(from, tap.Stretch, tap.OhmsPerMetre, current)));
        }
        return results.MoveToImmutable();
    }

    /// <summary>The same with so many like units: the first at the end of the run, each next one a stretch farther.</summary>
    /// <param name="supply">Voltage at the panel.</param>
    /// <param name="units">How many, from 1.</param>
    /// <param name="toFirst">Cable to the first, one way.</param>
    /// <param name="apart">Cable from each to the next.</param>
    /// <param name="ohmsPerMetre">Resistance of one conductor.</param>
    /// <param name="each">Current of each.</param>
    public static ImmutableArray<TapResult> Of(Voltage supply, int units, Length toFirst, Length apart, decimal ohmsPerMetre, Current each) =>
        Of(supply, [.. Enumerable.Range(0, units).Select(n => new Tap(n - 1, n == 0 ? toFirst : apart, ohmsPerMetre, each))]);
}
