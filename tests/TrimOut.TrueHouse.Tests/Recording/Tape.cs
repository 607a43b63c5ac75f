using System.Globalization;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Recording;

/// <summary>A tape as a person reads it: to 1/16 in, or to 1 mm, and half a millimetre off either way before that.</summary>
public sealed class Tape(bool metric, Noise noise)
{
    /// <summary>How far its hook and the eye may be off, in millimetres.</summary>
    public const double HookAndEye = 0.5;

    /// <summary>The most by which a reading may be off, in millimetres: hook, eye and half a mark.</summary>
    public double Error => HookAndEye + (metric ? 0.5 : 25.4 / 32);

    /// <summary>What is read of a length; the words tell which reading it is.</summary>
    public string Read(double millimetres, params ReadOnlySpan<string> what) => Exactly(Math.Max(0, millimetres + (HookAndEye * noise.Of(what))));

    /// <summary>A length that somebody else printed, to the next mark.</summary>
    public string Exactly(double millimetres) => metric ? string.Create(CultureInfo.InvariantCulture, $"{Math.Round(millimetres):0} mm") : Inches(millimetres);

    /// <summary>A thickness, which no tape reads.</summary>
    public static string Thin(double millimetres) => string.Create(CultureInfo.InvariantCulture, $"{millimetres:0.###} mm");

    /// <summary>A stretch of cable as it is paced along the wall: to half a foot, or to a tenth of a metre, and up to 1 % off.</summary>
    public string Pace(double metres, params ReadOnlySpan<string> what) => Run(metres * (1 + (0.01 * noise.Of(what))));

    /// <summary>A length of cable that somebody else printed.</summary>
    public string Run(double metres) => metric
        ? string.Create(CultureInfo.InvariantCulture, $"{metres:0.0} m")
        : string.Create(CultureInfo.InvariantCulture, $"{Math.Round(metres / 0.3048 * 2) / 2:0.#} ft");

    private static string Inches(double millimetres)
    {
        var sixteenths = (long)Math.Round(millimetres * 16 / 25.4);
        var (whole, part, below) = (sixteenths / 16, sixteenths % 16, 16);
        while (part > 0 && part % 2 == 0)
            (part, below) = (part / 2, below / 2);
        return part == 0 ? string.Create(CultureInfo.InvariantCulture, $"{whole}\"")
            : whole == 0 ? string.Create(CultureInfo.InvariantCulture, $"{part}/{below}\"")
            : string.Create(CultureInfo.InvariantCulture, $"{whole} {part}/{below}\"");
    }
}
