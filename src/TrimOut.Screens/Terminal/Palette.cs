using Terminal.Gui.Drawing;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.Terminal;

/// <summary>The colours of each look. Contrast is at least 7:1 in dark and sunlight, as WCAG 2.2 asks at level AAA; a test computes it.</summary>
/// <remarks>A stop stands on a ground of its own in every look, and only what is well is green; tests hold both.</remarks>
internal static class Palette
{
    private const byte DarkGround = 233;
    private const byte LightGround = 231;

    public static Paint Of(Look look, Tone tone) => look == Look.Plain ? Plain(tone) : look == Look.Sunlight ? Sunlight(tone) : Dark(tone);

    private static Paint Dark(Tone tone) => tone switch
    {
        Tone.Text => new(254, DarkGround) { Sixteen = (37, 40) },
        Tone.Dim => new(249, DarkGround) { Sixteen = (37, 40) },
        Tone.Strong => new(231, DarkGround, TextStyle.Bold) { Sixteen = (97, 40) },
        Tone.Heading => new(153, DarkGround, TextStyle.Bold) { Sixteen = (96, 40) },
        Tone.Bar => new(255, 237) { Sixteen = (97, 44) },
        Tone.Selected => new(16, 221) { Sixteen = (30, 43) },
        Tone.Key => new(222, 237, TextStyle.Bold) { Sixteen = (93, 44) },
        Tone.Field => new(16, 254) { Sixteen = (30, 47) },
        Tone.Drawing => new(250, DarkGround) { Sixteen = (37, 40) },
        Tone.Stop => new(231, 88, TextStyle.Bold) { Sixteen = (97, 41) },
        Tone.Caution => new(221, DarkGround) { Sixteen = (93, 40) },
        Tone.Note => new(117, DarkGround) { Sixteen = (96, 40) },
        Tone.Good => new(157, DarkGround) { Sixteen = (92, 40) },
        _ => throw new ArgumentOutOfRangeException(nameof(tone), tone, "Every tone has a color."),
    };

    private static Paint Sunlight(Tone tone) => tone switch
    {
        Tone.Text => new(16, LightGround) { Sixteen = (30, 107) },
        Tone.Dim => new(238, LightGround) { Sixteen = (30, 107) },
        Tone.Strong => new(16, LightGround, TextStyle.Bold) { Sixteen = (30, 107) },
        Tone.Heading => new(17, LightGround, TextStyle.Bold) { Sixteen = (34, 107) },
        Tone.Bar => new(16, 252) { Sixteen = (30, 47) },
        Tone.Selected => new(231, 16) { Sixteen = (97, 40) },
        Tone.Key => new(16, 252, TextStyle.Bold) { Sixteen = (30, 47) },
        Tone.Field => new(16, 229) { Sixteen = (30, 103) },
        Tone.Drawing => new(236, LightGround) { Sixteen = (30, 107) },
        Tone.Stop => new(231, 88, TextStyle.Bold) { Sixteen = (97, 41) },
        Tone.Caution => new(53, LightGround) { Sixteen = (35, 107) },
        Tone.Note => new(18, LightGround) { Sixteen = (34, 107) },
        Tone.Good => new(22, LightGround) { Sixteen = (30, 107) },
        _ => throw new ArgumentOutOfRangeException(nameof(tone), tone, "Every tone has a color."),
    };

    private static Paint Plain(Tone tone) => new(null, null, tone switch
    {
        Tone.Selected or Tone.Bar => TextStyle.Reverse,
        Tone.Key => TextStyle.Reverse | TextStyle.Bold,
        Tone.Field => TextStyle.Underline,
        Tone.Stop => TextStyle.Reverse | TextStyle.Bold | TextStyle.Underline,
        Tone.Strong or Tone.Heading => TextStyle.Bold,
        _ => TextStyle.None,
    });
}
