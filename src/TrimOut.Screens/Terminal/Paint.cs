using System.Globalization;
using Terminal.Gui.Drawing;
using Attribute = Terminal.Gui.Drawing.Attribute;

namespace TrimOut.Screens.Terminal;

/// <summary>How many colours a terminal has.</summary>
internal enum ColourDepth
{
    /// <summary>None, or none are wanted.</summary>
    None,

    /// <summary>The sixteen that every colour terminal has, in whatever shades it likes.</summary>
    Sixteen,

    /// <summary>The 256 of xterm: a fixed cube of 6 x 6 x 6 and 24 greys.</summary>
    Many,

    /// <summary>Those, and any other by its red, green and blue.</summary>
    Full,
}

/// <summary>The colours of a tone in one look. Null is the terminal's own colour.</summary>
/// <param name="Front">Of the text: an index from 16 to 255 into xterm's colours.</param>
/// <param name="Back">Of the ground.</param>
/// <param name="Style">Bold, underlined, reversed.</param>
internal sealed record Paint(byte? Front, byte? Back, TextStyle Style = TextStyle.None)
{
    /// <summary>The nearest of the sixteen colours for the text and the ground.</summary>
    public (int Front, int Back)? Sixteen { get; init; }

    /// <summary>The escape sequence that begins this paint, whatever was before.</summary>
    public string Sequence(ColourDepth depth)
    {
        var codes = "0";
        if (Style.HasFlag(TextStyle.Bold))
            codes += ";1";
        if (Style.HasFlag(TextStyle.Underline))
            codes += ";4";
        if (Style.HasFlag(TextStyle.Reverse))
            codes += ";7";
        if (depth >= ColourDepth.Many && Front is { } front && Back is { } back)
            codes += string.Create(CultureInfo.InvariantCulture, $";38;5;{front};48;5;{back}");
        if (depth == ColourDepth.Sixteen && Sixteen is { } near)
            codes += string.Create(CultureInfo.InvariantCulture, $";{near.Front};{near.Back}");
        return $"\u001b[{codes}m";
    }

    /// <summary>The same for the library's own text field.</summary>
    public Attribute Attribute => new(ColourOf(Front), ColourOf(Back), Style);

    /// <summary>Red, green and blue of one of xterm's fixed colours.</summary>
    public static (int R, int G, int B) Rgb(byte index)
    {
        if (index >= 232)
            return (8 + 10 * (index - 232), 8 + 10 * (index - 232), 8 + 10 * (index - 232));
        var cube = index - 16;
        return (Step(cube / 36), Step(cube / 6 % 6), Step(cube % 6));

        static int Step(int at) => at == 0 ? 0 : 55 + 40 * at;
    }

    private static Color ColourOf(byte? index) => index is { } at && Rgb(at) is var (r, g, b) ? new Color(r, g, b) : Color.None;
}
