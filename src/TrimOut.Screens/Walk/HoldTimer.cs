using System.Globalization;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
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

    /// <summary>The seconds that a unit's button is held in a phase; null where the kit says nothing.</summary>
    public static TimeSpan? HoldOf(Unit unit, Phase phase) => unit.Kind?.Item is not { } kind ? null
        : phase == Phase.Pair ? kind.Get(CoveringKindFacts.PairHold)
        : phase == Phase.Limits ? kind.Get(CoveringKindFacts.PresetHold)
        : null;

    /// <summary>What the kit says to do and to wait for.</summary>
    public static string? CueOf(Unit unit, Phase phase)
    {
        if (HoldOf(unit, phase) is not { } hold)
            return null;
        var cue = unit.Kind!.Item.Get(phase == Phase.Pair ? CoveringKindFacts.PairCue : CoveringKindFacts.PresetCue);
        var seconds = ((decimal)hold.TotalSeconds).ToString("0.#", CultureInfo.InvariantCulture);
        return $"Hold {seconds} s until {cue ?? "the cue on the maker's sheet"}.";
    }

    public static void Draw(Area area, Subject subject, Phase phase, TimeSpan held, Glyphs glyphs)
    {
        var hold = subject is Unit unit ? HoldOf(unit, phase) ?? TimeSpan.FromSeconds(10) : TimeSpan.FromSeconds(10);
        var left = (int)Math.Ceiling(Math.Max(0, (hold - held).TotalSeconds));
        var x = 4;
        foreach (var digit in left.ToString(CultureInfo.InvariantCulture))
        {
            foreach (var (line, y) in Digits[digit - '0'].Select((l, y) => (l, y)))
            {
                for (var column = 0; column < 3; column++)
                {
                    if (line[column] == '#')
                        area.Put(x + 2 * column, y, glyphs.Solid + glyphs.Solid, left == 0 ? Tone.Good : Tone.Strong);
                }
            }
            x += 8;
        }
        area.Put(x + 2, 2, left == 0 ? "Let go. Did the cue come?" : "seconds: keep holding", left == 0 ? Tone.Good : Tone.Text);
    }
}
