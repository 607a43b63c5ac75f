using static TrimOut.Core.Sun.Angle;

namespace TrimOut.Core.Sun;

/// <summary>A roof, balcony or awning above a window, reckoned as if it went on far to both sides. All lengths in one unit.</summary>
/// <param name="Depth">How far it stands out from the glass.</param>
/// <param name="Above">How high its edge is above the head of the window.</param>
/// <param name="Height">Height of the window.</param>
/// <remarks>
/// The profile angle: seen along the wall the sun stands at atan(tan(altitude) / cos(azimuth - facing)). The ASHRAE Handbook, Fundamentals, reckons
/// with it (from memory). What is cut off at the sides of a short overhang is not counted.
/// </remarks>
public readonly record struct Overhang(double Depth, double Above, double Height)
{
    /// <summary>How much of the window is in its shade, from 0 to 1.</summary>
    /// <param name="sun">Where the sun stands: before the wall.</param>
    /// <param name="facing">Where the window looks out to, in degrees clockwise from true north.</param>
    public double Shaded(SunPosition sun, double facing)
    {
        var falls = Depth * Tan(sun.Altitude) / Cos(sun.Azimuth - facing);
        return Height <= 0 ? 0 : Math.Clamp((falls - Above) / Height, 0, 1);
    }
}
