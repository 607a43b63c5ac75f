using Terminal.Gui.Drawing;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Shell;
using TrimOut.Screens.Terminal;

namespace TrimOut.Screens.Tests;

public class PaletteTests
{
    public static TheoryData<string, string> Pairs()
    {
        var pairs = new TheoryData<string, string>();
        foreach (var look in new[] { Look.Dark, Look.Sunlight })
        {
            foreach (var tone in Enum.GetNames<Tone>())
                pairs.Add(look.Name, tone);
        }
        return pairs;
    }

    /// <summary>WCAG 2.2, success criterion 1.4.6: at least 7:1 for text at level AAA.</summary>
    [Theory]
    [MemberData(nameof(Pairs))]
    public void EveryToneHasSevenToOne(string look, string tone)
    {
        var attribute = Palette.Of(Look.Named(look), Enum.Parse<Tone>(tone));
        Assert.InRange(Ratio(attribute.Foreground, attribute.Background), 7.0, 21.0);
    }

    /// <summary>The anchor that the formula is held to: #767676 on white is 4.54:1, the grey that just passes level AA.</summary>
    [Fact]
    public void TheFormulaGivesTheKnownGrey() =>
        Assert.Equal(4.542, Ratio(new Color(0x76, 0x76, 0x76), new Color(0xFF, 0xFF, 0xFF)), 3);

    [Fact]
    public void PlainAddsNoColour() => Assert.All(Enum.GetValues<Tone>(), tone =>
    {
        var attribute = Palette.Of(Look.Plain, tone);
        Assert.Equal((Color.None, Color.None), (attribute.Foreground, attribute.Background));
    });

    private static double Ratio(Color a, Color b)
    {
        var (x, y) = (Luminance(a), Luminance(b));
        return (Math.Max(x, y) + 0.05) / (Math.Min(x, y) + 0.05);
    }

    /// <summary>Relative luminance as WCAG 2.2 defines it, from sRGB.</summary>
    private static double Luminance(Color c) => 0.2126 * Linear(c.R) + 0.7152 * Linear(c.G) + 0.0722 * Linear(c.B);

    private static double Linear(byte value) => value / 255.0 is var c && c <= 0.04045 ? c / 12.92 : Math.Pow((c + 0.055) / 1.055, 2.4);
}
