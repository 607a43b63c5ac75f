using static TrimOut.Core.Sun.Angle;

namespace TrimOut.Core.Sun;

/// <summary>How strong the beam of the sun is under a clear sky.</summary>
/// <remarks>
/// Meinel and Meinel, Applied Solar Energy, 1976: 1353 W/m² x 0.7 ^ (air mass ^ 0.678); the air mass by Kasten and Young, Applied Optics 28, 1989: both from
/// memory. The sky itself, haze and height above the sea are not counted.
/// </remarks>
public static class ClearSky
{
    /// <summary>On a plane that faces the sun, in W/m².</summary>
    public static double Beam(SunPosition sun)
    {
        if (sun.Altitude <= 0)
            return 0;
        var airMass = 1 / (Sin(sun.Altitude) + 0.50572 * Math.Pow(sun.Altitude + 6.07995, -1.6364));
        return 1353 * Math.Pow(0.7, Math.Pow(airMass, 0.678));
    }

    /// <summary>On the glass of a facade, in W/m², over the whole of it.</summary>
    public static double OnGlass(SunPosition sun, Facade facade) =>
        facade.Lit(sun) is var lit and > 0 ? Beam(sun) * lit * Cos(facade.IncidenceOf(sun)) : 0;
}
