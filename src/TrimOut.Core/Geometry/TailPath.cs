using TrimOut.Core.Units;

namespace TrimOut.Core.Geometry;

/// <summary>The way of a cable from where it leaves the wall to the motor.</summary>
public static class TailPath
{
    /// <summary>Up to the head, along it to the motor end, and what the sheet says is used up behind the unit.</summary>
    /// <param name="entry">Where the cable leaves the wall, from the left of the opening.</param>
    /// <param name="motor">Where the motor end of the unit is, from the left of the opening.</param>
    /// <param name="belowHead">Distance of the entry below the head.</param>
    /// <param name="behind">Cable used up besides the way along the head, by the sheet.</param>
    /// <exception cref="ArgumentOutOfRangeException">What is below or behind is negative.</exception>
    public static Length ToMotor(Length entry, Length motor, Length belowHead, Length behind) =>
        (entry - motor).Abs() + Refuse.Negative(belowHead) + Refuse.Negative(behind);
}
