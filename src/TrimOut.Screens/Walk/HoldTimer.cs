using System.Globalization;
using TrimOut.Screens.Frames;

namespace TrimOut.Screens.Walk;

/// <summary>Counts the seconds that a button is held, by the kit's figure, in digits that can be read from the ladder.</summary>
internal static class HoldTimer
{
    private static readonly string[][] Digits =
    [
        ["###", "# #", "# #", "# #", "###"], ["  #", "  #", "  #", "  #", "  #"], ["###", "  #", "###", "#  ", "###"],
        ["###", "  #", "###", "  #", "###"], ["# #", "# #", "###", "  #", "  #"], ["###", "#  ", "###", "  #", "###"],
        ["###", "#  ", "###", "# #", "###"], ["###", "  #", "  #", "  #", "  #"], ["###", "# #", "###", "# #", "###"],
        ["###", "# #", "###", "  #", "###"],
    ];

    private const int FlashCells = 42;

    private static readonly TimeSpan FlashFor = TimeSpan.FromSeconds(3);

    private static readonly TimeSpan FlashBeat = TimeSpan.FromMilliseconds(400);

    /// <summary>At the end it flashes for a few seconds, as the bell rings: a bell is not heard beside a drill, nor where it is off.</summary>
    private static bool Flashes(TimeSpan hold, TimeSpan held) =>
        held >= hold && held - hold < FlashFor && (int)((held - hold) / FlashBeat) % 2 == 0;

    /// <summary>Draws what is left of a hold.</summary>
    /// <param name="area">Where.</param>
    /// <param name="hold">How long the button is held.</param>
    /// <param name="held">How long it has been held.</param>
    /// <param name="glyphs">What it is drawn with.</param>
    public static void Draw(Area area, TimeSpan hold, TimeSpan held, Glyphs glyphs)
    {
        if (Flashes(hold, held))
            area.Part(2, 0, FlashCells, Digits[0].Length).Clear(Tone.Selected);
        var left = (int)Math.Ceiling(Math.Max(0, (hold - held).TotalSeconds));
        var tone = left > 0 ? Tone.Strong : Flashes(hold, held) ? Tone.Selected : Tone.Key;
        var x = 4;
        foreach (var digit in left.ToString(CultureInfo.InvariantCulture))
        {
            foreach (var (line, y) in Digits[digit - '0'].Select((l, y) => (l, y)))
            {
                for (var column = 0; column < 3; column++)
                {
                    if (line[column] == '#')
                        area.Put(x + 2 * column, y, glyphs.Solid + glyphs.Solid, tone);
                }
            }
            x += 8;
        }
        area.Put(x + 2, 2, left == 0 ? "Let go. Did the cue come?" : "seconds: keep holding", left > 0 ? Tone.Text : tone);
    }
}
