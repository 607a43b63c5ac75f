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
        var paint = Palette.Of(Look.Named(look), Enum.Parse<Tone>(tone));
        Assert.InRange(Ratio(Paint.Rgb(paint.Front!.Value), Paint.Rgb(paint.Back!.Value)), 7.0, 21.0);
    }

    /// <summary>The anchor that the formula is held to: #767676 on white is 4.54:1, the grey that just passes level AA.</summary>
    [Fact]
    public void TheFormulaGivesTheKnownGrey() =>
        Assert.Equal(4.542, Ratio((0x76, 0x76, 0x76), (0xFF, 0xFF, 0xFF)), 3);

    /// <summary>xterm's cube steps are 0, 95, 135, 175, 215, 255 and its greys go from 8 to 238 by tens (xterm's 256colres table, from memory).</summary>
    [Theory]
    [InlineData(16, 0, 0, 0)]
    [InlineData(231, 255, 255, 255)]
    [InlineData(88, 135, 0, 0)]
    [InlineData(117, 135, 215, 255)]
    [InlineData(233, 18, 18, 18)]
    [InlineData(255, 238, 238, 238)]
    public void TheFixedColoursAreThoseOfXterm(byte index, int r, int g, int b) => Assert.Equal((r, g, b), Paint.Rgb(index));

    [Fact]
    public void WithSixteenColoursEveryToneOfTheColouredLooksHasTwoOfThem() => Assert.All(Enum.GetValues<Tone>(), tone =>
    {
        Assert.NotNull(Palette.Of(Look.Dark, tone).Sixteen);
        Assert.NotNull(Palette.Of(Look.Sunlight, tone).Sixteen);
    });

    [Fact]
    public void PlainAddsNoColour() => Assert.All(Enum.GetValues<Tone>(), tone =>
    {
        Assert.DoesNotContain("38;", Palette.Of(Look.Plain, tone).Sequence(ColourDepth.Many), StringComparison.Ordinal);
        Assert.DoesNotContain("48;", Palette.Of(Look.Plain, tone).Sequence(ColourDepth.Many), StringComparison.Ordinal);
    });

    private static double Ratio((int R, int G, int B) a, (int R, int G, int B) b)
    {
        var (x, y) = (Luminance(a), Luminance(b));
        return (Math.Max(x, y) + 0.05) / (Math.Min(x, y) + 0.05);
    }

    /// <summary>Relative luminance as WCAG 2.2 defines it, from sRGB.</summary>
    private static double Luminance((int R, int G, int B) c) => 0.2126 * Linear(c.R) + 0.7152 * Linear(c.G) + 0.0722 * Linear(c.B);

    private static double Linear(int value) => value / 255.0 is var c && c <= 0.04045 ? c / 12.92 : Math.Pow((c + 0.055) / 1.055, 2.4);
}
