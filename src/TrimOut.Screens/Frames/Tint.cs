using System.Globalization;
using TrimOut.Screens.Terminal;

namespace TrimOut.Screens.Frames;

/// <summary>A colour of a picture: red, green and blue from 0 to 255.</summary>
internal readonly record struct Dot(byte R, byte G, byte B)
{
    /// <summary>How light it is, from 0 to 255 (luma of ITU-R BT.601).</summary>
    public int Light => (299 * R + 587 * G + 114 * B) / 1000;

    /// <summary>The nearest of xterm's fixed colours.</summary>
    public byte Nearest
    {
        get
        {
            var (r, g, b) = (Step(R), Step(G), Step(B));
            var grey = (byte)(232 + Math.Clamp((Light - 3) / 10, 0, 23));
            var cube = (byte)(16 + 36 * r + 6 * g + b);
            return Away(grey) < Away(cube) ? grey : cube;
        }
    }

    private int Away(byte index) => Paint.Rgb(index) is var (r, g, b) ? (r - R) * (r - R) + (g - G) * (g - G) + (b - B) * (b - B) : 0;

    private static int Step(byte part) => part < 48 ? 0 : part < 115 ? 1 : (part - 35) / 40;
}

/// <summary>Two pixels of a picture in one cell, one above the other.</summary>
internal readonly record struct Tint(Dot Above, Dot Below)
{
    /// <summary>The sign whose upper half is painted and whose lower half is ground.</summary>
    public const char Halves = '\u2580';

    /// <summary>The escape sequence that paints both.</summary>
    public string Sequence(ColourDepth depth) => depth == ColourDepth.Full
        ? string.Create(CultureInfo.InvariantCulture, $"\u001b[0;38;2;{Above.R};{Above.G};{Above.B};48;2;{Below.R};{Below.G};{Below.B}m")
        : string.Create(CultureInfo.InvariantCulture, $"\u001b[0;38;5;{Above.Nearest};48;5;{Below.Nearest}m");
}
