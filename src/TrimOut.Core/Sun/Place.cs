namespace TrimOut.Core.Sun;

/// <summary>A place on the earth, for reckoning with the sun.</summary>
/// <param name="Latitude">Degrees north; south is negative. From -90 to 90.</param>
/// <param name="Longitude">Degrees east; west is negative. From -180 to 180.</param>
public readonly record struct Place(double Latitude, double Longitude);

/// <summary>The air that bends the light of a low sun.</summary>
/// <param name="Millibars">Its pressure.</param>
/// <param name="Celsius">Its temperature.</param>
public readonly record struct Air(double Millibars, double Celsius)
{
    /// <summary>What tables of sunrise reckon with: 1010 mbar and 10 degrees Celsius.</summary>
    public static Air Usual { get; } = new(1010, 10);
}
