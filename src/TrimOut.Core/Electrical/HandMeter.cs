namespace TrimOut.Core.Electrical;

/// <summary>How far a reading of a hand meter may be off: half a per cent of it and two steps of its last digit.</summary>
/// <remarks>Common practice, no published source.</remarks>
public static class HandMeter
{
    /// <summary>The part of the reading.</summary>
    public const decimal Share = 0.005m;

    /// <summary>Steps of the last digit.</summary>
    public const decimal Digits = 2;

    /// <summary>What one step of the last digit is on direct volts up to 60 V: hundredths of a volt.</summary>
    public const decimal VoltStep = 0.01m;

    /// <summary>The most by which a reading may be off, in its own unit.</summary>
    /// <param name="reading">What the meter shows.</param>
    /// <param name="step">What one step of its last digit is.</param>
    public static decimal Error(decimal reading, decimal step) => Share * Math.Abs(reading) + Digits * step;

    /// <summary>The most by which a reading of volts may be off.</summary>
    public static decimal OfVolts(decimal volts) => Error(volts, VoltStep);
}
