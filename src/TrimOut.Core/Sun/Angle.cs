namespace TrimOut.Core.Sun;

/// <summary>Trigonometry in degrees.</summary>
internal static class Angle
{
    public static double Sin(double degrees) => Math.Sin(degrees * Math.PI / 180);

    public static double Cos(double degrees) => Math.Cos(degrees * Math.PI / 180);

    public static double Tan(double degrees) => Math.Tan(degrees * Math.PI / 180);

    public static double Asin(double sine) => Math.Asin(Math.Clamp(sine, -1, 1)) * 180 / Math.PI;

    public static double Acos(double cosine) => Math.Acos(Math.Clamp(cosine, -1, 1)) * 180 / Math.PI;

    public static double Atan2(double y, double x) => Math.Atan2(y, x) * 180 / Math.PI;

    /// <summary>The same direction from 0 up to, but not including, 360.</summary>
    public static double Turned(double degrees) => (degrees % 360 + 360) % 360;
}
