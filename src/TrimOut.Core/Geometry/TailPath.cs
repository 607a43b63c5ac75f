using TrimOut.Core.Units;

namespace TrimOut.Core.Geometry;

/// <summary>The way of a cable from where it leaves the wall to the motor.</summary>
public static class TailPath
{
    /// <summary>Up to the head, along it to the motor end, and what the sheet says is used up behind the unit.</summary>
    /// <param name="width">Width of the unit's part of the opening.</param>
    /// <param name="fromJamb">Distance of the entry from the side that it is on.</param>
    /// <param name="belowHead">Distance of the entry below the head.</param>
    /// <param name="atMotorEnd">Whether the entry is on the side of the motor.</param>
    /// <param name="behind">Cable used up besides the way along the head, by the sheet.</param>
    /// <exception cref="ArgumentOutOfRangeException">One of the lengths is negative.</exception>
    public static Length ToMotor(Length width, Length fromJamb, Length belowHead, bool atMotorEnd, Length behind) =>
        (atMotorEnd ? Refuse.Negative(fromJamb) : Length.Max(Refuse.Negative(width) - Refuse.Negative(fromJamb), Length.Zero)) + Refuse.Negative(belowHead) +
            Refuse.Negative(behind);
}
