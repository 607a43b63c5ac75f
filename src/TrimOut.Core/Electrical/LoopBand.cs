using TrimOut.Core.Units;

namespace TrimOut.Core.Electrical;

/// <summary>How far a sound loop may read from what it should, by the meter, by how the legs were measured and by how warm the cable was taken to be.</summary>
/// <remarks>
/// A reading of which nobody said what the meter's last digit is, is held to the wider band of <see cref="LoopReading.Tolerance"/>. All parts are common
/// practice without a published source.
/// </remarks>
public static class LoopBand
{
    /// <summary>The part by which legs that were paced or read off the jacket may be off.</summary>
    public const decimal LegShare = 0.01m;

    /// <summary>What each leg may be off besides: it is written to half a foot or a tenth of a metre.</summary>
    public static readonly Length PerLeg = Length.FromMillimetres(80);

    /// <summary>The part by which the cable's ohms may be off: a temperature within 2.5 K, and how conductors are stranded.</summary>
    public const decimal CopperShare = 0.0125m;

    /// <summary>The least of a loop of which a reading must show something, where nothing was said of the meter's last digit.</summary>
    public static readonly Resistance LeastToShow = new(0.03m);

    /// <summary>Against the recorded run.</summary>
    /// <param name="test">The reading.</param>
    /// <param name="expected">What it should be, leads and all.</param>
    /// <param name="legs">The sum of the legs.</param>
    /// <param name="count">How many legs there are.</param>
    /// <param name="ohmsPerMetre">Resistance of one conductor at the test.</param>
    public static Resistance AgainstLength(LoopTest test, Resistance expected, Length legs, int count, decimal ohmsPerMetre) => test.Step is not { } step
        ? LoopReading.Tolerance(expected)
        : Read(expected, test, step) + TwoWire.Loop(legs * LegShare + PerLeg * count, ohmsPerMetre);

    /// <summary>Between two tests of one cable, both at 20 C without leads.</summary>
    public static Resistance Between(LoopTest first, LoopTest second) => first.Step is { } a && second.Step is { } b
        ? Read(first.Read, first, a) + Read(second.Read, second, b)
        : LoopReading.Tolerance(first.At20);

    /// <summary>Meter, its rounding, and what the copper may be off.</summary>
    private static Resistance Read(Resistance ohms, LoopTest test, Resistance step) =>
        new(HandMeter.Error(ohms.Ohms, step.Ohms) + step.Ohms / 2 + Math.Max(0, ohms.Ohms - (test.Leads?.Ohms ?? 0)) * CopperShare);
}
