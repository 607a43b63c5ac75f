using System.Globalization;
using System.Text;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.Terminal;

/// <summary>The shortest way from the screen that stands on the terminal to the one that should: only cells that changed are written.</summary>
internal static class FrameWriter
{
    /// <summary>Going over so few unchanged cells is shorter than a jump.</summary>
    private const int Bridge = 6;

    /// <summary>What to send to the terminal; empty when nothing changed.</summary>
    /// <param name="from">The screen that stands there; null when it is not known.</param>
    /// <param name="to">The screen that should.</param>
    /// <param name="look">The look.</param>
    /// <param name="depth">The colours of the terminal.</param>
    public static string Between(Frame? from, Frame to, Look look, ColourDepth depth)
    {
        var text = new StringBuilder();
        Tone? tone = null;
        Tint? tint = null;
        var paintsDots = depth >= ColourDepth.Many && look != Look.Plain;
        for (var y = 0; y < to.Height; y++)
        {
            var row = to.Row(y);
            foreach (var (start, end) in Changed(from, to, y))
            {
                text.Append(CultureInfo.InvariantCulture, $"\u001b[{y + 1};{start + 1}H");
                for (var x = start; x < end; x++)
                {
                    if (row[x].Text.Length == 0)
                        continue;
                    if (paintsDots && row[x].Tint is { } dots)
                    {
                        if (tint != dots)
                            text.Append(dots.Sequence(depth));
                        (tint, tone) = (dots, null);
                        text.Append(Tint.Halves);
                        continue;
                    }
                    tint = null;
                    if (row[x].Tone != tone)
                        text.Append(Palette.Of(look, row[x].Tone).Sequence(depth));
                    tone = row[x].Tone;
                    text.Append(row[x].Text);
                }
            }
        }
        // The library goes on from where it left the cursor and its colours.
        return text.Length == 0 ? "" : $"\u001b7{text}\u001b8";
    }

    private static List<(int Start, int End)> Changed(Frame? from, Frame to, int y)
    {
        var runs = new List<(int Start, int End)>();
        var row = to.Row(y);
        var before = from is null ? default : from.Row(y);
        for (var x = 0; x < row.Length; x++)
        {
            // Where the text field lies, or lay, the library draws: there nothing is known of what stands on the terminal.
            if (Covers(to.Slot, x, y) || (from is not null && !Covers(from.Slot, x, y) && before[x] == row[x]))
                continue;
            var start = x > 0 && row[x].Text.Length == 0 ? x - 1 : x;
            var end = x + 1 < row.Length && row[x + 1].Text.Length == 0 ? x + 2 : x + 1;
            if (runs.Count > 0 && start - runs[^1].End <= Bridge && !Covers(to.Slot, start - 1, y))
                runs[^1] = (runs[^1].Start, Math.Max(runs[^1].End, end));
            else
                runs.Add((start, end));
        }
        return runs;
    }

    private static bool Covers(Slot? slot, int x, int y) => slot is { } at && at.Y == y && x >= at.X && x < at.X + at.Width;
}
