using Terminal.Gui.Drawing;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Shell;
using Attribute = Terminal.Gui.Drawing.Attribute;

namespace TrimOut.Screens.Terminal;

/// <summary>The colours of each look. Contrast is at least 7:1 in dark and sunlight, as WCAG 2.2 asks at level AAA; a test computes it.</summary>
internal static class Palette
{
    private static readonly Color DarkGround = new(0x10, 0x14, 0x18);
    private static readonly Color LightGround = new(0xFF, 0xFF, 0xFF);

    public static Attribute Of(Look look, Tone tone) => look == Look.Plain ? Plain(tone) : look == Look.Sunlight ? Sunlight(tone) : Dark(tone);

    private static Attribute Dark(Tone tone) => tone switch
    {
        Tone.Text => new(new Color(0xE8, 0xE8, 0xE8), DarkGround),
        Tone.Dim => new(new Color(0xA8, 0xB2, 0xBC), DarkGround),
        Tone.Strong => new(new Color(0xFF, 0xFF, 0xFF), DarkGround, TextStyle.Bold),
        Tone.Heading => new(new Color(0x8F, 0xD3, 0xC8), DarkGround, TextStyle.Bold),
        Tone.Bar => new(new Color(0xF0, 0xF0, 0xF0), new Color(0x26, 0x3A, 0x44)),
        Tone.Selected => new(new Color(0x00, 0x00, 0x00), new Color(0xFF, 0xD7, 0x5F)),
        Tone.Key => new(new Color(0xFF, 0xE0, 0x80), new Color(0x26, 0x3A, 0x44), TextStyle.Bold),
        Tone.Field => new(new Color(0x00, 0x00, 0x00), new Color(0xE8, 0xE8, 0xE8)),
        Tone.Drawing => new(new Color(0xC0, 0xCC, 0xD8), DarkGround),
        Tone.Stop => new(new Color(0xFF, 0xA0, 0xA0), DarkGround, TextStyle.Bold),
        Tone.Caution => new(new Color(0xFF, 0xD7, 0x5F), DarkGround),
        Tone.Note => new(new Color(0x9A, 0xD0, 0xFF), DarkGround),
        Tone.Good => new(new Color(0x9A, 0xE6, 0x9A), DarkGround),
        _ => throw new ArgumentOutOfRangeException(nameof(tone), tone, "Every tone has a colour."),
    };

    private static Attribute Sunlight(Tone tone) => tone switch
    {
        Tone.Text => new(new Color(0x00, 0x00, 0x00), LightGround),
        Tone.Dim => new(new Color(0x40, 0x40, 0x40), LightGround),
        Tone.Strong => new(new Color(0x00, 0x00, 0x00), LightGround, TextStyle.Bold),
        Tone.Heading => new(new Color(0x00, 0x3C, 0x46), LightGround, TextStyle.Bold),
        Tone.Bar => new(new Color(0x00, 0x00, 0x00), new Color(0xD8, 0xD8, 0xD8)),
        Tone.Selected => new(new Color(0xFF, 0xFF, 0xFF), new Color(0x00, 0x00, 0x00)),
        Tone.Key => new(new Color(0x00, 0x00, 0x00), new Color(0xD8, 0xD8, 0xD8), TextStyle.Bold),
        Tone.Field => new(new Color(0x00, 0x00, 0x00), new Color(0xFF, 0xF2, 0xB0)),
        Tone.Drawing => new(new Color(0x28, 0x28, 0x28), LightGround),
        Tone.Stop => new(new Color(0x8A, 0x00, 0x00), LightGround, TextStyle.Bold),
        Tone.Caution => new(new Color(0x5A, 0x3C, 0x00), LightGround),
        Tone.Note => new(new Color(0x00, 0x30, 0x80), LightGround),
        Tone.Good => new(new Color(0x00, 0x4A, 0x1C), LightGround),
        _ => throw new ArgumentOutOfRangeException(nameof(tone), tone, "Every tone has a colour."),
    };

    private static Attribute Plain(Tone tone) => new(Color.None, Color.None, tone switch
    {
        Tone.Selected or Tone.Bar => TextStyle.Reverse,
        Tone.Key => TextStyle.Reverse | TextStyle.Bold,
        Tone.Field => TextStyle.Underline,
        Tone.Strong or Tone.Heading or Tone.Stop => TextStyle.Bold,
        _ => TextStyle.None,
    });
}
