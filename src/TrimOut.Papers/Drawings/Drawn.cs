using TrimOut.Core.Units;

namespace TrimOut.Papers.Drawings;

/// <summary>Lengths as numbers to draw with: fractions of a line's width don't show.</summary>
internal static class Drawn
{
    /// <summary>Millimetres.</summary>
    public static double InMillimetres(this Length length) => length.Nanometres / 1e6;

    /// <summary>Metres.</summary>
    public static double InMetres(this Length length) => length.Nanometres / 1e9;
}
