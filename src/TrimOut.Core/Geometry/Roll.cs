using TrimOut.Core.Units;

namespace TrimOut.Core.Geometry;

/// <summary>Fabric wound on a tube.</summary>
public static class Roll
{
    /// <summary>Outside diameter of a roll: sqrt(tube^2 + 4 x thickness x length / pi), the wound-sheet formula.</summary>
    /// <exception cref="ArgumentOutOfRangeException">One of them is negative.</exception>
    public static Length Diameter(Length tube, Length thickness, Length wound)
    {
        (_, _, _) = (Refuse.Negative(tube), Refuse.Negative(thickness), Refuse.Negative(wound));
        var (d, t, l) = ((double)tube.Millimetres, (double)thickness.Millimetres, (double)wound.Millimetres);
        return Length.FromMillimetres((decimal)Math.Sqrt(d * d + 4 * t * l / Math.PI));
    }

    /// <summary>Length of fabric on a roll: pi (outside^2 - tube^2) / (4 x thickness).</summary>
    /// <exception cref="ArgumentOutOfRangeException">The fabric has no thickness.</exception>
    public static Length Wound(Length outside, Length tube, Length thickness)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(thickness.Nanometres);
        var (big, d, t) = ((double)outside.Millimetres, (double)tube.Millimetres, (double)thickness.Millimetres);
        return Length.FromMillimetres((decimal)(Math.PI * (big * big - d * d) / (4 * t)));
    }

    /// <summary>The room that a roll needs to turn: its diameter and two thicknesses, because the outer turn ends in a step.</summary>
    public static Length RoomToTurn(Length tube, Length thickness, Length wound) => Diameter(tube, thickness, wound) + thickness * 2;
}
