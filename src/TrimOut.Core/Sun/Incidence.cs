using static TrimOut.Core.Sun.Angle;

namespace TrimOut.Core.Sun;

/// <summary>At which angle sunlight meets a plane, from the line that stands square on it: 0 is straight on, 90 along it.</summary>
/// <remarks>Reda and Andreas, NREL/TP-560-34302, section 3.16.</remarks>
public static class Incidence
{
    /// <summary>The angle of incidence in degrees; past 90 the sun stands behind the plane.</summary>
    /// <param name="sun">Where the sun stands.</param>
    /// <param name="facing">Where the plane looks out to, in degrees clockwise from true north.</param>
    /// <param name="slope">How far the plane is tilted from lying flat: 90 is a window in a wall.</param>
    public static double Of(SunPosition sun, double facing, double slope = 90) =>
        Acos(Sin(sun.Altitude) * Cos(slope) + Cos(sun.Altitude) * Sin(slope) * Cos(sun.Azimuth - facing));
}
